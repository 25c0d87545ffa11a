/** An invented juvenile's life: its ladder, its meals, its growth, as its page is given them. */
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import type { LifeStage } from '../../src/husbandry/animals/kind.ts';
import type { GrowthPoint } from '../../src/husbandry/appetite/growth.ts';
import type { Intake, MealShare } from '../../src/husbandry/appetite/intake.ts';
import type { Rung } from '../../src/husbandry/appetite/ladder.ts';
import type { NextMoult } from '../../src/husbandry/appetite/next-moult.ts';
import type { RefusalsSeen } from '../../src/husbandry/appetite/refusals.ts';
import { TODAY } from './view-fixtures.ts';

const stages = kindsByCode.get('brachypelma-hamorii')?.stages ?? [];

const rung = (place: Rung['place'], gaugeMm: number, over: Partial<Rung> = {}): Rung => {
  const stage: LifeStage = gaugeMm < 28 ? 'young' : 'juvenile';
  const rule = stages.find((each) => each.stage === stage);
  if (rule === undefined) throw new Error(`no rule for the stage ${stage}`);
  const referenceMm = gaugeMm * 0.42;
  const { min, ideal, max } = rule.window.value;
  return {
    place,
    rule,
    gaugeMm,
    measured: false,
    referenceMm,
    massMg: 0.3 * referenceMm ** 3,
    window: {
      minMm: min * referenceMm,
      idealMm: ideal * referenceMm,
      liveMaxMm: max * referenceMm,
      maxMm: max * referenceMm,
    },
    since: null,
    expected: null,
    ...over,
  };
};

const ahead = (mid: number, half: number) => ({
  low: TODAY + mid - half,
  mid: TODAY + mid,
  high: TODAY + mid + half,
});

export const rungs: readonly Rung[] = [
  rung('behind', 18),
  rung('behind', 25, { since: TODAY - 210, measured: true }),
  rung('now', 34, { since: TODAY - 55, measured: true }),
  rung('ahead', 47, { expected: ahead(58, 40) }),
  rung('ahead', 65, { expected: ahead(200, 75) }),
  rung('ahead', 89, { expected: ahead(350, 100) }),
];

export const nextMoult: NextMoult = { kind: 'expected', basis: 'last moult', day: ahead(58, 40) };

export const intake: Intake = {
  weekly: { low: 0.17, mid: 0.22, high: 0.27 },
  need: [0.15, 0.5],
  verdict: 'right',
  unsure: false,
  meals: 7,
  days: 66,
};

export const refusals: RefusalsSeen = { inRow: 2, chance: 0.31, usual: true, phase: 'close to a moult' };

const meal = (daysAgo: number, share: number | null, outcome: MealShare['outcome'] = 'taken'): MealShare => ({
  day: TODAY - daysAgo,
  outcome,
  share,
});
export const meals: readonly MealShare[] = [
  meal(66, 0.2),
  meal(58, 0.25),
  meal(47, null),
  meal(40, 0.18, 'part-taken'),
  meal(33, 0.24),
  meal(25, 0.2),
  meal(17, 0.21),
  meal(9, 0, 'refused'),
  meal(2, 0, 'refused'),
];

const expected: readonly GrowthPoint[] = Array.from({ length: 31 }, (_, week) => {
  const midMm = 25 * 1.38 ** (week / 20);
  const wide = 1.38 ** (0.5 + 0.5 * Math.sqrt(week / 20));
  return {
    day: TODAY - 210 + 7 * week,
    lowMm: midMm / wide,
    midMm,
    highMm: midMm * wide,
    factor: 1.38,
  };
});

export const growth = {
  sizes: [
    { day: TODAY - 210, gaugeMm: 25 },
    { day: TODAY - 50, gaugeMm: 34 },
  ],
  moults: [TODAY - 210, TODAY - 55],
  expected,
};
