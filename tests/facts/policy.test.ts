/** The policy's limits are in order. */
import { expect, it } from 'vitest';
import { policy } from '../../src/facts/policy.ts';

it('asks more of "lasts" than of "tight"', () => {
  expect(policy.lastsFrom.value).toBeGreaterThan(policy.tightFrom.value);
});

it('has levels by eye that rise from nothing to all', () => {
  expect(Object.values(policy.levelShares.value)).toEqual([0, 0.05, 0.25, 0.5, 1]);
});
