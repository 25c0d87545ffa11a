/** Feeding rules of tarantulas by habit and growth class, from spiderling to mature male. */
import type { StageRule } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { memory, practice, published } from '../sourced.ts';
import { cycle, type Range, type RuleDraft, stageRule, steadyAcceptance } from './rule-draft.ts';
import { careDays, careItems, keptDays, keptItems } from './shared-rules.ts';

export type Habit = 'terrestrial' | 'fossorial' | 'arboreal';
export type Growth = 'slow' | 'medium' | 'fast';

const range = (least: number, most: number): Range => [least, most];
const PLACED = 'place in the range by growth class is our choice';

/** Days between moults; common practice 30-75 as spiderling, 60-180 as juvenile, 270-730 as adult female. */
const moultDays: Readonly<
  Record<Growth, Readonly<Record<'young' | 'juvenile' | 'subadult' | 'adult', Sourced>>>
> = {
  slow: {
    young: practice(75, 'days', `30-75; ${PLACED}`),
    juvenile: published(184, 'days', 'vachoni2021', 'mean up to the eighth moult of Grammostola vachoni'),
    subadult: published(233, 'days', 'vachoni2021', 'mean up to the eleventh moult of Grammostola vachoni'),
    adult: practice(560, 'days', `270-730; ${PLACED}`),
  },
  medium: {
    young: practice(60, 'days', `30-75; ${PLACED}`),
    juvenile: practice(140, 'days', `60-180; ${PLACED}`),
    subadult: memory(200, 'days', 'our own starting value, between juvenile and adult'),
    adult: practice(420, 'days', `270-730; ${PLACED}`),
  },
  fast: {
    young: practice(45, 'days', `30-75; ${PLACED}`),
    juvenile: practice(100, 'days', `60-180; ${PLACED}`),
    subadult: memory(160, 'days', 'our own starting value, between juvenile and adult'),
    adult: practice(330, 'days', `270-730; ${PLACED}`),
  },
};

/** The one tarantula measured; with 1.26 (Przibram) 6 to 250 mm would take 16 moults instead of 12. */
const growing = published(1.38, '1', 'vachoni2021', 'growth of 38 % at a moult, read as linear');
const grown = memory(1.05, '1', 'our own starting value: adults grow little');

const needs = {
  young: published(
    range(0.3, 1.3),
    'prey mass per own mass and week',
    'hurd1991',
    'derived: growth by 38 % a moult, efficiency 0.40-0.58, half of the killed mass eaten (Framenau et al. 2000)',
  ),
  juvenile: published(
    range(0.15, 0.5),
    'prey mass per own mass and week',
    'hurd1991',
    'derived: as for spiderlings, with longer times between moults',
  ),
  subadult: memory(
    range(0.03, 0.15),
    'prey mass per own mass and week',
    'our own starting value, between juvenile and adult',
  ),
  adult: published(
    range(0.008, 0.025),
    'prey mass per own mass and week',
    'shillington2005',
    'derived: resting rate of Aphonopelma anax females, 5.87 kJ per g of cricket and 60 % of it extracted (both from memory)',
  ),
  male: memory(
    range(0, 0.055),
    'prey mass per own mass and week',
    'our own starting value: from nothing to 2.2 times the upper need of a female (Shillington 2005)',
  ),
};

const preyOf = (habit: Habit, young: boolean): readonly PreyForm[] => {
  if (young)
    return habit === 'arboreal'
      ? ['cricket', 'fly', 'roach', 'springtail']
      : ['cricket', 'roach', 'fly', 'springtail'];
  return habit === 'arboreal'
    ? ['cricket', 'roach', 'fly', 'waxworm']
    : ['cricket', 'roach', 'mealworm', 'superworm', 'waxworm'];
};

const young = (habit: Habit, growth: Growth): RuleDraft => ({
  stage: 'young',
  words: ['spiderling', 'sling'],
  from: 0,
  window: [0.4, 0.7, 1],
  killFirstAbove: 0.8,
  basis:
    'our own starting value, near the middle of spider prey lengths (FoRAGE database V4, 2023); nothing longer than itself is common practice',
  items: careItems(1, 2),
  interval: careDays(3, 7),
  need: needs.young,
  moult: cycle(moultDays[growth].young, growing),
  wait: practice(5, 'days', '3-7 days', 'carePages'),
  retry: practice(7, 'days', 'offered again after 7-14 days; the shorter for their small reserves'),
  graceDays: 2,
  gapDays: 10,
  urgency: 'fragile',
  accepts: preyOf(habit, true),
  refusesHard: true,
  portions: 3,
});

const TWO_THIRDS = 2 / 3;
const KILLED =
  'our own starting value; live prey up to two thirds of the body, longer prey killed first, is common practice';
const offeredAgain = practice(10, 'days', '7-14 days');

const juvenile = (habit: Habit, growth: Growth): RuleDraft => ({
  stage: 'juvenile',
  words: ['juvenile'],
  from: 0.2,
  window: [0.3, 0.6, 0.9],
  killFirstAbove: TWO_THIRDS,
  basis: KILLED,
  items: careItems(1, 2),
  interval: careDays(4, 7),
  need: needs.juvenile,
  moult: cycle(moultDays[growth].juvenile, growing),
  wait: practice(7, 'days', '7-10 days', 'carePages'),
  retry: offeredAgain,
  gapDays: 14,
  urgency: 'ordinary',
  accepts: preyOf(habit, false),
  portions: 2,
});

const subadult = (habit: Habit, growth: Growth): RuleDraft => ({
  ...juvenile(habit, growth),
  stage: 'subadult',
  words: ['subadult'],
  from: 0.5,
  window: [0.25, 0.5, 0.9],
  items: keptItems(1, 3),
  interval: keptDays(7, 10),
  need: needs.subadult,
  moult: cycle(moultDays[growth].subadult, growing),
  wait: practice(10, 'days', '7-10 days as a juvenile, 10-21 as an adult', 'carePages'),
  gapDays: 18,
  portions: 1,
});

const adult = (habit: Habit, growth: Growth): RuleDraft => ({
  stage: 'adult',
  words: ['adult'],
  from: 0.85,
  window: [0.2, 0.35, 0.8],
  basis: 'our own starting value, below the middle of spider prey lengths: adults are kept, not grown',
  items: growth === 'slow' ? careItems(4, 6) : careItems(1, 3),
  interval: growth === 'slow' ? careDays(14, 21) : careDays(7, 14),
  need: needs.adult,
  moult: cycle(moultDays[growth].adult, grown),
  wait: practice(12, 'days', '10-21 days, 10-14 for medium-sized kinds', 'carePages'),
  retry: offeredAgain,
  gapDays: growth === 'slow' ? 60 : 21,
  urgency: 'robust',
  accepts: preyOf(habit, false),
});

const matureMale = (habit: Habit, growth: Growth): RuleDraft => ({
  ...adult(habit, growth),
  stage: 'mature male',
  words: ['mature male'],
  items: practice(range(0, 1), 'items', 'offer every 14 days, expect refusal'),
  interval: keptDays(10, 30),
  need: needs.male,
  moult: null,
  acceptance: steadyAcceptance(0.5),
  gapDays: 60,
});

/** The five stages of a tarantula. */
export const tarantulaStages = (habit: Habit, growth: Growth): readonly StageRule[] =>
  [young, juvenile, subadult, adult, matureMale].map((draft) => stageRule(draft(habit, growth)));
