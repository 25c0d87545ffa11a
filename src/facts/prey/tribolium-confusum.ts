/** Confused flour beetle: Howe's degree-days through Chapman's 40 days at 27 C. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { storedFoodPest } from './cautions.ts';
import { geometricLengths, steadySurvival } from './chain.ts';
import { flourCrowding } from './flour-crowding.ts';

/** Howe's degree-days of egg 70.3, larva 479.8 and pupa 90.5 as shares of their sum. */
const EGG = 0.11;
const LARVA = 0.749;
const PUPA = 0.141;
const PLACEHOLDER = 'placeholder, no source: 0.006 a day at 27 C';

export const triboliumConfusum: PreySpecies = {
  code: 'tribolium-confusum',
  name: 'Tribolium confusum',
  commonName: 'confused flour beetle',
  aliases: ['flour beetle', 'flour beetles', 't. confusum', 'tribolium'],
  form: 'flour beetle',
  massPerCubicMm: memory(0.045, 'mg per cubic mm', 'a beetle of 3.5 mm weighs about 2 mg, as we recall'),
  widthPerLength: memory(0.33, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: published(15.7, 'C', 'howe1960'),
      degreeDays: disputed(
        published(612.1, 'degree-days', 'howe1960'),
        'its rows agree with one another; alone it gives 54 days at 27 °C, so that the 40 measured there stand beside it',
        [
          {
            said: '260 above 18.8 °C and 404.5 above 15 °C, in rows that look mislabelled',
            source: 'parkfrank1948',
          },
        ],
      ),
      points: published([{ tempC: 27, days: 40 }], 'days', 'chapman1928'),
      optimumC: memory(32, 'C'),
      upperStopC: memory(38, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: EGG,
      survival: memory([{ tempC: 27, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'egg to adult',
      share: LARVA,
      survival: memory(steadySurvival(27, 0.006, LARVA * 40), '1', PLACEHOLDER),
      fed: true,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'egg to adult',
      share: PUPA,
      survival: memory(steadySurvival(27, 0.006, PUPA * 40), '1', PLACEHOLDER),
      fed: false,
    },
  ],
  immatureCv: memory(0.1, '1'),
  lengthByDevelopment: memory(
    [...geometricLengths(1, 6, 0.84), [1, 6.1]],
    'mm by share of time from hatch to adult',
    'our own starting value: larva from 1 to 6 mm; pupa and beetle are shorter',
  ),
  adultLengthMm: practice(3.5, 'mm', '3-4 mm', 'carePages'),
  adult: {
    longevity: memory([{ tempC: 27, days: 180 }], 'days'),
    cv: memory(0.4, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: memory([{ tempC: 27, perDay: 5 }], 'eggs per female and day'),
    firstAfterDays: memory(5, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.9, '1', 'placeholder, no source'),
  },
  cup: null,
  crowding: flourCrowding('measured on the red flour beetle, taken for this species'),
  cautions: [storedFoodPest],
  sizeClasses: memory(
    [
      { name: 'larva', fromMm: 1, toMm: 6.1 },
      { name: 'beetle', fromMm: 3, toMm: 4 },
    ],
    'mm',
    'beetles 3-4 mm from care pages; larvae our own starting value',
  ),
  holdingLossPerDay: memory(0.003, 'per day'),
  traits: { hard: true, bites: false },
  notes: [
    'A gram of flour carries about 14.5 beetles and 44 of all stages at 27 C (Chapman 1928): adults eat eggs and pupae.',
    'The engine comes to 7.8 beetles and 32 of all stages per gram after the same 156 days: 46 % and 27 % too few, with who eats whom taken from the red flour beetle.',
  ],
};
