/** Lobster roach: sizes and broods from works read, durations as we recall them. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { climbsOut, roachAllergy } from './cautions.ts';
import { firstYoungSurvival, geometricLengths, laterYoungSurvival, steadySurvival } from './chain.ts';
import { crowdedAsCrickets } from './crowded.ts';

const ADULT_MM = 27;
const WIDTH = 0.4;
const birthToAdult = steadySurvival(30, 0.001, 78.5);
const PLACEHOLDER =
  'placeholder, no source: 0.001 a day over 78.5 days at 30 C, 80 % of it on the first young';
const BROOD = 33;
const INTERVAL_DAYS = 60;

export const nauphoetaCinerea: PreySpecies = {
  code: 'nauphoeta-cinerea',
  name: 'Nauphoeta cinerea',
  commonName: 'lobster roach',
  aliases: ['lobster roaches', 'lobsters', 'n. cinerea', 'nauphoeta', 'speckled roach', 'cinereous roach'],
  form: 'roach',
  massPerCubicMm: published(
    0.026,
    'mg per cubic mm',
    'coelhomoore1989',
    'derived: males of 515 mg at 27 mm, length with wings',
  ),
  widthPerLength: memory(WIDTH, '1'),
  spans: [
    {
      code: 'nymph',
      lowerThresholdC: memory(15, 'C'),
      degreeDays: memory(1178, 'degree-days', 'our own starting value, set so that 30 C takes 78.5 days'),
      points: memory(
        [{ tempC: 30, days: 78.5 }],
        'days',
        'middle of 72 (males) and 85 (females)',
        'willis1958',
      ),
      optimumC: memory(31, 'C'),
      upperStopC: memory(38, 'C'),
    },
  ],
  stages: [
    {
      name: 'first young',
      kind: 'young',
      span: 'nymph',
      share: 0.2,
      survival: memory(firstYoungSurvival(birthToAdult), '1', PLACEHOLDER),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 0.8,
      survival: memory(laterYoungSurvival(birthToAdult), '1', PLACEHOLDER),
      fed: true,
    },
  ],
  immatureCv: memory(0.15, '1'),
  lengthByDevelopment: memory(
    geometricLengths(4, ADULT_MM),
    'mm by share of time from birth to adult',
    'our own starting value: geometric from the newborn of 4 mm to the adult',
  ),
  adultLengthMm: published(ADULT_MM, 'mm', 'hogue', 'derived: 25-29 mm with wings'),
  adult: {
    longevity: memory(
      [{ tempC: 30, days: 354 }],
      'days',
      'middle of 344 (females) and 365 (males)',
      'willis1958',
    ),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: memory(
      [{ tempC: 30, perDay: BROOD / INTERVAL_DAYS }],
      'young per female and day',
      '33 young every 60 days',
      'willis1958',
    ),
    brood: {
      young: disputed(
        memory(BROOD, 'young', 'mean of a brood', 'willis1958'),
        'a count of young, not of eggs',
        [{ said: '26-40 eggs in an egg case', source: 'hogue' }],
      ),
      youngCv: memory(0.13, '1', 'our own starting value: 26-40 taken as two standard deviations each way'),
      intervalDays: published(
        INTERVAL_DAYS,
        'days',
        'cockroachBook',
        'derived: 55-70 days: gestation and the days until the next eggs ripen',
      ),
      tempC: 30,
    },
    firstAfterDays: disputed(
      published(42.5, 'days', 'cockroachBook', 'derived: middle of a gestation of 35-50 days'),
      'the only figure read; the days until mating are not in it',
      [{ said: 'gestation of 36 days at 30 °C', source: 'willis1958' }],
    ),
    femaleShare: memory(0.5, '1'),
    hatchShare: practice(1, '1', 'bears live young'),
  },
  cup: null,
  crowding: crowdedAsCrickets(ADULT_MM, WIDTH),
  cautions: [climbsOut, roachAllergy],
  sizeClasses: memory(
    [
      { name: 'small', fromMm: 4, toMm: 9 },
      { name: 'medium', fromMm: 9, toMm: 15 },
      { name: 'large', fromMm: 15, toMm: 23 },
      { name: 'adult', fromMm: 23, toMm: 29 },
    ],
    'mm',
  ),
  holdingLossPerDay: memory(0.001, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'Older females bear later and fewer, and their young develop more slowly (textbook on cockroaches).',
    'All durations are for 30 °C and recalled, not read: a bin learns its own speed.',
  ],
};
