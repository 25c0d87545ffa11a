/** Kept centipedes and their feeding rules. */
import type { Kind, StageRule } from '../../husbandry/animals/index.ts';
import { memory, practice } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { type RuleDraft, stageRule } from './rule-draft.ts';
import { keptDays, keptItems, ownCycle, ownDays, ownItems, ownNeed } from './shared-rules.ts';

const shape = {
  window: [0.1, 0.25, 0.5],
  basis: 'our own starting value; a third to a half of the body at most is common practice',
} as const;
const growth = memory(1.2, '1');

const drafts: readonly RuleDraft[] = [
  {
    ...shape,
    stage: 'young',
    words: ['pedeling'],
    from: 0,
    items: ownItems(1, 1),
    interval: ownDays(5, 8),
    need: ownNeed(0.1, 0.6),
    moult: ownCycle(75, growth),
    wait: memory(4, 'days'),
    retry: memory(3, 'days'),
    graceDays: 2,
    gapDays: 10,
    urgency: 'fragile',
    accepts: ['cricket', 'fly', 'roach'],
    refusesHard: true,
    portions: 2,
  },
  {
    ...shape,
    stage: 'juvenile',
    words: ['juvenile'],
    from: 0.35,
    items: ownItems(1, 1),
    interval: ownDays(7, 14),
    need: ownNeed(0.05, 0.4),
    moult: ownCycle(150, growth),
    wait: memory(7, 'days'),
    retry: memory(7, 'days'),
    gapDays: 21,
    urgency: 'ordinary',
    accepts: ['cricket', 'roach', 'mealworm', 'superworm', 'waxworm'],
  },
  {
    ...shape,
    stage: 'adult',
    words: ['adult'],
    from: 0.7,
    items: keptItems(1, 2),
    interval: keptDays(7, 14),
    need: ownNeed(0.02, 0.1),
    moult: ownCycle(330, memory(1.05, '1')),
    wait: memory(10, 'days'),
    retry: practice(10, 'days', '7-14 days'),
    gapDays: 28,
    urgency: 'robust',
    accepts: ['cricket', 'roach', 'mealworm', 'superworm', 'waxworm'],
  },
];

const centipedeStages: readonly StageRule[] = drafts.map(stageRule);

const traits: GroupTraits = {
  group: 'centipede',
  gauge: 'body length',
  bodyPerGauge: memory(1, '1', 'the body itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(0.0017, 'mg per cubic mm', 'our own starting value: about 9 g at 175 mm'),
  cautions: ['venom', 'escape', 'live prey near a moult'],
};

const rows: readonly KindRow[] = [
  {
    code: 'centipede',
    name: 'centipede',
    commonName: 'centipede',
    aliases: ['centipedes', 'pede', 'scolopendra'],
    habit: 'terrestrial',
    adult: [110, 160],
    first: [10, 16],
    from: 'own',
  },
  {
    code: 'scolopendra-subspinipes',
    name: 'Scolopendra subspinipes',
    commonName: 'giant centipede',
    aliases: ['s. mutilans', 'scolopendra mutilans', 'vietnamese centipede', 'chinese red head'],
    habit: 'terrestrial',
    adult: [150, 200],
    first: [12, 18],
    from: 'general',
  },
  {
    code: 'scolopendra-polymorpha',
    name: 'Scolopendra polymorpha',
    commonName: 'desert centipede',
    aliases: ['desert tiger centipede'],
    habit: 'desert',
    adult: [90, 130],
    first: [10, 15],
    from: 'memory',
  },
];

export const centipedes: readonly Kind[] = rows.map((row) => kindOf(traits, row, centipedeStages));
