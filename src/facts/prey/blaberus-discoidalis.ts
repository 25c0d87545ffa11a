/** Discoid roach: little of its own is published; a near relation, Blaberus craniifer, stands in for it. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { roachAllergy } from './cautions.ts';
import { firstYoungSurvival, geometricLengths, laterYoungSurvival, steadySurvival } from './chain.ts';
import { crowdedAsCrickets } from './crowded.ts';

const ADULT_MM = 45;
const WIDTH = 0.45;
const birthToAdult = steadySurvival(29, 0.0007, 193);
const PLACEHOLDER =
  'placeholder, no source: 0.0007 a day over 193 days at 29 C, 80 % of it on the first young';
const PROXY = 'of Blaberus craniifer, taken for this species';
const BROOD = 25;
const INTERVAL_DAYS = 75;

export const blaberusDiscoidalis: PreySpecies = {
  code: 'blaberus-discoidalis',
  name: 'Blaberus discoidalis',
  commonName: 'discoid roach',
  aliases: ['discoid', 'discoids', 'discoid roaches', 'b. discoidalis'],
  form: 'roach',
  massPerCubicMm: published(
    0.045,
    'mg per cubic mm',
    'herreidfull1984',
    'derived: males of 4080 mg at 45 mm',
  ),
  widthPerLength: memory(WIDTH, '1'),
  spans: [
    {
      code: 'nymph',
      lowerThresholdC: memory(15, 'C'),
      degreeDays: disputed(
        memory(2700, 'degree-days', 'our own starting value: 193 days at 29 C'),
        'lies between the care sheets and the near relation',
        [
          { said: '150 days at 29 °C (4-6 months)', source: 'practice' },
          { said: '257-277 days at 30-36 °C in Blaberus craniifer', source: 'urbanInsects' },
        ],
      ),
      points: memory([], 'days', 'the line only'),
      optimumC: memory(30, 'C'),
      upperStopC: memory(37, 'C'),
    },
  ],
  stages: [
    {
      name: 'first young',
      kind: 'young',
      span: 'nymph',
      share: 0.15,
      survival: memory(firstYoungSurvival(birthToAdult), '1', PLACEHOLDER),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 0.85,
      survival: memory(laterYoungSurvival(birthToAdult), '1', PLACEHOLDER),
      fed: true,
    },
  ],
  immatureCv: memory(0.2, '1'),
  lengthByDevelopment: memory(
    geometricLengths(5, ADULT_MM),
    'mm by share of time from birth to adult',
    'our own starting value: geometric from the newborn of 5 mm to the adult',
  ),
  adultLengthMm: practice(ADULT_MM, 'mm', '35-50 mm of body; 45 mm goes with the males weighed'),
  adult: {
    longevity: published(
      [{ tempC: 28, days: 450 }],
      'days',
      'urbanInsects',
      `derived: middle of 420-480 days ${PROXY}`,
    ),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 28, perDay: BROOD / INTERVAL_DAYS }],
      'young per female and day',
      '25 young; every 75 days is our own',
    ),
    brood: {
      young: disputed(
        practice(BROOD, 'young', 'middle of 20-30'),
        'a count of young of this species, not of eggs of another',
        [{ said: '34 eggs in an egg case of Blaberus craniifer', source: 'urbanInsects' }],
      ),
      youngCv: memory(0.1, '1', 'our own starting value: 20-30 taken as two standard deviations each way'),
      intervalDays: memory(
        INTERVAL_DAYS,
        'days',
        'our own starting value: a gestation of 60 days and 15 more',
      ),
      tempC: 28,
    },
    firstAfterDays: published(
      60,
      'days',
      'cockroachBook',
      `derived: middle of a gestation of 55-65 days ${PROXY}`,
    ),
    femaleShare: memory(0.5, '1'),
    hatchShare: practice(1, '1', 'bears live young'),
  },
  cup: null,
  crowding: crowdedAsCrickets(ADULT_MM, WIDTH),
  cautions: [
    roachAllergy,
    {
      about: 'regulated',
      text: practice(
        'Kept in Florida in place of dubia roaches; rules differ from place to place: check the local ones before ordering.',
        'sentence',
      ),
    },
  ],
  sizeClasses: memory(
    [
      { name: 'small', fromMm: 5, toMm: 13 },
      { name: 'medium', fromMm: 13, toMm: 22 },
      { name: 'large', fromMm: 22, toMm: 35 },
      { name: 'adult', fromMm: 35, toMm: 50 },
    ],
    'mm',
  ),
  holdingLossPerDay: memory(0.001, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'Care sheets say 4-6 months from birth to adult, a handbook 257-277 days at 30-36 °C for the near relation: a bin learns its own speed.',
  ],
};
