/**
 * Fish in four age classes, and what may be taken of them: S. Agrawal, MA220 population project and its answers
 * (github sagrawalx/teaching @511d468, sp19-b8_ma220). Tolerance: the last digit printed.
 */
import { describe, expect, it } from 'vitest';
import { growthOf, shareToSpare } from '../../src/maths/growth-rate.ts';
import { chainOfMatrix } from '../support/stage-matrix.ts';

const fish = (births: number, survivals: number): number[][] => [
  [0, 1.5 * births, 4.2 * births, 0],
  [0.5 * survivals, 0, 0, 0],
  [0, 0.6 * survivals, 0, 0],
  [0, 0, 0.4 * survivals, 0],
];
const factorOf = (matrix: number[][]): number => growthOf(chainOfMatrix(matrix))!.rate;
const printed = (value: number, digits: number) => expect(Math.abs(value - digits)).toBeLessThan(6e-5);

describe('the fish', () => {
  it('grow by 1.3087 a year', () => printed(factorOf(fish(1, 1)), 1.3087));

  it('grow less with fewer births and deaths more, as the answers have it', () => {
    printed(factorOf(fish(0.85, 0.85)), 1.1124);
    printed(factorOf(fish(0.65, 0.85)), 1.0024);
    printed(factorOf(fish(0.64, 0.85)), 0.9964);
  });

  it('shrink by 0.6544 when half of all are taken, and last when 23 % are but not 24 %', () => {
    printed(factorOf(fish(0.5, 0.5)), 0.6544);
    expect(Math.floor(100 * shareToSpare(factorOf(fish(1, 1))))).toBe(23);
    expect(factorOf(fish(0.77, 0.77))).toBeGreaterThan(1);
    expect(factorOf(fish(0.76, 0.76))).toBeLessThan(1);
  });

  it('last when 35 % of all but the newborn are taken, not 36 %', () => {
    expect(Math.abs(factorOf(fish(1, 0.5)) - 0.8607)).toBeLessThan(1e-4);
    expect(factorOf(fish(1, 0.65))).toBeGreaterThan(1);
    expect(factorOf(fish(1, 0.64))).toBeLessThan(1);
  });
});
