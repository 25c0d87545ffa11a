/** A room whose whole collection is due tonight, made through the actions in a database the program then opens. */
import { addAnimal, addBin, editSettings, firstRoom, loadSnapshot, nowIn } from '../../src/actions/index.ts';
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { eveningLines, openStore, type Store } from '../../src/store/index.ts';
import { good, urlOf } from './store-at.ts';

export interface EveningRoom {
  readonly shelves: readonly string[];
  readonly animalsPerShelf: number;
}

const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
const clock = () => nowIn(here, new Date());
const world = { facts: { kinds: kindsByCode, species: speciesByCode, policy } };
const FED_DAYS_AGO = 8;
const LOT = { heads: 900, fromMm: 3, toMm: 4 };

const opened = async (database: string): Promise<Store> =>
  good(await openStore({ place: { url: urlOf(database), authToken: undefined }, moment: clock().moment }));

/** Spiderlings of one kind, and two boxes of crickets that fit them all. */
export async function furnishEvening(
  database: string,
  { shelves, animalsPerShelf }: EveningRoom,
): Promise<void> {
  const store = await opened(database);
  const context = { ...world, store, clock };
  const fed = civilDate(clock().today - FED_DAYS_AGO);
  good(await firstRoom(context));
  good(await editSettings(context, { feedingWeekdays: Array(7).fill(true) }));
  for (const shelf of shelves) {
    for (let i = 1; i <= animalsPerShelf; i += 1) {
      const name = `Sling ${shelf}-${String(i).padStart(2, '0')}`;
      const own = { name, shelf: `Shelf ${shelf}`, gaugeMm: 12 + (i % 5) * 0.2 };
      good(await addAnimal(context, { ...own, kind: 'brachypelma-hamorii', room: 'R1', lastTaken: fed }));
    }
  }
  const box = { room: 'R1', capacity: 1000, lot: LOT };
  good(await addBin(context, { ...box, name: 'Cricket box', species: 'acheta-domesticus' }));
  good(await addBin(context, { ...box, name: 'Banded box', species: 'gryllodes-sigillatus' }));
  await store.close();
}

/** What the journal says of this evening, a line an entry: 'A3 offered 2 B1', 'A4 skipped', 'A4 premoult'. */
export async function journalOf(database: string): Promise<readonly string[]> {
  const store = await opened(database);
  const lines = await store.ask(eveningLines(clock().today));
  await store.close();
  return lines.map(({ animal, kind, heads, bin }) =>
    kind === 'offered' ? `${animal} offered ${heads} ${bin}` : `${animal} ${kind}`,
  );
}

/** The room as the core sees it: animals, bins, what was fed. */
export async function roomIn(database: string): Promise<unknown> {
  const store = await opened(database);
  const { animals, bins } = await loadSnapshot({ ...world, store, clock });
  await store.close();
  return JSON.parse(JSON.stringify({ animals, bins }));
}
