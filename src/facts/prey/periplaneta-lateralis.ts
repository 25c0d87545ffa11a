/** Turkestan roach: nymphs by Kim and Rust and a handbook; egg cases by keepers' practice. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { roachAllergy } from './cautions.ts';
import { firstYoungSurvival, geometricLengths, laterYoungSurvival, steadySurvival } from './chain.ts';
import { crowdedAsCrickets } from './crowded.ts';

const EGGS_IN_CASE = 16.8;
const INTERVAL_DAYS = 10;
const hatchToAdult = steadySurvival(26.7, 0.001, 223);
const PLACEHOLDER =
  'placeholder, no source: 0.001 a day over 223 days at 26.7 C, 80 % of it on the first young';

export const periplanetaLateralis: PreySpecies = {
  code: 'periplaneta-lateralis',
  name: 'Periplaneta lateralis',
  commonName: 'Turkestan roach',
  aliases: [
    'red runner',
    'red runners',
    'turkestan roaches',
    'shelfordella lateralis',
    'blatta lateralis',
    'lats',
  ],
  form: 'roach',
  massPerCubicMm: memory(0.035, 'mg per cubic mm', 'taken from blaberid roaches'),
  widthPerLength: memory(0.4, '1'),
  spans: [
    {
      code: 'egg case',
      lowerThresholdC: published(
        18.96,
        'C',
        'kimrust2013',
        "derived: the nymph's line, taken for the egg case",
      ),
      degreeDays: practice(386, 'degree-days', '35 days at 30 C above 18.96 C'),
      points: practice([{ tempC: 30, days: 35 }], 'days', '3-5 weeks at 28-32 C'),
      optimumC: memory(33, 'C'),
      upperStopC: memory(39, 'C'),
    },
    {
      code: 'nymph',
      lowerThresholdC: published(18.96, 'C', 'kimrust2013', 'derived: line through the two durations'),
      degreeDays: published(1727, 'degree-days', 'kimrust2013', 'derived: the same line'),
      points: published(
        [
          { tempC: 26.7, days: 223 },
          { tempC: 32.5, days: 127.5 },
        ],
        'days',
        'kimrust2013',
        'derived: 32.5 C is the middle of 118-137 days at 30-35 C in a handbook of urban insects',
      ),
      optimumC: memory(33, 'C'),
      upperStopC: memory(39, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg case',
      kind: 'egg',
      span: 'egg case',
      share: 1,
      survival: memory([{ tempC: 30, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'first young',
      kind: 'young',
      span: 'nymph',
      share: 0.2,
      survival: memory(firstYoungSurvival(hatchToAdult), '1', PLACEHOLDER),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 0.8,
      survival: memory(laterYoungSurvival(hatchToAdult), '1', PLACEHOLDER),
      fed: true,
    },
  ],
  immatureCv: memory(0.15, '1'),
  lengthByDevelopment: memory(
    geometricLengths(3, 22.5),
    'mm by share of time from hatch to adult',
    'our own starting value: geometric from hatchling to adult',
  ),
  adultLengthMm: published(22.5, 'mm', 'urbanInsects', 'derived: males 19-23 mm, females 22-25 mm'),
  adult: {
    longevity: disputed(
      published([{ tempC: 26.7, days: 612 }], 'days', 'kimrust2013', 'at least'),
      'measured, with its temperature',
      [{ said: 'about a year', source: 'urbanInsects' }],
    ),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: published(
      [{ tempC: 26.7, perDay: EGGS_IN_CASE / INTERVAL_DAYS }],
      'eggs per female and day',
      'kimrust2013',
      'derived: 16.8 eggs in an egg case, one every 10 days (the interval is practice, 7-14 days)',
    ),
    brood: {
      young: published(EGGS_IN_CASE, 'eggs', 'kimrust2013', 'in an egg case; 13.9 nymphs come out'),
      youngCv: memory(0.15, '1'),
      intervalDays: practice(INTERVAL_DAYS, 'days', '7-14 days between egg cases'),
      tempC: 26.7,
    },
    firstAfterDays: memory(14, 'days'),
    femaleShare: memory(0.5, '1'),
    hatchShare: published(0.827, '1', 'kimrust2013', '13.9 nymphs from 16.8 eggs'),
  },
  cup: null,
  crowding: crowdedAsCrickets(22.5, 0.4),
  cautions: [
    roachAllergy,
    {
      about: 'escape',
      text: published(
        'Fast, and settles outdoors where it is warm and dry: it is invasive in places. Open the bin inside a larger tub.',
        'sentence',
        'kimrust2013',
        'invasive by the title; the tub is common practice',
      ),
    },
  ],
  sizeClasses: practice(
    [
      { name: 'small', fromMm: 3, toMm: 7 },
      { name: 'medium', fromMm: 7, toMm: 13 },
      { name: 'large', fromMm: 13, toMm: 20 },
      { name: 'adult', fromMm: 20, toMm: 27 },
    ],
    'mm',
    'the trade says small 3-6, medium 8-12, large 14-20 mm; gaps closed half way by us',
  ),
  holdingLossPerDay: memory(0.001, 'per day'),
  traits: { hard: false, bites: false },
  notes: ['Up to 25 egg cases per female (Kim and Rust 2013).'],
};
