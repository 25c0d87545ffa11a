/** What a command is given from outside, so that tests can give something else. */
import type { Facts } from '../husbandry/snapshot.ts';

export interface World {
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly facts: Facts;
  readonly instant: () => Date;
  /** A line for people or programs to read on. */
  readonly out: (line: string) => void;
  /** A line about trouble. */
  readonly err: (line: string) => void;
}

/** A command takes its words and answers with the exit code. */
export type Command = (words: readonly string[], world: World) => Promise<number>;

/** What the program's end tells a script. */
export const EXIT = { good: 0, runsShort: 1, trouble: 2, tight: 3 } as const;
