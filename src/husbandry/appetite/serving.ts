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
  /** Why nothing is offered or what to mind, as a sentence; null when all is plain. */
  readonly note: string | null;
}

export interface Evening {
  readonly day: DayNumber;
  readonly feedingDay: boolean;
  readonly servings: readonly Serving[];
  /** Animals that must not be fed tonight, with the reason. */
  readonly withheld: readonly { readonly animal: string; readonly shelf: string; readonly reason: string }[];
}
