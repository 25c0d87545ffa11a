/** What one run of the daily engine works with. */
import type { FeedingDays, Meals, Roster } from '../appetite/index.ts';
import type { Policy } from '../policy.ts';
import type { Larder } from './larder.ts';
import type { Menu } from './menu.ts';
import type { Picks } from './picks.ts';
import type { Tally } from './tally.ts';

export interface Run {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  readonly policy: Policy;
  readonly menu: Menu;
  /** null: whatever is wanted is there. */
  readonly larder: Larder | null;
  readonly days: number;
  readonly seed: number;
}

export interface Working extends Run {
  readonly meals: Meals;
  readonly picks: Picks | null;
  readonly tally: Tally;
  /** First animal waiting in each group, and the next after each; -1 ends a list. */
  readonly waiting: Int32Array;
  readonly nextWaiting: Int32Array;
  /** 1 on the evenings of the replicate on which animals are fed. */
  readonly open: Uint8Array;
}
