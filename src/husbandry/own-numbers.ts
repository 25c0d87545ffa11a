/** Numbers of a prey species or of the method that the keeper changed: only the differences, by the name of the number. */
import type { Own } from './animals/index.ts';

export type OwnNumbers = Readonly<Record<string, Own<number>>>;

export interface ChangedNumbers {
  /** The code of a prey species, or `METHOD`. */
  readonly code: string;
  readonly changes: OwnNumbers;
}

/** Stands for the method itself, where a prey species has its code. */
export const METHOD = 'method';
