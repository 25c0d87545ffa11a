/** What colonies are worth to their own future: how large they are to be, and what it costs where they are eaten smaller, fate by fate. */
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type BinState,
  type ColonyGrowth,
  chainOf,
  colonyGrowth,
  colonyRates,
  emptyState,
  type Life,
  nextDay,
} from '../../../src/husbandry/larder/index.ts';
import { settleInFates } from '../../../src/husbandry/plan/fate-cost.ts';
import { roomFor } from '../../../src/husbandry/plan/fate-room.ts';
import { type Fates, fatesOf } from '../../../src/husbandry/plan/fates.ts';
import type { LaidOut } from '../../../src/husbandry/plan/lay-out.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import { countedOn } from '../../../src/husbandry/plan/nodes.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { hungryOnes, roachColony } from '../../support/plan/colony-room.ts';
import { type Laid, laidOut } from '../../support/plan/planned.ts';
import { binWith, facts, snapshotWith, TODAY } from '../../support/room.ts';

const LEVEL = 0.85;

const chain = chainOf(facts.species.get('blaptica-dubia')!);

const colony = roachColony(400);

let laid: LaidOut;
let fates: Fates;
let fine: PlanProblem;
let firstNode: readonly number[];

beforeAll(() => {
  const room = laidOut(snapshotWith({ animals: hungryOnes(30), bins: [colony] }), 8);
  const { problem } = room;
  laid = room.laid;
  fates = fatesOf(laid, problem);
  fine = finely(laid, problem, LEVEL);
  firstNode = countedOn(laid.fine.nodes).first;
}, 60_000);

/** What the breeders missing cost in all, in the mean of the fates. */
function breedersCents(from: Fates, of: PlanProblem): number {
  const free = {
    ...of,
    places: of.places.map((place) => ({ ...place, floor: place.floor && { ...place.floor, cents: 0 } })),
  };
  const nothing = {
    packs: of.parcels.map(({ packs }) => packs.map(() => 0)),
    cups: [],
    rests: of.rests.map(() => 0),
  };
  const cost = (problem: PlanProblem) => settleInFates(roomFor(from, livingOf(problem), from.count), nothing);
  return cost(of) - cost(free);
}

/** The same room where so many times the breeders are wanted. */
const wanting = (times: number): PlanProblem => ({
  ...fine,
  places: fine.places.map((place) => ({
    ...place,
    floor: place.floor && { ...place.floor, least: place.floor.least.map((least) => times * least) },
  })),
});

describe('breeders', () => {
  it('are counted by what they are worth to the colony: a grown one most, the young less', () => {
    const [floor] = fine.places.flatMap((each) => (each.floor ? [each.floor] : []));
    const counts = [...floor!.counts].filter((count) => count > 0);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(Math.max(...counts)).toBeGreaterThan(2 * Math.min(...counts));
  });

  it('kept are there in every fate, though nobody is fed them', () => {
    const place = fine.places.findIndex(({ floor }) => floor !== null);
    const grown = firstNode[place]! + fine.places[place]!.nodes - 1;
    for (let fate = 0; fate < fates.count; fate++) {
      const moment = fate * fates.periods * fates.lots.length;
      const [from, end] = [fates.from[moment]!, fates.from[moment + fates.lots.length]!];
      let heads = 0;
      for (let at = from; at < end; at++) if (fates.node[at] === grown) heads += fates.heads[at]!;
      expect(heads).toBeGreaterThan(20);
    }
  });

  it('cost nothing where nobody eats of the colony, however many are wanted', () => {
    const idle = { ...fates, wanted: fates.wanted.map(() => 0) };
    expect(breedersCents(idle, wanting(1000))).toBeCloseTo(0, 9);
  });

  it('cost the more, the more of them are wanted, and nothing where the colony is large enough', () => {
    const cents = [0.01, 0.5, 1, 2].map((times) => breedersCents(fates, wanting(times)));
    expect(cents).toEqual(cents.toSorted((x, y) => x - y));
    expect(cents[0]).toBe(0);
    expect(cents.at(-1)).toBeGreaterThan(1);
  });
});

describe('a colony that is to feed many', () => {
  it('is never wanted larger than half of its room holds, of all sizes', () => {
    const many = hungryOnes(300);
    const wantedWith = (capacity: number | null) =>
      laidOut(snapshotWith({ animals: many, bins: [{ ...colony, capacity }] }), 8).laid.fine.breeders.flatMap(
        (each) => (each ? [each.wanted] : []),
      )[0]!;
    const [small, twice, free] = [wantedWith(500), wantedWith(1000), wantedWith(null)];
    expect(twice).toBeCloseTo(2 * small, 6);
    expect(free).toBeGreaterThan(twice);
    const growth = colonyGrowth(colonyRates(chain, laid.places[0]!.climate.on(TODAY)))!;
    const heads = growth.stable.map((share, j) => (j < chain.firstHead ? 0 : share));
    const all = heads.reduce((a, b) => a + b, 0);
    expect(small).toBeCloseTo((250 * worthOf(heads, growth)) / all, 6);
  });
});

/** A head of each substage in breeders, the most it can be worth being one. */
function worthOf(heads: Float64Array, { reproductive }: ColonyGrowth): number {
  const most = Math.max(...reproductive);
  return heads.reduce((sum, n, j) => sum + (n * reproductive[j]!) / most, 0);
}

describe('a colony of the size that is wanted', () => {
  it('lasts for ever where what all want is taken in each week; a smaller one does not', () => {
    const [floor] = laid.problem.places.flatMap(({ floor: own }) => (own ? [own] : []));
    const place = laid.problem.places.findIndex(({ floor: own }) => own !== null);
    const weekly = laid.problem.eaters.reduce((sum, { fare, end }) => {
      const costs = fare
        .filter((each) => each.place === place)
        .map(({ node, items }) => floor!.counts[node]! / items);
      return costs.length > 0 ? sum + end.weekly * Math.min(...costs) : sum;
    }, 0);
    const { climate } = laid.places[place]!;
    const growth = colonyGrowth(colonyRates(chain, climate.on(TODAY)))!;
    const bin = binWith({ code: 'B1', species: chain.species.code, role: 'colony', keepAdults: true });
    const life: Life = { chain, bin, climate, speed: 1 };
    const enough = laid.fine.breeders.flatMap((each) => (each ? [each.wanted] : []))[0]!;
    const years = (breeders: number): number => {
      const { stable } = growth;
      const worth = worthOf(stable, growth);
      let state: BinState = {
        ...emptyState(chain),
        heads: stable.map((share) => (share * breeders) / worth),
      };
      for (let week = 0; week < 104; week++) {
        const left = Math.max(0, 1 - weekly / worthOf(state.heads, growth));
        state = { ...state, heads: state.heads.map((n) => n * left) };
        for (let day = 0; day < 7; day++) state = nextDay(life, state, TODAY + day).state;
      }
      return worthOf(state.heads, growth) / breeders;
    };
    expect(weekly).toBeGreaterThan(1);
    expect(years(enough)).toBeGreaterThan(0.97);
    expect(years(enough)).toBeLessThan(1.03);
    expect(years(0.95 * enough)).toBeLessThan(0.5);
    expect(years(1.2 * enough)).toBeGreaterThan(2);
  });
});

describe('a colony that grows more slowly', () => {
  const at = (tempC: number): Laid =>
    laidOut(
      snapshotWith({
        animals: hungryOnes(1),
        bins: [colony],
        rooms: [{ code: 'room', name: 'Room', dayTempC: tempC, nightTempC: tempC }],
      }),
      8,
    );

  it('has to be larger to feed the same animal', () => {
    const wantedAt = (tempC: number): number =>
      at(tempC).laid.fine.breeders.reduce((sum, each) => sum + (each?.wanted ?? 0), 0);
    const wanted = [26, 22, 18].map(wantedAt);
    expect(wanted[0]).toBeGreaterThan(1);
    expect(wanted[1]).toBeGreaterThan(1.2 * wanted[0]!);
    expect(wanted[2]).toBeGreaterThan(1.2 * wanted[1]!);
  });

  it('and lays nothing for the cold is not there to be eaten up: all it could be worth is wanted of it', () => {
    const [place] = at(14).problem.places.flatMap((each) => (each.floor ? [each] : []));
    const { counts, least, cents } = place!.floor!;
    const now = place!.comes[0]!.reduce((sum, heads, n) => sum + heads * counts[n]!, 0);
    expect(now).toBeGreaterThan(10);
    expect(least[0]).toBeCloseTo(now, 6);
    expect(cents).toBeGreaterThan(0);
  });
});
