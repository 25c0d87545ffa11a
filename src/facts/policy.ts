/** Numbers of the method itself, as the product ships them; the keeper may change each. */
import type { Policy } from '../husbandry/policy.ts';
import { memory, practice, published } from './sourced.ts';

const CHOICE = 'our choice';

export const policy: Policy = {
  replicates: memory(400, 'replicates', CHOICE),
  horizonDays: memory(7, 'days', CHOICE),
  lastsFrom: memory(0.95, '1', 'our choice; 180 meals each 99.8 % sure are all met in 70 % of weeks'),
  tightFrom: memory(0.8, '1', CHOICE),
  eveningSkippedChance: memory(0.12, '1', 'our own starting value; learned from the log'),
  generosityCv: memory(0.12, '1', 'our own starting value; learned from the log'),
  roomTempSdC: memory(1, 'C'),
  moultQ10: published(
    2,
    '1',
    'hatton2019',
    'derived: Q10 of invertebrate metabolism, taken for the moult cycle',
  ),
  moultReferenceC: memory(25, 'C', CHOICE),
  speedLogSd: memory(0.25, '1', 'our own starting value: laboratories differ by 20-40 % on crickets'),
  hazardCv: memory(0.7, '1'),
  countCv: memory(0.05, '1'),
  levelCv: memory(0.35, '1'),
  weighCv: memory(0.1, '1'),
  doubtGrowthPerDay: memory(0.02, 'per day'),
  levelShares: memory(
    { none: 0, 'a few': 0.05, 'a quarter': 0.25, half: 0.5, full: 1 },
    'share of capacity',
    CHOICE,
  ),
  overCountShare: practice(0.075, '1', 'sellers add 5-10 %'),
  overCountCv: memory(0.05, '1'),
  deadOnArrivalShare: published(
    0.0115,
    '1',
    'vendorShipping',
    'crickets of one seller in 2007, by its own word',
  ),
  deliveryLateChance: memory(0.1, 'per day'),
  slices: memory(24, 'slices', CHOICE),
  speedNodes: memory(5, 'nodes', CHOICE),
  groupBandRatio: memory(1.2, '1', CHOICE),
  smallerItemsMost: memory(3, 'items', CHOICE),
  intervalsNeeded: memory(6, 'intervals', CHOICE),
  intervalPriorWeight: memory(6, 'intervals', CHOICE),
  acceptancePriorWeight: memory(10, 'offers', CHOICE),
  coolerByC: memory(4, 'C', CHOICE),
  shopPackHeads: memory(50, 'heads', CHOICE),
};
