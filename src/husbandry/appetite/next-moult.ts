/** When an animal moults next, and the moults after that, each day with its doubt. */

import { logSdOf } from '../../maths/log-normal.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { everyPair, midShares, thinned } from '../../maths/points.ts';
import { BAND, sortedQuantile } from '../../maths/quantile.ts';
import { type Animal, moults } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { likelyCycles, type MoultBasis } from './likely-cycles.ts';
import { cycleLogMean } from './on-record.ts';
import { type Row, rowOf } from './rows.ts';

/** The 5, 50 and 95 % days of something to come. */
export interface DayBand {
  readonly low: DayNumber;
  readonly mid: DayNumber;
  readonly high: DayNumber;
}

export type NextMoult =
  | { readonly kind: 'expected'; readonly basis: MoultBasis; readonly day: DayBand }
  | { readonly kind: 'none'; readonly reason: 'never moults' | 'moults no more' | 'kept as a group' };

/** The first evening on which the next moult is over; none for a group, or where the kind or the stage does not moult. */
export function nextMoult(snapshot: Snapshot, animal: Animal): NextMoult {
  const row = rowOf(snapshot, { animal, steps: 1, change: null, leaving: null });
  const cycles = likelyCycles(row, snapshot);
  if (cycles !== null)
    return { kind: 'expected', basis: cycles.basis, day: bandOf(cycles.moults, snapshot.today) };
  const kind = snapshot.facts.kinds.get(animal.kind);
  if (kind !== undefined && !moults(kind)) return { kind: 'none', reason: 'never moults' };
  return { kind: 'none', reason: animal.count > 1 ? 'kept as a group' : 'moults no more' };
}

/**
 * Days of the next moults, one for each size the row is followed to. Each further one is the one before and a cycle
 * of the size between, drawn anew: T(k+1) = T(k) + C(k), C(k) log-normal with the mean and CV of that size's stage.
 */
export function moultsAhead(row: Row, snapshot: Snapshot): readonly DayBand[] {
  const cycles = likelyCycles(row, snapshot);
  if (cycles === null) return [];
  const n = snapshot.facts.policy.moultPoints.value;
  const bands = [bandOf(cycles.moults, snapshot.today)];
  let days = thinned(cycles.moults, n);
  for (let step = 1; step < row.steps.length - 1; step++) {
    const moult = row.steps[step]?.rule.moult;
    if (!moult) break;
    const [mean, sd] = [cycleLogMean(row, step, snapshot), logSdOf(moult.cv.value)];
    const further = midShares(n).map((share) => Math.exp(mean + sd * normalQuantile(share)));
    days = thinned(
      everyPair(days, further, (day, cycle) => day + cycle),
      n,
    );
    bands.push(bandOf(days, snapshot.today));
  }
  return bands;
}

/** A moult during the night of day x is over on the evening of the next whole day. */
function bandOf(days: Float64Array, today: DayNumber): DayBand {
  const ascending = Float64Array.from(days).sort();
  const at = (share: number): DayNumber => today + Math.ceil(sortedQuantile(ascending, share));
  return { low: at(BAND.low), mid: at(BAND.mid), high: at(BAND.high) };
}
