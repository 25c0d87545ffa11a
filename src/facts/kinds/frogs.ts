/** Kept frogs and their feeding rules: dart frogs on flies, tree and horned frogs on larger prey. */
import type { GapeLimit, Kind, StageRule } from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import { memory } from '../sourced.ts';
import { type GroupTraits, type KindRow, kindOf } from './kind-draft.ts';
import { type RuleDraft, stageRule } from './rule-draft.ts';
import { keptDays, keptItems, ownDays, ownItems, ownNeed } from './shared-rules.ts';

const gape = (headWidth: number, note?: string): GapeLimit => ({
  headWidthShare: memory(headWidth, 'head width over snout-vent length', note, 'tradeMemory'),
  widthMaxOfHead: memory(
    0.5,
    'prey width over head width',
    'our own starting value; food up to the gape (Browne 2009)',
  ),
  massMaxShare: null,
});

const LENGTH = 'our own starting value; at most a third of the snout-vent length';
const steady = {
  moult: null,
  wait: memory(0, 'days', 'frogs are fed through a shed'),
  retry: memory(1, 'days'),
} as const;
const froglet = {
  ...steady,
  stage: 'young',
  words: ['froglet'],
  from: 0,
  graceDays: 2,
  urgency: 'fragile',
  refusesHard: true,
} as const;
const FLIES: readonly PreyForm[] = ['fly', 'cricket', 'springtail', 'flour beetle', 'bean beetle'];
const INSECTS: readonly PreyForm[] = ['cricket', 'roach', 'waxworm'];

const dartDrafts: readonly RuleDraft[] = [
  {
    ...froglet,
    window: [0.04, 0.15, 0.25],
    basis: LENGTH,
    items: keptItems(10, 30),
    interval: keptDays(1, 1),
    need: ownNeed(0.1, 0.4),
    gapDays: 2,
    accepts: FLIES,
    gape: gape(0.33, '0.30-0.36'),
  },
  {
    ...steady,
    stage: 'adult',
    words: ['adult'],
    from: 0.6,
    window: [0.03, 0.07, 0.2],
    basis: LENGTH,
    items: keptItems(20, 60),
    interval: keptDays(1, 2),
    need: memory(
      [0.1, 0.2],
      'prey mass per own mass and week',
      'resting need of a 3 g frog, 0.067, times 1.5-3',
    ),
    graceDays: 2,
    gapDays: 2,
    urgency: 'fragile',
    accepts: FLIES,
    gape: gape(0.33, '0.30-0.36'),
  },
];

const treeFrogDrafts: readonly RuleDraft[] = [
  {
    ...froglet,
    window: [0.08, 0.22, 0.33],
    basis: LENGTH,
    items: ownItems(2, 5),
    interval: ownDays(1, 2),
    need: ownNeed(0.1, 0.5),
    gapDays: 3,
    accepts: ['cricket', 'fly', 'roach'],
    gape: gape(0.33),
  },
  {
    ...steady,
    stage: 'adult',
    words: ['adult'],
    from: 0.6,
    window: [0.08, 0.22, 0.33],
    basis: LENGTH,
    items: ownItems(3, 6),
    interval: ownDays(2, 4),
    need: ownNeed(0.05, 0.2),
    graceDays: 2,
    gapDays: 7,
    urgency: 'ordinary',
    accepts: INSECTS,
    gape: gape(0.33),
  },
];

const hornedFrogDrafts: readonly RuleDraft[] = [
  {
    ...froglet,
    window: [0.1, 0.3, 0.5],
    basis: LENGTH,
    items: ownItems(2, 5),
    interval: ownDays(1, 3),
    need: ownNeed(0.1, 0.5),
    gapDays: 4,
    accepts: ['cricket', 'roach'],
    gape: gape(0.55, '0.48-0.62'),
  },
  {
    ...steady,
    stage: 'adult',
    words: ['adult'],
    from: 0.6,
    window: [0.12, 0.3, 0.5],
    basis: LENGTH,
    items: ownItems(4, 8),
    interval: ownDays(5, 10),
    need: ownNeed(0.02, 0.1),
    graceDays: 2,
    gapDays: 21,
    urgency: 'robust',
    accepts: ['roach', 'cricket', 'waxworm'],
    gape: gape(0.55, '0.48-0.62'),
  },
];

const traits = (massPerCubicMm: number): GroupTraits => ({
  group: 'frog',
  gauge: 'snout-vent length',
  bodyPerGauge: memory(1, '1', 'the reference length itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(massPerCubicMm, 'mg per cubic mm'),
  cautions: [],
});

const dart = dartDrafts.map(stageRule);
const tree = treeFrogDrafts.map(stageRule);
const horned = hornedFrogDrafts.map(stageRule);

const rows: readonly (readonly [GroupTraits, readonly StageRule[], KindRow])[] = [
  [
    traits(0.055),
    tree,
    {
      code: 'frog',
      name: 'frog',
      commonName: 'frog',
      aliases: ['frogs', 'tree frog', 'toad'],
      habit: 'varied',
      adult: [50, 80],
      first: [12, 18],
      from: 'own',
    },
  ],
  [
    traits(0.08),
    dart,
    {
      code: 'dart-frog',
      name: 'dart frog',
      commonName: 'dart frog',
      aliases: ['dart frogs', 'poison dart frog', 'pdf'],
      habit: 'terrestrial',
      adult: [30, 50],
      first: [10, 15],
      from: 'own',
    },
  ],
  [
    traits(0.08),
    dart,
    {
      code: 'dendrobates-tinctorius',
      name: 'Dendrobates tinctorius',
      commonName: 'dyeing dart frog',
      aliases: ['tinctorius', 'tinc', 'tincs'],
      habit: 'terrestrial',
      adult: [40, 60],
      first: [13, 16],
      from: 'memory',
    },
  ],
  [
    traits(0.08),
    dart,
    {
      code: 'ranitomeya-spp',
      name: 'Ranitomeya spp.',
      commonName: 'thumbnail dart frog',
      aliases: ['ranitomeya', 'thumbnail frog', 'thumbnails'],
      habit: 'arboreal',
      adult: [15, 21],
      first: [7, 10],
      from: 'memory',
    },
  ],
  [
    traits(0.15),
    horned,
    {
      code: 'ceratophrys-cranwelli',
      name: 'Ceratophrys cranwelli',
      commonName: 'horned frog',
      aliases: ['pacman frog', 'c. ornata', 'ceratophrys ornata'],
      habit: 'burrowing',
      adult: [120, 165],
      first: [20, 35],
      from: 'care',
    },
  ],
  [
    traits(0.055),
    tree,
    {
      code: 'litoria-caerulea',
      name: 'Ranoidea caerulea',
      commonName: "White's tree frog",
      aliases: ['litoria caerulea', 'l. caerulea', 'whites tree frog', 'dumpy tree frog'],
      habit: 'arboreal',
      adult: [90, 115],
      first: [15, 20],
      from: 'memory',
    },
  ],
];

export const frogs: readonly Kind[] = rows.map(([group, stages, row]) => kindOf(group, row, stages));
