/** Props of the plan and its what ifs, from an invented market and twelve weeks of an invented room. */
import { civilDate } from '../../src/husbandry/calendar.ts';
import { type Market, noMarket, type Offer, type Supplier } from '../../src/husbandry/orders/index.ts';
import { type PlanAnswer, type PlanLine, type Reason, stepsOf } from '../../src/husbandry/plan/index.ts';
import type { PlanProps, PlanTold } from '../../views/pages/plan.tsx';
import type { Working } from '../../views/pages/plan-working.tsx';
import type { WhatIfProps } from '../../views/pages/what-if.tsx';
import { forms, names, shell, TODAY } from './view-fixtures.ts';

const supplier = (code: string, name: string, kind: Supplier['kind']): Supplier => ({
  code,
  name,
  kind,
  transitDays: kind === 'shop' ? 0 : 2,
  dispatchWeekdays: [true, true, true, true, false, false, false],
  cutOffDays: 1,
  cutOffTime: null,
  holidays: [],
  postage: { flatCents: 590, perKgCents: 0, freeFromCents: 6000 },
  minimumCents: 0,
  lossShare: null,
  overCountShare: null,
  coldBelowC: 2,
  heatAboveC: 30,
  holdDays: 4,
});

const offer = (code: string, of: string, species: string, size: string): Offer => ({
  code,
  supplier: of,
  species,
  size,
  fromMm: 4,
  toMm: 6,
  packHeads: 100,
  prices: [
    { fromPacks: 1, packCents: 350 },
    { fromPacks: 5, packCents: 290 },
  ],
  mostPacks: null,
});

const market: Market = {
  ...noMarket,
  suppliers: [supplier('S1', 'Marrowgate Feeders', 'parcel'), supplier('S2', 'Corner shop', 'shop')],
  offers: [
    offer('O1', 'S1', 'gryllodes', 'small'),
    offer('O2', 'S1', 'acheta', 'large'),
    offer('O3', 'S2', 'gryllodes', 'small'),
  ],
};

const WEEKS = 12;
const DAYS_PER_WEEK = 7;

const reason: Reason = {
  feeds: [
    { group: 'small', name: 'small juveniles', heads: 210, from: TODAY + 12, to: TODAY + 28 },
    { group: 'slings', name: 'spiderlings', heads: 96, from: TODAY + 6, to: TODAY + 16 },
    { group: 'adults', name: 'tarantula adults', heads: 12, from: TODAY + 20, to: TODAY + 40 },
  ],
  without: {
    missedMeals: { mean: 15, low: 12, high: 19 },
    dangers: { mean: 0, low: 0, high: 0 },
    cents: { mean: -940, low: -1100, high: -780 },
  },
  makesLittleDifference: false,
  centsPerEaten: 6.4,
  grows: null,
};

/** A colony that is left alone for three weeks. */
export const restLine: PlanLine = {
  key: 'rest:B2',
  what: 'rest',
  bin: 'B2',
  species: 'blaptica-dubia',
  heads: 900,
  cents: 0,
  minutes: 0,
  actBy: TODAY,
  weeks: 3,
  until: TODAY + 19,
  pinned: false,
  reason: {
    feeds: [],
    without: {
      missedMeals: { mean: 0, low: 0, high: 0 },
      dangers: { mean: 0, low: 0, high: 0 },
      cents: { mean: 0, low: 0, high: 0 },
    },
    makesLittleDifference: false,
    centsPerEaten: null,
    grows: { heads: 2310, without: 1890, day: TODAY + 82 },
  },
};

const order = (week: number, of: Partial<Extract<PlanLine, { what: 'order' }>> = {}): PlanLine => {
  const sent = TODAY + week * DAYS_PER_WEEK + 3;
  return {
    key: `order:O1@${civilDate(sent)}`,
    what: 'order',
    actBy: sent - 1,
    species: 'gryllodes',
    heads: 500,
    cents: 1450,
    minutes: 10,
    pinned: false,
    reason,
    parcel: `S1 ${sent}`,
    supplier: 'S1',
    offer: 'O1',
    packs: 5,
    fromMm: 4,
    toMm: 6,
    sent,
    comes: sent + 2,
    bin: 'B1',
    ...of,
  };
};

const base = { cents: 0, minutes: 15, pinned: false, reason } as const;

const lines: readonly PlanLine[] = [
  ...[0, 2, 4, 6, 8].map((week) => order(week)),
  order(0, {
    key: 'order:O2@2026-11-25',
    offer: 'O2',
    species: 'acheta',
    heads: 60,
    packs: 2,
    cents: 700,
    pinned: true,
    reason: { ...reason, makesLittleDifference: true, centsPerEaten: 14.2 },
  }),
  order(1, {
    key: 'order:O3@2026-11-30',
    supplier: 'S2',
    parcel: 'S2 1',
    offer: 'O3',
    heads: 50,
    packs: 1,
    cents: 550,
    sent: TODAY + 8,
    comes: TODAY + 8,
    actBy: TODAY + 8,
    reason: null,
  }),
  {
    ...base,
    key: 'harvest:B2:medium@2026-11-30',
    what: 'harvest',
    actBy: TODAY + 13,
    day: TODAY + 8,
    species: 'dubia',
    heads: 40,
    bin: 'B2',
    fromMm: 12,
    toMm: 19,
  },
  {
    ...base,
    key: 'harvest:B2:medium@2026-12-28',
    what: 'harvest',
    actBy: TODAY + 40,
    day: TODAY + 36,
    species: 'dubia',
    heads: 60,
    bin: 'B2',
    fromMm: 12,
    toMm: 19,
    reason: null,
  },
  {
    ...base,
    key: 'cull:B2:males@2026-12-14',
    what: 'cull',
    actBy: TODAY + 22,
    day: TODAY + 22,
    species: 'dubia',
    heads: 12,
    bin: 'B2',
    why: 'males',
    fromMm: 35,
    toMm: 45,
    reason: null,
  },
  ...[0, 3, 6].map(
    (week): PlanLine => ({
      ...base,
      key: `start:hydei@${civilDate(TODAY + week * DAYS_PER_WEEK + 1)}`,
      what: 'start',
      actBy: TODAY + week * DAYS_PER_WEEK + 1,
      day: TODAY + week * DAYS_PER_WEEK + 1,
      species: 'hydei',
      heads: 300,
      cups: 2,
      yieldsFrom: TODAY + week * DAYS_PER_WEEK + 15,
      yieldsTo: TODAY + week * DAYS_PER_WEEK + 29,
      reason: week === 0 ? reason : null,
    }),
  ),
];

const weekly = (of: (week: number) => number): number[] =>
  Array.from({ length: WEEKS }, (_, week) => of(week));

export const plan: PlanAnswer = {
  revision: 41,
  day: TODAY,
  periods: weekly((week) => week).map((week) => ({
    from: TODAY + week * DAYS_PER_WEEK,
    days: DAYS_PER_WEEK,
  })),
  made: 'programme',
  gap: 0.008,
  trouble: null,
  safetyLevel: 0.95,
  lines,
  whole: {
    cents: { goods: 7950, postage: 2360, keeping: 410, labour: 2400, total: 13120 },
    service: [
      {
        urgency: 'fragile',
        mealsDue: 412,
        notMissed: { mean: 0.997, low: 0.994, high: 0.999 },
        target: 0.995,
        met: true,
      },
      {
        urgency: 'ordinary',
        mealsDue: 230,
        notMissed: { mean: 0.986, low: 0.98, high: 0.991 },
        target: 0.98,
        met: true,
      },
      {
        urgency: 'robust',
        mealsDue: 64,
        notMissed: { mean: 1, low: 0.99, high: 1 },
        target: 0.95,
        met: true,
      },
    ],
    missedMeals: { mean: 4.4, low: 2.1, high: 6.6 },
    dangers: { mean: 0.02, low: 0, high: 0.1 },
    heldDays: 42,
    bought: 2610,
    eaten: 2240,
    died: 320,
    outgrown: 140,
    minutes: 205,
  },
  cover: [
    {
      group: 'slings',
      name: 'spiderlings',
      urgency: 'fragile',
      wanted: weekly((week) => 46 + week * 2),
      eaten: weekly((week) => 46 + week * 2),
      late: weekly(() => 0),
      missed: weekly(() => 0),
      ready: weekly((week) => (week % 2 === 0 ? 160 : 70)),
      safety: weekly(() => 48),
    },
    {
      group: 'small',
      name: 'small juveniles',
      urgency: 'ordinary',
      wanted: weekly((week) => 30 - week),
      eaten: weekly((week) => (week === 0 ? 18 : 30 - week)),
      late: weekly((week) => (week === 0 ? 6 : 0)),
      missed: weekly((week) => (week === 0 ? 6 : 0)),
      ready: weekly((week) => (week === 0 ? 0 : 90 - week * 3)),
      safety: weekly(() => 24),
    },
    {
      group: 'adults',
      name: 'tarantula adults',
      urgency: 'robust',
      wanted: weekly((week) => (week % 2 === 0 ? 8 : 3)),
      eaten: weekly((week) => (week % 2 === 0 ? 8 : 3)),
      late: weekly((week) => (week === 3 ? 2 : 0)),
      missed: weekly(() => 0),
      ready: weekly((week) => 60 + week * 3),
      safety: weekly(() => 6),
    },
  ],
  obstacles: [],
};

const asked = { weeks: WEEKS, wishes: [] };

const told: PlanTold = {
  plan,
  today: TODAY,
  names,
  unit: 'mm',
  market,
  asked,
  forms,
  sizeField: (name) => ({ [name]: 'dubia|medium' }),
};

const working: Working = {
  progressAt: '/larder/B2',
  waitAt: '/plan?weeks=12&wait=1',
  cancel: {
    entry: { name: 'plan-cancel', formId: 'page-1.plan-cancel', values: {}, problems: {} },
    action: '/plan/cancel',
    asked: 'weeks=12',
  },
  progress: { step: 'improving', share: 0.62, cents: 13420 },
  currency: 'EUR',
};

export const plannedWeek = {
  told,
  steps: stepsOf(plan.lines.filter(({ actBy }) => actBy < TODAY + 7)),
};

export const planProps: PlanProps = {
  shell,
  asked,
  problems: {},
  wishes: [],
  shown: { told, age: null, working: null, amiss: null, makeAt: null },
};

const wishes = [
  { key: 'order:O2@2026-11-25', wish: 'pin', amount: 2 },
  { key: 'harvest:B2:medium@2026-11-30', wish: 'forbid', amount: null },
] as const;

/** An older plan, while the one with wishes is being made; and one that falls short. */
export const planWorkingProps: PlanProps = {
  ...planProps,
  asked: { weeks: WEEKS, wishes },
  wishes: [
    {
      key: 'order:O2@2026-11-25',
      words: 'Pinned: 2 packs of large house crickets from Marrowgate Feeders, leaving Wed 25 Nov',
      unmet: true,
    },
    {
      key: 'start:hydei@2026-11-23',
      words: 'Forbidden: cups of large fruit flies on Mon 23 Nov',
      unmet: false,
    },
  ],
  shown: {
    ...planProps.shown,
    told: {
      ...told,
      plan: {
        ...plan,
        day: TODAY - 5,
        made: 'rule',
        gap: null,
        trouble: 'the solver ran out of time',
        safetyLevel: 0,
        whole: {
          ...plan.whole,
          service: plan.whole.service.map((each) =>
            each.urgency === 'fragile'
              ? { ...each, notMissed: { mean: 0.971, low: 0.96, high: 0.98 }, met: false }
              : each,
          ),
        },
        obstacles: [
          {
            kind: 'lead time',
            sentence: 'Nothing ordered today comes before Thursday: spiderlings wait until then.',
            groups: ['slings'],
          },
        ],
      },
    },
    age: { madeOn: TODAY - 5, changes: 3, tooLate: [], withoutWishes: true },
    working,
  },
};

export const planFirstProps: PlanProps = {
  ...planProps,
  shown: { told: null, age: null, working: { ...working, progress: null }, amiss: null, makeAt: null },
};

/** Two degrees warmer: dearer, and two of the steps otherwise. */
const warmerPlan: PlanAnswer = {
  ...plan,
  lines: [
    ...lines
      .filter(({ key }) => key !== 'harvest:B2:medium@2026-12-28')
      .map((line) =>
        line.key === 'order:O2@2026-11-25' && line.what === 'order' ? { ...line, packs: 3, heads: 90 } : line,
      ),
    order(9, { packs: 6, heads: 600, cents: 1740 }),
  ],
  whole: {
    ...plan.whole,
    cents: { ...plan.whole.cents, goods: 9690, total: 14870 },
    missedMeals: { mean: 12.2, low: 9, high: 15 },
    outgrown: 260,
    service: plan.whole.service.map((each) =>
      each.urgency === 'fragile'
        ? { ...each, notMissed: { mean: 0.981, low: 0.975, high: 0.988 }, met: false }
        : each,
    ),
  },
  obstacles: [
    {
      kind: 'size gap',
      sentence: 'Small crickets outgrow spiderlings within four days.',
      groups: ['slings'],
    },
  ],
};

export const whatIfProps: WhatIfProps = {
  shell,
  shown: {
    ...{ names, unit: 'mm', market, today: TODAY, base: plan, working: null, amiss: null },
    asked: {
      weeks: WEEKS,
      ifs: [
        [{ what: 'warmer', degrees: 2 }],
        [{ what: 'supplier stops', supplier: 'S1' }],
        [
          { what: 'away', from: TODAY + 18, to: TODAY + 28 },
          { what: 'bin dies', bin: 'B2' },
        ],
      ],
    },
    besides: [
      { words: '2 degrees warmer', plan: warmerPlan },
      { words: 'Marrowgate Feeders stops sending', plan: { ...plan, lines: lines.slice(1) } },
      { words: 'Away Thu 10 Dec to Sun 20 Dec and Roach tub dies out', plan: null },
    ],
  },
  problems: [],
  supposing: { what: null, values: {}, problems: {} },
  choices: {
    kinds: [{ value: 'brachypelma-hamorii', label: 'Mexican redknee', group: 'Live here' }],
    suppliers: [{ value: 'S1', label: 'Marrowgate Feeders' }],
    bins: [{ value: 'B2', label: 'Roach tub' }],
    offers: [
      { value: 'O1', label: 'small banded crickets, packs of 100', group: 'Marrowgate Feeders' },
      { value: 'O3', label: 'small banded crickets, packs of 100', group: 'Corner shop' },
    ],
  },
};

export const whatIfFirstProps: WhatIfProps = {
  ...whatIfProps,
  shown: { ...whatIfProps.shown, asked: { weeks: WEEKS, ifs: [] }, besides: [], base: null },
  supposing: {
    what: 'warmer',
    values: { degrees: '40' },
    problems: { degrees: '"40" is not a number of degrees from -15 to 15, such as 2.' },
  },
};
