/** Kept scorpions and their feeding rules; the reference length is the trunk without the tail. */
import type { Kind, StageRule } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import { memory, practice, published } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { cycle, type RuleDraft, stageRule } from './rule-draft.ts';
import { keptDays, keptItems, ownDays, ownItems, ownNeed } from './shared-rules.ts';

const shape = {
  window: [0.25, 0.5, 0.8],
  killFirstAbove: 0.7,
  basis: 'our own starting value; no longer than the trunk, soft prey larger, is common practice',
} as const;
const growth = published(
  1.38,
  '1',
  'mesaensis1979',
  'Paruroctonus mesaensis; Centruroides gracilis 1.25 (Francke and Jones 1982)',
);
const moultDays = (days: number) =>
  practice(days, 'days', '45-150 as young; the place in the range is our choice');
const PREY: readonly PreyForm[] = ['cricket', 'roach', 'mealworm', 'superworm', 'waxworm'];

const drafts: readonly RuleDraft[] = [
  {
    ...shape,
    stage: 'young',
    words: ['scorpling'],
    from: 0,
    items: keptItems(1, 1),
    interval: keptDays(3, 7),
    need: ownNeed(0.1, 0.5),
    moult: cycle(moultDays(60), growth),
    wait: memory(4, 'days'),
    retry: memory(3, 'days'),
    graceDays: 2,
    gapDays: 10,
    urgency: 'fragile',
    accepts: ['cricket', 'roach', 'fly'],
    refusesHard: true,
    portions: 2,
  },
  {
    ...shape,
    stage: 'juvenile',
    words: ['juvenile'],
    from: 0.4,
    items: ownItems(1, 2),
    interval: ownDays(5, 10),
    need: ownNeed(0.05, 0.25),
    moult: cycle(moultDays(120), growth),
    wait: memory(7, 'days'),
    retry: memory(7, 'days'),
    gapDays: 18,
    urgency: 'ordinary',
    accepts: PREY,
  },
  {
    ...shape,
    stage: 'adult',
    words: ['adult'],
    from: 0.8,
    items: keptItems(1, 2),
    interval: keptDays(7, 21),
    need: memory([0.008, 0.025], 'prey mass per own mass and week', 'taken from adult tarantulas'),
    moult: null,
    wait: memory(10, 'days'),
    retry: practice(10, 'days', '7-14 days'),
    gapDays: 28,
    urgency: 'robust',
    accepts: PREY,
  },
];

const scorpionStages: readonly StageRule[] = drafts.map(stageRule);

const traits: GroupTraits = {
  group: 'scorpion',
  gauge: 'total length, head to sting',
  bodyPerGauge: memory(0.55, '1', 'trunk over total length, 0.48-0.60', 'tradeMemory'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(0.05, 'mg per cubic mm', 'our own starting value: about 30 g at a trunk of 85 mm'),
  cautions: ['live prey near a moult'],
};

const rows: readonly KindRow[] = [
  {
    code: 'scorpion',
    name: 'scorpion',
    commonName: 'scorpion',
    aliases: ['scorpions'],
    habit: 'varied',
    adult: [90, 120],
    first: [12, 18],
    from: 'own',
    cautions: ['venom'],
  },
  {
    code: 'pandinus-imperator',
    name: 'Pandinus imperator',
    commonName: 'emperor scorpion',
    aliases: ['emperor'],
    habit: 'forest floor',
    adult: [127, 178],
    first: [18, 22],
    from: 'care',
    note: 'usual length; up to 200 mm',
    cautions: ['regulated'],
  },
  {
    code: 'heterometrus-spp',
    name: 'Heterometrus spp.',
    commonName: 'Asian forest scorpion',
    aliases: ['heterometrus', 'asian forest'],
    habit: 'forest floor',
    adult: [100, 130],
    first: [15, 20],
    from: 'memory',
  },
  {
    code: 'hadrurus-arizonensis',
    name: 'Hadrurus arizonensis',
    commonName: 'desert hairy scorpion',
    aliases: ['giant desert hairy scorpion'],
    habit: 'desert',
    adult: [110, 140],
    first: [15, 20],
    from: 'memory',
  },
  {
    code: 'centruroides-gracilis',
    name: 'Centruroides gracilis',
    commonName: 'Florida bark scorpion',
    aliases: ['brown bark scorpion'],
    habit: 'bark',
    adult: [80, 120],
    first: [8, 12],
    from: 'memory',
    cautions: ['venom', 'escape'],
  },
  {
    code: 'paruroctonus-mesaensis',
    name: 'Paruroctonus mesaensis',
    commonName: 'dune scorpion',
    aliases: ['smeringurus mesaensis', 's. mesaensis'],
    habit: 'desert',
    adult: [60, 72],
    first: [8, 11],
    from: 'own',
    note: 'no first size in the work read (1979); our own',
  },
];

export const scorpions: readonly Kind[] = rows.map((row) => kindOf(traits, row, scorpionStages));
