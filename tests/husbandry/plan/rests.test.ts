/** Colonies that are left alone: how long they may be, what that does to who eats, and what a plan makes of it. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { makePlan, type PlanAnswer, type Wish } from '../../../src/husbandry/plan/index.ts';
import { benchFor, judgePlan } from '../../../src/husbandry/plan/judge-plan.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { flowsOf } from '../../../src/husbandry/plan/lived.ts';
import { livedInFates } from '../../../src/husbandry/plan/lived-in-fates.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { middleOf } from '../../../src/husbandry/plan/periods.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import {
  animalWith,
  binWith,
  countedBin,
  facts,
  policyWith,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const WEEKS = 8;
const LEVEL = 0.85;
const policy = policyWith({ planReplicates: 40, planJudgeReplicates: 20, planJudgeLeast: 10 });

const animals = Array.from({ length: 16 }, (_, i) =>
  animalWith({
    code: `A${i}`,
    kind: 'acanthoscurria-geniculata',
    gaugeMm: 60 + 5 * i,
    lastTaken: TODAY - 1 - (i % 9),
  }),
);
const colony = binWith({
  ...{ code: 'B1', species: 'blaptica-dubia', role: 'colony', capacity: 3000, keepAdults: true },
  events: [{ kind: 'counted', day: TODAY - 1, heads: 300, fromMm: null, toMm: null }],
});
const crickets = countedBin('B2', 'acheta-domesticus', { heads: 90, fromMm: 12, toMm: 18 });

const room = (bins: Bin[] = [colony, crickets]) =>
  snapshotWith({ seed: 5, animals, bins, market: mixedMarket, facts: { ...facts, policy } });
const laidWith = (bins: Bin[] = [colony, crickets], wishes: Wish[] = []) =>
  layOut(room(bins), { weeks: WEEKS, wishes, supposed: [] });
const ruled = (wishes: Wish[]) => laidWith([colony, crickets], wishes).problem.rests;

describe('what may be left alone', () => {
  const [period] = [laidWith().periods];

  it('is a colony, for as long as the plan goes; no box of prey that waits', () => {
    const { problem, places } = laidWith();
    expect(problem.rests).toMatchObject([{ key: 'rest:B1', least: 0, most: period.length }]);
    expect(places[problem.rests[0]!.place]!.bin.code).toBe('B1');
  });

  it('is as the keeper wants it: never, or for so many weeks', () => {
    expect(ruled([{ key: 'rest:B1', wish: 'forbid', amount: null }])).toEqual([]);
    expect(ruled([{ key: 'rest:B1', wish: 'pin', amount: 3 }])).toMatchObject([{ least: 3, most: 3 }]);
    expect(ruled([{ key: 'rest:B1', wish: 'pin', amount: 99 }])).toMatchObject([
      { least: period.length, most: period.length },
    ]);
  });

  it('is what the keeper leaves alone already, a box too, until its day', () => {
    const until = middleOf(period[2]!) + 1;
    const { problem, places } = laidWith([
      { ...colony, restsUntil: until },
      { ...crickets, restsUntil: until },
    ]);
    const rests = new Map(problem.rests.map((rest) => [places[rest.place]!.bin.code, rest]));
    expect(rests.get('B1')).toMatchObject({ least: 3, most: period.length });
    expect(rests.get('B2')).toMatchObject({ least: 3, most: 3 });
  });

  it('takes nothing in of what is bought', () => {
    const { places } = laidWith([colony, { ...crickets, restsUntil: TODAY + 30 }]);
    const bought = places.find(({ key }) => key === 'acheta-domesticus holding new');
    expect(bought).toMatchObject({ into: null, restsUntil: null });
  });
});

describe('a colony left alone', () => {
  const laid = laidWith();
  const { problem } = laid;
  const { place } = problem.rests[0]!;
  const nothing = {
    packs: problem.parcels.map(({ packs }) => packs.map(() => 0)),
    cups: problem.starts.map(() => 0),
  };
  const used = (rests: number[]) => {
    const { use } = flowsOf(livingOf(problem), { ...nothing, rests });
    return laid.periods.map((_, t) =>
      problem.eaters.reduce(
        (sum, { fare }, e) =>
          sum + fare.reduce((all, each, k) => all + (each.place === place ? use[e]![t]![k]! : 0), 0),
        0,
      ),
    );
  };

  it('feeds nobody until its period, in the mean, in every fate, and in the daily engine', () => {
    expect(used([0])[0]).toBeGreaterThan(1);
    const resting = used([2]);
    expect(resting.slice(0, 2)).toEqual([0, 0]);
    expect(resting[2]).toBeGreaterThan(1);
    const bench = benchFor(laid, 'quick');
    const fine = finely(laid, problem, LEVEL);
    const at = laid.fine.placeOf[place]!;
    const { eaten } = livedInFates(bench, fine, { ...nothing, rests: [laid.periods.length] });
    const nodes = fine.places.map((each) => each.nodes);
    const all = nodes.reduce((a, b) => a + b, 0);
    const first = nodes.slice(0, at).reduce((a, b) => a + b, 0);
    const fromIt = eaten.filter((_, k) => k % all >= first && k % all < first + nodes[at]!);
    expect(Math.max(...fromIt)).toBe(0);
    const [open, left] = [0, laid.periods.length].map((rests) => {
      const { larder } = judgePlan(bench, { ...nothing, rests: [rests] }).judged;
      return larder.totals.eaten[larder.stock.bins.findIndex(({ bin }) => bin.code === 'B1')]!;
    });
    expect(open).toBeGreaterThan(1);
    expect(left).toBe(0);
  });

  it('is worth more at the end than one that is fed from', () => {
    const heads = (rests: number) => {
      const { left } = flowsOf(livingOf(problem), { ...nothing, rests: [rests] });
      return left[place]!.at(-1)!.reduce((a, b) => a + b, 0);
    };
    expect(heads(4)).toBeGreaterThan(heads(0));
    expect(heads(WEEKS)).toBeGreaterThan(heads(4));
  });
});

describe('a plan of a room whose colony is far smaller than all who eat of it want', () => {
  let plan: PlanAnswer;
  const planned = (wishes: Wish[], bins?: Bin[]) =>
    makePlan(room(bins), { weeks: WEEKS, wishes, supposed: [], effort: 'quick' });

  beforeAll(async () => {
    plan = await planned([]);
  }, 120_000);
  const restOf = ({ lines }: PlanAnswer) => lines.flatMap((line) => (line.what === 'rest' ? [line] : []))[0];

  it('leaves it alone, and says what it grows to', () => {
    const rest = restOf(plan)!;
    expect(rest).toMatchObject({ key: 'rest:B1', bin: 'B1', actBy: TODAY, cents: 0 });
    const last = plan.periods[rest.weeks - 1]!;
    expect(rest.until).toBe(last.from + last.days);
    const { heads, without } = rest.reason!.grows!;
    expect(heads).toBeGreaterThan(without + 1);
  });

  it('harvests nothing from it meanwhile', () => {
    const rest = restOf(plan)!;
    const early = plan.lines.filter((line) => line.what === 'harvest' && line.day < rest.until);
    expect(early).toEqual([]);
  });

  it('feeds from it where the keeper will not have it left alone', async () => {
    const other = await planned([{ key: 'rest:B1', wish: 'forbid', amount: null }]);
    expect(restOf(other)).toBeUndefined();
  }, 120_000);

  it('leaves it alone for as long as the keeper insists, and says that it is insisted on', async () => {
    const other = await planned([{ key: 'rest:B1', wish: 'pin', amount: 1 }]);
    expect(restOf(other)).toMatchObject({ weeks: 1, pinned: true });
  }, 120_000);

  it('does not tell what the keeper has written down already', async () => {
    const until = TODAY + 365;
    const other = await planned([], [{ ...colony, restsUntil: until }, crickets]);
    expect(restOf(other)).toBeUndefined();
    expect(other.lines.filter(({ what }) => what === 'harvest')).toEqual([]);
  }, 120_000);
});
