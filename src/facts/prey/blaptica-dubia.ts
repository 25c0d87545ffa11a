/** Dubia roach: live-bearing and slow; almost everything known of it is keepers' practice. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { roachAllergy } from './cautions.ts';
import { firstYoungSurvival, geometricLengths, laterYoungSurvival } from './chain.ts';
import { crowdedAsCrickets } from './crowded.ts';

const birthToAdult = [{ tempC: 30, share: 0.9 }];
const BROOD = 25;
const INTERVAL_DAYS = 65;
const SPLIT = '90 % from birth to adult; 80 % of the losses put on the first young by us';

export const blapticaDubia: PreySpecies = {
  code: 'blaptica-dubia',
  name: 'Blaptica dubia',
  commonName: 'dubia roach',
  aliases: ['dubia', 'dubias', 'dubia roaches', 'b. dubia', 'orange-spotted roach'],
  form: 'roach',
  massPerCubicMm: published(
    0.035,
    'mg per cubic mm',
    'herreidfull1984',
    'derived: between Blaberus discoidalis (4080 mg, 0.045) and Nauphoeta cinerea (515 mg, 0.026, length with wings)',
  ),
  widthPerLength: memory(0.45, '1'),
  spans: [
    {
      code: 'nymph',
      lowerThresholdC: memory(15, 'C'),
      degreeDays: disputed(
        memory(2250, 'degree-days', 'our own starting value, set so that 30 C takes 150 days'),
        'the thesis gives six numbers for seven instars and no base temperature in what was read',
        [{ said: '457.5, 668, 1031, 1317, 1515 and 2071 degree-days by instar', source: 'wu2013' }],
      ),
      points: practice(
        [
          { tempC: 24, days: 270 },
          { tempC: 30, days: 150 },
        ],
        'days',
        '8-10 months at room temperature, 4-6 months at 27-32 C',
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
      share: 0.15,
      survival: practice(firstYoungSurvival(birthToAdult), '1', SPLIT),
      fed: true,
    },
    {
      name: 'later young',
      kind: 'young',
      span: 'nymph',
      share: 0.85,
      survival: practice(laterYoungSurvival(birthToAdult), '1', SPLIT),
      fed: true,
    },
  ],
  immatureCv: practice(0.2, '1', '4-6 months'),
  lengthByDevelopment: practice(
    geometricLengths(4.5, 42),
    'mm by share of time from birth to adult',
    'newborn 3-6 mm, adult 40-45 mm; geometric between, by us',
  ),
  adultLengthMm: practice(42, 'mm', '40-45 mm'),
  adult: {
    longevity: practice([{ tempC: 28, days: 460 }], 'days', 'females 18-24 months, males 9-10', 'carePages'),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 28, perDay: BROOD / INTERVAL_DAYS }],
      'young per female and day',
      '25 young every 65 days',
      'carePages',
    ),
    brood: {
      young: disputed(
        practice(BROOD, 'young', undefined, 'carePages'),
        'the page that names the interval too',
        [{ said: '20-40 young', source: 'carePages' }],
      ),
      youngCv: memory(0.2, '1', 'our own starting value: 20-40 taken as two standard deviations each way'),
      intervalDays: disputed(
        practice(INTERVAL_DAYS, 'days', 'between broods', 'carePages'),
        'from birth to birth, so longer than the gestation',
        [
          { said: 'birth on day 46 of a gestation', source: 'mallery2014' },
          { said: 'gestation of 28 days at 30 °C', source: 'carePages' },
        ],
      ),
      tempC: 28,
    },
    firstAfterDays: disputed(
      published(
        75,
        'days',
        'mallery2014',
        'derived: birth on day 46 of a gestation, and some 4 weeks (our own) to mate and ovulate',
      ),
      'the one gestation that was watched',
      [{ said: 'gestation of 28 days at 30 °C', source: 'carePages' }],
    ),
    femaleShare: memory(0.5, '1'),
    femalesPerMale: practice(4, 'females', '3-5 females to a male'),
    hatchShare: practice(1, '1', 'bears live young'),
  },
  cup: null,
  crowding: crowdedAsCrickets(42, 0.45),
  cautions: [
    roachAllergy,
    {
      about: 'regulated',
      text: disputed(
        practice(
          'A permit is needed in Florida and Hawaii: check the local rules before ordering.',
          'sentence',
          'a seller of feeder roaches says so, and that no other state asks for one',
          'carePages',
        ),
        'the page of those who send them',
        [{ said: 'Georgia, Louisiana and Alabama too', source: 'generalPages' }],
      ),
    },
  ],
  sizeClasses: practice(
    [
      { name: 'extra small', fromMm: 3, toMm: 6 },
      { name: 'small', fromMm: 6, toMm: 12 },
      { name: 'medium', fromMm: 12, toMm: 19 },
      { name: 'large', fromMm: 19, toMm: 34 },
      { name: 'adult', fromMm: 34, toMm: 45 },
    ],
    'mm',
    'the trade says large 19-30 mm and adult 38-45 mm; the gap closed half way by us',
  ),
  holdingLossPerDay: memory(0.001, 'per day'),
  traits: { hard: false, bites: false },
  notes: [
    'Published growth ratios at a moult (pronotum 1.26, Wu 2013) would leave a nymph of 4.5 mm at 23 mm after seven moults; the adult length rules here.',
    'Of 192 newly mated females kept alone at 28 C, 40 bore young within about ten weeks (McLean et al. 2024).',
    'Below 10 °C it dies (care pages).',
  ],
};
