/**
 * Protects the wait for a plan: a shelf of 150 animals, 6 prey species, 8 offers of 3 suppliers, over 12 and 26 weeks.
 * What is timed is all from the room to the decisions: laying out, the programme with its near periods whole, the
 * searches. Beside it stands the same programme with nothing whole: the least any solver has to do.
 */
import { fatesOf } from '../../src/husbandry/plan/fates.ts';
import { layOut } from '../../src/husbandry/plan/lay-out.ts';
import { programmeOf } from '../../src/husbandry/plan/programme.ts';
import { solvable } from '../../src/husbandry/plan/solvable.ts';
import { solvePlan } from '../../src/husbandry/plan/solve-plan.ts';
import { withReady } from '../../src/husbandry/plan/with-ready.ts';
import type { Snapshot } from '../../src/husbandry/snapshot.ts';
import { solver } from '../../src/maths/linear-programme.ts';
import { mixedMarket } from '../support/plan/markets.ts';
import { animalWith, facts, mixedBins, snapshotWith, TODAY } from '../support/room.ts';
import { leastOf, type Spent, spentOn } from './clock.ts';
import type { Row } from './table.ts';

const KINDS = [
  'brachypelma-hamorii',
  'grammostola-pulchra',
  'tliltocatl-albopilosus',
  'acanthoscurria-geniculata',
  'hierodula-membranacea',
  'phidippus-regius',
  'litoria-caerulea',
  'eublepharis-macularius',
];
const ANIMALS = 150;
const ROOMS = 5;

/** A shelf of eight kinds of all sizes; the seed moves sizes and when each was fed. */
function shelf(seed: number): Snapshot {
  const animals = Array.from({ length: ANIMALS }, (_, i) => {
    const kind = facts.kinds.get(KINDS[i % KINDS.length] as string);
    if (!kind) throw new Error('a kind of this benchmark is not in the Book');
    const [small] = kind.firstFeedingGaugeMm.value;
    const [, large] = kind.adultGaugeMm.value;
    const gaugeMm = small * (large / small) ** (((i * 13 + seed * 7) % 29) / 28);
    const lastTaken = TODAY - 1 - ((i * 5 + seed) % 9);
    return animalWith({ code: `A${i}`, kind: kind.code, gaugeMm, lastTaken });
  });
  return snapshotWith({ animals, bins: mixedBins(40), market: mixedMarket, seed });
}

export async function planSolveRows(): Promise<Row[]> {
  return [await rowOf(12), await rowOf(26)];
}

async function rowOf(weeks: number): Promise<Row> {
  const solve = await solver();
  const { policy } = facts;
  const times: Spent[] = [];
  const gaps: number[] = [];
  let beside = '';
  for (let seed = 1; seed <= ROOMS; seed++) {
    const room = shelf(seed);
    times.push(
      await spentOn(() => {
        const laid = layOut(room, { weeks, wishes: [], supposed: [] });
        const [level] = policy.planSafetyLevels.value as [number];
        const problem = withReady(laid, level);
        const { gap } = solvePlan(solvable({ laid, fates: fatesOf(laid, problem) }, problem, level), solve, {
          whole: policy.planStride.value,
          gap: policy.planGap.value,
          seconds: policy.planSeconds.value,
          trials: policy.planNeighbours.value,
          seed,
          ruleAhead: policy.planRuleWeeks.value,
        });
        gaps.push(gap ?? Number.POSITIVE_INFINITY);
        beside = `${laid.eating.length} groups, ${problem.parcels.length} parcels`;
      }),
    );
  }
  const laid = layOut(shelf(1), { weeks, wishes: [], supposed: [] });
  const problem = withReady(laid, policy.planSafetyLevels.value[0] as number);
  const { programme } = programmeOf({ ...problem, wholeUntil: 0 });
  const near = programmeOf({ ...problem, wholeUntil: policy.planStride.value }).programme;
  const loose = await leastOf(2, () => solve(programme));
  const solved = solve(programme);
  const gap = policy.planGap.value * ('value' in solved ? Math.abs(solved.value) : 0);
  const whole = await leastOf(2, () => solve(near, { gap }));
  return {
    name: `plan of ${weeks} weeks, ${ANIMALS} animals`,
    value: `median ${seconds(median(times.map(({ wallMs }) => wallMs)))} s (processor ${seconds(median(times.map(({ processorMs }) => processorMs)))}), gap at most ${(100 * Math.max(...gaps)).toFixed(2)} % of the cost`,
    beside: `${beside}, ${programme.worth.length} columns, ${programme.rows.length} rows; the programme alone, to its gap ${seconds(whole.wallMs)} s, nothing whole ${seconds(loose.wallMs)} s`,
  };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
const seconds = (ms: number): string => (ms / 1000).toFixed(2);
