/** House cricket: egg to adult measured as one by Odhiambo et al.; sizes and ages of the trade. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { cricketAllergy, cricketBites, notWildCaught } from './cautions.ts';
import { FIRST_YOUNG, firstYoungSurvival, laterYoungSurvival } from './chain.ts';
import { achetaCrowding } from './crowded.ts';
import { cricketClasses, TRADE_GAPS } from './trade-sizes.ts';

const EGG = 0.181;
const NYMPH = 1 - EGG;
const rearing = [25, 30, 35].map((tempC) => ({ tempC, share: 0.815 }));
const SPLIT = 'derived: middle of 0.80-0.83, split 80 to 20 between first and later young as in Gryllodes';

export const achetaDomesticus: PreySpecies = {
  code: 'acheta-domesticus',
  name: 'Acheta domesticus',
  commonName: 'house cricket',
  aliases: ['acheta', 'a. domesticus', 'house crickets', 'cricket', 'crickets'],
  form: 'cricket',
  massPerCubicMm: published(
    0.055,
    'mg per cubic mm',
    'hack1997',
    'derived: adult males of 369 mg at 18.9 mm; also fits hatchlings of 0.75 mg at 2.4 mm',
  ),
  widthPerLength: memory(0.25, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: published(12.1, 'C', 'odhiambo2022', 'derived: line through the two durations'),
      degreeDays: published(1188, 'degree-days', 'odhiambo2022', 'derived: the same line'),
      points: disputed(
        published(
          [
            { tempC: 18, days: 200.5 },
            { tempC: 30, days: 66.26 },
          ],
          'days',
          'odhiambo2022',
        ),
        'the only ones measured from egg to adult at two temperatures; they leave 54 days to the nymph at 30 °C',
        [
          { said: '4 weeks as a nymph at 30 °C, 5-6 weeks at 25 °C', source: 'breederPages' },
          { said: 'about 7 weeks as a nymph at 30 °C', source: 'clifford1990' },
        ],
      ),
      optimumC: disputed(
        published(35, 'C', 'vadboncoeur2025', 'growth x survival x rate peaked at 35 C over 26-41 C'),
        'measured over the wider range of temperatures',
        [{ said: '26-34 °C as the best band', source: 'odhiambo2022' }],
      ),
      upperStopC: memory(40, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: EGG,
      survival: memory([{ tempC: 30, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      cv: published(
        0.2,
        '1',
        'mitchaothai2024',
        'derived: 2.78 over 13.70 days, eight temperatures of 23-33 C pooled',
      ),
      fed: false,
    },
    {
      name: 'first young',
      kind: 'young',
      span: 'egg to adult',
      share: NYMPH * FIRST_YOUNG,
      survival: published(firstYoungSurvival(rearing), '1', 'takacs2023', SPLIT),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'egg to adult',
      share: NYMPH * (1 - FIRST_YOUNG),
      survival: published(laterYoungSurvival(rearing), '1', 'takacs2023', SPLIT),
      fed: true,
    },
  ],
  immatureCv: memory(0.12, '1'),
  lengthByDevelopment: practice(
    [
      [0, 2.2],
      [0.17, 3.5],
      [0.3, 6],
      [0.45, 9],
      [0.61, 12.5],
      [0.79, 17],
      [1, 20],
    ],
    'mm by share of time from hatch to adult',
    'ages of the trade sizes at 29-31 C over 41 days from hatch to adult',
  ),
  adultLengthMm: practice(20, 'mm', 'care pages 16-21 mm, the trade 20-25 mm', 'carePages'),
  adult: {
    longevity: practice(
      [
        { tempC: 25, days: 70 },
        { tempC: 30, days: 56 },
        { tempC: 38, days: 23.4 },
      ],
      'days',
      '8-10 weeks at 25-30 C, spread over the two by us; 38 C is the mean of the sexes in Odhiambo et al.',
    ),
    cv: memory(0.35, '1', 'our own starting value, near the mean of Gryllodes'),
    fed: true,
  },
  laying: {
    perFemaleDay: published(
      [
        { tempC: 18, perDay: 1.8 },
        { tempC: 26, perDay: 25 },
      ],
      'eggs per female and day',
      'odhiambo2022',
      'derived: 101 and 1360 eggs in a life, over some 55 laying days (the days are our own)',
    ),
    firstAfterDays: practice(9, 'days', '8-10 days', 'carePages'),
    femaleShare: practice(0.5, '1'),
    hatchShare: published(0.62, '1', 'mitchaothai2024', 'peak hatch 62-65.5 % at 30 C'),
  },
  cup: null,
  crowding: achetaCrowding,
  cautions: [
    cricketAllergy,
    cricketBites,
    {
      about: 'virus',
      text: published(
        'A densovirus kills this species and none of the four others in trade: clean tools between bins.',
        'sentence',
        'weissman2012',
      ),
    },
    {
      about: 'virus',
      text: published(
        'On one farm 47 % of the crickets carried it, more in winter: keep new crickets apart, and buy from more than one source.',
        'sentence',
        'vetsci2025',
      ),
    },
    notWildCaught,
  ],
  sizeClasses: practice(cricketClasses, 'mm', TRADE_GAPS),
  holdingLossPerDay: practice(0.02, 'per day', '0.01-0.03, a good bin and a poor one at 22-28 C'),
  traits: { hard: false, bites: true },
  notes: [
    'Laboratories and breeders disagree by a factor of two on how long its nymphs take: a bin learns its own speed.',
    'A densovirus kills this species and none of the four others in trade (Weissman et al. 2012): a second species in the larder is the insurance.',
    'Inactive below about 20 C (care pages).',
  ],
};
