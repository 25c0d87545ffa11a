/** The animals of the worlds: what each stage eats, how often, and how it grows. A copy of their own, truth in them. */

export type Urgency = 'fragile' | 'ordinary' | 'robust';
export const URGENCIES: readonly Urgency[] = ['fragile', 'ordinary', 'robust'];
export type Form = 'cricket' | 'roach' | 'mealworm';
export const FORMS: readonly Form[] = ['cricket', 'roach', 'mealworm'];

export interface Stage {
  /** Begins at this share of the grown gauge. */
  readonly from: number;
  /** Prey length over body length: least, ideal, longest alive, longest killed first. */
  readonly window: readonly [number, number, number, number];
  readonly items: readonly [number, number];
  readonly interval: readonly [number, number];
  /** Mean days between moults at the usual temperature and growth at one; null: moults no more. */
  readonly moult: readonly [days: number, factor: number] | null;
  readonly wait: number;
  readonly retry: number;
  readonly grace: number;
  readonly gap: number;
  readonly urgency: Urgency;
  readonly eats: readonly Form[];
}

export interface Kind {
  readonly code: string;
  readonly bodyPerGauge: number;
  readonly grownMm: number;
  readonly stages: readonly Stage[];
  /** Days it lives once grown; null: longer than any world. */
  readonly grownDays: number | null;
}

type Days = readonly [young: number, juvenile: number, subadult: number, adult: number];

const GROWS = 1.38;

/** Tarantulas by how fast they grow and whether they live in trees. */
function tarantula(days: Days, { slow, tree }: { slow: boolean; tree: boolean }): readonly Stage[] {
  const later: readonly Form[] = tree ? ['cricket', 'roach'] : ['cricket', 'roach', 'mealworm'];
  return [
    {
      from: 0,
      window: [0.4, 0.7, 0.8, 1],
      items: [1, 2],
      interval: [3, 7],
      moult: [days[0], GROWS],
      wait: 5,
      retry: 7,
      grace: 2,
      gap: 10,
      urgency: 'fragile',
      eats: ['cricket', 'roach'],
    },
    {
      from: 0.2,
      window: [0.3, 0.6, 2 / 3, 0.9],
      items: [1, 2],
      interval: [4, 7],
      moult: [days[1], GROWS],
      wait: 7,
      retry: 10,
      grace: 3,
      gap: 14,
      urgency: 'ordinary',
      eats: later,
    },
    {
      from: 0.5,
      window: [0.25, 0.5, 2 / 3, 0.9],
      items: [1, 3],
      interval: [7, 10],
      moult: [days[2], GROWS],
      wait: 10,
      retry: 10,
      grace: 4,
      gap: 18,
      urgency: 'ordinary',
      eats: later,
    },
    {
      from: 0.85,
      window: [0.2, 0.35, 0.8, 0.8],
      items: slow ? [4, 6] : [1, 3],
      interval: slow ? [14, 21] : [7, 14],
      moult: [days[3], 1.05],
      wait: 12,
      retry: 10,
      grace: slow ? 9 : 5,
      gap: slow ? 60 : 21,
      urgency: 'robust',
      eats: later,
    },
  ];
}

const nymph = {
  window: [0.2, 0.4, 0.6, 0.6],
  grace: 2,
  retry: 1,
  eats: ['cricket', 'roach'],
} as const;

const mantid: readonly Stage[] = [
  {
    ...nymph,
    from: 0,
    items: [2, 8],
    interval: [1, 2],
    moult: [12, 1.29],
    wait: 1,
    gap: 4,
    urgency: 'fragile',
    eats: ['cricket'],
  },
  {
    ...nymph,
    from: 0.2,
    items: [1, 3],
    interval: [2, 3],
    moult: [18, 1.29],
    wait: 2,
    gap: 5,
    urgency: 'ordinary',
  },
  {
    ...nymph,
    from: 0.6,
    items: [1, 3],
    interval: [2, 3],
    moult: [25, 1.29],
    wait: 3,
    gap: 5,
    urgency: 'ordinary',
  },
  {
    ...nymph,
    from: 0.82,
    items: [1, 2],
    interval: [2, 7],
    moult: null,
    wait: 3,
    retry: 2,
    gap: 9,
    urgency: 'fragile',
  },
];

const frog: readonly Stage[] = [
  {
    from: 0,
    window: [0.08, 0.22, 0.33, 0.33],
    items: [3, 6],
    interval: [2, 4],
    moult: null,
    wait: 0,
    retry: 1,
    grace: 2,
    gap: 7,
    urgency: 'ordinary',
    eats: ['cricket', 'roach'],
  },
];

const ground = { bodyPerGauge: 0.42, grownDays: null } as const;

export const KINDS = {
  pulchra: {
    ...ground,
    code: 'grammostola-pulchra',
    grownMm: 165,
    stages: tarantula([75, 184, 233, 560], { slow: true, tree: false }),
  },
  hamorii: {
    ...ground,
    code: 'brachypelma-hamorii',
    grownMm: 139.5,
    stages: tarantula([75, 184, 233, 560], { slow: true, tree: false }),
  },
  albopilosus: {
    ...ground,
    code: 'tliltocatl-albopilosus',
    grownMm: 137.5,
    stages: tarantula([60, 140, 200, 420], { slow: false, tree: false }),
  },
  geniculata: {
    ...ground,
    code: 'acanthoscurria-geniculata',
    grownMm: 190,
    stages: tarantula([45, 100, 160, 330], { slow: false, tree: false }),
  },
  irminia: {
    code: 'psalmopoeus-irminia',
    bodyPerGauge: 0.38,
    grownDays: null,
    grownMm: 135,
    stages: tarantula([45, 100, 160, 330], { slow: false, tree: true }),
  },
  mantid: {
    code: 'hierodula-membranacea',
    bodyPerGauge: 1,
    grownMm: 85,
    stages: mantid,
    grownDays: 130,
  },
  frog: { code: 'litoria-caerulea', bodyPerGauge: 1, grownMm: 102.5, stages: frog, grownDays: null },
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof KINDS;
