/** What every action is given: the store, the facts and the clock. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import type { Store } from '../store/index.ts';

export interface Now {
  /** The civil day where the keeper lives; before 04:00 still yesterday. */
  readonly today: DayNumber;
  /** After midnight, while it is still yesterday here: the calendar is a day ahead. */
  readonly smallHours?: boolean;
  /** Minutes since midnight of `today`, more than a day's in the small hours; absent: it has just begun. */
  readonly minutes?: number;
  /** The moment, ISO 8601 in UTC. */
  readonly moment: string;
}

export interface Context {
  readonly store: Store;
  /** The Book as it came; what the keeper changed of it stands in the store (`facts-now.ts`). */
  readonly facts: Facts;
  readonly clock: () => Now;
}
