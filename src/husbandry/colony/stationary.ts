/**
 * A stock that stays as it is though it is harvested: x = P(x - h), as a linear programme in what is left standing and
 * what is taken (Rorres & Fair 1975, Math. Biosci. 24:31-46, with the room a stock takes as its bound).
 */
import type { Step } from '../../maths/chain-step.ts';
import type { LinearProgramme, Row, Solved } from '../../maths/linear-programme.ts';

/** What may be taken at each harvest. */
export interface Taking {
  /** Share of each class that may be taken, 0 to 1. */
  readonly share: Float64Array;
  /** Heads taken at least. */
  readonly least: number;
  /** Whether they count as yield; others only go. */
  readonly counts: boolean;
}

/** A sum over all heads as they are just before the harvest. */
export interface Limit {
  readonly perHead: Float64Array;
  readonly most: number;
}

export interface Stationary {
  /** P[to][from]: from one harvest to the next. */
  readonly step: Step;
  readonly takings: readonly Taking[];
  /** What is sought: the most heads taken, or the least of a sum over those there just before the harvest. */
  readonly aim: 'most taken' | { readonly least: Float64Array };
  readonly limits?: readonly Limit[];
  /** Most of each class left standing; absent: no bound. */
  readonly standingMost?: Float64Array;
}

/** Classes as they stand after the harvest, and heads taken of each class by each taking. */
export interface Stock {
  readonly standing: Float64Array;
  readonly taken: readonly Float64Array[];
}

/** Coefficients smaller than this are none: the solver's own least. */
const NONE = Number.EPSILON;

/** Columns: what is left standing [s = x - h], then what each taking takes of each class it may take from. */
export function stationaryProgramme(asked: Stationary): LinearProgramme {
  const { step, takings, aim, limits = [], standingMost } = asked;
  const columns = columnsOf(asked);
  const rows: Row[] = [];
  step.forEach((growth, to) => {
    const before = termsOf(growth);
    const taking = columns.filter((column) => column.of === to);
    rows.push(balance(before, to, taking));
    for (const { at, share } of taking) if (share < 1) rows.push(withinShare(before, at, share));
  });
  takings.forEach(({ least }, taking) => {
    if (least > 0)
      rows.push(
        atLeast(
          least,
          columns.filter((column) => column.taking === taking),
        ),
      );
  });
  for (const limit of limits) rows.push(within(step, limit));
  const size = step.length + columns.length;
  const worth = new Float64Array(size);
  const most = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  if (aim === 'most taken') for (const { at, taking } of columns) worth[at] = Number(takings[taking]?.counts);
  else worth.set(perStanding(step, aim.least));
  if (standingMost) most.set(standingMost);
  return { sense: aim === 'most taken' ? 'most' : 'least', worth, most, rows };
}

interface Column {
  readonly at: number;
  readonly taking: number;
  readonly of: number;
  readonly share: number;
}

function columnsOf({ step, takings }: Stationary): Column[] {
  const columns: Column[] = [];
  takings.forEach(({ share: shares }, taking) => {
    shares.forEach((share, of) => {
      if (share > 0) columns.push({ at: step.length + columns.length, taking, of, share });
    });
  });
  return columns;
}

interface Terms {
  readonly columns: readonly number[];
  readonly factors: readonly number[];
}

/** What is there before the harvest [x = P s] in terms of what was left standing. */
function termsOf(growth: Float64Array): Terms {
  const columns = [...growth.keys()].filter((from) => (growth[from] as number) > NONE);
  return { columns, factors: columns.map((from) => growth[from] as number) };
}

/** P s - s - h = 0. */
function balance(before: Terms, to: number, taking: readonly Column[]): Row {
  const factors = new Map(before.columns.map((column, i) => [column, before.factors[i] as number]));
  factors.set(to, (factors.get(to) ?? 0) - 1);
  for (const { at } of taking) factors.set(at, -1);
  return { least: 0, most: 0, columns: [...factors.keys()], factors: [...factors.values()] };
}

/** h <= share x. */
const withinShare = ({ columns, factors }: Terms, at: number, share: number): Row => ({
  least: Number.NEGATIVE_INFINITY,
  most: 0,
  columns: [...columns, at],
  factors: [...factors.map((factor) => -share * factor), 1],
});

const atLeast = (least: number, columns: readonly Column[]): Row => ({
  least,
  most: Number.POSITIVE_INFINITY,
  columns: columns.map(({ at }) => at),
  factors: columns.map(() => 1),
});

function within(step: Step, { perHead, most }: Limit): Row {
  const factors = perStanding(step, perHead);
  return { least: 0, most, columns: [...factors.keys()], factors: [...factors] };
}

/** A sum over the heads before the harvest [c x] in terms of what was left standing [c P s]. */
const perStanding = (step: Step, perHead: Float64Array): Float64Array =>
  perHead.map((_, from) =>
    step.reduce((sum, growth, to) => sum + (growth[from] as number) * (perHead[to] as number), 0),
  );

/** The stock of a solved programme. */
export function stockOf(asked: Stationary, { columns }: Extract<Solved, { status: 'optimal' }>): Stock {
  const n = asked.step.length;
  const taken = asked.takings.map(() => new Float64Array(n));
  for (const { at, taking, of } of columnsOf(asked))
    (taken[taking] as Float64Array)[of] = Math.max(0, columns[at] as number);
  return { standing: columns.slice(0, n).map((s) => Math.max(0, s)), taken };
}
