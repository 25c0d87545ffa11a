/** A small Book for tests of the shell: one spider, one cricket, one fly; the numbers mean nothing. */
import type { Kind, StageRule } from '../../src/husbandry/animals/kind.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import type { PreySpecies } from '../../src/husbandry/prey/species.ts';
import type { Facts } from '../../src/husbandry/snapshot.ts';
import type { Sourced } from '../../src/husbandry/sourced.ts';

const given = <T>(value: T, unit = '1'): Sourced<T> => ({ value, unit, source: 'test', status: 'yours' });

const rule = (stage: StageRule['stage'], fromShareOfAdult: number): StageRule => ({
  stage,
  words: [stage],
  fromShareOfAdult,
  window: given({ min: 0.2, ideal: 0.5, max: 1, killFirstAbove: null }),
  gape: null,
  mealItems: given([1, 2]),
  intervalDays: given([5, 9], 'days'),
  weeklyNeed: given([0.02, 0.1]),
  moult: stage === 'mature male' ? null : { meanDays: given(80), cv: given(0.2), lengthFactor: given(1.25) },
  waitAfterMoultDays: given(6, 'days'),
  retryDays: given(7, 'days'),
  acceptance: given([{ from: 0, to: 1, acceptance: 0.9 }]),
  graceDays: given(3, 'days'),
  safeGapDays: given(60, 'days'),
  urgency: 'ordinary',
  accepts: ['cricket', 'fly'],
  shareCaps: given({}),
  refusesHard: false,
  portions: given(1),
});

const spider: Kind = {
  code: 'test-spider',
  name: 'Aranea probans',
  commonName: 'Test spider',
  aliases: [],
  group: 'tarantula',
  habit: 'terrestrial',
  gauge: 'diagonal leg span',
  bodyPerGauge: given(0.4),
  bodyPerGaugeMale: null,
  massPerCubicMm: given(0.1),
  adultGaugeMm: given([90, 110], 'mm'),
  firstFeedingGaugeMm: given([8, 10], 'mm'),
  stages: [rule('young', 0), rule('juvenile', 0.3), rule('adult', 0.8), rule('mature male', 0.8)],
  cautions: [],
};

const cricket: PreySpecies = {
  code: 'test-cricket',
  name: 'Gryllus probans',
  commonName: 'Test cricket',
  aliases: [],
  form: 'cricket',
  massPerCubicMm: given(0.05),
  widthPerLength: given(0.3),
  spans: [],
  stages: [],
  immatureCv: given(0.14),
  lengthByDevelopment: given([
    [0, 2],
    [1, 20],
  ]),
  adultLengthMm: given(20, 'mm'),
  adult: { longevity: given([]), cv: given(0.2), fed: true },
  laying: null,
  cup: null,
  sizeClasses: given([]),
  holdingLossPerDay: given(0.01),
  traits: { hard: false, bites: true },
  notes: [],
};

const fly: PreySpecies = {
  ...cricket,
  code: 'test-fly',
  name: 'Musca probans',
  commonName: 'Test fly',
  form: 'fly',
  cup: { starters: given(30), yieldPerCup: given(200), discardAfterDays: given(30) },
};

export const smallFacts: Facts = {
  kinds: new Map([[spider.code, spider]]),
  species: new Map([cricket, fly].map((species) => [species.code, species])),
  policy: {
    roundBackDays: given(60, 'days'),
    learnDays: given(120, 'days'),
    smallerItemsMost: given(3, 'items'),
  } as Policy,
};
