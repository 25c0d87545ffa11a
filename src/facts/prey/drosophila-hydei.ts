/** Large fruit fly: no measured figures at hand, keepers' practice and memory throughout. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { memory, practice } from '../sourced.ts';

/** Losses as in the small fruit fly. */
const LARVA_OR_PUPA = Math.sqrt(0.85 / 0.95);
const SURVIVAL = 'placeholder, no source: taken from the small fruit fly';

export const drosophilaHydei: PreySpecies = {
  code: 'drosophila-hydei',
  name: 'Drosophila hydei',
  commonName: 'large fruit fly',
  aliases: ['hydei', 'd. hydei', 'large flightless fruit fly'],
  form: 'fly',
  massPerCubicMm: memory(0.0608, 'mg per cubic mm', 'taken from the small fruit fly'),
  widthPerLength: memory(0.35, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: memory(9.5, 'C', 'our own starting value, near that of the small fruit fly'),
      degreeDays: memory(225, 'degree-days'),
      points: practice(
        [
          { tempC: 21, days: 24 },
          { tempC: 24, days: 17 },
        ],
        'days',
        'first flies 14-21 days after set-up at 24 C, 3-4 weeks at 21 C; counted from set-up, not from the egg',
      ),
      optimumC: memory(26, 'C'),
      upperStopC: memory(30, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: 0.07,
      survival: memory([{ tempC: 24, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'egg to adult',
      share: 0.465,
      survival: memory([{ tempC: 24, share: LARVA_OR_PUPA }], '1', SURVIVAL),
      fed: false,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'egg to adult',
      share: 0.465,
      survival: memory([{ tempC: 24, share: LARVA_OR_PUPA }], '1', SURVIVAL),
      fed: false,
    },
  ],
  immatureCv: memory(0.1, '1'),
  lengthByDevelopment: memory(
    [
      [0, 0.6],
      [0.5, 3],
      [1, 3.2],
    ],
    'mm by share of time from hatch to adult',
    'our own starting value; only flies are fed',
  ),
  adultLengthMm: practice(3.2, 'mm', 'about 1/8 in', 'carePages'),
  adult: {
    longevity: memory([{ tempC: 24, days: 25 }], 'days'),
    cv: memory(0.35, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: memory([{ tempC: 24, perDay: 30 }], 'eggs per female and day'),
    firstAfterDays: memory(3, 'days', 'females at 3 days, males at 9', 'markow'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.95, '1', 'placeholder, no source'),
  },
  cup: {
    starters: practice(75, 'flies', '50-100 in a cup of 32 fl oz'),
    yieldPerCup: practice(450, 'flies', '300-600 per cup'),
    discardAfterDays: practice(46, 'days', '42-50 days'),
  },
  sizeClasses: practice([{ name: 'hydei', fromMm: 2.8, toMm: 3.6 }], 'mm', 'about 1/8 in', 'carePages'),
  holdingLossPerDay: memory(0.03, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'First flies come 18-25 days after set-up, most between days 21 and 35 (common practice).',
    'We recall 13-15 days from egg to adult at 25 C.',
  ],
};
