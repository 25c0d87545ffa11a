/** What a colony loses in breeders over a plan is priced, fate by fate. */
import { beforeAll, describe, expect, it } from 'vitest';
import { settleInFates } from '../../../src/husbandry/plan/fate-cost.ts';
import { roomFor } from '../../../src/husbandry/plan/fate-room.ts';
import { type Fates, fatesOf } from '../../../src/husbandry/plan/fates.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { countedOn } from '../../../src/husbandry/plan/nodes.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { laidOut } from '../../support/plan/planned.ts';
import { animalWith, binWith, snapshotWith, TODAY } from '../../support/room.ts';

const LEVEL = 0.85;

let fates: Fates;
let fine: PlanProblem;
let firstNode: readonly number[];

beforeAll(() => {
  const hungry = (i: number) =>
    animalWith({
      code: `A${i}`,
      kind: 'acanthoscurria-geniculata',
      gaugeMm: 60 + 4 * i,
      lastTaken: TODAY - 1 - (i % 9),
    });
  const colony = binWith({
    ...{ code: 'B1', species: 'blaptica-dubia', role: 'colony', capacity: 3000, keepAdults: true },
    events: [{ kind: 'counted', day: TODAY - 1, heads: 400, fromMm: null, toMm: null }],
  });
  const { laid, problem } = laidOut(
    snapshotWith({ animals: Array.from({ length: 30 }, (_, i) => hungry(i)), bins: [colony] }),
    8,
  );
  fates = fatesOf(laid, problem);
  fine = finely(laid, problem, LEVEL);
  firstNode = countedOn(laid.fine.nodes).first;
}, 60_000);

/** What the breeders missing cost in all, in the mean of the fates. */
function breedersCents(from: Fates): number {
  const free = {
    ...fine,
    places: fine.places.map((place) => ({ ...place, floor: place.floor && { ...place.floor, cents: 0 } })),
  };
  const nothing = { packs: fine.parcels.map(({ packs }) => packs.map(() => 0)), cups: [] };
  const cost = (problem: PlanProblem) => settleInFates(roomFor(from, livingOf(problem), from.count), nothing);
  return cost(fine) - cost(free);
}

/** Heads of a colony in a period of a fate where nobody eats, each counted as a breeder. */
function breedersIn(fate: number, period: number): number {
  const place = fine.places.findIndex(({ floor }) => floor !== null);
  const { counts } = fine.places[place]!.floor!;
  const moment = (fate * fates.periods + period) * fates.lots.length;
  let sum = 0;
  for (let at = fates.from[moment]!; at < fates.from[moment + fates.lots.length]!; at++)
    sum += (counts[fates.node[at]! - firstNode[place]!] ?? 0) * fates.heads[at]!;
  return sum;
}

describe('breeders', () => {
  it('are counted by what they are worth to the colony: a grown one most, the young less', () => {
    const [floor] = fine.places.flatMap((each) => (each.floor ? [each.floor] : []));
    const counts = [...floor!.counts].filter((count) => count > 0);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(Math.max(...counts)).toBeGreaterThan(2 * Math.min(...counts));
  });

  it('that a colony loses where nobody eats of it are what has died and was not made up for', () => {
    const idle = { ...fates, wanted: fates.wanted.map(() => 0) };
    const [cents] = fine.places.flatMap(({ floor }) => (floor ? [floor.cents] : []));
    const lost = Array.from({ length: fates.count }, (_, fate) =>
      Math.max(0, breedersIn(fate, 0) - breedersIn(fate, fates.periods - 1)),
    );
    const mean = lost.reduce((a, b) => a + b, 0) / fates.count;
    expect(breedersCents(idle)).toBeCloseTo(cents! * mean, 6);
  });

  it('are fewer, and dearer for it, where animals eat of the colony', () => {
    const idle = { ...fates, wanted: fates.wanted.map(() => 0) };
    expect(breedersCents(fates)).toBeGreaterThan(breedersCents(idle) + 1);
  });
});
