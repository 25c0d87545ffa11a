/** Silkworm: fast to full size on mulberry, one laying, then it dies; figures from rearing pages. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice } from '../sourced.ts';
import { geometricLengths, steadySurvival } from './chain.ts';

/** Larva of 27.5 days, then 14.5 of spinning and pupa, near 25 C. */
const LARVA = 0.655;
/** A life of 3.5 days less the first. */
const LAYING_DAYS = 2.5;

export const bombyxMori: PreySpecies = {
  code: 'bombyx-mori',
  name: 'Bombyx mori',
  commonName: 'silkworm',
  aliases: ['silkworms', 'silk worm', 'silk worms', 'b. mori', 'bombyx'],
  form: 'silkworm',
  massPerCubicMm: practice(
    0.0115,
    'mg per cubic mm',
    'grown larvae of some 4300 mg at 72 mm: 9500 times a hatchling of 0.45 mg',
    'generalPages',
  ),
  widthPerLength: memory(0.12, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: memory(11, 'C'),
      degreeDays: practice(154, 'degree-days', '11 days at 25 C above 11 C (our own)', 'generalPages'),
      points: disputed(
        practice([{ tempC: 25, days: 11 }], 'days', '10-12 days', 'generalPages'),
        'the narrower range',
        [{ said: '10-14 days after cold storage', source: 'generalPages' }],
      ),
      optimumC: memory(26, 'C'),
      upperStopC: memory(32, 'C'),
    },
    {
      code: 'larva',
      lowerThresholdC: memory(11, 'C'),
      degreeDays: practice(399, 'degree-days', '27.5 days at 25.5 C above 11 C (our own)', 'generalPages'),
      points: disputed(
        practice([{ tempC: 25.5, days: 27.5 }], 'days', '25-30 days', 'generalPages'),
        'read, and in the middle of the others',
        [
          { said: '24 days at 24 °C', source: 'faoSilk' },
          { said: '27 days at 27 °C; 35 days in one cool home', source: 'generalPages' },
        ],
      ),
      optimumC: practice(26, 'C', 'young larvae 27-28 C, older ones 24-25 C', 'generalPages'),
      upperStopC: memory(32, 'C'),
    },
    {
      code: 'cocoon',
      lowerThresholdC: memory(11, 'C'),
      degreeDays: practice(203, 'degree-days', '14.5 days at 25 C above 11 C (our own)', 'generalPages'),
      points: disputed(
        practice(
          [{ tempC: 25, days: 14.5 }],
          'days',
          '2.5 days of spinning and 10-15 as a pupa',
          'generalPages',
        ),
        'the longer of two pages, which names its temperature',
        [{ said: '5-7 days as a pupa', source: 'generalPages' }],
      ),
      optimumC: memory(26, 'C'),
      upperStopC: memory(32, 'C'),
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
        steadySurvival(25.5, 0.003, 27.5),
        '1',
        'placeholder, no source: 0.003 a day over 27.5 days',
      ),
      fed: true,
    },
    {
      name: 'cocoon',
      kind: 'pupa',
      span: 'cocoon',
      share: 1,
      survival: memory([{ tempC: 25, share: 0.95 }], '1', 'placeholder, no source'),
      fed: false,
    },
  ],
  immatureCv: memory(0.06, '1'),
  lengthByDevelopment: practice(
    [...geometricLengths(2.5, 72, LARVA), [1, 72.1]],
    'mm by share of time from hatch to adult',
    'hatchling 2-3 mm, grown larva 70-75 mm; geometric between, by us; cocoon and moth are shorter and are not fed',
    'generalPages',
  ),
  adultLengthMm: memory(20, 'mm', 'moth; our own starting value'),
  adult: {
    longevity: practice([{ tempC: 25, days: 3.5 }], 'days', '2-5 days', 'generalPages'),
    cv: memory(0.3, '1'),
    fed: false,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 25, perDay: 400 / LAYING_DAYS }],
      'eggs per female and day',
      '300-500 eggs once, here over the 2.5 days after the first',
      'generalPages',
    ),
    firstAfterDays: memory(1, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.9, '1', 'placeholder, no source'),
  },
  cup: null,
  sizeClasses: memory(
    [
      { name: 'small', fromMm: 5, toMm: 15 },
      { name: 'medium', fromMm: 15, toMm: 35 },
      { name: 'large', fromMm: 35, toMm: 75 },
    ],
    'mm',
  ),
  holdingLossPerDay: memory(0.01, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'Eats mulberry leaves or a diet made of them, nothing else; young larvae want 80-85 % humidity, older ones 60-65 % (rearing pages).',
    'Eggs of most strains rest until they have been cold: growth of a colony is reckoned as if they did not.',
  ],
};
