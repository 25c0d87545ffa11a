/** Rooms that buy, planned: laid out, with stock that stands ready, and the programme's best plan in whole packs. */

import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { type LaidOut, layOut } from '../../../src/husbandry/plan/lay-out.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Flows } from '../../../src/husbandry/plan/proposal.ts';
import { decisionsOf, programmeFlows } from '../../../src/husbandry/plan/proposal.ts';
import { withReady } from '../../../src/husbandry/plan/with-ready.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { facts, mixedAnimals, mixedBins, policyWith, snapshotWith } from '../room.ts';
import { mixedMarket } from './markets.ts';
import { optimumOf } from './optimum.ts';

/** Small in all that only costs time. */
const quickFacts = { ...facts, policy: policyWith({ planReplicates: 40, planBands: 6 }) };

/** A small room that has to buy: few heads in three bins, three suppliers. */
export const buyingRoom = (over: Partial<Snapshot> = {}): Snapshot =>
  snapshotWith({
    animals: eaters,
    bins: stock(1),
    market: mixedMarket,
    facts: quickFacts,
    ...over,
  });

const LEVEL = 0.85;
const ANIMALS = 16;

/** Its animals, and its bins with so many times their heads. */
export const eaters = mixedAnimals(ANIMALS);
export const stock = (times: number): Bin[] => mixedBins(2 * times).slice(0, 3);

export interface Laid {
  readonly laid: LaidOut;
  readonly problem: PlanProblem;
}

export function laidOut(snapshot: Snapshot, weeks: number): Laid {
  const laid = layOut(snapshot, { weeks, wishes: [], supposed: [] });
  return { laid, problem: withReady(laid, LEVEL) };
}

export interface BestPlan {
  readonly cost: number;
  readonly flows: Flows;
  /** Packs by parcel and pack, cups by start. */
  readonly packs: readonly (readonly number[])[];
  readonly cups: readonly number[];
  /** Packs by what is bought and when it is sent; only what is bought. */
  readonly bought: Readonly<Record<string, number>>;
}

/** The best plan whose near weeks are in whole packs. */
export function bestPlan(problem: PlanProblem, wholeUntil = 4): BestPlan {
  const { laid, found } = optimumOf(problem, wholeUntil)!;
  const { packs, cups } = decisionsOf(laid, found);
  const bought = problem.parcels.flatMap((parcel, i) =>
    parcel.packs.flatMap(({ key }, j): [string, number][] => {
      const count = Math.round(packs[i]![j]! * 1e4) / 1e4;
      return count > 0 ? [[key, count]] : [];
    }),
  );
  return {
    cost: found.value,
    flows: programmeFlows(problem, laid, found),
    packs,
    cups,
    bought: Object.fromEntries(bought),
  };
}
