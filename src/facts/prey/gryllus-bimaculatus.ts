/** Two-spotted cricket: egg and nymph by the degree-day lines of Magara et al. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { memory, practice, published } from '../sourced.ts';
import { FIRST_YOUNG, firstYoungSurvival, geometricLengths, steadySurvival } from './chain.ts';
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
      lowerThresholdC: published(16.2, 'C', 'magara2024'),
      degreeDays: published(555.6, 'degree-days', 'magara2024'),
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
  sizeClasses: practice(cricketClasses, 'mm', TRADE_GAPS),
  holdingLossPerDay: memory(0.01, 'per day'),
  traits: { hard: false, bites: true },
  notes: [
    'Lower limit disputed: Magara et al. saw life cycles completed at constant 20 C, an older study (as we recall it Behrens et al. 1983) no nymph growing there. No hard stop is set.',
    'At 34 C the line gives 37 days from egg to adult, Odhiambo et al. saw 62: strains and diets differ.',
    'Reported as sold illegally in the United States pet trade (Weissman et al. 2012): check the law before ordering.',
  ],
};
