/** Plans lived through in fates: what a change costs is the same however it is reached, and only what is dearer is given up. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { costFromPeriod, settleInFates } from '../../../src/husbandry/plan/fate-cost.ts';
import { type Room, roomFor } from '../../../src/husbandry/plan/fate-room.ts';
import { type Fates, fatesOf } from '../../../src/husbandry/plan/fates.ts';
import { livingOf } from '../../../src/husbandry/plan/living.ts';
import type { PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import type { Decisions } from '../../../src/husbandry/plan/proposal.ts';
import { finely } from '../../../src/husbandry/plan/with-ready.ts';
import { buyingRoom, laidOut } from '../../support/plan/planned.ts';
import { animalWith, countedBin, snapshotWith, TODAY } from '../../support/room.ts';

const LEVEL = 0.85;
const FIRST = 6;

let problem: PlanProblem;
let fates: Fates;
let lived: (tried: number) => Room;

beforeAll(() => {
  const { laid, problem: made } = laidOut(buyingRoom(), 8);
  problem = made;
  fates = fatesOf(laid, problem);
  lived = (tried) => roomFor(fates, livingOf(finely(laid, problem, LEVEL)), tried);
}, 60_000);

const nothing = (): Decisions => ({
  packs: problem.parcels.map(({ packs }) => packs.map(() => 0)),
  cups: problem.starts.map(() => 0),
  rests: problem.rests.map(() => 0),
});

/** A plan, and the same with other packs in one of its parcels. */
interface Pair {
  readonly before: Decisions;
  readonly after: Decisions;
  readonly period: number;
}

const pairs = (): fc.Arbitrary<Pair> =>
  fc
    .record({
      bought: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 3 })), { maxLength: 4 }),
      changed: fc.tuple(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 3 })),
      rests: fc.tuple(periods(), periods()),
    })
    .map(({ bought, changed: [i, j, more], rests: [was, is] }) => {
      const start: Decisions = { ...nothing(), rests: problem.rests.map(() => was) };
      const before = bought.reduce((plan, [at, pack, count]) => withPacks(plan, at, pack, count), start);
      const { period } = problem.parcels[i % problem.parcels.length]!;
      const after = { ...withPacks(before, i, j, more), rests: problem.rests.map(() => is) };
      return { before, after, period: was === is ? period : Math.min(period, was, is) };
    });

const periods = () => fc.oneof(fc.constant(0), fc.integer({ min: 0, max: fates.periods }));

function withPacks({ packs, ...rest }: Decisions, i: number, j: number, count: number): Decisions {
  const at = i % packs.length;
  const pack = j % packs[at]!.length;
  return {
    ...rest,
    packs: packs.map((row, k) => (k === at ? row.map((n, p) => (p === pack ? n + count : n)) : row)),
  };
}

describe('a change', () => {
  it('costs from the period it begins in what it costs from the first day', () => {
    const [one, other] = [lived(fates.count), lived(fates.count)];
    fc.assert(
      fc.property(pairs(), ({ before, after, period }) => {
        settleInFates(one, before);
        const cents = costFromPeriod(one, after, period);
        const whole = settleInFates(other, after);
        return cents === Number.POSITIVE_INFINITY || Math.abs(cents - whole) <= 1e-9 * (1 + Math.abs(whole));
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it('is given up only where it is dearer in the worst fates and in the best', () => {
    const [one, other] = [lived(FIRST), lived(FIRST)];
    let givenUp = 0;
    fc.assert(
      fc.property(pairs(), ({ before, after, period }) => {
        settleInFates(one, before);
        const [settled, order] = [[...one.settled], [...one.order]];
        if (costFromPeriod(one, after, period) < Number.POSITIVE_INFINITY) return true;
        givenUp++;
        settleInFates(other, after);
        const dearest = Math.max(...settled);
        return (
          settled[order[0]!] === dearest &&
          settled[order[1]!] === Math.min(...settled) &&
          order.slice(0, FIRST).every((fate) => other.settled[fate]! >= settled[fate]! - 1e-9)
        );
      }),
      { seed: 2, numRuns: 60 },
    );
    expect(givenUp).toBeGreaterThan(5);
    expect(givenUp).toBeLessThan(60);
  });
});

describe('fates', () => {
  it('hold every head once, and differ from one another', () => {
    const { from, slice, heads, count, periods, lots } = fates;
    expect(from).toHaveLength(count * periods * lots.length + 1);
    expect(from.at(-1)).toBe(slice.length);
    const inFirst = (fate: number) => {
      const [a, b] = [fate, fate + 1].map((k) => from[k * periods * lots.length]!);
      return [...heads.slice(a, b)].reduce((sum, n) => sum + n, 0);
    };
    const sums = Array.from({ length: count }, (_, fate) => inFirst(fate));
    expect(new Set(sums).size).toBeGreaterThan(count / 2);
    for (let k = 1; k < from.length; k++) expect(from[k]! >= from[k - 1]!).toBe(true);
  });

  it('are fewer the further a plan looks ahead', () => {
    const far = laidOut(buyingRoom(), 26);
    expect(fatesOf(far.laid, far.problem).count).toBeLessThan(fates.count);
  });
});

describe('prey of which only a share may be given', () => {
  it('costs what it is beyond that share, where nothing else is there', () => {
    const room = laidOut(
      snapshotWith({
        animals: [
          animalWith({
            code: 'A1',
            kind: 'grammostola-pulchra',
            gaugeMm: 50,
            lastTaken: TODAY - 9,
            count: 20,
          }),
        ],
        bins: [countedBin('B1', 'tenebrio-molitor', { heads: 2000, fromMm: 8, toMm: 14 })],
      }),
      4,
    );
    const of = fatesOf(room.laid, room.problem);
    const fine = finely(room.laid, room.problem, LEVEL);
    const freely = {
      ...fine,
      eaters: fine.eaters.map((eater) => ({
        ...eater,
        caps: eater.caps.map((cap) => ({ ...cap, cents: 0 })),
      })),
    };
    const none: Decisions = { packs: [], cups: [], rests: [] };
    const cost = (each: PlanProblem) => settleInFates(roomFor(of, livingOf(each), of.count), none);
    expect(fine.eaters.some(({ caps, fare }) => caps.length > 0 && fare.some(({ cap }) => cap >= 0))).toBe(
      true,
    );
    expect(cost(fine)).toBeGreaterThan(cost(freely) + 1);
  });
});
