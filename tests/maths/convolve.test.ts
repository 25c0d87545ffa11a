/** Sums of independent whole numbers against the binomial distribution. */
import { expect, it } from 'vitest';
import { convolve, momentsOf } from '../../src/maths/convolve.ts';

const TEN_COINS = [1, 10, 45, 120, 210, 252, 210, 120, 45, 10, 1].map((ways) => ways / 1024);

it('ten fair coins have the binomial distribution, its mean and its variance', () => {
  const sum = Array.from({ length: 10 }, () => [0.5, 0.5]).reduce((sum, coin) => [...convolve(sum, coin)]);
  expect(sum).toHaveLength(11);
  sum.forEach((chance, heads) => {
    expect(chance).toBeCloseTo(TEN_COINS[heads]!, 14);
  });
  expect(momentsOf(sum).mean).toBeCloseTo(5, 12);
  expect(momentsOf(sum).variance).toBeCloseTo(2.5, 12);
});

it('nothing for sure adds nothing', () => {
  expect([...convolve([0.25, 0.75], [1])]).toEqual([0.25, 0.75]);
});
