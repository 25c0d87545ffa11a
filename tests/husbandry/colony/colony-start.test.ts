/** Colony start as a keeper asks it: the way from the starters, what is bought meanwhile, when it pays, what is refused. */
import { describe, expect, it } from 'vitest';
import { breakEvenWeek, costsOf } from '../../../src/husbandry/colony/costs.ts';
import { type ColonyQuestion, type ColonyStart, colonyStart } from '../../../src/husbandry/colony/index.ts';
import { dubiaQuestion, sizeOf } from '../../support/dubia-colony.ts';
import { facts, policyWith, snapshotWith } from '../../support/room.ts';
import { good } from '../../support/store-at.ts';

/** Few replicates: the chances themselves are looked at elsewhere. */
const snapshot = snapshotWith({ facts: { ...facts, policy: policyWith({ colonyReplicates: 10 }) } });
const startOf = async (over: Partial<ColonyQuestion> = {}): Promise<ColonyStart> =>
  good((await colonyStart(snapshot, { ...dubiaQuestion, ...over })).outcome);
const problemOf = async (over: Partial<ColonyQuestion>) => {
  const { outcome } = await colonyStart(snapshot, { ...dubiaQuestion, ...over });
  return outcome.ok ? null : outcome.problem;
};

describe('a start with ten females and four males', async () => {
  const start = await startOf();

  it('takes nothing before the breeders are there, and then what is wanted', () => {
    const { path, firstHarvest, fullHarvest, sustaining } = start;
    expect(firstHarvest).toBeGreaterThan(15);
    expect(fullHarvest).toBeGreaterThanOrEqual(firstHarvest!);
    for (const { week, taken, females } of path) {
      if (week < firstHarvest!) expect(taken).toEqual([0]);
      else expect(females).toBeGreaterThan(0.8 * sustaining!.females);
    }
  });

  it('buys each week what it does not take', () => {
    for (const { taken, bought } of start.path) expect(taken[0]! + bought).toBeCloseTo(60, 9);
  });

  it('lasts from a week on after which nineteen weeks in twenty are met, and buys until then', () => {
    const { path, lastsFrom, fullHarvest, bridge } = start;
    expect(lastsFrom).toBeGreaterThanOrEqual(fullHarvest!);
    const after = path.slice(lastsFrom! - 1);
    expect(after.filter(({ bought }) => bought < 1).length).toBeGreaterThanOrEqual(0.95 * after.length);
    const bought = path.slice(0, lastsFrom! - 1).map((week) => week.bought);
    expect(bridge).toBeCloseTo(
      bought.reduce((a, b) => a + b, 0),
      9,
    );
  });

  it('fills more bins as it grows, and pays in the end', () => {
    const { path, costs, breakEven } = start;
    expect(path[0]!.bins).toBe(1);
    expect(Math.max(...path.map(({ bins }) => bins!))).toBeGreaterThan(1);
    expect(costs![breakEven! - 1]!.own).toBeLessThanOrEqual(costs![breakEven! - 1]!.bought);
    expect(costs![breakEven! - 2]!.own).toBeGreaterThan(costs![breakEven! - 2]!.bought);
  });

  it('is the same whenever it is asked', async () => {
    expect(await startOf()).toEqual(start);
  });
});

it('does not call it lasting where less than a generation is left to see it', async () => {
  const discoid = 'blaberus-discoidalis';
  const start = await startOf({
    species: discoid,
    dayC: 23,
    nightC: 20,
    wanted: [{ heads: 20, ...sizeOf(discoid, 'large') }],
    starters: { kind: 'adults', females: 2, males: 1 },
  });
  expect(start.path.at(-1)!.bought).toBeLessThan(1);
  expect(start.lastsFrom).toBeNull();
  expect(start.bridge).toBeCloseTo(
    start.path.reduce((sum, { bought }) => sum + bought, 0),
    9,
  );
});

it('begins to give sooner with more starters, and sooner with adults than with young', async () => {
  const more = await startOf({ starters: { kind: 'adults', females: 30, males: 8 } });
  const some = await startOf();
  const young = await startOf({ starters: { kind: 'young', heads: 20, fromMm: 12, toMm: 19 } });
  expect(more.firstHarvest!).toBeLessThan(some.firstHarvest!);
  expect(some.firstHarvest!).toBeLessThan(young.firstHarvest!);
});

it('names no bins where nobody says how large they are, and no costs without prices', async () => {
  const start = await startOf({ binSize: null, prices: null });
  expect(start.path.every(({ bins }) => bins === null)).toBe(true);
  expect(start).toMatchObject({ costs: null, breakEven: null });
});

it('judges a large colony by an equal part, and takes the largest size first', async () => {
  const { fromMm, toMm } = dubiaQuestion.wanted[0]!;
  const two = [
    { heads: 60, fromMm: 6, toMm: 12 },
    { heads: 120, fromMm, toMm },
  ];
  const start = await startOf({ wanted: two });
  expect(start.wanted.map(({ heads }) => heads)).toEqual([120, 60]);
  expect(start.sustaining!.females).toBeGreaterThan(start.smallest.females);
  expect(start.sustaining!.females).toBeLessThan(1.5 * start.smallest.females);
  for (const { taken } of start.path.filter(({ week }) => week > start.fullHarvest!))
    expect(taken[0]!).toBeLessThanOrEqual(120);
  expect(Math.max(...start.path.map(({ taken }) => taken[0]!))).toBeCloseTo(120, 6);
});

it('refuses what no colony can do, in words', async () => {
  expect(await problemOf({ species: 'unicorn' })).toMatchObject({ code: 'unknown-species' });
  expect(await problemOf({ species: 'drosophila-hydei' })).toMatchObject({ code: 'kept-in-cups' });
  expect(await problemOf({ dayC: 14, nightC: 12 })).toMatchObject({
    code: 'does-not-grow',
    sentence: 'A dubia roach colony does not grow at 14 °C by day and 12 °C by night.',
  });
  expect(await problemOf({ wanted: [] })).toMatchObject({ code: 'nothing-wanted' });
  expect(await problemOf({ wanted: [{ heads: 10, fromMm: 70, toMm: 80 }] })).toMatchObject({
    code: 'no-such-size',
    sentence: 'No dubia roach is 70 to 80 mm long.',
  });
  expect(await problemOf({ starters: { kind: 'adults', females: 9, males: 0 } })).toMatchObject({
    code: 'no-pair',
    sentence: '9 females and 0 males cannot breed: begin with 1 of each or more.',
  });
  expect(await problemOf({ starters: { kind: 'young', heads: 0, fromMm: 4, toMm: 8 } })).toMatchObject({
    code: 'no-starters',
  });
});

describe('costs', () => {
  const week = (n: number, bought: number) => ({
    week: n,
    females: 1,
    heads: 1,
    bins: null,
    taken: [10 - bought],
    bought,
  });
  const path = [week(1, 10), week(2, 5), week(3, 0), week(4, 0)];

  it('are summed by hand: starters 12, 1 a week, heads at 1', () => {
    const costs = costsOf(path, { perHead: 1, starters: 12, perWeek: 1 });
    expect(costs).toEqual([
      { own: 23, bought: 10 },
      { own: 29, bought: 20 },
      { own: 30, bought: 30 },
      { own: 31, bought: 40 },
    ]);
    expect(breakEvenWeek(costs)).toBe(3);
  });

  it('never break even where buying stays cheaper', () => {
    expect(breakEvenWeek(costsOf(path, { perHead: 1, starters: 100, perWeek: 1 }))).toBeNull();
  });
});
