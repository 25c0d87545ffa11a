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
  // -s2/2 with s2 = ln(1 + 0.12^2), 40 meals of spread 0.5 that came to 1.5 times what was meant, and a hand that changes
  // by 0.05.
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
    expect(variance).toBeCloseTo(mean ** 2 * (Math.expm1(1 / precision) + 0.05 ** 2), 10);
  });

  it('is certain where the Book says it does not vary', () => {
    const { mean, variance } = rosterOf(
      roomWith({ meals: 40, items: 200 }, policyWith({ generosityCv: 0 })),
      2,
    ).generosity;
    expect(mean).toBeCloseTo(1, 12);
    expect(variance).toBe(0);
  });

  it('is never known more closely than a hand changes', () => {
    const { mean, variance } = rosterOf(roomWith({ meals: 1e6, items: 1.2e6 * 1.5 }), 2).generosity;
    expect(Math.sqrt(variance) / mean).toBeGreaterThanOrEqual(0.05);
  });

  it('is not learned from groups, whose heads may have been others then', () => {
    const group = animalWith({ ...grown, count: 10, givenOnRecord: { meals: 24, items: 1920 } });
    expect(rosterOf(snapshotWith({ animals: [group] }), 2).generosity).toMatchObject({ mean: 1, meals: 0 });
  });
});

describe('meals on record', () => {
  const given = (over: object) => ({
    ...{ day: TODAY - 3, species: 'acheta-domesticus', heads: 2, fromMm: 18, toMm: 18 },
    ...over,
  });
  const served = (...helpings: ReturnType<typeof given>[]) =>
    servedOnRecord(kind, animalWith(grown), { given: helpings, facts });
  const { stages, bodyPerGauge } = kind;
  const adult = stages.find(({ stage }) => stage === 'adult')!;
  const idealMm = adult.window.value.ideal * grown.gaugeMm * bodyPerGauge.value;
  const [few, many] = adult.mealItems.value;

  it('are counted by the mass of their prey, a meal of two species as one', () => {
    const both = served(given({}), given({ species: 'blaptica-dubia' }));
    expect(served(given({}))).toEqual({ meals: 1, items: expect.closeTo(2 * (18 / idealMm) ** 3, 9) });
    expect(both).toEqual({ meals: 1, items: expect.closeTo(4 * (18 / idealMm) ** 3, 9) });
  });

  it('are weighed over all their lengths', () => {
    // The mean of L^3, L even from 10 to 20, is (20^4 - 10^4) / (4 x 10).
    const meanCube = (20 ** 4 - 10 ** 4) / 40;
    const { items } = served(given({ fromMm: 10, toMm: 20 }));
    expect(items).toBeCloseTo(2 * Math.max(1 / 3, meanCube / idealMm ** 3), 9);
  });

  it('count a head as a third of an item at least, and as a mean meal at most', () => {
    expect(served(given({ fromMm: 2, toMm: 2 })).items).toBeCloseTo(2 / 3, 9);
    expect(served(given({ fromMm: 90, toMm: 90 })).items).toBeCloseTo(2 * Math.max(1, (few + many) / 2), 9);
  });

  it('do not tell where the prey is none of the animal’s', () => {
    expect(served(given({ species: 'no-such-prey' }))).toEqual({ meals: 0, items: 0 });
    expect(served(given({}), given({ species: 'no-such-prey' }))).toEqual({ meals: 0, items: 0 });
  });
});
