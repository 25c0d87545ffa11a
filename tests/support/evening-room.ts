/** A room whose whole collection is due tonight, made through the actions in a database the program then opens. */
import { addAnimal, addBin, editSettings, firstRoom, nowIn } from '../../src/actions/index.ts';
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { offersOf, openStore, type Store } from '../../src/store/index.ts';
import { good, urlOf } from './store-at.ts';

export interface EveningRoom {
  readonly shelves: readonly string[];
  readonly animalsPerShelf: number;
}

const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
const clock = () => nowIn(here, new Date());
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
  const context = { store, facts: { kinds: kindsByCode, species: speciesByCode, policy }, clock };
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

/** What the journal says of an evening: one line an animal. */
export async function journalOf(
  database: string,
  evening: DayNumber = clock().today,
): Promise<readonly string[]> {
  const store = await opened(database);
  const offers = await store.ask(offersOf(evening));
  await store.close();
  return offers.map(({ animal, heads, bin }) => `${animal} ${heads} ${bin}`).toSorted();
}
