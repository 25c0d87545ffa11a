/** A bin may die off: rarely, on one day, and most of it at once. */
import { expect, it } from 'vitest';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { countedBin, facts, policyWith, snapshotWith } from '../../support/room.ts';

const bins = [countedBin('B1', 'tenebrio-molitor', { heads: 1000, fromMm: 15, toMm: 20 })];
const certain = {
  hazardCv: 0,
  speedLogSd: 0,
  roomTempSdC: 0,
  countCv: 0,
  doubtGrowthPerDay: 0,
  replicates: 2000,
};
const diedWith = (perDay: number) => {
  const policy = policyWith({ ...certain, dieOffPerDay: perDay, dieOffShare: 0.9 });
  const { larder, tally } = judge(snapshotWith({ bins, facts: { ...facts, policy } }), { days: 8 });
  return (larder.totals.died[0] as number) / tally.replicates;
};

it('loses nine tenths of a bin with the chance given, within four standard errors', () => {
  const perDay = 0.01;
  const chance = 1 - (1 - perDay) ** 7;
  const usual = diedWith(0);
  const expected = usual + chance * 0.9 * (1000 - usual);
  const standardError = 900 * Math.sqrt((chance * (1 - chance)) / certain.replicates);
  expect(Math.abs(diedWith(perDay) - expected)).toBeLessThan(4 * standardError + usual);
});
