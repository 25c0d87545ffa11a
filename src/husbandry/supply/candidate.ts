/** An act that could be taken, and what acts are sought for. */
import type { DemandGroup } from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { ActKind } from './answer.ts';
import type { CoverOptions } from './cover.ts';

/** An act that could be taken: what the keeper would say, and the room as it would then be. */
export interface Candidate {
  readonly kind: ActKind;
  readonly sentence: string;
  readonly bin: string | null;
  readonly species: string | null;
  readonly animals: readonly string[];
  readonly snapshot: Snapshot;
  readonly options: CoverOptions;
}

/** What acts are sought for: the room in a fixed order, its neediest groups, the run to be changed. */
export interface Asking {
  readonly snapshot: Snapshot;
  readonly needy: readonly DemandGroup[];
  readonly options: CoverOptions;
}

/** Species that one of these groups takes. */
export const speciesTaken = (groups: readonly DemandGroup[]): ReadonlySet<string> =>
  new Set(groups.flatMap(({ windows }) => [...windows.keys()]));
