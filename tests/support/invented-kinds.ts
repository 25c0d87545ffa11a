/** A few kinds with invented numbers, for tests that need names, groups and sizes. */
import type { Kind, KindGroup, LifeStage, StageRule } from '../../src/husbandry/animals/kind.ts';
import type { Sourced } from '../../src/husbandry/sourced.ts';

const invented = <T>(value: T): Sourced<T> => ({
  value,
  unit: '1',
  source: 'invented',
  status: 'from memory',
});

interface StageWish {
  readonly stage: LifeStage;
  readonly from: number;
  readonly words?: readonly string[];
}

const stageRule = ({ stage, from, words = [stage] }: StageWish): StageRule => ({
  stage,
  words,
  fromShareOfAdult: from,
  window: invented({ min: 0.2, ideal: 0.5, max: 1, killFirstAbove: null }),
  gape: null,
  mealItems: invented([1, 2] as const),
  intervalDays: invented([7, 14] as const),
  weeklyNeed: invented([0.05, 0.1] as const),
  moult:
    stage === 'mature male'
      ? null
      : { meanDays: invented(60), cv: invented(0.3), lengthFactor: invented(1.5) },
  waitAfterMoultDays: invented(5),
  retryDays: invented(7),
  acceptance: invented([]),
  graceDays: invented(2),
  safeGapDays: invented(30),
  urgency: 'ordinary',
  accepts: ['cricket'],
  shareCaps: invented({}),
  refusesHard: false,
  portions: invented(1),
});

const SPIDER_STAGES: readonly StageWish[] = [
  { stage: 'young', from: 0, words: ['spiderling', 'sling'] },
  { stage: 'juvenile', from: 0.25 },
  { stage: 'subadult', from: 0.65 },
  { stage: 'adult', from: 0.85 },
  { stage: 'mature male', from: 0.85, words: ['mature male'] },
];

interface KindWish {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  readonly group: KindGroup;
  readonly aliases?: readonly string[];
  readonly habit?: string;
  readonly adult: readonly [number, number];
  readonly first: readonly [number, number];
  readonly stages?: readonly StageWish[];
}

const kind = (wish: KindWish): Kind => ({
  code: wish.code,
  name: wish.name,
  commonName: wish.commonName,
  aliases: wish.aliases ?? [],
  group: wish.group,
  habit: wish.habit ?? 'terrestrial',
  gauge: 'diagonal leg span',
  bodyPerGauge: invented(0.45),
  bodyPerGaugeMale: null,
  massPerCubicMm: invented(0.1),
  adultGaugeMm: invented(wish.adult),
  firstFeedingGaugeMm: invented(wish.first),
  stages: (wish.stages ?? SPIDER_STAGES).map(stageRule),
  cautions: [],
});

export const INVENTED_KINDS: readonly Kind[] = [
  kind({
    code: 'b-hamorii',
    name: 'Brachypelma hamorii',
    commonName: 'Mexican red knee',
    aliases: ['brachypelma smithi', 'red knee tarantula'],
    group: 'tarantula',
    adult: [120, 160],
    first: [8, 12],
  }),
  kind({
    code: 'c-versicolor',
    name: 'Caribena versicolor',
    commonName: 'Antilles pinktoe',
    aliases: ['avicularia versicolor'],
    group: 'tarantula',
    habit: 'arboreal',
    adult: [100, 140],
    first: [8, 12],
  }),
  kind({
    code: 'gbb',
    name: 'Chromatopelma cyaneopubescens',
    commonName: 'Green bottle blue',
    aliases: ['gbb'],
    group: 'tarantula',
    adult: [110, 150],
    first: [8, 12],
  }),
  kind({
    code: 'tarantula-ground',
    name: 'Tarantula, ground-dwelling',
    commonName: 'Ground-dwelling tarantula',
    group: 'tarantula',
    adult: [120, 160],
    first: [8, 12],
  }),
  kind({
    code: 'tarantula-tree',
    name: 'Tarantula, arboreal',
    commonName: 'Arboreal tarantula',
    group: 'tarantula',
    habit: 'arboreal',
    adult: [120, 160],
    first: [8, 12],
  }),
  kind({
    code: 'mantid',
    name: 'Mantid',
    commonName: 'Mantis',
    group: 'mantid',
    habit: 'arboreal',
    adult: [60, 80],
    first: [8, 10],
    stages: [
      { stage: 'young', from: 0, words: ['nymph'] },
      { stage: 'juvenile', from: 0.4 },
      { stage: 'adult', from: 0.9 },
    ],
  }),
  kind({
    code: 'scorpion',
    name: 'Scorpion',
    commonName: 'Scorpion',
    group: 'scorpion',
    adult: [80, 120],
    first: [10, 14],
  }),
];
