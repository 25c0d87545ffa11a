/** A number that says where it comes from. */

export type Status = 'published' | 'common practice' | 'from memory' | 'yours';

export interface Sourced<T = number> {
  readonly value: T;
  /** Unit in words or symbols, such as 'mm', 'days', 'per day', '1'. */
  readonly unit: string;
  /** Key into src/facts/sources.ts. */
  readonly source: string;
  readonly status: Status;
  readonly note?: string;
  /** What other works say, where sources disagree; and why this value is the default. */
  readonly others?: readonly OtherValue[];
  readonly why?: string;
}

/** A value another source gives for the same number, in words with its unit. */
export interface OtherValue {
  readonly said: string;
  readonly source: string;
}
