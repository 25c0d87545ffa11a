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
}
