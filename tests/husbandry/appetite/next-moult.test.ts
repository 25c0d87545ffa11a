/** The day of the next moult: by hand, against many draws of the engine, and what must always hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { adultGauge } from '../../../src/husbandry/animals/stage.ts';
import { feedingDaysFrom } from '../../../src/husbandry/appetite/feeding-days.ts';
import { startAnimal } from '../../../src/husbandry/appetite/meal-start.ts';
import { mealsFor } from '../../../src/husbandry/appetite/meal-state.ts';
import { comesDue } from '../../../src/husbandry/appetite/meals.ts';
import { moultsAhead, nextMoult } from '../../../src/husbandry/appetite/next-moult.ts';
import { rosterOf } from '../../../src/husbandry/appetite/roster.ts';
import { rowOf } from '../../../src/husbandry/appetite/rows.ts';
import { keyOfCode } from '../../../src/maths/random.ts';
import { animalWith, facts, snapshotWith, TODAY } from '../../support/room.ts';

const kind = facts.kinds.get('tliltocatl-albopilosus') as Kind;
const spiderling = (over: Partial<Animal> = {}) =>
  animalWith({ code: 'A1', kind: kind.code, gaugeMm: 12, ...over });
const moulted = (daysAgo: number) => ({
  lastMoult: { earliest: TODAY - daysAgo - 1, found: TODAY - daysAgo },
});
const expected = (animal: Animal, rooms = snapshotWith({}).rooms) => {
  const next = nextMoult(snapshotWith({ animals: [animal], rooms }), animal);
  if (next.kind === 'none') throw new Error(next.reason);
  return { basis: next.basis, ...next.day };
};

const FAR = 2000;
const DRAWS = 4000;

/** Days of the first two moults in many replicates of the engine. */
function drawn(animal: Animal): { first: number[]; second: number[] } {
  const snapshot = snapshotWith({ animals: [animal] });
  const meals = mealsFor(rosterOf(snapshot, 4), feedingDaysFrom(snapshot.calendar, TODAY, FAR), FAR);
  const [first, second]: [number[], number[]] = [[], []];
  for (let replicate = 0; replicate < DRAWS; replicate++) {
    startAnimal(meals, 0, keyOfCode(`replicate ${replicate}`));
    first.push(meals.moultsOn[0] as number);
    comesDue(meals, 0, Math.ceil(meals.moultsOn[0] as number));
    second.push(meals.moultsOn[0] as number);
  }
  return { first, second };
}

/** The share of draws by which the day is told lies where it should, within four standard errors and the grid. */
function agrees(days: readonly number[], day: number, share: number): void {
  const by = (limit: number) => days.filter((each) => TODAY + each <= limit).length / days.length;
  const tolerance =
    4 * Math.sqrt((share * (1 - share)) / days.length) + 1 / (2 * facts.policy.moultPoints.value);
  expect(by(day)).toBeGreaterThan(share - tolerance);
  expect(by(day - 1)).toBeLessThan(share + tolerance);
}

describe('by hand', () => {
  const days = kind.stages[0]?.moult?.meanDays.value as number;

  it('the middle day of a cycle of 60 days and CV 0.3 is 60 / sqrt(1.09) after the moult, at 25 °C', () => {
    expect(days).toBe(60);
    const { basis, mid, low, high } = expected(spiderling(moulted(0)));
    expect(basis).toBe('last moult');
    expect(Math.abs(mid - TODAY - 57.5)).toBeLessThan(1);
    expect(Math.abs(low - TODAY - 57.5 * Math.exp(-1.645 * 0.2936))).toBeLessThan(1.5);
    expect(Math.abs(high - TODAY - 57.5 * Math.exp(1.645 * 0.2936))).toBeLessThan(1.5);
  });

  it('ten degrees colder, a Q10 of 2 doubles it', () => {
    const cold = [{ code: 'room', name: 'Room', dayTempC: 16, nightTempC: 14 }];
    expect(Math.abs(expected(spiderling(moulted(0)), cold).mid - TODAY - 115)).toBeLessThan(1.5);
  });

  // P(V C <= t) = P(C <= t) + t E[1/C; C > t] = 0.5 at t = 27.5 days, V even on (0, 1), E[1/C] = 1.044/57.5.
  it('with no moult on record today lies anywhere in the cycle: about half of it is left', () => {
    const { basis, low, mid } = expected(spiderling());
    expect(basis).toBe('no moult on record');
    expect(Math.abs(mid - TODAY - 27.5)).toBeLessThan(2);
    expect(low - TODAY).toBeLessThanOrEqual(3);
  });
});

describe.each<[string, Partial<Animal>]>([
  ['just moulted', moulted(2)],
  ['late in its cycle', moulted(60)],
  ['with no moult on record', {}],
  ['in premoult', { ...moulted(40), premoultSeen: TODAY - 3 }],
  ['in premoult with no moult on record', { premoultSeen: TODAY - 1 }],
  ['in premoult for so long that it is overdue', { ...moulted(90), premoultSeen: TODAY - 40 }],
])('an animal %s', (_, over) => {
  const animal = spiderling(over);
  const { first, second } = drawn(animal);

  it('moults when the engine has it moult', () => {
    const { low, mid, high } = expected(animal);
    agrees(first, low, 0.05);
    agrees(first, mid, 0.5);
    agrees(first, high, 0.95);
  });

  it('moults for the second time when the engine has it moult', () => {
    const snapshot = snapshotWith({ animals: [animal] });
    const bands = moultsAhead(rowOf(snapshot, { animal, steps: 4, change: null, leaving: null }), snapshot);
    expect(bands).toHaveLength(3);
    const next = bands[1] as (typeof bands)[number];
    agrees(second, next.low, 0.05);
    agrees(second, next.mid, 0.5);
    agrees(second, next.high, 0.95);
  });
});

describe('what always holds', () => {
  it('the moult has not been, and its doubt grows from moult to moult', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 4, max: 60 }), (daysAgo, gaugeMm) => {
        const animal = spiderling({ ...moulted(daysAgo), gaugeMm });
        const snapshot = snapshotWith({ animals: [animal] });
        const row = rowOf(snapshot, { animal, steps: 4, change: null, leaving: null });
        const bands = moultsAhead(row, snapshot);
        bands.forEach(({ low, mid, high }) => {
          expect(TODAY < low && low <= mid && mid <= high).toBe(true);
        });
        bands.slice(1).forEach(({ low, mid, high }, i) => {
          const before = bands[i] as (typeof bands)[number];
          expect(mid).toBeGreaterThan(before.mid);
          expect(high - low).toBeGreaterThanOrEqual(before.high - before.low);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('a later last moult puts it later, as long as it is not long overdue', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 60 }), (daysAgo) => {
        const [earlier, later] = [daysAgo, daysAgo - 10].map(
          (days) => expected(spiderling(moulted(days))).mid,
        );
        expect(later).toBeGreaterThan(earlier as number);
      }),
      { numRuns: 30 },
    );
  });

  it('who moults no more has no next moult, nor has a group', () => {
    const male = spiderling({ gaugeMm: adultGauge(kind), matured: true, sex: 'male' });
    const snapshot = snapshotWith({ animals: [male] });
    expect(nextMoult(snapshot, male)).toEqual({ kind: 'none', reason: 'moults no more' });
    const group = spiderling({ count: 9 });
    expect(nextMoult(snapshot, group)).toEqual({ kind: 'none', reason: 'kept as a group' });
  });
});
