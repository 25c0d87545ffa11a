/** What every page stands on: the context of the actions, the Sunday check and what the server is. */
import type { Answering, Context as Keeping, UnderWay } from '../../actions/index.ts';
import type { Result } from '../../husbandry/result.ts';

export interface House {
  readonly context: Keeping;
  /** How the Sunday check is computed. */
  readonly answering: Answering;
  /** How far long questions are, and how they are stopped. */
  readonly underWay: UnderWay;
  /** Moves the demo room in. */
  readonly furnish: (context: Keeping) => Promise<Result<unknown>>;
  readonly canLogOut: boolean;
  /** Where the keeper's clock stands, as an IANA name; by default UTC. */
  readonly timezone?: string;
}
