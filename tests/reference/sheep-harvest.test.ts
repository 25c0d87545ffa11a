/**
 * Sheep harvested each year: Anton and Rorres, Elementary Linear Algebra: Applications Version, Harvesting of Animal
 * Populations (data of Caughley 1967); the best harvest by Rorres 1976, Biometrics 32:945-948, and Rorres and Fair
 * 1975, Math. Biosci. 24:31-46. The text prints 15.0 %, 52.2 % and 19.9 %; tolerance 0.0007.
 */
import { expect, it } from 'vitest';
import { stationaryProgramme, stockOf } from '../../src/husbandry/colony/stationary.ts';
import { growthOf, shareToSpare } from '../../src/maths/growth-rate.ts';
import { solver } from '../../src/maths/linear-programme.ts';
import { chainOfMatrix } from '../support/stage-matrix.ts';

const BIRTHS = [0, 0.045, 0.391, 0.472, 0.484, 0.546, 0.543, 0.502, 0.468, 0.459, 0.433, 0.421];
const SURVIVAL = [0.845, 0.975, 0.965, 0.95, 0.926, 0.895, 0.85, 0.786, 0.691, 0.561, 0.37];
const MATRIX = BIRTHS.map((_, to) =>
  BIRTHS.map((births, from) => (to === 0 ? births : to === from + 1 ? SURVIVAL[from]! : 0)),
);
const near = (value: number, published: number) => expect(Math.abs(value - published)).toBeLessThan(7e-4);

it('bears 15 % of every class to be taken', () => {
  near(shareToSpare(growthOf(chainOfMatrix(MATRIX))!.rate), 0.15);
});

it('yields most when 52.2 % of the first class and all of the ninth are taken, and no other', async () => {
  const everyone = new Float64Array(BIRTHS.length).fill(1);
  const asked = {
    step: MATRIX.map((row) => Float64Array.from(row)),
    takings: [{ share: everyone, least: 0, counts: true }],
    aim: 'most taken',
    limits: [{ perHead: everyone, most: 1 }],
  } as const;
  const solved = (await solver())(stationaryProgramme(asked));
  if (solved.status !== 'optimal') throw new Error(solved.status);
  near(solved.value, 0.199);
  const { standing, taken } = stockOf(asked, solved);
  const shares = standing.map((left, i) => taken[0]![i]! / (taken[0]![i]! + left || 1));
  near(shares[0]!, 0.522);
  near(shares[8]!, 1);
  shares.forEach((share, i) => {
    if (i !== 0 && i !== 8) expect(share).toBeLessThan(1e-9);
  });
});
