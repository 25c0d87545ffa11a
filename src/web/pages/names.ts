/** Names for the codes of a room, and sentences with names in place of codes. */
import { type Names, namesOf, preyName } from '../../../views/names.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { rowsOf, type Store } from '../../store/index.ts';

/** Names of all on record, those who left too. */
export async function namesOnRecord(store: Store, facts: Facts): Promise<Names> {
  const rows = { animals: rowsOf('animal'), bins: rowsOf('bin'), rooms: rowsOf('room') };
  return namesOf({ ...(await store.askAll(rows)), facts });
}

const CODE_BESIDE_NAME = / \([A-Z]\d+\)/g;
/** In quotes stands what the keeper wrote: a shelf may be called B2. */
const CODE = /(?<!“)\b[A-Z]\d+\b/g;
const SPECIES = /\b[a-z]+-[a-z]+\b/g;

/** Whether a code stands in a sentence that was put in names. */
export const hasCode = (sentence: string): boolean => sentence.search(CODE) >= 0;

/** 'A3 moulted' becomes 'Clove moulted', prey is called by its common name, and a code after its name goes. */
export const inNames = (sentence: string, { animals, bins, rooms, species }: Names): string =>
  sentence
    .replace(CODE_BESIDE_NAME, '')
    .replace(CODE, (code) => animals.get(code) ?? bins.get(code) ?? rooms.get(code) ?? code)
    .replace(SPECIES, (code) => (species.has(code) ? preyName(species, code) : code));
