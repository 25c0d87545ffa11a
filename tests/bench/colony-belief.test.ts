/**
 * What the program believes of colonies that grow, lay and are eaten from in the worlds of the plan's benchmark, which
 * know nothing of it: laying falls there as a colony fills.
 */
import { describe, expect, it } from 'vitest';
import { nextDay } from '../../src/husbandry/larder/index.ts';
import { firstAdult, totalHeads } from '../../src/husbandry/larder/lot.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import { binClimate } from '../../src/husbandry/rooms.ts';
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

/** Young of the coming week, by the law of the worlds. */
function bornIn(house: House, code: string): number {
  const alive = house.larder.tubs.find((each) => each?.code === code)!.alive;
  const { room, youngPerWeek } = roomNamed('colonies').colonies[COLONIES.indexOf(code)]!;
  return grownIn(house, code) * youngPerWeek * Math.max(0, 1 - alive / room);
}

/** The grown and the young of the coming week as the program sees them. */
function seenOf(house: House, code: string, changed: (policy: Policy) => Policy) {
  const snapshot = snapshotOf(logOf(house));
  const room = { ...snapshot, facts: { ...snapshot.facts, policy: changed(snapshot.facts.policy) } };
  const bin = room.bins.find(({ name }) => name === code)!;
  const { chain, state, belief } = binNow(room, bin);
  const life = { chain, bin, climate: binClimate(room, bin), speed: belief.speed.mid };
  let [next, born] = [state, 0];
  for (let day = 0; day < 7; day += 1) {
    const after = nextDay(life, next, room.today + day);
    next = after.state;
    born += after.born;
  }
  return { grown: totalHeads(state.heads, firstAdult(chain)), born };
}

/** Mean error of the logs of the grown, and of the young of the coming week. */
function errorsOf(houses: readonly House[], changed: (policy: Policy) => Policy) {
  const errors = houses.flatMap((house) =>
    COLONIES.map((code) => {
      const { grown, born } = seenOf(house, code, changed);
      const off = (seen: number, truth: number) => Math.abs(Math.log(Math.max(1, seen) / Math.max(1, truth)));
      return { grown: off(grown, grownIn(house, code)), born: off(born, bornIn(house, code)) };
    }),
  );
  const mean = (what: 'grown' | 'born') => errors.reduce((sum, each) => sum + each[what], 0) / errors.length;
  return { grown: mean('grown'), born: mean('born') };
}

describe('a colony that was counted now and then for most of a year, its grown apart', () => {
  it('has its grown and the young to come told better than by scaling all sizes alike', async () => {
    const houses = await Promise.all([501, 502, 503, 504, 505, 506].map(lived));
    const known = errorsOf(houses, (policy) => policy);
    const alike = errorsOf(houses, (policy) => ({
      ...policy,
      layingLogSd: { ...policy.layingLogSd, value: 0 },
    }));
    expect(known.grown).toBeLessThan(Math.log(1.5));
    expect(known.born).toBeLessThan(Math.log(2.5));
    expect(alike.born - known.born).toBeGreaterThan(Math.log(2));
  }, 120_000);
});
