/** How large an animal of a kind is expected to be, from a size on record on. */

import { logSdOf } from '../../maths/log-normal.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { BAND } from '../../maths/quantile.ts';
import { type Animal, type Kind, ruleOf } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK, type Mm } from '../units.ts';
import type { SizeSeen } from './ladder.ts';
import { cycleLogMean } from './on-record.ts';
import { rowOf } from './rows.ts';

export interface GrowthPoint {
  readonly day: DayNumber;
  readonly lowMm: Mm;
  readonly midMm: Mm;
  readonly highMm: Mm;
  /** Factor of growth at the next moult of this size; 1 where the stage moults no more. */
  readonly factor: number;
}

interface Stretch {
  readonly from: SizeSeen;
  readonly to: DayNumber;
}

/**
 * The staircase of moults smoothed: d ln g / dt = ln f / D, f the factor of growth at a moult and D the mean days of a
 * cycle of the stage and the room's temperature. Its doubt is that of the moults passed, n of a CV c: sd(n) = c sqrt(n)
 * (Cox 1962, Renewal Theory), and half a step for where in its cycle it was measured.
 */
export function expectedGrowth(snapshot: Snapshot, animal: Animal, { from, to }: Stretch): GrowthPoint[] {
  const points: GrowthPoint[] = [];
  let [gaugeMm, moults] = [from.gaugeMm, 0];
  for (let day = from.day; day <= to; day++) {
    const { factor, days, cv } = paceAt(snapshot, animal, gaugeMm);
    const doubt = 1 / 2 + normalQuantile(BAND.high) * cv * Math.sqrt(moults);
    const wide = factor ** doubt;
    const told = (day - from.day) % DAYS_PER_WEEK === 0 || day === to;
    if (told) points.push({ day, lowMm: gaugeMm / wide, midMm: gaugeMm, highMm: gaugeMm * wide, factor });
    gaugeMm *= factor ** (1 / days);
    moults += 1 / days;
  }
  return points;
}

interface Pace {
  readonly factor: number;
  readonly days: number;
  readonly cv: number;
}

const STILL: Pace = { factor: 1, days: 1, cv: 0 };

function paceAt(snapshot: Snapshot, animal: Animal, gaugeMm: Mm): Pace {
  const then = { ...animal, gaugeMm, matured: false, stageOverride: null };
  const { moult } = ruleOf(snapshot.facts.kinds.get(animal.kind) as Kind, then);
  if (moult === null) return STILL;
  const row = rowOf(snapshot, { animal: then, steps: 1, change: null, leaving: null });
  const days = Math.exp(cycleLogMean(row, 0, snapshot) + logSdOf(moult.cv.value) ** 2 / 2);
  return { factor: moult.lengthFactor.value, days, cv: moult.cv.value };
}
