/** What an animal eats a week over its own mass, by hand and by what must always hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { policy } from '../../../src/facts/policy.ts';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import { intakeOf, type MealOnRecord, mealShares } from '../../../src/husbandry/appetite/intake.ts';
import { instarLadder } from '../../../src/husbandry/appetite/ladder.ts';
import { animalWith, snapshotWith, TODAY } from '../../support/room.ts';
import { smallFacts } from '../../support/small-facts.ts';

/** 40 mm across the legs: 16 mm long, 0.1 x 16^3 = 409.6 mg; needs 0.02 to 0.1 of that a week. */
const spider = animalWith({ code: 'A1', kind: 'test-spider', gaugeMm: 40 });
const facts = { ...smallFacts, policy };
/** Five crickets of 4 to 6 mm: 0.05 x (4 + 6)/2 x (16 + 36)/2 = 6.5 mg each. */
const FIVE_MG = 32.5;
const OWN_MG = 409.6;
const meal = (daysAgo: number, over: Partial<MealOnRecord> = {}): MealOnRecord => ({
  day: TODAY - daysAgo,
  outcome: 'taken',
  species: 'test-cricket',
  heads: 5,
  fromMm: 4,
  toMm: 6,
  portions: 1,
  ...over,
});
const weigh = (meals: readonly MealOnRecord[], animal: Animal = spider, moults: readonly number[] = []) => {
  const snapshot = snapshotWith({ animals: [animal], facts });
  return intakeOf(snapshot, animal, { meals, ladder: instarLadder(snapshot, animal, { moults, sizes: [] }) });
};
const weekly = [28, 21, 14, 7, 0].map((daysAgo) => meal(daysAgo));

describe('by hand', () => {
  it('five crickets a week, four weeks after the first: 32.5 mg of 409.6 mg, which is right', () => {
    const intake = weigh(weekly);
    expect(intake?.weekly.mid).toBeCloseTo(FIVE_MG / OWN_MG, 9);
    expect(intake).toMatchObject({ verdict: 'right', unsure: false, meals: 4, days: 28, need: [0.02, 0.1] });
  });

  it('what is always the same has no doubt, what varies has that of a ratio of sums', () => {
    const even = weigh(weekly)?.weekly;
    expect((even?.high as number) - (even?.low as number)).toBeCloseTo(0, 9);
    // Shares 1, 3, 1, 3 of a meal after 7 days each: R = 2 a week, residuals 1, se = sqrt(4/3 x 4) x 7/28 = 0.577.
    const varied = weigh(weekly.map((each, i) => ({ ...each, heads: i % 2 === 0 ? 3 : 1 })))?.weekly;
    const one = FIVE_MG / 5 / OWN_MG;
    expect(varied?.mid).toBeCloseTo(2 * one, 9);
    expect((varied?.high as number) - (varied?.mid as number)).toBeCloseTo(1.6449 * 0.5774 * one, 5);
  });

  it('part-taken counts half, refused nothing, and an offer nobody spoke of yet is left out', () => {
    const meals = [meal(28), meal(21), meal(14, { outcome: 'part-taken' }), meal(7), meal(3)];
    const refused = [...meals, meal(1, { outcome: 'refused' }), meal(0, { outcome: 'offered' })];
    expect(weigh(refused)?.weekly.mid).toBeCloseTo((3.5 * FIVE_MG * 7) / 28 / OWN_MG, 9);
    expect(weigh(refused)?.meals).toBe(4);
  });

  it('of prey that was cut, it eats as many pieces as it eats items: two thirds of one', () => {
    const cut = weekly.map((each) => ({ ...each, heads: 1, portions: 3 }));
    expect(weigh(cut)?.weekly.mid).toBeCloseTo(((FIVE_MG / 5) * 2) / 3 / OWN_MG, 9);
  });

  it('a group eats per head', () => {
    const five = weigh(
      weekly.map((each) => ({ ...each, heads: 25 })),
      { ...spider, count: 5 },
    );
    expect(five?.weekly.mid).toBeCloseTo(FIVE_MG / OWN_MG, 9);
  });

  it('each meal is weighed against the size of its day: before a moult of 1.25 it was 1.25^3 lighter', () => {
    const shares = mealShares(snapshotWith({ animals: [spider], facts }), spider, {
      meals: weekly,
      ladder: instarLadder(snapshotWith({ animals: [spider], facts }), spider, {
        moults: [TODAY - 10],
        sizes: [],
      }),
    }).map(({ share }) => share as number);
    expect(shares[0]).toBeCloseTo((FIVE_MG / OWN_MG) * 1.25 ** 3, 9);
    expect(shares[4]).toBeCloseTo(FIVE_MG / OWN_MG, 9);
  });
});

describe('the verdict', () => {
  const eating = (heads: number) => weigh(weekly.map((each) => ({ ...each, heads })))?.verdict;

  it('is too little below the need and too much above it', () => {
    expect([eating(1), eating(2), eating(6), eating(7)]).toEqual([
      'too little',
      'right',
      'right',
      'too much',
    ]);
  });

  it('is unsure when the doubt reaches the bounds of the need', () => {
    const uneven = weekly.map((each, i) => ({ ...each, heads: i % 2 === 0 ? 13 : 1 }));
    expect(weigh(uneven)).toMatchObject({ verdict: 'too much', unsure: true });
  });

  it('is silent with fewer than three meals eaten, or when prey was not written down', () => {
    expect(weigh(weekly.slice(2))).toBeNull();
    expect(weigh([])).toBeNull();
    expect(weigh(weekly.map((each) => ({ ...each, outcome: 'refused' as const })))).toBeNull();
    expect(weigh(weekly.map((each) => ({ ...each, heads: null })))).toBeNull();
  });

  it('starts its clock anew after a meal that was not weighed, and ten weeks back', () => {
    const mixed = [meal(60, { heads: null }), meal(40), meal(30), meal(10)];
    expect(weigh(mixed)).toMatchObject({ days: 60, meals: 3 });
    const long = Array.from({ length: 40 }, (_, i) => meal(7 * (39 - i)));
    expect(weigh(long)).toMatchObject({ days: 70, meals: 10 });
  });
});

it('grows with the heads, in proportion, and never falls below nothing', () => {
  const days = fc.uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 4, maxLength: 12 });
  fc.assert(
    fc.property(days, fc.integer({ min: 1, max: 20 }), (daysAgo, heads) => {
      const meals = daysAgo.map((each) => meal(each, { heads }));
      const [once, twice] = [meals, meals.map((each) => ({ ...each, heads: 2 * heads }))].map((each) =>
        weigh(each),
      );
      expect(twice === null).toBe(once === null);
      if (once == null || twice == null) return;
      expect(twice.weekly.mid).toBeCloseTo(2 * once.weekly.mid, 9);
      expect(once.weekly.low).toBeGreaterThanOrEqual(0);
      expect(once.weekly.low <= once.weekly.mid && once.weekly.mid <= once.weekly.high).toBe(true);
    }),
    { numRuns: 25 },
  );
});
