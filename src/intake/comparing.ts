/** Sets what a record will be beside what it is: the changed fields, before and after. */
import type { Change, Note, RowReading, Verdict } from './reading.ts';

const MM_TOLERANCE = 0.05;

function alike(before: unknown, after: unknown): boolean {
  if (typeof before === 'number' && typeof after === 'number') return Math.abs(before - after) < MM_TOLERANCE;
  if (typeof before === 'object' && typeof after === 'object' && before !== null && after !== null)
    return Object.entries(after).every(([field, value]) => alike(Reflect.get(before, field), value));
  return before === after;
}

/** Fields of `after` that differ from `before`. */
const changesBetween = <E extends object>(before: E, after: E): Change[] =>
  Object.entries(after)
    .map(([field, value]) => ({
      field,
      before: Reflect.get(before, field) as unknown,
      after: value as unknown,
    }))
    .filter((change) => !alike(change.before, change.after));

interface Compared<E> {
  readonly row: number;
  readonly written: string;
  readonly notes: readonly Note[];
  readonly record: { readonly code: string; readonly before: E } | null;
  readonly after: E;
}

/** The reading of a row whose content is settled. */
export function verdictOn<E extends object>({
  row,
  written,
  notes,
  record,
  after,
}: Compared<E>): RowReading<E> {
  const changes = record ? changesBetween(record.before, after) : [];
  const known: Verdict = changes.length > 0 ? 'changed' : 'same';
  const verdict = record ? known : 'new';
  return { row, verdict, written, code: record?.code ?? null, becomes: after, changes, notes };
}

/** The reading of a row that cannot be settled. */
export const unsettled = (
  row: number,
  written: string,
  verdict: 'asked' | 'refused',
  notes: readonly Note[],
): RowReading<never> => ({ row, verdict, written, code: null, becomes: null, changes: [], notes });
