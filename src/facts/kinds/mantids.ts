/** Kept mantids and their feeding rules. */
import type { Kind, StageRule } from '../../husbandry/animals/index.ts';
import { memory, practice, published } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { cycle, type RuleDraft, stageRule } from './rule-draft.ts';
import { keptDays, keptItems, ownNeed } from './shared-rules.ts';

const shape = {
  window: [0.2, 0.4, 0.6],
  basis: 'our own starting value; about half of the body, a third to a half for nymphs, is common practice',
} as const;
const growth = published(1.29, '1', 'faber1994', 'mantids');
const moultDays = (days: number) =>
  practice(days, 'days', '10-25 at 25-27 C; the place in the range is our choice');

const older: RuleDraft = {
  ...shape,
  stage: 'juvenile',
  words: ['older nymph', 'nymph L4+'],
  from: 0.2,
  items: keptItems(1, 3),
  interval: keptDays(2, 3),
  need: ownNeed(0.3, 1.3),
  moult: cycle(moultDays(18), growth),
  wait: memory(2, 'days'),
  retry: memory(1, 'days'),
  graceDays: 2,
  gapDays: 4,
  urgency: 'ordinary',
  accepts: ['fly', 'cricket', 'roach', 'bean beetle'],
};

const drafts: readonly RuleDraft[] = [
  {
    ...shape,
    stage: 'young',
    words: ['young nymph', 'nymph L1-L3'],
    from: 0,
    items: keptItems(2, 8),
    interval: keptDays(1, 2),
    need: ownNeed(0.5, 2),
    moult: cycle(moultDays(12), growth),
    wait: memory(1, 'days'),
    retry: memory(1, 'days'),
    graceDays: 2,
    gapDays: 2,
    urgency: 'fragile',
    accepts: ['fly', 'cricket', 'springtail'],
    refusesHard: true,
  },
  older,
  {
    ...older,
    stage: 'subadult',
    words: ['subadult', 'presubadult'],
    from: 0.6,
    moult: cycle(moultDays(25), growth),
    wait: memory(3, 'days'),
  },
  {
    ...shape,
    stage: 'adult',
    words: ['adult'],
    from: 0.82,
    items: keptItems(1, 2),
    interval: practice([2, 7], 'days', 'females every 2-3 days; another page says 5-7', 'generalPages'),
    need: ownNeed(0.1, 0.6),
    moult: null,
    wait: memory(3, 'days'),
    retry: memory(2, 'days'),
    graceDays: 2,
    gapDays: 5,
    urgency: 'fragile',
    accepts: ['cricket', 'roach', 'fly'],
  },
];

const mantidStages: readonly StageRule[] = drafts.map(stageRule);

const traits: GroupTraits = {
  group: 'mantid',
  gauge: 'body length',
  bodyPerGauge: memory(1, '1', 'the body itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(0.009, 'mg per cubic mm', 'our own starting value: a female of 80 mm weighs 4-5 g'),
  cautions: ['live prey near a moult'],
};

const rows: readonly KindRow[] = [
  {
    code: 'mantid',
    name: 'mantid',
    commonName: 'mantid',
    aliases: ['mantids', 'mantis', 'mantises', 'praying mantis'],
    habit: 'varied',
    adult: [60, 80],
    first: [6, 8],
    from: 'own',
  },
  {
    code: 'hierodula-membranacea',
    name: 'Hierodula membranacea',
    commonName: 'giant Asian mantis',
    aliases: ['giant asian mantid'],
    habit: 'arboreal',
    adult: [75, 95],
    first: [6, 8],
    from: 'memory',
  },
  {
    code: 'sphodromantis-spp',
    name: 'Sphodromantis spp.',
    commonName: 'African mantis',
    aliases: ['sphodromantis', 'african mantid'],
    habit: 'arboreal',
    adult: [65, 90],
    first: [6, 7],
    from: 'memory',
  },
  {
    code: 'phyllocrania-paradoxa',
    name: 'Phyllocrania paradoxa',
    commonName: 'ghost mantis',
    aliases: ['ghost mantid'],
    habit: 'arboreal',
    adult: [45, 50],
    first: [4, 5],
    from: 'memory',
  },
  {
    code: 'hymenopus-coronatus',
    name: 'Hymenopus coronatus',
    commonName: 'orchid mantis',
    aliases: ['orchid mantid'],
    habit: 'arboreal',
    adult: [55, 70],
    first: [5, 6],
    from: 'memory',
    note: 'females; males mature far earlier, at 25-32 mm',
  },
  {
    code: 'tenodera-sinensis',
    name: 'Tenodera sinensis',
    commonName: 'Chinese mantis',
    aliases: ['chinese mantid'],
    habit: 'grass',
    adult: [80, 110],
    first: [8, 10],
    from: 'memory',
  },
];

export const mantids: readonly Kind[] = rows.map((row) => kindOf(traits, row, mantidStages));
