/** Waxworm: stage survival by Mohamed and Coppel, durations from a rearing sheet and a diet study. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { geometricLengths } from './chain.ts';

const TEMPERATURE_ASSUMED = 'the abstract shows no temperature; 30 C is our assumption';

export const galleriaMellonella: PreySpecies = {
  code: 'galleria-mellonella',
  name: 'Galleria mellonella',
  commonName: 'waxworm',
  aliases: ['waxworms', 'wax worm', 'wax worms', 'wax moth larva', 'g. mellonella'],
  form: 'waxworm',
  massPerCubicMm: memory(
    0.0211,
    'mg per cubic mm',
    '330 mg (recalled from Finke 2002) at 25 mm; pupae of 218 mg are published',
    'finke2002',
  ),
  widthPerLength: memory(0.2, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: memory(12, 'C'),
      degreeDays: published(
        88,
        'degree-days',
        'illinoisWaxMoth',
        'derived: 6.5 days at 25.5 C above 12 C (our own)',
      ),
      points: published([{ tempC: 25.5, days: 6.5 }], 'days', 'illinoisWaxMoth', '5-8 days at 24-27 C'),
      optimumC: published(32, 'C', 'illinoisWaxMoth', '29-34 C most favourable'),
      upperStopC: memory(38, 'C'),
    },
    {
      code: 'larva',
      lowerThresholdC: memory(12, 'C'),
      degreeDays: published(524, 'degree-days', 'vikaash', 'derived: 29.1 days at 30 C above 12 C (our own)'),
      points: published([{ tempC: 30, days: 29.1 }], 'days', 'vikaash', TEMPERATURE_ASSUMED),
      optimumC: published(32, 'C', 'illinoisWaxMoth', '29-34 C most favourable'),
      upperStopC: memory(38, 'C'),
    },
    {
      code: 'pupa',
      lowerThresholdC: memory(12, 'C'),
      degreeDays: published(
        152,
        'degree-days',
        'illinoisWaxMoth',
        'derived: 8 days at 31 C above 12 C (our own)',
      ),
      points: published([{ tempC: 31, days: 8 }], 'days', 'illinoisWaxMoth', '8 days to 2 months'),
      optimumC: published(32, 'C', 'illinoisWaxMoth', '29-34 C most favourable'),
      upperStopC: memory(38, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 30, share: 1 }], '1', 'losses of eggs are counted with the first larvae'),
      fed: false,
    },
    {
      name: 'first larva',
      kind: 'young',
      span: 'larva',
      share: 0.25,
      survival: published(
        [{ tempC: 30, share: 0.52 }],
        '1',
        'mohamedcoppel1983',
        `egg to early larva; ${TEMPERATURE_ASSUMED}`,
      ),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'larva',
      share: 0.75,
      survival: published([{ tempC: 30, share: 0.9 }], '1', 'mohamedcoppel1983', TEMPERATURE_ASSUMED),
      fed: true,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'pupa',
      share: 1,
      survival: published([{ tempC: 30, share: 0.73 }], '1', 'mohamedcoppel1983', TEMPERATURE_ASSUMED),
      fed: false,
    },
  ],
  immatureCv: memory(0.12, '1'),
  lengthByDevelopment: published(
    [...geometricLengths(1, 25, 0.78), [1, 25.1]],
    'mm by share of time from hatch to adult',
    'illinoisWaxMoth',
    'derived: hatchling 1 mm, grown larva 25 mm; geometric between, by us; the pupa is not fed',
  ),
  adultLengthMm: published(20, 'mm', 'illinoisWaxMoth'),
  adult: {
    longevity: practice([{ tempC: 30, days: 14 }], 'days', '7-21 days'),
    cv: memory(0.3, '1'),
    fed: false,
  },
  laying: {
    perFemaleDay: published(
      [{ tempC: 30, perDay: 88 }],
      'eggs per female and day',
      'mohamedcoppel1983',
      'derived: 650-1120 eggs in a life, over 10 laying days (the days are our own)',
    ),
    firstAfterDays: memory(1, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(1, '1', 'losses of eggs are counted with the first larvae'),
  },
  cup: null,
  coldStore: {
    fromC: practice(13, 'C', '13-16 C'),
    toC: practice(16, 'C', '13-16 C'),
    days: disputed(practice(42, 'days', '2-6 weeks at 13-16 C'), 'the longest that the trade names', [
      { said: 'kept at 10-21 °C', source: 'carePages' },
    ]),
    harmBelowC: practice(4, 'C', undefined, 'carePages'),
  },
  sizeClasses: memory(
    [
      { name: 'small', fromMm: 10, toMm: 15 },
      { name: 'medium', fromMm: 15, toMm: 20 },
      { name: 'large', fromMm: 20, toMm: 26 },
    ],
    'mm',
  ),
  holdingLossPerDay: memory(0.01, 'per day', 'our own starting value; the trade says 2-6 weeks at 13-16 C'),
  traits: { hard: false, bites: false },
  notes: [
    'Eggs take up to 35 days at 10-16 C (Illinois sheet), so the threshold of 12 C is too high for the egg alone.',
    'Fat: a treat beside other prey, not a staple (common practice).',
  ],
};
