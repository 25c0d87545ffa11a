/** A plan is chosen by all its weeks, not only by those in which near orders are weighed. */
import { expect, it } from 'vitest';
import { makePlan } from '../../../src/husbandry/plan/index.ts';
import { benchFor, throughAll } from '../../../src/husbandry/plan/judge-plan.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { rulePlan } from '../../../src/husbandry/plan/rule-plan.ts';
import { proposed } from '../../../src/husbandry/plan/solve-plan.ts';
import { bestOf, judged, type Weighed, weighed } from '../../../src/husbandry/plan/tried.ts';
import { withReady } from '../../../src/husbandry/plan/with-ready.ts';
import { DAYS_PER_WEEK } from '../../../src/husbandry/units.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, countedBin, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const ROACH = { species: 'blaptica-dubia', fromMm: 20, toMm: 30 };
const policy = policyWith({ planReplicates: 40, planJudgeReplicates: 40, planNeighbours: 300 });

/** Twelve grown tarantulas, and roaches for them for about six weeks. */
const room = snapshotWith({
  animals: Array.from({ length: 12 }, (_, i) =>
    animalWith({ code: `A${i}`, kind: 'brachypelma-hamorii', gaugeMm: 130, lastTaken: TODAY - 1 - i }),
  ),
  bins: [countedBin('B1', ROACH.species, { heads: 40, ...ROACH })],
  market: marketWith({
    suppliers: [supplierWith({ code: 'S1' })],
    offers: [offerWith({ code: 'F1', supplier: 'S1', ...ROACH })],
  }),
  facts: { ...facts, policy },
});

it('feeds its last weeks where what is here lasts for the first', async () => {
  const plan = await makePlan(room, { weeks: 12, wishes: [], supposed: [], explained: false });
  const held = policy.planHeldWeeks.value * DAYS_PER_WEEK;
  const comes = plan.lines.flatMap((line) => (line.what === 'order' ? [line.comes - TODAY] : []));
  expect(Math.max(...comes)).toBeGreaterThan(0);
  expect(plan.whole.heldDays).toBeGreaterThan(held);
  expect(plan.whole.service).toMatchObject([{ urgency: 'robust', met: true }]);
  expect(plan.obstacles).toEqual([]);
  const late = plan.periods.map(({ from }, t) => (from >= TODAY + held ? t : -1)).filter((t) => t >= 0);
  const items = (of: 'wanted' | 'missed') =>
    plan.cover.flatMap((group) => late.map((t) => group[of][t]!)).reduce((a, b) => a + b, 0);
  expect(items('wanted')).toBeGreaterThan(10);
  expect(items('missed')).toBeLessThan(0.05 * items('wanted'));
}, 60_000);

it('is not one that buys nothing, which does as well for as long as days are lived through', () => {
  const level = policy.planSafetyLevels.value[0]!;
  const laid = layOut(room, { weeks: 12, wishes: [], supposed: [] });
  const bench = benchFor(laid, 'whole');
  const problem = withReady(laid, level);
  const living = livingOf(problem);
  const ruled = rulePlan(living, policy.planRuleWeeks.value);
  const [buys, buysNothing] = [ruled, { ...ruled, packs: ruled.packs.map((row) => row.map(() => 0)) }].map(
    (decided) => {
      const proposal = proposed(living, decided);
      const tried = { level, problem, proposal, made: 'rule', gap: null } as const;
      return weighed({ bench, through: throughAll(bench) }, { ...tried, ...judged(bench, tried) });
    },
  ) as [Weighed, Weighed];
  expect(buysNothing.verdict.met).toBe(true);
  expect(buysNothing.verdict.score).toBeLessThan(buys.verdict.score);
  expect(buysNothing.all.missedMeals.mean).toBeGreaterThan(4 * buys.all.missedMeals.mean);
  expect(bestOf([buysNothing, buys])).toBe(buys);
});

it('knows what is missed without a later order from the fates alone, give or take', async () => {
  const briefly = { ...facts, policy: { ...policy, planHeldWeeks: { ...policy.planHeldWeeks, value: 1 } } };
  const plan = await makePlan({ ...room, facts: briefly }, { weeks: 12, wishes: [], supposed: [] });
  const later = plan.lines.find((line) => line.what === 'order' && line.comes >= TODAY + DAYS_PER_WEEK);
  const { mean, low, high } = later!.reason!.without.missedMeals;
  expect(low).toBeGreaterThan(0);
  expect(high - mean).toBeGreaterThan(0);
  expect(high - mean).toBeLessThan(mean);
}, 60_000);
