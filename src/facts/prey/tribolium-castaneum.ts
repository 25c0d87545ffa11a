/** Red flour beetle: the best measured of the beetles, in growth, laying and who eats whom. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { storedFoodPest } from './cautions.ts';
import { geometricLengths } from './chain.ts';
import { flourCrowding } from './flour-crowding.ts';

/** Howe's degree-days of egg 54.1, larva 267.9 and pupa 78.6 as shares of their sum. */
const EGG = 0.135;
const LARVA = 0.669;
const PUPA = 0.196;

export const triboliumCastaneum: PreySpecies = {
  code: 'tribolium-castaneum',
  name: 'Tribolium castaneum',
  commonName: 'red flour beetle',
  aliases: ['red flour beetles', 't. castaneum', 'rust-red flour beetle'],
  form: 'flour beetle',
  massPerCubicMm: memory(0.045, 'mg per cubic mm', 'a beetle of 3.5 mm weighs about 2 mg, as we recall'),
  widthPerLength: memory(0.33, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: published(17.6, 'C', 'white1987'),
      degreeDays: disputed(
        published(398.6, 'degree-days', 'white1987'),
        'the middle one of the lines, and near the days measured at 30 and 35 °C',
        [
          { said: '381.9 degree-days above 19 °C', source: 'howe1956' },
          { said: '283.3 above 18.7 °C and 509.8 above 18.8 °C', source: 'parkfrank1948' },
        ],
      ),
      points: disputed(
        published(
          [
            { tempC: 30, days: 31.7 },
            { tempC: 35, days: 25 },
          ],
          'days',
          'castaneumLifeTable',
        ),
        'its 38.5 days at 25 °C are left out: three degree-day lines give 45, 54 and 64',
        [
          { said: '38.5 days at 25 °C', source: 'castaneumLifeTable' },
          { said: '54 days at 25 °C, 32.1 at 30, 22.9 at 35', source: 'white1987' },
          { said: '64 days at 25 °C, 35.2 at 30, 24.4 at 35', source: 'howe1956' },
          { said: '45 days at 25 °C, 25.1 at 30, 17.4 at 35', source: 'parkfrank1948' },
        ],
      ),
      optimumC: published(35, 'C', 'howe1956'),
      upperStopC: published(40, 'C', 'howe1956'),
      hardStopC: published(20, 'C', 'howe1956', 'no normal adults at 20 C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: EGG,
      survival: memory([{ tempC: 30, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'egg to adult',
      share: LARVA,
      survival: published(
        [
          { tempC: 25, share: 0.8 },
          { tempC: 35, share: 0.8 },
        ],
        '1',
        'howe1956',
        '0.8 or better but at 40 C or cold and dry; the two temperatures are our own',
      ),
      fed: true,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'egg to adult',
      share: PUPA,
      survival: memory([{ tempC: 30, share: 0.95 }], '1', 'placeholder, no source'),
      fed: false,
    },
  ],
  immatureCv: memory(0.1, '1'),
  lengthByDevelopment: practice(
    [...geometricLengths(1, 5.5, 0.77), [1, 5.6]],
    'mm by share of time from hatch to adult',
    'grown larva 5-6 mm; hatchling and the geometric curve between are our own; pupa and beetle are shorter',
    'generalPages',
  ),
  adultLengthMm: practice(3.4, 'mm', '2.3-4.4 mm', 'generalPages'),
  adult: {
    longevity: disputed(
      practice([{ tempC: 30, days: 200 }], 'days', 'a fact sheet on pests', 'generalPages'),
      'the shorter one, so that a colony is not thought to last longer than it does',
      [{ said: '450-600 days on another fact sheet', source: 'generalPages' }],
    ),
    cv: memory(0.4, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: published(
      [
        { tempC: 20, perDay: 0 },
        { tempC: 22.5, perDay: 2 },
        { tempC: 25, perDay: 3 },
        { tempC: 32.5, perDay: 11 },
      ],
      'eggs per female and day',
      'howe1962',
      'one egg from fifteen females at 20 C, taken as none',
    ),
    firstAfterDays: published(
      5,
      'days',
      'howe1962',
      'derived: at 32 C, between 10 days at 22.5 C and 2 at 37.5 C',
    ),
    femaleShare: memory(0.5, '1'),
    hatchShare: published(0.8, '1', 'howe1956', 'no hatch at or below 17.5 C'),
  },
  cup: null,
  crowding: flourCrowding('measured on this species'),
  cautions: [storedFoodPest],
  sizeClasses: practice(
    [
      { name: 'larva', fromMm: 1, toMm: 5.6 },
      { name: 'beetle', fromMm: 2.3, toMm: 4.4 },
    ],
    'mm',
    'from fact sheets on pests',
    'generalPages',
  ),
  holdingLossPerDay: memory(0.003, 'per day'),
  traits: { hard: true, bites: false },
  notes: [
    'At 25 °C sources span 38 to 64 days from egg to adult; the engine takes 53.',
    'A female lays about 360 eggs in a life at 25 °C (Howe 1962).',
  ],
};
