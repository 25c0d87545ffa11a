/** Colonies that are left alone: how long they may be, what that does to who eats, and what a plan makes of it. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { makePlan, type PlanAnswer, type Wish } from '../../../src/husbandry/plan/index.ts';
import { benchFor, judgePlan } from '../../../src/husbandry/plan/judge-plan.ts';
import { type LaidOut, layOut } from '../../../src/husbandry/plan/lay-out.ts';
import { flowsOf } from '../../../src/husbandry/plan/lived.ts';
import { livedInFates } from '../../../src/husbandry/plan/lived-in-fates.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { countedOn } from '../../../src/husbandry/plan/nodes.ts';
import { middleOf } from '../../../src/husbandry/plan/periods.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { hungryOnes, roachColony } from '../../support/plan/colony-room.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { countedBin, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const WEEKS = 8;
const LEVEL = 0.85;
const policy = policyWith({ planReplicates: 40, planJudgeReplicates: 20, planJudgeLeast: 10 });

const animals = hungryOnes(16);
const colony = roachColony(300);
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

  it('like what is kept apart takes nothing in of what is bought: that goes to an open bin, or a new one', () => {
    const apart = { ...crickets, quarantineUntil: TODAY + 40 };
    const open = { ...crickets, code: 'B3', room: 'cellar', ownC: { dayC: 19, nightC: 19 } };
    const into = (bins: Bin[]) => {
      const { places, problem } = laidWith(bins);
      const packs = problem.parcels.flatMap(({ packs }) => packs);
      const taking = packs
        .map(({ place }) => places[place]!)
        .filter(({ species }) => species === apart.species);
      return [...new Set(taking.map((place) => place.into))];
    };
    expect(into([colony, apart])).toEqual([null]);
    expect(into([colony, apart, open])).toEqual(['B3']);
    expect(into([colony, crickets])).toEqual(['B2']);
  });

  it('takes nothing in of what is bought', () => {
    const { places } = laidWith([colony, { ...crickets, restsUntil: TODAY + 30 }]);
    const bought = places.find(({ key }) => key === 'acheta-domesticus holding new');
    expect(bought).toMatchObject({ into: null, restsUntil: null });
  });
});

describe('a colony left alone', () => {
  const plenty = countedBin('B2', 'acheta-domesticus', { heads: 900, fromMm: 12, toMm: 18 });
  const nothing = ({ parcels, starts }: PlanProblem) => ({
    packs: parcels.map(({ packs }) => packs.map(() => 0)),
    cups: starts.map(() => 0),
  });
  /** Heads of the colony eaten in the first two periods, in the mean, in the fates and in the engine. */
  function eatenSoon(laid: LaidOut, rests: number): number[] {
    const { problem } = laid;
    const { place } = problem.rests[0]!;
    const decided = { ...nothing(problem), rests: [rests] };
    const { use } = flowsOf(livingOf(problem), decided);
    const mean = problem.eaters.flatMap(({ fare }, e) =>
      fare.flatMap((each, k) => (each.place === place ? [use[e]![0]![k]! + use[e]![1]![k]!] : [])),
    );
    const bench = benchFor(laid, 'quick');
    const { eaten } = livedInFates(bench, finely(laid, problem, LEVEL), decided);
    const { first, all } = countedOn(laid.fine.nodes);
    const at = laid.fine.placeOf[place]!;
    const end = first[at]! + laid.fine.nodes[at]!.all.length;
    const soon = 2 * laid.fine.eaters.length * all;
    const fates = [...eaten.subarray(0, soon)].filter((_, k) => k % all >= first[at]! && k % all < end);
    const days = laid.periods[0]!.days + laid.periods[1]!.days;
    const { larder } = judgePlan({ ...bench, days }, decided).judged;
    const engine = larder.totals.eaten[larder.stock.bins.findIndex(({ bin }) => bin.code === 'B1')]!;
    return [mean, fates, [engine]].map((heads) => heads.reduce((a, b) => a + b, 0));
  }

  it('feeds nobody while anything else fits, in the mean, in the fates, and in the daily engine', () => {
    const laid = laidWith([colony, plenty]);
    for (const heads of eatenSoon(laid, 0)) expect(heads).toBeGreaterThan(5);
    for (const heads of eatenSoon(laid, 2)) expect(heads).toBeLessThan(1);
  });

  it('feeds nobody either where the keeper insists on it', () => {
    const laid = laidWith([colony, plenty], [{ key: 'rest:B1', wish: 'pin', amount: 2 }]);
    for (const heads of eatenSoon(laid, 2)) expect(heads).toBeLessThan(1);
  });

  it('feeds those for whom nothing else is there', () => {
    const laid = laidWith([colony]);
    const [open, resting] = [eatenSoon(laid, 0), eatenSoon(laid, 2)];
    open.forEach((heads, k) => {
      expect(heads).toBeGreaterThan(5);
      expect(resting[k]! / heads).toBeCloseTo(1, 6);
    });
  });

  it('is worth more at the end than one that is fed from', () => {
    const { problem } = laidWith([colony, plenty]);
    const heads = (rests: number) => {
      const { left } = flowsOf(livingOf(problem), { ...nothing(problem), rests: [rests] });
      return left[problem.rests[0]!.place]!.at(-1)!.reduce((a, b) => a + b, 0);
    };
    expect(heads(4)).toBeGreaterThan(heads(0));
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
    const { weeks, reason } = restOf(plan)!;
    const other = restOf(await planned([{ key: 'rest:B1', wish: 'pin', amount: weeks }]))!;
    expect(other).toMatchObject({ weeks, pinned: true });
    expect(other.reason!.grows!.heads).toBeGreaterThan(other.reason!.grows!.without + 1);
    expect(other.reason!.grows!.without).toBeLessThan(1.1 * reason!.grows!.without);
  }, 120_000);

  it('does not tell what the keeper has written down already', async () => {
    const until = TODAY + 365;
    const other = await planned([], [{ ...colony, restsUntil: until }, crickets]);
    expect(restOf(other)).toBeUndefined();
    expect(other.lines.filter(({ what }) => what === 'harvest')).toEqual([]);
  }, 120_000);

  it('does not round up what is written down, whatever its day', async () => {
    for (const days of [5, 8, 12]) {
      const box = { ...crickets, restsUntil: TODAY + days };
      const other = await planned([], [box]);
      expect(restOf(other)).toBeUndefined();
    }
  }, 120_000);
});
