/**
 * Where one animal may be in its moult cycle, as equally likely cycles: the law the meal calendar draws from
 * (meal-start.ts), laid out instead of drawn.
 */

import { logSdOf } from '../../maths/log-normal.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { everyPair, midShares } from '../../maths/points.ts';
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { LAST_SHARE } from './meal-start.ts';
import { cycleLogMean, cyclePassed, premoultDay } from './on-record.ts';
import type { Row } from './rows.ts';
import { ruleTable } from './rule-table.ts';

export type MoultBasis = 'last moult' | 'premoult seen' | 'no moult on record';

export interface LikelyCycles {
  readonly basis: MoultBasis;
  /** Days from today of the last moult and of the next, pair by pair, each pair as likely. */
  readonly moulted: Float64Array;
  readonly moults: Float64Array;
}

/** A moult not seen by today comes tomorrow at the earliest. */
const SOONEST = 1 / 2;

/** Null for a stage that moults no more and for a group, whose members are not in step. */
export function likelyCycles(row: Row, snapshot: Snapshot): LikelyCycles | null {
  if (!row.steps[0]?.rule.moult || row.animal.count > 1) return null;
  const lengths = cycleLengths(row, snapshot);
  const { lastMoult } = row.animal;
  const premoult = premoultDay(row.animal);
  if (premoult !== null) return afterPremoult(row, snapshot, { lengths, seen: premoult - snapshot.today });
  if (lastMoult === null) return anywhere(lengths);
  const moulted = lengths.map(() => lastMoult.found - snapshot.today);
  return {
    basis: 'last moult',
    moulted,
    moults: lengths.map((days, i) => next((moulted[i] as number) + days)),
  };
}

const next = (day: number): number => Math.max(day, SOONEST);

/**
 * Lengths of this cycle [days], log-normal, longer than the time passed since the last moult: the quantiles
 * exp(m + s z(p + u (1 - p))), m and s of the log, p the share of cycles shorter than that time, u the mid shares.
 */
function cycleLengths(row: Row, snapshot: Snapshot): Float64Array {
  const mean = cycleLogMean(row, 0, snapshot);
  const sd = logSdOf(row.steps[0]?.rule.moult?.cv.value ?? 0);
  const passed = cyclePassed(row, snapshot);
  return midShares(snapshot.facts.policy.moultPoints.value).map((u) =>
    Math.exp(mean + sd * normalQuantile(Math.min(LAST_SHARE, passed + u * (1 - passed)))),
  );
}

/** No moult on record: today lies anywhere within a cycle, each place as likely. */
function anywhere(lengths: Float64Array): LikelyCycles {
  const shares = midShares(lengths.length);
  const moulted = everyPair(lengths, shares, (days, share) => -share * days);
  const moults = everyPair(lengths, shares, (days, share) => next((1 - share) * days));
  return { basis: 'no moult on record', moulted, moults };
}

interface Premoult {
  readonly lengths: Float64Array;
  /** Day premoult was seen, from today. */
  readonly seen: DayNumber;
}

/** Premoult seen: that day lies in the last phase, in which acceptance is low, anywhere in it. */
function afterPremoult(row: Row, { facts }: Snapshot, { lengths, seen }: Premoult): LikelyCycles {
  const rules = row.steps.slice(0, 1).map(({ rule }) => rule);
  const from = ruleTable(rules, facts.policy.acceptancePhases.value).premoultFrom[0] as number;
  const phases = midShares(lengths.length).map((share) => from + (1 - from) * share);
  const moulted = everyPair(lengths, phases, (days, phase) => seen - phase * days);
  const moults = everyPair(lengths, phases, (days, phase) => next(seen + (1 - phase) * days));
  return { basis: 'premoult seen', moulted, moults };
}
