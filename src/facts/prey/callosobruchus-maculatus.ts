/** Bean weevil: it grows unseen inside a bean; only the beetle is fed. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { disputed, memory, practice, published } from '../sourced.ts';
import { storedFoodPest } from './cautions.ts';
import { steadySurvival } from './chain.ts';

/** 4.5 days as an egg, 17 as a larva and 4.5 as a pupa (Salunkhe and Gaikwad 2023) as shares of their sum. */
const EGG = 0.173;
const LARVA = 0.654;
const PUPA = 0.173;
/** Days from egg to adult at 28 C by the published line. */
const DAYS_28 = 33.9;
const PLACEHOLDER = 'placeholder, no source: 0.004 a day at 28 C';
/** A life of 7 days less the 1.5 before the first egg. */
const LAYING_DAYS = 5.5;

export const callosobruchusMaculatus: PreySpecies = {
  code: 'callosobruchus-maculatus',
  name: 'Callosobruchus maculatus',
  commonName: 'bean weevil',
  aliases: ['bean weevils', 'bean beetle', 'bean beetles', 'c. maculatus', 'cowpea weevil', 'cowpea beetle'],
  form: 'bean beetle',
  massPerCubicMm: memory(
    0.2,
    'mg per cubic mm',
    'our own starting value: a stout beetle of 2.8 mm weighs 4-5 mg',
  ),
  widthPerLength: memory(0.55, '1'),
  spans: [
    {
      code: 'egg to adult',
      lowerThresholdC: published(15, 'C', 'utida1971'),
      degreeDays: disputed(
        published(440.1, 'degree-days', 'utida1971'),
        'a published line that a second one bears out; the shorter times name no steady temperature',
        [
          { said: '517.1 degree-days above 12.98 °C: 43 days at 25 °C, 30.4 at 30', source: 'aldana1985' },
          { said: '26 days at the temperature of an Indian room', source: 'salunkhe2023' },
          { said: '3-4 weeks at 28-30 °C, where the line gives 31', source: 'carePages' },
        ],
      ),
      points: published([], 'days', 'utida1971', 'the line only'),
      optimumC: memory(31, 'C'),
      upperStopC: memory(38, 'C'),
    },
  ],
  stages: [
    {
      name: 'egg',
      kind: 'egg',
      span: 'egg to adult',
      share: EGG,
      survival: memory([{ tempC: 28, share: 1 }], '1', 'losses of eggs are in the share that hatches'),
      fed: false,
    },
    {
      name: 'larva in the bean',
      kind: 'young',
      span: 'egg to adult',
      share: LARVA,
      survival: memory(steadySurvival(28, 0.004, LARVA * DAYS_28), '1', PLACEHOLDER),
      fed: false,
    },
    {
      name: 'pupa in the bean',
      kind: 'pupa',
      span: 'egg to adult',
      share: PUPA,
      survival: memory(steadySurvival(28, 0.004, PUPA * DAYS_28), '1', PLACEHOLDER),
      fed: false,
    },
  ],
  immatureCv: memory(0.08, '1'),
  lengthByDevelopment: memory(
    [
      [0, 0.6],
      [0.79, 3],
      [1, 3.1],
    ],
    'mm by share of time from hatch to adult',
    'our own starting value; only beetles are fed',
  ),
  adultLengthMm: published(2.8, 'mm', 'salunkhe2023', 'derived: males 2.3 mm, females 3.23 mm'),
  adult: {
    longevity: disputed(
      practice([{ tempC: 28, days: 7 }], 'days', 'mean of beetles that are not fed', 'generalPages'),
      'a mean, where the other is a range',
      [{ said: '10-14 days', source: 'salunkhe2023' }],
    ),
    cv: memory(0.3, '1'),
    fed: true,
  },
  laying: {
    perFemaleDay: practice(
      [{ tempC: 28, perDay: 100 / LAYING_DAYS }],
      'eggs per female and day',
      'over a hundred in a life, here over the 5.5 days left after the first 1.5',
      'generalPages',
    ),
    firstAfterDays: practice(1.5, 'days', '1-2 days', 'generalPages'),
    femaleShare: memory(0.5, '1'),
    hatchShare: memory(0.9, '1', 'placeholder; an encyclopaedia says that most hatch'),
  },
  cup: null,
  cautions: [
    storedFoodPest,
    {
      about: 'regulated',
      text: published(
        'In the United States a pest of stored food counts as a plant pest, and sending it may need a permit: check the local rules.',
        'sentence',
        'aphis2024',
      ),
    },
  ],
  sizeClasses: published(
    [{ name: 'beetle', fromMm: 2.3, toMm: 3.3 }],
    'mm',
    'salunkhe2023',
    'derived: males 2.3 mm, females 3.23 mm',
  ),
  holdingLossPerDay: memory(0.004, 'per day'),
  traits: { hard: true, bites: false },
  notes: [
    'A jar gives two to three generations before it needs new beans; a bean raises 8-10 larvae at most (handbook and encyclopaedia read).',
    'What is in the beans is not counted: heads are beetles.',
    'Half of the eggs die in 18 hours at 42 °C, half of the larvae in 57 (Loganathan et al. 2011).',
  ],
};
