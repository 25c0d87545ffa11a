/** White springtail: all females, laid in batches; the smallest prey that is kept. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { memory, published } from '../sourced.ts';
import { geometricLengths, steadySurvival } from './chain.ts';

const LENGTH_MM = 2.2;
const BATCH = 40;
const INTERVAL_DAYS = 5.4;

export const folsomiaCandida: PreySpecies = {
  code: 'folsomia-candida',
  name: 'Folsomia candida',
  commonName: 'white springtail',
  aliases: [
    'springtail',
    'springtails',
    'white springtails',
    'temperate springtail',
    'f. candida',
    'folsomia',
  ],
  form: 'springtail',
  massPerCubicMm: memory(
    0.03,
    'mg per cubic mm',
    'our own starting value: an ellipsoid of the density of water, a quarter as wide as long',
  ),
  widthPerLength: memory(0.25, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: memory(8, 'C'),
      degreeDays: published(
        102,
        'degree-days',
        'fountainhopkin2005',
        'derived: 8.5 days at 20 C above 8 C (our own)',
      ),
      points: published([{ tempC: 20, days: 8.5 }], 'days', 'fountainhopkin2005', '7-10 days'),
      optimumC: published(21, 'C', 'fountainhopkin2005', 'most eggs hatch'),
      upperStopC: published(28, 'C', 'fountainhopkin2005', 'no hatch above'),
    },
    {
      code: 'young',
      lowerThresholdC: memory(8, 'C'),
      degreeDays: published(
        270,
        'degree-days',
        'fountainhopkin2005',
        'derived: 22.5 days at 20 C above 8 C (our own)',
      ),
      points: published(
        [{ tempC: 20, days: 22.5 }],
        'days',
        'fountainhopkin2005',
        '21-24 days to the sixth instar',
      ),
      optimumC: memory(21, 'C', 'taken from the egg'),
      upperStopC: memory(28, 'C', 'taken from the egg'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 20, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'young',
      kind: 'young',
      span: 'young',
      share: 1,
      survival: memory(
        steadySurvival(20, 0.004, 22.5),
        '1',
        'placeholder, no source: 0.004 a day over 22.5 days',
      ),
      fed: true,
    },
  ],
  immatureCv: memory(0.15, '1'),
  lengthByDevelopment: memory(
    geometricLengths(0.4, LENGTH_MM),
    'mm by share of time from hatch to adult',
    'our own starting value: geometric from the hatchling of 0.4 mm to the adult',
  ),
  adultLengthMm: published(LENGTH_MM, 'mm', 'hopkinKey', 'derived: middle of 1.8-2.6 mm'),
  adult: {
    longevity: published(
      [
        { tempC: 15, days: 187 },
        { tempC: 24, days: 88 },
      ],
      'days',
      'fountainhopkin2005',
      'derived: 240 and 111 days in all, less 53 and 23 to adult by the degree-days',
    ),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: published(
      [{ tempC: 21, perDay: BATCH / INTERVAL_DAYS }],
      'eggs per female and day',
      'fountainhopkin2005',
      'derived: 900 eggs in a life at 21 C, over the 121 days of adult life',
    ),
    brood: {
      young: published(BATCH, 'eggs', 'fountainhopkin2005', 'derived: middle of 30-50 in a batch'),
      youngCv: memory(0.125, '1', 'our own starting value: 30-50 taken as two standard deviations each way'),
      intervalDays: published(
        INTERVAL_DAYS,
        'days',
        'fountainhopkin2005',
        'derived: 900 eggs in batches of 40 over 121 days',
      ),
      tempC: 21,
    },
    firstAfterDays: memory(1, 'days'),
    femaleShare: published(1, '1', 'fountainhopkin2005', 'females alone'),
    hatchShare: memory(0.9, '1', 'placeholder, no source'),
  },
  cup: null,
  sizeClasses: memory(
    [
      { name: 'young', fromMm: 0.4, toMm: 1.3 },
      { name: 'grown', fromMm: 1.3, toMm: 2.6 },
    ],
    'mm',
    'sold by the culture, of all sizes; grown ones 1.8-2.6 mm',
  ),
  holdingLossPerDay: memory(0.005, 'per day', 'our own: about the share that ages out'),
  traits: { hard: false, bites: false },
  notes: [
    'A new culture needs four to six weeks before it is harvested, then once a week; 18-24 °C (care pages).',
    'Above 21 °C the engine slows it until nothing grows at 28 °C: published for the hatch, taken for the young.',
  ],
};
