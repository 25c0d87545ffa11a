/** Small fruit fly, flightless strains: egg to adult from 41 strain records; cups by keepers' practice. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { memory, practice, published } from '../sourced.ts';

/** Egg to adult 0.85 uncrowded, with 0.95 of it in the hatch and the rest shared by larva and pupa. */
const LARVA_OR_PUPA = Math.sqrt(0.85 / 0.95);
const SURVIVAL = '85 % from egg to adult when uncrowded, shared out by us';

export const drosophilaMelanogaster: PreySpecies = {
  code: 'drosophila-melanogaster',
  name: 'Drosophila melanogaster',
  commonName: 'small fruit fly',
  aliases: ['melanogaster', 'd. melanogaster', 'fruit fly', 'fruit flies', 'flightless fruit fly', 'mels'],
  form: 'fly',
  massPerCubicMm: published(
    0.0608,
    'mg per cubic mm',
    'lehmann2000',
    'derived: females of 0.95 mg at 2.5 mm (the length is from care pages)',
  ),
  widthPerLength: memory(0.35, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: published(9.8, 'C', 'barnes1984', '41 records range from 8.2 to 13.1 C'),
      degreeDays: published(143, 'degree-days', 'barnes1984'),
      points: published(
        [
          { tempC: 18, days: 17.63 },
          { tempC: 20, days: 14.3 },
          { tempC: 25, days: 9.62 },
          { tempC: 28, days: 8.05 },
          { tempC: 30, days: 11 },
        ],
        'days',
        'pratique',
        'derived: medians over 41 strain records; 30 C (heat stress) as relayed from Ashburner and Thompson 1978',
      ),
      optimumC: published(28, 'C', 'ashburner1978', 'shortest'),
      upperStopC: memory(32, 'C', 'our own starting value; males sterile and pupae dying from 29-30 C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: 0.106,
      survival: memory([{ tempC: 25, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva',
      kind: 'young',
      span: 'egg to adult',
      share: 0.447,
      survival: practice([{ tempC: 25, share: LARVA_OR_PUPA }], '1', SURVIVAL),
      fed: false,
    },
    {
      name: 'pupa',
      kind: 'pupa',
      span: 'egg to adult',
      share: 0.447,
      survival: practice([{ tempC: 25, share: LARVA_OR_PUPA }], '1', SURVIVAL),
      fed: false,
    },
  ],
  immatureCv: memory(0.07, '1'),
  lengthByDevelopment: memory(
    [
      [0, 0.5],
      [0.5, 2.2],
      [1, 2.3],
    ],
    'mm by share of time from hatch to adult',
    'our own starting value; only flies are fed',
  ),
  adultLengthMm: practice(2.3, 'mm', '2-2.5 mm', 'carePages'),
  adult: {
    longevity: practice([{ tempC: 25, days: 21 }], 'days', '14-28 days in a crowded cup; 40-50 with room'),
    cv: memory(0.35, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 25, perDay: 50 }],
      'eggs per female and day',
      '500 in 10 days',
      'carePages',
    ),
    firstAfterDays: practice(2, 'days', 'at 25 C', 'carePages'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.95, '1', 'placeholder, no source'),
  },
  cup: {
    starters: practice(60, 'flies', '50-75 in a cup of 32 fl oz'),
    yieldPerCup: practice(750, 'flies', '500-1000 over the life of a cup of 32 fl oz'),
    discardAfterDays: practice(30, 'days', '28-35 days, because of mites'),
  },
  sizeClasses: practice([{ name: 'melanogaster', fromMm: 2, toMm: 2.5 }], 'mm', '2-2.5 mm', 'carePages'),
  holdingLossPerDay: memory(0.03, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'First flies come 11-14 days after set-up at 23-25 C, most between days 14 and 25 (common practice).',
    'Durations at 25 C: 9.6 days as the median of strains, 8.5 under ideal conditions, 10-12 on care pages.',
    'Past the optimum the way to the stop at 32 °C is a guess: without its own point, 30 °C would be foretold 46 % too slow.',
    'Crowded larvae make fewer and smaller flies, down to a sixth of the mass (Henry et al. 2018).',
  ],
};
