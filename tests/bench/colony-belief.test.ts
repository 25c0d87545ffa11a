/**
 * What the program believes of colonies that grow, lay and are eaten from in the worlds of the plan's benchmark, which
 * know nothing of it: laying falls there as a colony fills, and counts tell only how many there are in all.
 */
import { describe, expect, it } from 'vitest';
import { firstAdult, totalHeads } from '../../src/husbandry/larder/lot.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import { binNow } from '../../src/husbandry/supply/index.ts';
import { snapshotOf } from './plan-arm.ts';
import { GRID } from './plan-rules/grid.ts';
import { buyerBy } from './plan-rules/rules.ts';
import { type House, houseOf, live } from './plan-worlds/house.ts';
import { logOf } from './plan-worlds/household.ts';
import { stepOf } from './plan-worlds/larder.ts';
import { STEPS } from './plan-worlds/prey.ts';
import { roomNamed } from './plan-worlds/rooms.ts';

const WEEKS = 44;
const COLONIES = ['colony 1', 'colony 2'];

/** A year in which somebody buys by a rule. */
async function lived(seed: number): Promise<House> {
  const house = houseOf(roomNamed('colonies'), { seed, weeks: WEEKS });
  const buy = buyerBy(GRID[219]!);
  for (let week = 0; week < WEEKS; week += 1) live(house, await buy(logOf(house)));
  return house;
}

function grownIn({ larder, truth, day }: House, code: string): number {
  const tub = larder.tubs.findIndex((each) => each?.code === code);
  let grown = 0;
  for (let h = 0; h < larder.count; h += 1)
    if (larder.tub[h] === tub && larder.dies[h]! > day && stepOf(larder, truth, h, day) === STEPS) grown += 1;
  return grown;
}

/** Mean error of the log of the grown. */
function errorOf(houses: readonly House[], changed: (policy: Policy) => Policy): number {
  const errors = houses.flatMap((house) => {
    const snapshot = snapshotOf(logOf(house));
    const room = { ...snapshot, facts: { ...snapshot.facts, policy: changed(snapshot.facts.policy) } };
    return COLONIES.map((code) => {
      const { chain, state } = binNow(room, room.bins.find(({ name }) => name === code)!);
      return Math.abs(
        Math.log(totalHeads(state.heads, firstAdult(chain)) / Math.max(1, grownIn(house, code))),
      );
    });
  });
  return errors.reduce((a, b) => a + b, 0) / errors.length;
}

describe('the grown of a colony of which only totals were counted for most of a year', () => {
  it('are known to half as many again on the mean; by scaling all sizes alike they were not', async () => {
    const houses = await Promise.all([501, 502, 503].map(lived));
    const known = errorOf(houses, (policy) => policy);
    const alike = errorOf(houses, (policy) => ({
      ...policy,
      grownDoubtShare: { ...policy.grownDoubtShare, value: 1 },
      layingLogSd: { ...policy.layingLogSd, value: 0 },
    }));
    expect(known).toBeLessThan(Math.log(1.5));
    expect(alike).toBeGreaterThan(Math.log(1.5));
  }, 120_000);
});
