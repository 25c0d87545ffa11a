/** Feeding rules of jumping spiders and other true spiders: huntsman, wolf, widow, recluse. */
import type { StageRule } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { memory, practice, published } from '../sourced.ts';
import { cycle, type Range, type RuleDraft, stageRule } from './rule-draft.ts';
import {
  careDays,
  careItems,
  keptDays,
  keptItems,
  ownCycle,
  ownDays,
  ownItems,
  ownNeed,
  przibram,
  wildSpiderNeed,
} from './shared-rules.ts';

const SMALL: readonly PreyForm[] = ['fly', 'cricket', 'springtail'];
const LARGE: readonly PreyForm[] = ['cricket', 'fly', 'roach', 'waxworm'];
const growingNeed = ownNeed(0.3, 1.3);
const spiderling = {
  stage: 'young',
  words: ['spiderling', 'sling'],
  from: 0,
  urgency: 'fragile',
  graceDays: 2,
  accepts: SMALL,
  refusesHard: true,
} as const;

const jumpingWindow = {
  window: [0.3, 0.7, 1.2],
  basis:
    'our own starting value: half of the natural prey of the jumping spider Menemerus taeniatus measured 0.5 to 1.0 of its length, on average 0.9 (as we recall Huseynov 2005)',
} as const;

const jumpingJuvenile: RuleDraft = {
  ...jumpingWindow,
  stage: 'juvenile',
  words: ['juvenile'],
  from: 0.35,
  items: careItems(1, 3),
  interval: careDays(2, 3),
  need: wildSpiderNeed,
  moult: ownCycle(25, przibram),
  wait: memory(3, 'days'),
  retry: memory(2, 'days'),
  graceDays: 2,
  gapDays: 5,
  urgency: 'ordinary',
  accepts: ['fly', 'cricket', 'roach'],
};

const jumping: readonly RuleDraft[] = [
  {
    ...spiderling,
    ...jumpingWindow,
    items: careItems(1, 4),
    interval: careDays(1, 2),
    need: growingNeed,
    moult: ownCycle(14, przibram),
    wait: memory(2, 'days'),
    retry: memory(1, 'days'),
    gapDays: 3,
  },
  jumpingJuvenile,
  { ...jumpingJuvenile, stage: 'subadult', words: ['subadult'], from: 0.6, moult: ownCycle(35, przibram) },
  {
    ...jumpingWindow,
    stage: 'adult',
    words: ['adult'],
    from: 0.8,
    items: careItems(1, 2),
    interval: careDays(2, 7),
    need: wildSpiderNeed,
    moult: null,
    wait: memory(4, 'days'),
    retry: memory(3, 'days'),
    gapDays: 7,
    urgency: 'ordinary',
    accepts: LARGE,
  },
];

export const jumpingSpiderStages: readonly StageRule[] = jumping.map(stageRule);

export type TrueSpider = 'huntsman' | 'wolf' | 'widow' | 'recluse';

interface TrueSpiderTraits {
  readonly window: RuleDraft['window'];
  readonly basis: string;
  /** Days between moults while growing. */
  readonly moultDays: Sourced;
  readonly adultItems: Sourced<Range>;
  readonly adultDays: Sourced<Range>;
}

const NEAR_FORAGE =
  'our own starting value, holding the middle and the upper quartile of spider prey lengths (FoRAGE database V4, 2023)';

const trueSpiders: Readonly<Record<TrueSpider, TrueSpiderTraits>> = {
  huntsman: {
    window: [0.3, 0.7, 1],
    basis: NEAR_FORAGE,
    moultDays: memory(35, 'days'),
    adultItems: keptItems(1, 2),
    adultDays: keptDays(4, 7),
  },
  wolf: {
    window: [0.3, 0.55, 0.9],
    basis: NEAR_FORAGE,
    moultDays: memory(35, 'days'),
    adultItems: keptItems(1, 2),
    adultDays: keptDays(4, 7),
  },
  widow: {
    window: [0.3, 0.8, 1.5],
    basis: 'our own starting value; builders of webs take larger prey than hunters do',
    moultDays: memory(21, 'days'),
    adultItems: ownItems(1, 2),
    adultDays: ownDays(5, 10),
  },
  recluse: {
    window: [0.3, 0.7, 1],
    basis: NEAR_FORAGE,
    moultDays: published(51, 'days', 'loxosceles2005', 'derived: 356 days in seven moults'),
    adultItems: ownItems(1, 2),
    adultDays: ownDays(4, 8),
  },
};

const trueSpiderDrafts = ({
  window,
  basis,
  moultDays,
  adultItems,
  adultDays,
}: TrueSpiderTraits): readonly RuleDraft[] => [
  {
    ...spiderling,
    window,
    basis,
    items: ownItems(1, 2),
    interval: ownDays(2, 4),
    need: growingNeed,
    moult: cycle(moultDays, przibram),
    wait: memory(3, 'days'),
    retry: memory(2, 'days'),
    gapDays: 7,
  },
  {
    stage: 'juvenile',
    words: ['juvenile'],
    from: 0.35,
    window,
    basis,
    items: ownItems(1, 2),
    interval: ownDays(3, 6),
    need: wildSpiderNeed,
    moult: cycle(moultDays, przibram),
    wait: memory(4, 'days'),
    retry: memory(3, 'days'),
    gapDays: 10,
    urgency: 'ordinary',
    accepts: LARGE,
  },
  {
    stage: 'adult',
    words: ['adult'],
    from: 0.8,
    window,
    basis,
    items: adultItems,
    interval: adultDays,
    need: wildSpiderNeed,
    moult: null,
    wait: practice(7, 'days', '7-10 days for small kinds', 'carePages'),
    retry: memory(5, 'days'),
    gapDays: 21,
    urgency: 'robust',
    accepts: LARGE,
  },
];

export const trueSpiderStages = (which: TrueSpider): readonly StageRule[] =>
  trueSpiderDrafts(trueSpiders[which]).map(stageRule);
