import { describe, expect, it } from 'vitest';
import { rosterOf, servedOnRecord } from '../../../src/husbandry/appetite/index.ts';
import { animalWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const KIND = 'brachypelma-hamorii';
const kind = facts.kinds.get(KIND)!;
const grown = { code: 'A1', kind: KIND, gaugeMm: 130 };

const roomWith = (record: { meals: number; items: number }, policy = facts.policy) =>
  snapshotWith({
    animals: [animalWith({ ...grown, lastTaken: TODAY - 9, givenOnRecord: record })],
    facts: { ...facts, policy },
  });

describe('the keeper’s generosity', () => {
  it('is 1, by the Book’s spread, before anything is on record', () => {
    const { mean, variance } = rosterOf(roomWith({ meals: 0, items: 0 }), 2).generosity;
    expect(mean).toBe(1);
    expect(variance).toBeCloseTo(facts.policy.generosityCv.value ** 2, 12);
  });

  // Gelman et al., Bayesian Data Analysis, 3rd ed., eq. 2.12: precisions add, means weigh by them. In logarithms: before
  // -s2/2 with s2 = ln(1 + 0.12^2), 40 meals of spread 0.5 that came to 1.5 times what was meant.
  it('is the posterior of a normal mean in logarithms', () => {
    const [few, many] = facts.kinds.get(KIND)!.stages.find(({ stage }) => stage === 'adult')!.mealItems.value;
    const { mean, variance } = rosterOf(
      roomWith({ meals: 40, items: 40 * 1.5 * ((few + many) / 2) }),
      2,
    ).generosity;
    const before = Math.log(1 + 0.12 ** 2);
    const error = Math.log(1 + 0.5 ** 2) / 40;
    const precision = 1 / before + 1 / error;
    const logMean = (-0.5 + Math.log(1.5) / error) / precision;
    expect(mean).toBeCloseTo(Math.exp(logMean + 1 / precision / 2), 10);
    expect(variance).toBeCloseTo(mean ** 2 * Math.expm1(1 / precision), 10);
  });

  it('is certain where the Book says it does not vary', () => {
    const { mean, variance } = rosterOf(
      roomWith({ meals: 40, items: 200 }, policyWith({ generosityCv: 0 })),
      2,
    ).generosity;
    expect(mean).toBeCloseTo(1, 12);
    expect(variance).toBe(0);
  });
});

describe('meals on record', () => {
  const given = (over: object) => ({
    day: TODAY - 3,
    species: 'acheta-domesticus',
    heads: 2,
    mm: 20,
    ...over,
  });
  const served = (...helpings: ReturnType<typeof given>[]) =>
    servedOnRecord(kind, { ...animalWith(grown) }, { given: helpings, facts });

  it('are counted by the mass of their prey, a meal of two species as one', () => {
    const one = served(given({}));
    const both = served(given({}), given({ species: 'blaptica-dubia' }));
    expect(one.meals).toBe(1);
    expect(both.meals).toBe(1);
    expect(both.items).toBeCloseTo(2 * one.items, 10);
    expect(served(given({ heads: 4 })).items).toBeCloseTo(2 * one.items, 10);
    expect(served(given({ mm: 18 })).items / one.items).toBeCloseTo(0.9 ** 3, 10);
  });

  it('do not tell where the prey is none of the animal’s', () => {
    expect(served(given({ species: 'no-such-prey' }))).toEqual({ meals: 0, items: 0 });
  });
});
