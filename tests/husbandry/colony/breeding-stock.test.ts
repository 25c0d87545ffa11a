/** The smallest breeding stock and the largest harvest: stationary indeed, and no smaller or larger will do. */
import { describe, expect, it } from 'vitest';
import { sizedShare } from '../../../src/husbandry/colony/breeding.ts';
import {
  adultsOf,
  fewestBreeders,
  harvested,
  mostTaken,
} from '../../../src/husbandry/colony/breeding-stock.ts';
import { stationaryProgramme } from '../../../src/husbandry/colony/stationary.ts';
import { colonyGrowth, totalHeads } from '../../../src/husbandry/larder/index.ts';
import { breedingAt, dubia, dubiaStock, sixtyMedium, sizeOf, solve } from '../../support/dubia-colony.ts';

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, n, j) => sum + n * b[j]!, 0);

describe('sixty medium dubia a week', () => {
  it('need about 30 females by means, and the males the species needs', () => {
    expect(dubiaStock.females).toBeGreaterThan(25);
    expect(dubiaStock.females).toBeLessThan(40);
    expect(dubiaStock.males).toBeCloseTo(dubiaStock.females / dubia.femalesPerMale, 9);
    expect(dubiaStock.taken[0]).toBeCloseTo(60, 6);
  });

  it('can be borne by the stock found, not by a tenth fewer', () => {
    const perHead = adultsOf(dubia);
    const withMost = (most: number) =>
      solve(
        stationaryProgramme(
          harvested(dubia, sixtyMedium, { aim: { least: perHead }, limits: [{ perHead, most }] }),
        ),
      ).status;
    expect(withMost(dubiaStock.adults * (1 + 1e-6))).toBe('optimal');
    expect(withMost(dubiaStock.adults * 0.9)).toBe('infeasible');
  });

  it('leave a stock that the next day brings back, harvest and surplus apart', () => {
    const { standing, surplus } = dubiaStock;
    const before = Float64Array.from(dubia.day, (row) => dot(row, standing));
    const taken = before.map((n, j) => n - standing[j]!);
    expect(Math.min(...taken)).toBeGreaterThan(-1e-6);
    expect(7 * totalHeads(taken)).toBeCloseTo(60 + surplus, 5);
    const medium = sizedShare(dubia.chain, sixtyMedium[0]!);
    expect(7 * totalHeads(taken.map((n, j) => (medium[j]! > 0 ? n : 0)))).toBeCloseTo(60, 5);
  });

  it('need twice the breeders for twice as many, and more breeders where more sizes are wanted', () => {
    const twice = fewestBreeders(solve, dubia, [{ ...sixtyMedium[0]!, heads: 120 }])!;
    expect(twice.females).toBeCloseTo(2 * dubiaStock.females, 5);
    const more = [...sixtyMedium, { heads: 30, ...sizeOf('blaptica-dubia', 'small') }];
    expect(fewestBreeders(solve, dubia, more)!.females).toBeGreaterThan(dubiaStock.females + 1);
  });
});

describe.each([
  ['blaptica-dubia', 'medium', 28],
  ['tenebrio-molitor', 'medium', 26],
  ['acheta-domesticus', '3/8 in', 29],
] as const)('the largest harvest of %s', (code, name, tempC) => {
  const breeding = breedingAt(code, tempC);
  const size = sizeOf(code, name);
  const room = 500;
  const most = mostTaken(solve, breeding, { size, capacity: { heads: room, bySize: true } });

  it('goes with the room', () => {
    expect(
      mostTaken(solve, breeding, { size, capacity: { heads: 2 * room, bySize: true } }) / most,
    ).toBeCloseTo(2, 6);
  });

  it('is not less than taking the same share of every size can give', () => {
    const { perDay, stable } = colonyGrowth(breeding.rates)!;
    const heads = stable.map((share) => (share * room) / dot(stable, breeding.chain.footprint));
    const even = 7 * (1 - Math.exp(-perDay)) * dot(heads, sizedShare(breeding.chain, size));
    expect(most).toBeGreaterThan(even);
  });

  it('is borne by some number of breeders', () => {
    expect(fewestBreeders(solve, breeding, [{ ...size, heads: most * (1 - 1e-6) }])).not.toBeNull();
  });
});
