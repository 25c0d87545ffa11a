/** Kept whip spiders and their feeding rules. */
import type { Kind, StageRule } from '../../husbandry/animals/index.ts';
import { memory, practice } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { type RuleDraft, stageRule } from './rule-draft.ts';
import { ownCycle, ownDays, ownItems, ownNeed, przibram } from './shared-rules.ts';

const shape = { window: [0.25, 0.5, 0.8], basis: 'our own starting value, taken from scorpions' } as const;

const drafts: readonly RuleDraft[] = [
  {
    ...shape,
    stage: 'young',
    words: ['whipling', 'nymph'],
    from: 0,
    items: ownItems(1, 2),
    interval: ownDays(3, 7),
    need: ownNeed(0.1, 0.6),
    moult: ownCycle(60, przibram),
    wait: memory(5, 'days'),
    retry: memory(3, 'days'),
    graceDays: 2,
    gapDays: 10,
    urgency: 'fragile',
    accepts: ['cricket', 'fly', 'roach'],
    refusesHard: true,
  },
  {
    ...shape,
    stage: 'juvenile',
    words: ['juvenile'],
    from: 0.4,
    items: ownItems(1, 2),
    interval: ownDays(5, 10),
    need: ownNeed(0.05, 0.25),
    moult: ownCycle(120, przibram),
    wait: memory(7, 'days'),
    retry: memory(7, 'days'),
    gapDays: 18,
    urgency: 'ordinary',
    accepts: ['cricket', 'roach'],
  },
  {
    ...shape,
    stage: 'adult',
    words: ['adult'],
    from: 0.8,
    items: ownItems(1, 2),
    interval: ownDays(7, 14),
    need: ownNeed(0.01, 0.1),
    moult: ownCycle(330, memory(1.05, '1')),
    wait: memory(10, 'days'),
    retry: practice(10, 'days', '7-14 days'),
    gapDays: 28,
    urgency: 'robust',
    accepts: ['cricket', 'roach'],
  },
];

const whipSpiderStages: readonly StageRule[] = drafts.map(stageRule);

const traits: GroupTraits = {
  group: 'whip spider',
  gauge: 'body length',
  bodyPerGauge: memory(1, '1', 'the body itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(0.07, 'mg per cubic mm'),
  cautions: ['live prey near a moult'],
};

const rows: readonly KindRow[] = [
  {
    code: 'whip-spider',
    name: 'whip spider',
    commonName: 'whip spider',
    aliases: ['whip spiders', 'tailless whip scorpion', 'amblypygid', 'amblypygi'],
    habit: 'rock',
    adult: [25, 40],
    first: [5, 7],
    from: 'own',
  },
  {
    code: 'damon-diadema',
    name: 'Damon diadema',
    commonName: 'Tanzanian whip spider',
    aliases: ['damon'],
    habit: 'rock',
    adult: [28, 40],
    first: [5, 7],
    from: 'memory',
  },
];

export const whipSpiders: readonly Kind[] = rows.map((row) => kindOf(traits, row, whipSpiderStages));
