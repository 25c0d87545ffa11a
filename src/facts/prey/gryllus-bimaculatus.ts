/** Two-spotted cricket: egg and nymph by the degree-day lines of Magara et al. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { carriesVirus, cricketAllergy, cricketBites, notWildCaught } from './cautions.ts';
import { FIRST_YOUNG, firstYoungSurvival, geometricLengths, steadySurvival } from './chain.ts';
import { achetaCrowding } from './crowded.ts';
import { cricketClasses, TRADE_GAPS } from './trade-sizes.ts';

/** Days of the nymph at 27 C by the published line: 555.6 / (27 - 16.2). */
const NYMPH_DAYS_27 = 51.4;

export const gryllusBimaculatus: PreySpecies = {
  code: 'gryllus-bimaculatus',
  name: 'Gryllus bimaculatus',
  commonName: 'two-spotted cricket',
  aliases: ['gryllus', 'g. bimaculatus', 'black cricket', 'black crickets', 'field cricket'],
  form: 'cricket',
  massPerCubicMm: published(
    0.055,
    'mg per cubic mm',
    'hack1997',
    'derived: from adult Acheta males of 369 mg at 18.9 mm, taken for this species too',
  ),
  widthPerLength: memory(0.25, '1'),
  spans: [
    {
      code: 'egg',
      lowerThresholdC: published(15.9, 'C', 'magara2024'),
      degreeDays: published(108.7, 'degree-days', 'magara2024'),
      points: published([], 'days', 'magara2024', 'the line only'),
      optimumC: published(32, 'C', 'magara2024'),
      upperStopC: memory(39, 'C', 'our own starting value; Magara et al. saw 37 C completed'),
    },
    {
      code: 'nymph',
      lowerThresholdC: disputed(
        published(16.2, 'C', 'magara2024'),
        'its crickets completed their lives at a constant 20 °C, so that no hard stop is set',
        [
          {
            said: 'no nymph grew at a constant 20 °C, though they did at temperatures that swung about 20 °C',
            source: 'behrens1983',
          },
        ],
      ),
      degreeDays: disputed(
        published(555.6, 'degree-days', 'magara2024'),
        'egg and nymph were measured apart and at many temperatures; strains and diets differ',
        [
          {
            said: '62.2 days from egg to adult at 34 °C, where the line gives 37; 232 at 18 °C, where it gives 360',
            source: 'odhiambo2022',
          },
        ],
      ),
      points: published([], 'days', 'magara2024', 'the line only'),
      optimumC: published(32, 'C', 'magara2024', 'fastest, and fewest deaths'),
      upperStopC: memory(39, 'C', 'our own starting value; Magara et al. saw 37 C completed'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 31, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'first young',
      kind: 'young',
      span: 'nymph',
      share: FIRST_YOUNG,
      survival: memory(
        firstYoungSurvival(steadySurvival(27, 0.002, NYMPH_DAYS_27)),
        '1',
        'placeholder, no source: 0.002 a day over the nymph at 27 C, 80 % of it here',
      ),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 1 - FIRST_YOUNG,
      survival: published(
        [{ tempC: 27, share: 0.89 }],
        '1',
        'jove2022',
        'derived: survival from day 22 to 65',
      ),
      fed: true,
    },
  ],
  immatureCv: memory(0.15, '1'),
  lengthByDevelopment: memory(
    geometricLengths(2.7, 25),
    'mm by share of time from hatch to adult',
    'our own starting value: geometric from hatchling to adult',
  ),
  adultLengthMm: practice(25, 'mm', '20-30 mm; 724 mg at harvest means 23.6 mm by the cube law', 'carePages'),
  adult: {
    longevity: memory(
      [
        { tempC: 28, days: 60 },
        { tempC: 38, days: 26.5 },
      ],
      'days',
      '28 C our own; 38 C is the mean of the sexes in Odhiambo et al.',
    ),
    cv: memory(0.35, '1', 'our own starting value, near the mean of Gryllodes'),
    fed: true,
  },
  laying: {
    perFemaleDay: published(
      [{ tempC: 32, perDay: 57.5 }],
      'eggs per female and day',
      'magara2024',
      'derived: 2302 eggs in a life at 32 C, over 40 laying days (the days are our own)',
    ),
    firstAfterDays: memory(7, 'days'),
    femaleShare: practice(0.5, '1'),
    hatchShare: published(0.7975, '1', 'mitchaothai2024', 'at 31 C'),
  },
  cup: null,
  crowding: {
    by: 'volume',
    headsPerUnit: published(
      5,
      'crickets per litre',
      'jove2022',
      'derived: 0.005 per cubic centimetre kept up for two years at 27 C',
    ),
    deathsPerDayOver: memory(
      achetaCrowding.deathsPerDayOver.value,
      'per day and capacity above the first',
      'taken from the house cricket',
    ),
  },
  cautions: [
    cricketAllergy,
    cricketBites,
    carriesVirus,
    {
      about: 'regulated',
      text: published(
        'Was reported as sold illegally in the pet trade of the United States: check the local rules before ordering.',
        'sentence',
        'weissman2012',
      ),
    },
    notWildCaught,
  ],
  sizeClasses: practice(cricketClasses, 'mm', TRADE_GAPS),
  holdingLossPerDay: memory(0.01, 'per day'),
  traits: { hard: false, bites: true },
  notes: ['Strains and diets differ widely: a bin learns its own speed.'],
};
