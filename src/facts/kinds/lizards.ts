/** Kept geckos and anoles and their feeding rules. */
import type { GapeLimit, Kind, StageRule } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import { memory, published } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { type RuleDraft, stageRule } from './rule-draft.ts';
import { careDays, careItems, ownDays, ownItems, ownNeed } from './shared-rules.ts';

const gape: GapeLimit = {
  headWidthShare: memory(0.19, 'head width over snout-vent length', 'geckos, 0.16-0.22', 'tradeMemory'),
  widthMaxOfHead: memory(
    0.6,
    'prey width over head width',
    'our own starting value; no wider than the gap between the eyes is common practice',
  ),
  massMaxShare: published(
    0.35,
    'prey mass over own mass',
    'shineThomas2005',
    'hatchling skinks seldom ate more',
  ),
};

const shape = {
  window: [0.06, 0.16, 0.33],
  basis: 'our own starting value; at most a third of the snout-vent length',
  gape,
  moult: null,
  wait: memory(0, 'days', 'lizards are fed through a shed'),
  retry: memory(2, 'days'),
} as const;
const INSECTS: readonly PreyForm[] = ['cricket', 'roach', 'mealworm', 'superworm', 'silkworm', 'waxworm'];
const hatchling = {
  ...shape,
  stage: 'young',
  words: ['hatchling'],
  from: 0,
  graceDays: 2,
  urgency: 'fragile',
  retry: memory(1, 'days'),
} as const;
const juvenile = {
  ...shape,
  stage: 'juvenile',
  words: ['juvenile'],
  from: 0.5,
  graceDays: 2,
  urgency: 'ordinary',
  accepts: INSECTS,
} as const;
const adult = {
  ...shape,
  stage: 'adult',
  words: ['adult'],
  from: 0.75,
  urgency: 'ordinary',
  accepts: INSECTS,
} as const;

/** Geckos fed on insects alone. */
const insectDrafts: readonly RuleDraft[] = [
  {
    ...hatchling,
    items: careItems(5, 7),
    interval: careDays(1, 1),
    need: ownNeed(0.15, 0.5),
    gapDays: 1,
    accepts: ['cricket', 'roach', 'mealworm'],
  },
  { ...juvenile, items: careItems(5, 10), interval: careDays(1, 2), need: ownNeed(0.1, 0.4), gapDays: 3 },
  {
    ...adult,
    items: careItems(5, 8),
    interval: careDays(2, 4),
    need: memory(
      [0.07, 0.135],
      'prey mass per own mass and week',
      'resting need of a 45 g gecko, 0.045, times 1.5-3',
    ),
    gapDays: 5,
  },
];

/** Geckos that take insects beside a fruit diet. */
const fruitDrafts: readonly RuleDraft[] = [
  {
    ...hatchling,
    items: ownItems(2, 4),
    interval: ownDays(2, 4),
    need: ownNeed(0.05, 0.3),
    gapDays: 7,
    accepts: ['cricket', 'fly', 'roach'],
  },
  {
    ...juvenile,
    items: ownItems(2, 5),
    interval: ownDays(3, 5),
    need: ownNeed(0.03, 0.2),
    gapDays: 10,
    accepts: ['cricket', 'roach', 'waxworm'],
  },
  {
    ...adult,
    items: ownItems(3, 6),
    interval: memory([3, 7], 'days', 'insects once or twice a week beside fruit'),
    need: ownNeed(0.02, 0.1),
    gapDays: 14,
    accepts: ['cricket', 'roach', 'waxworm'],
  },
];

const anoleDrafts: readonly RuleDraft[] = [
  {
    ...hatchling,
    items: ownItems(3, 6),
    interval: ownDays(1, 1),
    need: ownNeed(0.15, 0.5),
    gapDays: 2,
    accepts: ['fly', 'cricket'],
  },
  {
    ...juvenile,
    items: ownItems(3, 5),
    interval: ownDays(1, 2),
    need: ownNeed(0.1, 0.4),
    gapDays: 3,
    accepts: ['cricket', 'fly', 'roach'],
  },
  {
    ...adult,
    items: ownItems(3, 5),
    interval: ownDays(2, 3),
    need: ownNeed(0.07, 0.2),
    graceDays: 2,
    gapDays: 5,
  },
];

const traits = (massPerCubicMm: number): GroupTraits => ({
  group: 'lizard',
  gauge: 'snout-vent length',
  bodyPerGauge: memory(1, '1', 'the reference length itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(massPerCubicMm, 'mg per cubic mm'),
  cautions: [],
});

const insects = insectDrafts.map(stageRule);
const fruit = fruitDrafts.map(stageRule);
const anoles = anoleDrafts.map(stageRule);

const rows: readonly (readonly [GroupTraits, readonly StageRule[], KindRow])[] = [
  [
    traits(0.03),
    insects,
    {
      code: 'lizard',
      name: 'lizard',
      commonName: 'lizard',
      aliases: ['lizards', 'gecko', 'geckos'],
      habit: 'varied',
      adult: [80, 120],
      first: [30, 45],
      from: 'own',
    },
  ],
  [
    traits(0.035),
    insects,
    {
      code: 'eublepharis-macularius',
      name: 'Eublepharis macularius',
      commonName: 'leopard gecko',
      aliases: ['leo', 'leopard geckos'],
      habit: 'terrestrial',
      adult: [110, 140],
      first: [40, 50],
      from: 'care',
      note: 'from total lengths of 76-102 mm hatched and 178-254 mm grown, snout-vent 0.58 of them',
    },
  ],
  [
    traits(0.03),
    fruit,
    {
      code: 'correlophus-ciliatus',
      name: 'Correlophus ciliatus',
      commonName: 'crested gecko',
      aliases: ['crestie', 'cresties'],
      habit: 'arboreal',
      adult: [100, 120],
      first: [35, 40],
      from: 'memory',
    },
  ],
  [
    traits(0.025),
    fruit,
    {
      code: 'lepidodactylus-lugubris',
      name: 'Lepidodactylus lugubris',
      commonName: 'mourning gecko',
      aliases: ['mourning geckos'],
      habit: 'arboreal',
      adult: [38, 48],
      first: [16, 20],
      from: 'memory',
    },
  ],
  [
    traits(0.024),
    anoles,
    {
      code: 'anolis-carolinensis',
      name: 'Anolis carolinensis',
      commonName: 'green anole',
      aliases: ['anole', 'anoles', 'a. sagrei', 'anolis sagrei', 'brown anole'],
      habit: 'arboreal',
      adult: [40, 75],
      first: [18, 24],
      from: 'general',
      note: 'females 40-55 mm, males 50-75 mm',
    },
  ],
];

export const lizards: readonly Kind[] = rows.map(([group, stages, row]) => kindOf(group, row, stages));
