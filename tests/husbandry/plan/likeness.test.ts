/** A plan for what is supposed is hardly dearer than doing what the plan beside it does. */
import { expect, it } from 'vitest';
import { decidedIn, makePlan, type PlanAnswer, type PlanLine } from '../../../src/husbandry/plan/index.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { likewise } from '../../../src/husbandry/plan/likeness.ts';
import { buyingRoom } from '../../support/plan/planned.ts';
import { facts, policyWith } from '../../support/room.ts';

const room = buyingRoom({
  facts: {
    ...facts,
    policy: policyWith({ planReplicates: 40, planJudgeReplicates: 20, planNeighbours: 200 }),
  },
});
const WEEKS = 6;
const MEAL_CENTS = 1000;
const ordersIn = (lines: readonly PlanLine[]) =>
  lines.flatMap((line) => (line.what === 'order' ? [{ key: line.key, amount: line.packs }] : []));
const spent = ({ whole }: PlanAnswer): number => whole.cents.total;

it('does the same where nothing else is supposed, and what can be where something is', async () => {
  const question = { weeks: WEEKS, wishes: [], supposed: [], explained: false } as const;
  const plan = await makePlan(room, question);
  const decided = decidedIn(plan.lines);
  expect(decided.length).toBeGreaterThan(1);
  const { problem } = layOut(room, question);
  const again = likewise(problem, decided);
  const packs = problem.parcels.flatMap((parcel, i) =>
    parcel.packs.flatMap(({ key }, j) =>
      again.packs[i]![j]! > 0 ? [{ key, amount: again.packs[i]![j]! }] : [],
    ),
  );
  expect(packs.toSorted((a, b) => (a.key < b.key ? -1 : 1))).toEqual(
    ordersIn(plan.lines).toSorted((a, b) => (a.key < b.key ? -1 : 1)),
  );
  const [gone] = ordersIn(plan.lines);
  const stops = plan.lines.find((line) => line.key === gone!.key && line.what === 'order');
  const supplier = stops?.what === 'order' ? stops.supplier : '';
  const without = await makePlan(room, {
    ...question,
    supposed: [{ what: 'supplier stops', supplier }],
    beside: decided,
  });
  expect(without.lines.every((line) => line.what !== 'order' || line.supplier !== supplier)).toBe(true);
}, 120_000);

it('costs no more for a dearer offer than that makes the same orders dearer', async () => {
  const question = { weeks: WEEKS, wishes: [], supposed: [], explained: false } as const;
  const plan = await makePlan(room, question);
  for (const { offer, cents } of plan.lines
    .flatMap((line) => (line.what === 'order' ? [line] : []))
    .slice(0, 3)) {
    const all = plan.lines.flatMap((line) =>
      line.what === 'order' && line.offer === offer ? [line.cents] : [],
    );
    const dearer = all.reduce((sum, each) => sum + each, 0) / 2;
    expect(cents).toBeGreaterThan(0);
    const supposed = [{ what: 'price', offer, percent: 50 } as const];
    const other = await makePlan(room, { ...question, supposed, beside: decidedIn(plan.lines) });
    // Unless it feeds more, which is worth no more than this a meal.
    const fed = Math.max(0, plan.whole.missedMeals.mean - other.whole.missedMeals.mean);
    expect(spent(other)).toBeLessThan(1.02 * spent(plan) + dearer + fed * MEAL_CENTS);
  }
}, 240_000);
