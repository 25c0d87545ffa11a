/** The round of a snapshot's day as it is proposed; what stands on the shelves is worked out beside the pages. */
import { askOnce } from '../../actions/index.ts';
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningOf, type StandingPrey, shelvesOf } from '../../husbandry/supply/index.ts';
import type { House } from './house.ts';

/** By animal, the bin it is to be fed from wherever that fits. */
type Preferred = ReadonlyMap<string, string>;

export const standingNow = (
  { answering }: Pick<House, 'answering'>,
  snapshot: Snapshot,
): Promise<readonly StandingPrey[]> => askOnce('shelves', { options: null, snapshot, answering });

export async function eveningNow(
  house: Pick<House, 'answering'>,
  snapshot: Snapshot,
  prefer: Preferred = new Map(),
): Promise<Evening> {
  const shelves = shelvesOf(snapshot, await standingNow(house, snapshot));
  return eveningOf(snapshot, { prefer, shelves });
}
