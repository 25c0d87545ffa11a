/** Banded cricket: the one species whose growth, losses, spread and size come from individual records. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { carriesVirus, cricketAllergy, cricketBites, notWildCaught } from './cautions.ts';
import { FIRST_YOUNG, firstYoungSurvival, laterYoungSurvival } from './chain.ts';
import { crowdedAsCrickets } from './crowded.ts';
import { bandedCricketClasses, TRADE_GAPS } from './trade-sizes.ts';

const hatchToAdult = [
  { tempC: 24, share: 0.65 },
  { tempC: 26, share: 0.83 },
  { tempC: 30, share: 0.83 },
  { tempC: 32, share: 0.73 },
  { tempC: 36, share: 0.71 },
  { tempC: 38, share: 0.67 },
];
const SPLIT =
  'derived: survival from hatch to adult; 80 % of the log of the losses falls in the first 14 days (26-36 C pooled)';

/** From day 12 of adult life on, in fifths of the mean time that is left; checked in tests/reference. */
const EGGS_BY_AGE = [
  [0.1, 1.24],
  [0.3, 1.17],
  [0.5, 1.04],
  [0.7, 0.73],
  [0.9, 0.82],
] as const;

export const gryllodesSigillatus: PreySpecies = {
  code: 'gryllodes-sigillatus',
  name: 'Gryllodes sigillatus',
  commonName: 'banded cricket',
  aliases: ['gryllodes', 'g. sigillatus', 'banded crickets', 'tropical house cricket', 'banded'],
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
      lowerThresholdC: published(
        17.3,
        'C',
        'kong2025',
        "derived: the nymph's fitted threshold, taken for the egg",
      ),
      degreeDays: published(141, 'degree-days', 'kong2025', 'derived: 9.58 x (32 - 17.3)'),
      points: published(
        [
          { tempC: 30, days: 10.6 },
          { tempC: 32, days: 9.58 },
        ],
        'days',
        'kong2025',
        '30 C from the life history of 2025 (PubMed 40251933)',
      ),
      optimumC: memory(35, 'C'),
      upperStopC: memory(40, 'C'),
    },
    {
      code: 'nymph',
      lowerThresholdC: published(
        17.29,
        'C',
        'kong2025',
        'derived: least squares of 1/days on C, 24-36 C, R2 0.981',
      ),
      degreeDays: published(574.6, 'degree-days', 'kong2025', 'derived: the same fit'),
      points: published(
        [
          { tempC: 24, days: 93.73 },
          { tempC: 26, days: 66.95 },
          { tempC: 30, days: 43.74 },
          { tempC: 32, days: 37.19 },
          { tempC: 36, days: 30.94 },
          { tempC: 38, days: 34.69 },
        ],
        'days',
        'kong2025',
        'derived: means of 15 to 19 crickets at each temperature',
      ),
      optimumC: published(36, 'C', 'kong2025', 'fastest mean'),
      upperStopC: memory(40, 'C'),
      hardStopC: disputed(
        published(22, 'C', 'kong2025', 'nobody matured at constant 20 or 22 C'),
        'as published, though open: the records were ended on days 56 to 58, and the crickets had grown nine and fourteen times heavier; the engine lets them stand still, so that nobody counts on crickets that may never come',
        [{ said: 'by the line alone some 122 days at 22 °C and 212 at 20 °C', source: 'kong2025' }],
      ),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg',
      share: 1,
      survival: memory([{ tempC: 32, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      cv: published(
        0.154,
        '1',
        'kong2025',
        'derived: laying to first hatchling of 133 batches at 32 C; three slow ones (17, 19 and 38 days) left out',
      ),
      fed: false,
    },
    {
      name: 'first young',
      kind: 'young',
      span: 'nymph',
      share: FIRST_YOUNG,
      survival: published(firstYoungSurvival(hatchToAdult), '1', 'kong2025', SPLIT),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 1 - FIRST_YOUNG,
      survival: published(laterYoungSurvival(hatchToAdult), '1', 'kong2025', SPLIT),
      fed: true,
    },
  ],
  immatureCv: published(0.142, '1', 'kong2025', 'derived: mean of six temperatures, 0.108-0.169'),
  lengthByDevelopment: published(
    [
      [0, 2.4],
      [0.16, 3.7],
      [0.32, 5.8],
      [0.48, 8.3],
      [0.64, 12],
      [0.8, 14.7],
      [0.96, 16.4],
      [1, 16.5],
    ],
    'mm by share of time from hatch to adult',
    'kong2025',
    'derived: median mass at 30 C in weeks 0-6 (0.8 to 244 mg) of 43.74 days, length = (mass / 0.055)^(1/3)',
  ),
  adultLengthMm: published(
    16.5,
    'mm',
    'kong2025',
    'derived: 295 mg females and 182 mg males at 30 C by the cube law; keepers say 13-18 mm',
  ),
  adult: {
    longevity: published(
      [
        { tempC: 24, days: 99.7 },
        { tempC: 26, days: 98.2 },
        { tempC: 30, days: 86.5 },
        { tempC: 32, days: 60.1 },
        { tempC: 36, days: 53.1 },
        { tempC: 38, days: 26.3 },
      ],
      'days',
      'kong2025',
      'derived: means after the final moult',
    ),
    cv: published(0.37, '1', 'kong2025', 'derived: mean of standard deviation over mean, 0.28-0.48'),
    fed: true,
  },
  laying: {
    perFemaleDay: disputed(
      published(
        [{ tempC: 30, perDay: 28.4 }],
        'eggs per female and day',
        'gryllodes2025',
        'derived: 56.74 eggs in 48 h over 30 days, SD 31.77',
      ),
      'counted on females that lay; the other is per pair, and many of its pairs laid little or nothing',
      [{ said: '288 eggs per pair in up to 8 weeks (median 161): 11 per day', source: 'kong2025' }],
    ),
    byAge: published(
      EGGS_BY_AGE,
      'rate over the mean rate, by share of the mean time as a laying adult',
      'kong2025',
      'derived: eggs per pair and day from day 12 on, 62 pairs reared at 30-36 C, few of them left at the end',
    ),
    retireAfterDays: published(
      57,
      'days of adult life',
      'kong2025',
      'derived: at 30 C, where laying has fallen to seven tenths of its mean',
    ),
    firstAfterDays: published(12, 'days', 'kong2025', 'derived: median; mean 16.7; paired after the moult'),
    femaleShare: published(0.56, '1', 'kong2025', 'derived: 79 females, 62 males'),
    hatchShare: published(
      0.76,
      '1',
      'kong2025',
      'derived: share of egg batches with a hatchling (135 of 177, 32 C), taken as the share of eggs',
    ),
  },
  cup: null,
  crowding: crowdedAsCrickets(16.5, 0.25),
  cautions: [cricketAllergy, cricketBites, carriesVirus, notWildCaught],
  sizeClasses: practice(bandedCricketClasses, 'mm', TRADE_GAPS),
  holdingLossPerDay: practice(0.0125, 'per day', '0.005-0.02'),
  traits: { hard: false, bites: true },
  notes: [
    'Nobody matured at constant 20 or 22 C although the fitted threshold is 17.3 C: the straight line needs a hard stop.',
    'Past the optimum the way to the stop at 40 °C is a guess: without its own point, 38 °C would be foretold 78 % too slow.',
    'Raw records: Kong, Vadboncoeur, Bertram and MacMillan 2025, CC-BY 4.0.',
  ],
};
