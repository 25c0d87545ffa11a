/** What the door is made of: what each request carries, and the pages the door itself shows. */
import type { Problem } from '../husbandry/problems.ts';

export interface DoorEnv {
  readonly Variables: {
    /** Names the request in the log and on error pages. */
    requestId: string;
  };
}

type Markup = string | Promise<string>;

export interface FailureSaid {
  readonly sentence: string;
  readonly requestId: string;
}

export interface LoginAsked {
  /** Path to go on to. */
  readonly next: string;
  readonly problem: Problem | null;
}

/** Pages that stand outside the house. */
export interface DoorPages {
  readonly failure: (said: FailureSaid) => Markup;
  readonly login: (asked: LoginAsked) => Markup;
}

/** One line of the log, as data. */
export type Log = (line: Readonly<Record<string, unknown>>) => void;
