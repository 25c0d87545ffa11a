/** Mealworm: egg to adult measured as one at four temperatures; the egg set apart because it alone fails at 15 C. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { larvaAllergy } from './cautions.ts';

/** 7 days of pupa at 26.7 C in about 105 days from hatch to adult at 27 C. */
const PUPA = 0.067;

export const tenebrioMolitor: PreySpecies = {
  code: 'tenebrio-molitor',
  name: 'Tenebrio molitor',
  commonName: 'mealworm',
  aliases: ['mealworms', 't. molitor', 'tenebrio', 'yellow mealworm'],
  form: 'mealworm',
  massPerCubicMm: published(
    0.0039,
    'mg per cubic mm',
    'zimbabweMealworm',
    'derived: between 117 mg at 33 mm (0.0033) and 73 mg at 25 mm (0.0047)',
  ),
  widthPerLength: memory(0.11, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: published(
        11.9,
        'C',
        'heidariparsa2023',
        'derived: the line from egg to adult, taken for the egg',
      ),
      degreeDays: published(98, 'degree-days', 'park2014', 'derived: 7.5 days at 25 C above 11.9 C'),
      points: published([{ tempC: 25, days: 7.5 }], 'days', 'park2014', '7-8 days'),
      optimumC: memory(28, 'C'),
      upperStopC: published(37, 'C', 'heidariparsa2023', 'fitted upper limits 36.8-37.4 C'),
      hardStopC: published(15, 'C', 'koo2013', 'no egg hatched at 15 C'),
    },
    {
      code: 'hatch to adult',
      lowerThresholdC: disputed(
        published(11.9, 'C', 'heidariparsa2023', 'derived: least squares of the four durations'),
        'fits the whole way from egg to adult',
        [{ said: '6.0 °C for the larva alone', source: 'koo2013' }],
      ),
      degreeDays: published(
        1670,
        'degree-days',
        'heidariparsa2023',
        'derived: 1768 from egg to adult less 98 of the egg',
      ),
      points: disputed(
        published(
          [
            { tempC: 20, days: 191.6 },
            { tempC: 23, days: 161.9 },
            { tempC: 25, days: 135.6 },
            { tempC: 27, days: 104.8 },
          ],
          'days',
          'heidariparsa2023',
          'derived: 203.7, 170.71, 143.07 and 111.31 days from egg to adult, less the egg',
        ),
        'four temperatures by one hand',
        [
          { said: '142.8 days as a larva at 27 °C, 162.0 at 31 °C', source: 'moralesramos2024' },
          { said: '110.8 days as a larva at 30 °C, the fastest', source: 'koo2013' },
        ],
      ),
      optimumC: disputed(
        memory(28, 'C', 'our own starting value, between the two'),
        'one study is fastest at 30 °C, another slower and less fit at 31 °C than at 27 °C',
        [
          { said: 'fastest at 30 °C', source: 'koo2013' },
          { said: 'slower at 31 °C than at 27 °C', source: 'moralesramos2024' },
        ],
      ),
      upperStopC: published(37, 'C', 'heidariparsa2023', 'fitted upper limits 36.8-37.4 C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 27, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'hatch to adult',
      share: 1 - PUPA,
      survival: published(
        [{ tempC: 28, share: 0.98 }],
        '1',
        'zimbabweMealworm',
        'Koo saw no deaths from 22 C up',
      ),
      fed: true,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'hatch to adult',
      share: PUPA,
      survival: memory([{ tempC: 27, share: 0.95 }], '1', 'placeholder, no source'),
      fed: false,
    },
  ],
  immatureCv: memory(0.12, '1'),
  lengthByDevelopment: practice(
    [
      [0, 2.2],
      [0.13, 3.2],
      [0.27, 4.6],
      [0.4, 6.6],
      [0.53, 9.5],
      [0.67, 13.6],
      [0.8, 19.5],
      [0.933, 28],
      [1, 28.1],
    ],
    'mm by share of time from hatch to adult',
    'hatchling 2-2.5 mm, grown larva 25-33 mm; geometric between, by us; pupa and beetle are shorter and are not fed',
    'carePages',
  ),
  adultLengthMm: practice(14, 'mm', 'beetle', 'carePages'),
  adult: {
    longevity: practice([{ tempC: 25, days: 75 }], 'days', '60-90 days'),
    cv: memory(0.3, '1'),
    fed: false,
  },
  laying: {
    perFemaleDay: published(
      [
        { tempC: 27, perDay: 5.25 },
        { tempC: 31, perDay: 1.55 },
      ],
      'eggs per female and day',
      'moralesramos2024',
    ),
    firstAfterDays: memory(7, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: published(0.74, '1', 'moralesramos2024', '0.74 at 27 C, 0.27 at 31 C'),
  },
  cup: null,
  crowding: {
    by: 'volume',
    headsPerUnit: disputed(
      published(
        500,
        'grown larvae or beetles per litre of bedding',
        'larvalDensity2022',
        'derived: 0.5 larvae per cubic centimetre, the least of those tested and the best; up to 8 were tested',
      ),
      'larvae are most of a colony; a crate heats up when they are many',
      [{ said: '14 beetles per dm2 give the most young per area', source: 'moralesramos2012' }],
    ),
    deathsPerDayOver: memory(0, 'per day and capacity above the first', 'no deaths by crowding were found'),
  },
  coldStore: {
    fromC: practice(7, 'C', '7-10 C', 'carePages'),
    toC: published(10, 'C', 'errico2021'),
    days: disputed(
      published(120, 'days', 'errico2021', 'at 10 C without much harm'),
      'measured, where the other is what the trade says',
      [{ said: '6-10 weeks at 7-10 °C', source: 'carePages' }],
    ),
    harmBelowC: practice(4, 'C', 'when long', 'carePages'),
  },
  cautions: [larvaAllergy],
  sizeClasses: practice(
    [
      { name: 'mini', fromMm: 8, toMm: 13 },
      { name: 'small', fromMm: 13, toMm: 17 },
      { name: 'medium', fromMm: 17, toMm: 22 },
      { name: 'large', fromMm: 22, toMm: 30 },
      { name: 'giant', fromMm: 30, toMm: 40 },
    ],
    'mm',
    'giant larvae are treated with a hormone',
  ),
  holdingLossPerDay: memory(0.001, 'per day'),
  traits: { hard: true, bites: true },
  notes: [
    'The line holds for 20-28 C only: at 31 C larvae are slower than at 27 C and few eggs hatch (Morales-Ramos et al. 2024).',
    'Females lay most in their second and third week (Morales-Ramos et al. 2012); the engine spreads laying evenly.',
    'Dead or crushed for small spiderlings: the skin is hard and the larva bites and burrows.',
  ],
};
