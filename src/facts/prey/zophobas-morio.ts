/** Superworm: egg and first instar by Kim et al.; a larva becomes a pupa only when it is alone. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { larvaAllergy } from './cautions.ts';
import { geometricLengths, steadySurvival } from './chain.ts';

/** Larva of 120 days in about 145 from hatch to adult at 27 C. */
const LARVA = 0.84;

export const zophobasMorio: PreySpecies = {
  code: 'zophobas-morio',
  name: 'Zophobas morio',
  commonName: 'superworm',
  aliases: [
    'superworms',
    'zophobas',
    'z. morio',
    'zophobas atratus',
    'morio worm',
    'morio worms',
    'king worm',
  ],
  form: 'superworm',
  massPerCubicMm: memory(0.0037, 'mg per cubic mm', '610 mg at 55 mm', 'finke2002'),
  widthPerLength: memory(0.11, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: memory(14, 'C'),
      degreeDays: published(94, 'degree-days', 'kim2015', 'derived: 8.5 days at 25 C above 14 C (our own)'),
      points: published([{ tempC: 25, days: 8.5 }], 'days', 'kim2015', '8-9 days at 22-28 C'),
      optimumC: memory(28, 'C'),
      upperStopC: memory(36, 'C'),
    },
    {
      code: 'larva',
      lowerThresholdC: memory(14, 'C'),
      degreeDays: memory(1560, 'degree-days', 'our own starting value: 120 days at 27 C'),
      points: practice([{ tempC: 27, days: 120 }], 'days', '3-5 months to full size'),
      optimumC: memory(28, 'C'),
      upperStopC: memory(36, 'C'),
    },
    {
      code: 'alone',
      lowerThresholdC: memory(14, 'C'),
      degreeDays: practice(110, 'degree-days', '8.5 days at 27 C above 14 C (our own)', 'generalPages'),
      points: practice([{ tempC: 27, days: 8.5 }], 'days', '7-10 days kept alone', 'generalPages'),
      optimumC: memory(28, 'C'),
      upperStopC: memory(36, 'C'),
    },
    {
      code: 'pupa',
      lowerThresholdC: memory(14, 'C'),
      degreeDays: practice(154, 'degree-days', '14 days at 25 C above 14 C (our own)', 'generalPages'),
      points: practice([{ tempC: 25, days: 14 }], 'days', '13-15 days', 'generalPages'),
      optimumC: memory(28, 'C'),
      upperStopC: memory(36, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 25, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'larva',
      share: 1,
      survival: memory(
        steadySurvival(27, 0.001, 120),
        '1',
        'placeholder, no source: 0.001 a day over 120 days at 27 C',
      ),
      fed: true,
    },
    {
      name: 'larva kept alone',
      kind: 'pupa',
      span: 'alone',
      share: 1,
      survival: memory([{ tempC: 27, share: 0.95 }], '1', 'placeholder, no source'),
      fed: false,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'pupa',
      share: 1,
      survival: memory([{ tempC: 25, share: 0.95 }], '1', 'placeholder, no source'),
      fed: false,
    },
  ],
  immatureCv: memory(0.15, '1'),
  lengthByDevelopment: practice(
    [...geometricLengths(2.5, 55, LARVA), [1, 55.1]],
    'mm by share of time from hatch to adult',
    'grown larva 50-60 mm; hatchling and the geometric curve between are our own; pupa and beetle are shorter and are not fed',
    'generalPages',
  ),
  adultLengthMm: memory(25, 'mm', 'beetle; our own starting value'),
  adult: {
    longevity: practice([{ tempC: 27, days: 135 }], 'days', '3-6 months'),
    cv: memory(0.3, '1'),
    fed: false,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 27, perDay: 3 }],
      'eggs per female and day',
      '200-500 eggs in a life, over some 120 days (the days are our own)',
    ),
    firstAfterDays: memory(14, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.9, '1', 'placeholder, no source'),
  },
  cup: null,
  pupatesAlone: true,
  cautions: [
    {
      about: 'bites',
      text: practice('Bites: crush the head for small animals, and take out what is not eaten.', 'sentence'),
    },
    larvaAllergy,
  ],
  sizeClasses: practice(
    [
      { name: 'small', fromMm: 15, toMm: 27 },
      { name: 'medium', fromMm: 27, toMm: 42 },
      { name: 'large', fromMm: 42, toMm: 60 },
    ],
    'mm',
    'the trade says small 15-25, medium 30-40, large 45-57 mm; gaps closed half way by us',
  ),
  holdingLossPerDay: disputed(
    published(
      0.0104,
      'per day',
      'gali2025',
      'derived: 74.64 % alive after 28 days in bedding of 20 % moisture with wet cotton',
    ),
    'the moist bedding is nearer to how they are kept',
    [{ said: '0.080 per day: 10.64 % alive after 28 days in dry bedding', source: 'gali2025' }],
  ),
  traits: { hard: true, bites: true },
  notes: [
    'Never cooled: below 16 °C it suffers and dies (care pages); 21-27 °C is usual.',
    'Crowded larvae stay larvae: a holding bin never turns into beetles; kept alone they become pupae after 7-10 days.',
    'Of larvae followed one by one a quarter became pupae at each of instars 16 and 17 (Kim et al. 2015).',
  ],
};
