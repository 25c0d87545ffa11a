/** Who eats tonight: one line an animal, with the prey proposed or why nothing is offered. */
import type { DayNumber } from '../calendar.ts';
import type { Mm } from '../units.ts';

export interface PreyOffer {
  readonly bin: string;
  readonly species: string;
  readonly heads: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly killFirst: boolean;
  /** Out of the frozen stock: dead already, to be thawed. */
  readonly thawed?: boolean;
  /** Pieces each prey item is cut into; 1 = whole. */
  readonly portions: number;
}

export interface Serving {
  readonly animal: string;
  readonly shelf: string;
  /** First and last day of the rule's range for this meal. */
  readonly dueFrom: DayNumber;
  readonly dueTo: DayNumber;
  readonly state: 'due' | 'late';
  /** What to offer; null when nothing fits or nothing must be offered. */
  readonly offer: PreyOffer | null;
  /** What it would get from each other bin that holds something it takes. */
  readonly choices: readonly PreyOffer[];
  /** Why nothing is offered, as a sentence; null when something is. */
  readonly note: string | null;
  /** What the record says is worth a look at this animal, as sentences; null when nothing is. */
  readonly look: string | null;
}

interface Withheld {
  readonly animal: string;
  readonly shelf: string;
  readonly reason: string;
  /** What is worth a look, as for a serving. */
  readonly look: string | null;
}

export interface Evening {
  readonly day: DayNumber;
  readonly feedingDay: boolean;
  readonly servings: readonly Serving[];
  /** Animals that must not be fed tonight, with the reason. */
  readonly withheld: readonly Withheld[];
}
