/** Heads of a box nobody counted whole, what a head of a pack weighs, and until when dead prey can be claimed. */
import { describe, expect, it } from 'vitest';
import {
  claimBy,
  headMassBetween,
  headsByMass,
  headsByPart,
  headsBySample,
} from '../../../src/husbandry/orders/index.ts';
import { diceOf } from '../../support/sequences/draw.ts';

describe('heads by a sample', () => {
  it('are the sample over its weight times all the weight', () => {
    // 25 of 2.0 g, all 40 g: 500 heads; 0.3 sqrt((1 - 25/500) / 25) = 0.05848 of them.
    const { heads, standardError } = headsBySample(
      { heads: 25, massMg: 2000, allMg: 40_000 },
      { headCv: 0.3, scaleCv: 0 },
    );
    expect(heads).toBe(500);
    expect(standardError).toBeCloseTo(500 * 0.3 * Math.sqrt(0.95 / 25), 10);
  });

  it('are doubted for two weighings, too', () => {
    const { standardError } = headsBySample(
      { heads: 500, massMg: 40_000, allMg: 40_000 },
      { headCv: 0.3, scaleCv: 0.02 },
    );
    expect(standardError).toBeCloseTo(500 * 0.02 * Math.SQRT2, 10);
  });
});

describe('heads by a part of the box', () => {
  it('are the counted over the share', () => {
    expect(headsByPart(60, 0.25)).toEqual({ heads: 240, standardError: Math.sqrt((240 * 0.75) / 0.25) });
    expect(headsByPart(60, 1)).toEqual({ heads: 60, standardError: 0 });
  });

  it('scatter as their standard error says', () => {
    const dice = diceOf(3);
    const told = Array.from({ length: 4000 }, () => {
      const counted = Array.from({ length: 400 }, () => dice.often(0.2)).filter(Boolean).length;
      return headsByPart(counted, 0.2).heads;
    });
    const mean = told.reduce((a, b) => a + b) / told.length;
    const sd = Math.sqrt(told.reduce((sum, n) => sum + (n - mean) ** 2, 0) / told.length);
    expect(mean).toBeCloseTo(400, -1);
    expect(sd / headsByPart(80, 0.2).standardError).toBeCloseTo(1, 1);
  });
});

describe('the mass of a head of a pack', () => {
  it('is that of the mean cube: 64.75 times as much for lengths from 1 to 6', () => {
    // (6^4 - 1) / (4 x 5) = 64.75; (6^7 - 1) / (7 x 5) = 7998.14.
    const { meanMg, cv } = headMassBetween({ fromMm: 1, toMm: 6 }, 2);
    expect(meanMg).toBeCloseTo(2 * 64.75, 12);
    expect(cv).toBeCloseTo(Math.sqrt(279_935 / 35 / 64.75 ** 2 - 1), 12);
  });

  it('has no spread where all are of one length', () => {
    expect(headMassBetween({ fromMm: 4, toMm: 4 }, 0.5)).toEqual({ meanMg: 32, cv: 0 });
  });

  it('makes heads of the weight of a box', () => {
    expect(headsByMass(6400, 32, 0.1)).toEqual({ heads: 200, standardError: 20 });
  });
});

describe('a claim', () => {
  it('ends so many hours from the door', () => {
    expect(claimBy(100, '14:30', 24)).toEqual({ day: 101, time: '14:30' });
    expect(claimBy(100, '23:05', 2)).toEqual({ day: 101, time: '01:05' });
    expect(claimBy(100, '09:00', 6)).toEqual({ day: 100, time: '15:00' });
  });

  it('ends at an unknown hour of the first day it may, where nobody said when the box came', () => {
    expect(claimBy(100, null, 24)).toEqual({ day: 101, time: null });
    expect(claimBy(100, null, 4)).toEqual({ day: 100, time: null });
  });
});
