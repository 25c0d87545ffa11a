/**
 * Small integer programmes through our solver: p0033 of MIPLIB (optimum 3,089 and, with broken numbers, 2,520.57, as
 * the instance's file says), and Telfa (40, broken 41.25) and Stockco (42) of Winston, Operations Research:
 * Applications and Algorithms, the chapter on integer programming.
 */
import { describe, expect, it } from 'vitest';
import { type LinearProgramme, solver } from '../../src/maths/linear-programme.ts';

const solve = await solver();

function optimumOf(programme: LinearProgramme): number {
  const solved = solve(programme);
  if (solved.status !== 'optimal') throw new Error(solved.status);
  return solved.value;
}

const FIRST = 157;
const WORTH = [
  171, 171, 171, 171, 163, 162, 163, 69, 69, 183, 183, 183, 183, 49, 183, 258, 517, 250, 500, 250, 500, 159,
  318, 159, 318, 159, 318, 159, 318, 114, 228, 159, 318,
];

/** Each at most: the last number; factors by column, named from 157 on as in the file. */
const ROWS: readonly (readonly [most: number, factors: Readonly<Record<number, number>>])[] = [
  [1, { 157: 1, 158: 1, 159: 1, 160: 1 }],
  [1, { 161: 1, 162: 1, 163: 1 }],
  [1, { 164: 1, 165: 1 }],
  [1, { 166: 1, 167: 1, 168: 1, 169: 1, 171: 1 }],
  [-5, { 166: -230, 172: -200, 173: -400 }],
  [
    2700,
    {
      159: 300,
      160: 300,
      161: 285,
      162: 285,
      164: 265,
      165: 265,
      168: 230,
      169: 230,
      170: 190,
      178: 200,
      179: 400,
      180: 200,
      181: 400,
      182: 200,
      183: 400,
      184: 200,
      185: 400,
      186: 200,
      187: 400,
    },
  ],
  [
    -2600,
    {
      159: -300,
      160: -300,
      161: -285,
      162: -285,
      164: -265,
      165: -265,
      168: -230,
      169: -230,
      170: -190,
      178: -200,
      179: -400,
      180: -200,
      181: -400,
      182: -200,
      183: -400,
      184: -200,
      185: -400,
      186: -200,
      187: -400,
    },
  ],
  [-100, { 160: -300, 186: -200, 187: -400 }],
  [-900, { 157: -300, 162: -285, 165: -265, 170: -190, 182: -200, 183: -400 }],
  [
    -1656,
    {
      157: -300,
      159: -300,
      162: -285,
      165: -265,
      169: -230,
      170: -190,
      182: -200,
      183: -400,
      184: -200,
      185: -400,
    },
  ],
  [-335, { 161: -285, 164: -265, 167: -230, 178: -200, 179: -400 }],
  [-1026, { 161: -285, 164: -265, 167: -230, 168: -230, 178: -200, 179: -400, 180: -200, 181: -400 }],
  [-5, { 158: -300, 174: -200, 175: -400 }],
  [-500, { 158: -300, 174: -200, 175: -400, 176: -200, 177: -400 }],
  [-270, { 163: -285, 188: -200, 189: -400 }],
];

const NO_LEAST = Number.NEGATIVE_INFINITY;

const p0033 = (whole: boolean): LinearProgramme => ({
  sense: 'least',
  worth: Float64Array.from(WORTH),
  most: new Float64Array(WORTH.length).fill(1),
  whole: new Uint8Array(WORTH.length).fill(Number(whole)),
  rows: ROWS.map(([most, factors]) => ({
    least: NO_LEAST,
    most,
    columns: Object.keys(factors).map((name) => Number(name) - FIRST),
    factors: Object.values(factors),
  })),
});

describe('p0033', () => {
  it('is 3,089 in whole numbers', () => {
    expect(optimumOf(p0033(true))).toBeCloseTo(3089, 6);
  });

  it('is 2,520.57 broken', () => {
    expect(optimumOf(p0033(false))).toBeCloseTo(2520.57, 2);
  });
});

const telfa = (whole: boolean): LinearProgramme => ({
  sense: 'most',
  worth: Float64Array.of(8, 5),
  most: new Float64Array(2).fill(Number.POSITIVE_INFINITY),
  whole: new Uint8Array(2).fill(Number(whole)),
  rows: [
    { least: NO_LEAST, most: 6, columns: [0, 1], factors: [1, 1] },
    { least: NO_LEAST, most: 45, columns: [0, 1], factors: [9, 5] },
  ],
});

describe('of Winston', () => {
  it('Telfa is 40 in whole numbers and 41.25 broken', () => {
    expect(optimumOf(telfa(true))).toBeCloseTo(40, 6);
    expect(optimumOf(telfa(false))).toBeCloseTo(41.25, 6);
  });

  it('Stockco is 42', () => {
    const stockco: LinearProgramme = {
      sense: 'most',
      worth: Float64Array.of(16, 22, 12, 8),
      most: new Float64Array(4).fill(1),
      whole: new Uint8Array(4).fill(1),
      rows: [{ least: NO_LEAST, most: 14, columns: [0, 1, 2, 3], factors: [5, 7, 4, 3] }],
    };
    expect(optimumOf(stockco)).toBeCloseTo(42, 6);
  });
});
