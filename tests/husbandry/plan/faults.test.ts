/** The checker of plans finds each kind of fault planted in a plan that has none. */
import { describe, expect, it } from 'vitest';
import { faultsOf } from '../../../src/husbandry/plan/check-plan.ts';
import type { Fault } from '../../../src/husbandry/plan/fault.ts';
import { flowsOf } from '../../../src/husbandry/plan/lived.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Proposal } from '../../../src/husbandry/plan/proposal.ts';
import { textbookProblem } from '../../support/plan/textbook.ts';

const SLACK = 1e-5;

/** Three periods of one prey, whatever is missing waits; a pack of 10 each period. */
const plain: PlanProblem = textbookProblem({
  demand: [[10, 10, 10]],
  jointSetup: 5,
  unitCost: 1,
  holding: [1],
  backorder: 1,
  packSize: 10,
});

const withPlace = (over: Partial<PlanProblem['places'][number]>): PlanProblem => ({
  ...plain,
  places: plain.places.map((place) => ({ ...place, ...over })),
});

const withParcels = (over: Partial<PlanProblem['parcels'][number]>): PlanProblem => ({
  ...plain,
  parcels: plain.parcels.map((parcel) => ({ ...parcel, ...over })),
});

function proposalOf(problem: PlanProblem, packs: readonly number[], cups: readonly number[] = []): Proposal {
  const decided = { packs: packs.map((count) => [count]), cups, rests: problem.rests.map(() => 0) };
  return { ...decided, flows: flowsOf(livingOf(problem), decided), value: 0 };
}

const kinds = (problem: PlanProblem, proposal: Proposal): Fault['what'][] =>
  faultsOf(problem, proposal, SLACK).map(({ what }) => what);

const right = proposalOf(plain, [1, 2, 0]);

/** The flows with one row of a kind changed. */
function withFlow<Name extends 'late' | 'missed'>(name: Name, t: number, items: number): Proposal {
  const row = Float64Array.from(right.flows[name][0]!);
  row[t] = items;
  return { ...right, flows: { ...right.flows, [name]: [row] } };
}

describe('the checker of plans', () => {
  it('finds nothing in a plan that can be carried out', () => {
    expect(faultsOf(plain, right, SLACK)).toEqual([]);
  });

  it('finds heads that were never there', () => {
    const left = [[Float64Array.of(0), Float64Array.of(10), Float64Array.of(1)]];
    expect(kinds(plain, { ...right, flows: { ...right.flows, left } })).toEqual(['conservation']);
    expect(kinds(plain, { ...right, packs: [[1], [1], [0]] })).toEqual(['conservation']);
  });

  it('finds less than nothing left, used, late or missed', () => {
    const left = [[Float64Array.of(-10), Float64Array.of(0), Float64Array.of(0)]];
    expect(kinds(plain, { ...right, flows: { ...right.flows, left } })).toContain('conservation');
    const use = [[Float64Array.of(-10), Float64Array.of(10), Float64Array.of(10)]];
    const missed = [Float64Array.of(20, 0, 0)];
    expect(kinds(plain, { ...right, flows: { ...right.flows, use, missed } })).toEqual(['meals']);
    expect(kinds(plain, withFlow('late', 2, -1))).toContain('meals');
  });

  it('finds broken packs and cups', () => {
    expect(kinds(plain, proposalOf(plain, [1, 1.5, 0.5]))).toEqual(['whole', 'whole']);
    const start = { key: 'cup', period: 0, paid: 0, place: 0, cents: 1, least: 0, most: 2, brings: [] };
    const cups = { ...plain, starts: [start] };
    expect(kinds(cups, proposalOf(cups, [1, 2, 0], [0.5]))).toEqual(['whole']);
    expect(kinds(cups, proposalOf(cups, [1, 2, 0], [3]))).toEqual(['bounds']);
  });

  it('finds more packs than can be had, and fewer than are pinned', () => {
    expect(kinds(plain, proposalOf(plain, [4, 0, 0]))).toEqual(['bounds']);
    const pinned = withParcels({ packs: plain.parcels[0]!.packs.map((pack) => ({ ...pack, least: 1 })) });
    expect(kinds(pinned, proposalOf(pinned, [1, 2, 0]))).toEqual(['bounds']);
  });

  it('finds a place left alone for longer than it may be, or for broken weeks', () => {
    const resting = { ...plain, rests: [{ key: 'rest', place: 0, own: 0, least: 0, most: 2, cents: 1 }] };
    const fed = proposalOf(resting, [1, 2, 0]);
    expect(kinds(resting, fed)).toEqual([]);
    expect(kinds(resting, { ...fed, rests: [2] })).toEqual([]);
    expect(kinds(resting, { ...fed, rests: [3] })).toEqual(['bounds']);
    expect(kinds(resting, { ...fed, rests: [0.5] })).toEqual(['whole']);
  });

  it('finds meals nobody accounts for', () => {
    expect(kinds(plain, withFlow('missed', 2, 5))).toEqual(['meals']);
  });

  it('finds meals that wait longer than they may', () => {
    const proposal = proposalOf(plain, [0, 2, 1]);
    expect(kinds(plain, proposal)).toEqual([]);
    const strict = {
      ...plain,
      eaters: plain.eaters.map((eater) => ({ ...eater, lateMost: Float64Array.of(9, 9, 0) })),
    };
    expect(kinds(strict, proposal)).toEqual(['late']);
  });

  it('finds more left than there is room for', () => {
    const small = withPlace({ room: { footprint: Float64Array.of(2), most: 19 } });
    expect(kinds(small, right)).toEqual(['room']);
    const wide = withPlace({ room: { footprint: Float64Array.of(2), most: 20 } });
    expect(kinds(wide, right)).toEqual([]);
  });

  it('finds a parcel below its minimum', () => {
    expect(kinds(withParcels({ minimumCents: 11 }), right)).toEqual(['minimum']);
    expect(kinds(withParcels({ minimumCents: 10 }), right)).toEqual([]);
  });

  it('finds more spent than may be, postage and cups in it', () => {
    const start = { key: 'cup', period: 0, paid: 0, place: 0, cents: 3, least: 0, most: 2, brings: [] };
    const within = { ...plain, starts: [start], budget: Float64Array.of(18, 25, 0) };
    expect(kinds(within, proposalOf(within, [1, 2, 0], [1]))).toEqual([]);
    expect(kinds(within, proposalOf(within, [1, 2, 0], [2]))).toEqual(['budget']);
    const less = { ...plain, budget: Float64Array.of(18, 24, 0) };
    expect(kinds(less, right)).toEqual(['budget']);
  });
});
