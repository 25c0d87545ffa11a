/** Tiny constructors for sourced numbers; the type of the source decides which one fits. */
import type { OtherValue, Sourced, Status } from '../husbandry/sourced.ts';
import type { MemoryId, PracticeId, SourceId, WorkId } from './sources.ts';

const sourced = <T>(
  status: Status,
  value: T,
  unit: string,
  from: { source: string; note?: string | undefined },
) =>
  from.note === undefined
    ? { value, unit, source: from.source, status }
    : { value, unit, source: from.source, status, note: from.note };

/** A number found in a work that was read, or our arithmetic from one (then the note begins with "derived:"). */
export const published = <T>(value: T, unit: string, source: WorkId, note?: string): Sourced<T> =>
  sourced('published', value, unit, { source, note });

/** A number keepers go by; nobody's measurement. */
export const practice = <T>(
  value: T,
  unit: string,
  note?: string,
  source: PracticeId = 'practice',
): Sourced<T> => sourced('common practice', value, unit, { source, note });

/** A number recalled or chosen by us; to be replaced by the keeper's own records. */
export const memory = <T>(value: T, unit: string, note?: string, source: MemoryId = 'ownStart'): Sourced<T> =>
  sourced('from memory', value, unit, { source, note });

/** A number on which sources disagree: why this value is the default, and what the others say, with their units. */
export const disputed = <T>(
  number: Sourced<T>,
  why: string,
  others: readonly (OtherValue & { readonly source: SourceId })[],
): Sourced<T> => ({ ...number, why, others });
