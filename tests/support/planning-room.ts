/** A small room with two sellers of small crickets, as a database the program is started on. */
import {
  addAnimal,
  addOffer,
  addRoom,
  addSupplier,
  type Context,
  editSettings,
  nowIn,
} from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { openStore } from '../../src/store/index.ts';
import { facts } from './room.ts';
import { good } from './store-at.ts';

const EVERY_DAY = [true, true, true, true, true, true, true];
/** By the keeper's own day, as the program counts it. */
const HERE = Intl.DateTimeFormat().resolvedOptions().timeZone;

/** Forty spiderlings fed from bought crickets alone; the far sender is cheap, the near one dear. */
export async function furnishPlanning(file: string): Promise<void> {
  const clock = () => nowIn(HERE, new Date());
  const store = good(await openStore({ place: { url: `file:${file}` }, moment: clock().moment }));
  const context: Context = { store, facts, clock };
  good(await addRoom(context, { name: 'Spare room', dayTempC: 25, nightTempC: 22 }));
  good(await editSettings(context, { feedingWeekdays: EVERY_DAY }));
  const { today } = clock();
  const lastTaken = civilDate(today - 2);
  const spiders = { kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 14, lastTaken };
  good(await addAnimal(context, { ...spiders, name: 'Tray of forty', count: 40 }));
  await addSeller(context, { name: 'Far Field Feeders', pack: '6', transitDays: 2 });
  await addSeller(context, { name: 'Near Lane Feeders', pack: '9', transitDays: 2 });
  await store.close();
}

interface Seller {
  readonly name: string;
  readonly pack: string;
  readonly transitDays: number;
}

async function addSeller(context: Context, { name, pack, transitDays }: Seller): Promise<void> {
  const { reply } = good(
    await addSupplier(context, { name, kind: 'parcel', dispatchWeekdays: EVERY_DAY, transitDays }),
  );
  good(
    await addOffer(context, {
      supplier: reply.supplier,
      species: 'acheta-domesticus',
      fromMm: 4,
      toMm: 6,
      packHeads: 100,
      prices: [{ fromPacks: 1, pack }],
    }),
  );
}
