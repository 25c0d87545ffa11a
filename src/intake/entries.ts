/** What a row of a file will be once written: an animal of the collection, or prey in a bin. */
import type { LifeStage, Sex } from '../husbandry/animals/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import type { BinRole, Lot } from '../husbandry/larder/index.ts';
import type { Mm } from '../husbandry/units.ts';

export interface AnimalEntry {
  /** The keeper's own label or id; null when there is none. */
  readonly label: string | null;
  readonly name: string;
  /** Code of the kind. */
  readonly kind: string;
  readonly count: number;
  readonly sex: Sex;
  readonly matured: boolean;
  /** Set only where the keeper says 'adult' and the size would say less. */
  readonly stageOverride: LifeStage | null;
  readonly gaugeMm: Mm;
  readonly gaugeAssumed: boolean;
  readonly lastFed: DayNumber | null;
  readonly lastMoult: DayNumber | null;
  /** As the keeper writes them; '' when not said. */
  readonly shelf: string;
  readonly room: string;
  readonly notes: string;
}

export interface StockEntry {
  readonly label: string | null;
  readonly bin: string;
  /** Code of the prey species. */
  readonly species: string;
  readonly role: BinRole;
  /** What came; null when nobody counted. */
  readonly lot: Lot | null;
  readonly sizeAssumed: boolean;
  readonly came: DayNumber | null;
  readonly room: string;
  readonly notes: string;
}

interface OnRecord {
  readonly code: string;
  /** Which of the records with this name and kind it is, from 1; left out: by order of the list. */
  readonly nth?: number | undefined;
  /** No longer kept: an old row does not bring it back. */
  readonly gone?: boolean | undefined;
}

/** A record as it stands, to compare rows with. */
export type Existing<E> = E & OnRecord;
/** Rooms and shelves by the names a keeper reads. */
export type ExistingAnimal = Existing<AnimalEntry>;
/** As ExistingAnimal; `lot` and `came` are the last lot brought in. */
export type ExistingStock = Existing<StockEntry>;
