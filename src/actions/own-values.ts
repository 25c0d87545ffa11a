/** Changes of the keeper's beside the Book's values: only what differs is kept, with its day and why. */
import {
  type Changed,
  type ChangedKind,
  type Kind,
  type KindChanges,
  NOTHING_CHANGED,
  type Own,
  type StageRule,
} from '../husbandry/animals/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { rowNamed, type Tx } from '../store/index.ts';

export interface Written {
  readonly day: DayNumber;
  readonly why: string;
}

interface Both<T> {
  readonly book: T;
  readonly own: Changed<T>;
}

/** What differs from the Book now; a value that stays as it was keeps its day and why. */
export function differences<T extends object>(
  { book, own }: Both<T>,
  wanted: T,
  { day, why }: Written,
): Changed<T> {
  const kept = Object.keys(book).flatMap((name): [string, Own<unknown>][] => {
    const field = name as keyof T;
    const value = wanted[field];
    if (same(value, book[field])) return [];
    const before = own[field];
    if (before !== undefined && same(before.value, value)) return [[name, before]];
    return [[name, { value, day, ...(why === '' ? {} : { why }) }]];
  });
  return Object.fromEntries(kept) as Changed<T>;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));

/** Plain data with its fields in one order. */
const sorted = (value: unknown): unknown =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;

/** Names of the fields in which two sets of changes differ. */
export const fieldsChanged = (before: object, after: object): readonly string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
    (name) => !same((before as Record<string, unknown>)[name], (after as Record<string, unknown>)[name]),
  );

/** A kind of which nothing is changed. */
export const unchanged = (code: string): ChangedKind => ({ code, base: null, changes: NOTHING_CHANGED });

/** What the keeper wrote of a kind so far. */
export const rowOf = async (tx: Tx, code: string): Promise<ChangedKind> =>
  (await tx.ask(rowNamed('kind', code))) ?? unchanged(code);

/** The kind of the Book a row differs from. */
export function bookKind(book: Facts, { code, base }: ChangedKind): Result<Kind> {
  const kind = book.kinds.get(base ?? code);
  return kind === undefined
    ? err(problem('unknown-kind', `"${code}" is not a kind of animal in the Book.`, 'kind'))
    : ok(kind);
}

/** The rule of a stage of a kind. */
export function stageOf(kind: Kind, stage: string): Result<StageRule> {
  const rule = kind.stages.find((each) => each.stage === stage);
  if (rule !== undefined) return ok(rule);
  const stages = kind.stages.map((each) => each.stage).join(', ');
  return err(problem('unknown-stage', `"${stage}" is not a stage of this kind; it has ${stages}.`, 'stage'));
}

/** What an act writes: the row, or nothing more of a kind of the Book that is as it came. */
export function written(row: ChangedKind): { puts: { kind: ChangedKind[] } } | { drops: { kind: string[] } } {
  return row.base === null && isEmpty(row.changes)
    ? { drops: { kind: [row.code] } }
    : { puts: { kind: [row] } };
}

const isEmpty = ({ kind, stages }: KindChanges): boolean =>
  Object.keys(kind).length === 0 && Object.keys(stages).length === 0;

/** Changes with one stage's replaced; a stage without any is left out. */
export function withStage(changes: KindChanges, stage: string, own: object): KindChanges {
  const { [stage as 'adult']: _, ...others } = changes.stages;
  const stages = Object.keys(own).length === 0 ? others : { ...others, [stage]: own };
  return { ...changes, stages };
}

/** Field to words: 'waitAfterMoultDays' is 'wait after moult'. */
export const spokenField = (field: string): string =>
  SPOKEN[field] ?? field.replace(/(Days|Mm)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const SPOKEN: Readonly<Record<string, string>> = {
  moultDays: 'days from moult to moult',
  moultCv: 'spread of the moults',
  moultFactor: 'growth at a moult',
  accepts: 'prey it takes',
  portions: 'portions prey is cut into',
  refusesHard: 'hard prey',
  massPerCubicMm: 'mass',
  adultGaugeMm: 'adult size',
  firstFeedingGaugeMm: 'size at first feed',
  aliases: 'other names',
};
