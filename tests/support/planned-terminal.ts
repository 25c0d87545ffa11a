/** A terminal at a room of ten spiderlings with one sender of crickets, and a real plan of four weeks. */
import {
  addAnimal,
  addBin,
  addOffer,
  addRoom,
  addSupplier,
  askPlan,
  type Context,
  editSettings,
  usualPlanQuestion,
} from '../../src/actions/index.ts';
import { type Terminal, terminal } from './command.ts';
import { onDatabase } from './on-database.ts';
import { good } from './store-at.ts';

const EVERY_DAY = [true, true, true, true, true, true, true];

interface Ways {
  /** Crickets in the larder. */
  readonly crickets: number;
  /** Days a parcel takes. */
  readonly transitDays: number;
}

export async function plannedTerminal(ways: Ways): Promise<Terminal> {
  const at = terminal();
  await onDatabase(at, async (context) => {
    await furnish(context, ways);
    good(await askPlan(context, await usualPlanQuestion(context)));
  });
  return at;
}

async function furnish(context: Context, { crickets, transitDays }: Ways): Promise<void> {
  good(await addRoom(context, { name: 'Spare room', dayTempC: 25, nightTempC: 22 }));
  good(await editSettings(context, { feedingWeekdays: EVERY_DAY, planWeeks: 4 }));
  const young = { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 14, count: 10 };
  good(await addAnimal(context, { ...young, name: 'Tray', lastTaken: '2026-11-20' }));
  const box = { species: 'acheta-domesticus', room: 'R1', name: 'Box', role: 'holding' } as const;
  if (crickets > 0) good(await addBin(context, { ...box, lot: { heads: crickets, fromMm: 3, toMm: 4 } }));
  const sender = { name: 'Grille & Co', kind: 'parcel', dispatchWeekdays: EVERY_DAY, transitDays } as const;
  const { reply } = good(await addSupplier(context, sender));
  good(
    await addOffer(context, {
      ...{ supplier: reply.supplier, species: 'acheta-domesticus', fromMm: 4, toMm: 6 },
      ...{ packHeads: 100, prices: [{ fromPacks: 1, pack: '6' }] },
    }),
  );
}
