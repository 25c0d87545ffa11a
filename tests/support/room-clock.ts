/** A context on an open store, whose clock stands until it is moved. */
import type { Context, Now } from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Store } from '../../src/store/index.ts';
import { smallFacts } from './small-facts.ts';

/** The day the tests begin on: Friday 2024-10-04. */
export const TODAY = 20_000;
export const MOMENT = '2024-10-04T20:00:00.000Z';

export interface Room extends Context {
  /** Moves the clock by days. */
  readonly pass: (days: number) => void;
  /** Moves the clock by seconds within the day. */
  readonly passSeconds: (seconds: number) => void;
  /** The civil date so many days from now. */
  readonly date: (days: number) => string;
}

const MS_PER_SECOND = 1000;
const MS_PER_DAY = 86_400 * MS_PER_SECOND;

export function roomOn(store: Store): Room {
  let passedMs = 0;
  const today = () => TODAY + Math.floor(passedMs / MS_PER_DAY);
  const moment = () => new Date(Date.parse(MOMENT) + passedMs).toISOString();
  return {
    store,
    facts: smallFacts,
    clock: (): Now => ({ today: today(), moment: moment() }),
    pass: (days) => {
      passedMs += days * MS_PER_DAY;
    },
    passSeconds: (seconds) => {
      passedMs += seconds * MS_PER_SECOND;
    },
    date: (days) => civilDate(today() + days),
  };
}
