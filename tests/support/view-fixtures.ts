/** An invented room on Sunday 22 November 2026, as the views are given it. */

import type { Animal } from '../../src/husbandry/animals/animal.ts';
import type { Evening, Serving } from '../../src/husbandry/appetite/serving.ts';
import { dayOf } from '../../src/husbandry/calendar.ts';
import type { Bin, ExpectedDelivery } from '../../src/husbandry/larder/bin.ts';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { BinAnswer, CoverAnswer, GroupAnswer, Spectrum } from '../../src/husbandry/supply/answer.ts';
import type { Shell } from '../../views/layout.tsx';
import type { Names } from '../../views/names.ts';
import type { PageForms } from '../../views/partials/form.tsx';

const sunday = dayOf(2026, 11, 22);
if (!sunday.ok) throw new Error(sunday.problem.sentence);
export const TODAY = sunday.value;

export const shell: Shell = {
  today: TODAY,
  theme: 'light',
  demo: true,
  undo: { id: '41', label: '55 animals fed on Thursday' },
  flash: [],
  formId: 'shell-1',
  path: '/',
  canLogOut: false,
};

export const forms: PageForms = { formId: 'page-1', refused: null };

const prey = (code: string, commonName: string, form: PreyForm) =>
  [code, { code, commonName, form }] as const;

export const names: Names = {
  animals: new Map([
    ['A1', 'Hazel'],
    ['A2', 'Mr Wick'],
    ['A3', 'Duchess'],
    ['A4', 'Sling tray 2'],
    ['A5', 'Biscuit'],
    ['A6', 'Tansy'],
  ]),
  bins: new Map([
    ['B1', 'Cricket box 1'],
    ['B2', 'Roach tub'],
    ['B3', 'Fly cup 7'],
    ['B4', 'Mealworm tray'],
  ]),
  rooms: new Map([['R1', 'Spare room']]),
  species: new Map([
    prey('acheta', 'house cricket', 'cricket'),
    prey('gryllodes', 'banded cricket', 'cricket'),
    prey('dubia', 'dubia roach', 'roach'),
    prey('hydei', 'large fruit fly', 'fly'),
    prey('tenebrio', 'mealworm', 'mealworm'),
  ]),
};

const BANDS = 36;
export const edgesMm = Array.from({ length: BANDS + 1 }, (_, i) => 60 ** (i / BANDS));

/** Heads spread about a length, bell-shaped on the log scale. */
export const hump = (heads: number, mm: number, width: number): number[] => {
  const at = (i: number) =>
    Math.exp(-0.5 * (Math.log(Math.sqrt(edgesMm[i]! * edgesMm[i + 1]!) / mm) / width) ** 2);
  const weights = Array.from({ length: BANDS }, (_, i) => at(i));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => (heads * weight) / total);
};
const both = (a: readonly number[], b: readonly number[]) => a.map((n, i) => n + b[i]!);

export const spectrum: Spectrum = {
  edgesMm,
  alive: [
    { species: 'hydei', heads: hump(420, 2.4, 0.16) },
    { species: 'gryllodes', heads: both(hump(60, 12, 0.16), hump(40, 17, 0.12)) },
    { species: 'dubia', heads: both(hump(50, 8, 0.3), hump(30, 35, 0.16)) },
    { species: 'tenebrio', heads: hump(90, 20, 0.12) },
  ],
  eaten: both(hump(120, 2.4, 0.16), both(hump(40, 12, 0.2), hump(25, 20, 0.2))),
  missing: hump(46, 5, 0.16).map((n) => (n < 0.3 ? 0 : n)),
};

export const spread = (mid: number, half: number) => ({ low: mid - half, mid, high: mid + half });

export const shortGroup: GroupAnswer = {
  key: 'small',
  name: 'small juveniles',
  urgency: 'fragile',
  window: { minMm: 3.8, idealMm: 5, killFirstAboveMm: null, maxMm: 7 },
  species: ['gryllodes', 'dubia'],
  animals: ['A1', 'A5'],
  heads: 18,
  verdict: 'runs short',
  nothingMissed: { chance: 0.41, standardError: 0.015 },
  mealsDue: 24,
  lateMeals: 2.2,
  missedMeals: 6.3,
  dangers: 0,
  itemsWanted: spread(70, 10),
  itemsWantedMean: 70,
  runOut: { chance: 0.63, day: { low: 2, mid: 4, high: 6 } },
  daysOfCover: spread(4, 1),
  touched: [
    { animal: 'A1', chance: 0.48 },
    { animal: 'A5', chance: 0.31 },
  ],
  wantedByDay: [12, 0, 14, 0, 16, 14, 0],
  unmetByDay: [0, 0, 1, 0, 9, 12, 0],
  stockByDay: [52, 40, 34, 18, 9, 3, 2].map((n) => spread(n, Math.min(n, 6))),
};

const lasting = (
  key: string,
  name: string,
  window: [number, number, number],
  heads: number,
): GroupAnswer => ({
  ...shortGroup,
  key,
  name,
  heads,
  urgency: 'ordinary',
  window: { minMm: window[0], idealMm: window[1], killFirstAboveMm: null, maxMm: window[2] },
  verdict: 'lasts',
  nothingMissed: { chance: 1, standardError: 0 },
  missedMeals: 0,
  lateMeals: 0.01,
  runOut: { chance: 0, day: null },
  touched: [],
  unmetByDay: [0, 0, 0, 0, 0, 0, 0],
  stockByDay: [120, 112, 104, 98, 90, 84, 80].map((n) => spread(n, 15)),
});

export const binAnswer: BinAnswer = {
  code: 'B1',
  name: 'Cricket box 1',
  species: 'gryllodes',
  headsNow: { low: 62, mid: 97, high: 140 },
  lookedDaysAgo: 9,
  restsUntil: null,
  eaten: 58,
  died: 14,
  arrived: 0,
  hatched: 0,
  left: 25,
  outgrown: 6,
  lengthsNow: { low: 9, mid: 13, high: 18 },
  learned: {
    speed: { low: 0.82, mid: 0.93, high: 1.06, tooLittle: false },
    hazard: { low: 0.31, mid: 0.86, high: 2.1, tooLittle: true },
    laying: null,
    evidence: { counts: 1, levels: 1, weighings: 0, sizes: 3, firstAdults: 0, timesDead: 1, dead: 2 },
    looks: [{ day: TODAY - 9, kind: 'counted', heads: 180, expected: { low: 171, mid: 210, high: 252 } }],
  },
};

export const answer: CoverAnswer = {
  day: TODAY,
  horizonDays: 7,
  untilDelivery: 'D1',
  seed: 20260,
  replicates: 1000,
  revision: 311,
  verdict: 'runs short',
  headline: 'Small juveniles run short on Thursday; flies are plenty',
  nothingMissed: { chance: 0.41, standardError: 0.015 },
  mealsDue: 142,
  given: { low: 1.04, mid: 1.12, high: 1.21, meals: 96 },
  unfed: { missedMeals: 0.6, dangers: 0 },
  lateMeals: 2.2,
  missedMeals: 6.3,
  dangers: 0,
  groups: [
    lasting('slings', 'spiderlings', [1.6, 2.4, 3.4], 40),
    shortGroup,
    lasting('juveniles', 'juveniles', [8, 11, 14], 22),
    lasting('adults', 'adults', [13, 19, 27], 31),
    lasting('giants', 'giants', [28, 36, 48], 4),
  ],
  bins: [
    binAnswer,
    {
      ...binAnswer,
      code: 'B2',
      name: 'Roach tub',
      species: 'dubia',
      headsNow: spread(80, 3),
      lookedDaysAgo: 0,
      lengthsNow: { low: 5, mid: 12, high: 38 },
      hatched: 12,
      outgrown: 0,
      died: 0.4,
    },
    {
      ...binAnswer,
      code: 'B3',
      name: 'Fly cup 7',
      species: 'hydei',
      headsNow: spread(420, 160),
      lookedDaysAgo: 2,
      outgrown: 0,
      lengthsNow: { low: 2, mid: 2.4, high: 3 },
    },
    {
      ...binAnswer,
      code: 'B4',
      name: 'Mealworm tray',
      species: 'tenebrio',
      headsNow: spread(90, 30),
      lookedDaysAgo: null,
      outgrown: 0,
      died: 2,
      lengthsNow: { low: 15, mid: 20, high: 24 },
    },
  ],
  act: {
    kind: 'buy at a shop',
    sentence: 'Buy about 50 banded crickets of 5 mm by Wednesday.',
    bin: null,
    species: 'gryllodes',
    animals: ['A1', 'A5'],
    before: { lateMeals: 2.2, missedMeals: 6.3, dangers: 0, nothingMissed: 0.41 },
    after: { lateMeals: 0.3, missedMeals: 0.2, dangers: 0, nothingMissed: 0.96 },
  },
  look: { bin: 'B1', sentence: 'Nobody looked at Cricket box 1 for 9 days.' },
  spectrum,
};

export const bins: readonly Bin[] = [
  {
    code: 'B1',
    name: 'Cricket box 1',
    species: 'gryllodes',
    role: 'holding',
    room: 'R1',
    capacity: 200,
    keepAdults: false,
    events: [],
  },
  {
    code: 'B4',
    name: 'Mealworm tray',
    species: 'tenebrio',
    role: 'holding',
    room: 'R1',
    capacity: null,
    keepAdults: false,
    events: [],
  },
  {
    code: 'B2',
    name: 'Roach tub',
    species: 'dubia',
    role: 'colony',
    room: 'R1',
    capacity: 600,
    keepAdults: true,
    events: [],
  },
  {
    code: 'B3',
    name: 'Fly cup 7',
    species: 'hydei',
    role: 'cup',
    room: 'R1',
    capacity: null,
    keepAdults: false,
    events: [{ day: TODAY - 2, kind: 'cup looked', look: 'producing' }],
  },
];

export const deliveries: readonly ExpectedDelivery[] = [
  { code: 'D1', species: 'gryllodes', bin: 'B1', lot: { heads: 250, fromMm: 4, toMm: 6 }, day: TODAY + 7 },
];

export const animal: Animal = {
  code: 'A1',
  name: 'Hazel',
  kind: 'brachypelma',
  count: 1,
  sex: 'unsexed',
  matured: false,
  gaugeMm: 34,
  gaugeAssumed: true,
  room: 'R1',
  shelf: 'Shelf A',
  lastOffered: TODAY - 8,
  lastOutcome: 'taken',
  lastTaken: TODAY - 8,
  lastMoult: { earliest: TODAY - 60, found: TODAY - 55 },
  premoultSeen: null,
  intervalsOnRecord: [9, 10, 8],
  offersOnRecord: 11,
  takenOnRecord: 9,
  refusalsInRow: 0,
  givenOnRecord: { meals: 0, items: 0 },
  stageOverride: null,
};

export const serving = (animal: string, shelf: string, more: Partial<Serving> = {}): Serving => ({
  animal,
  shelf,
  dueFrom: TODAY - 1,
  dueTo: TODAY + 2,
  state: 'due',
  offer: { bin: 'B1', species: 'gryllodes', heads: 3, fromMm: 9, toMm: 12, killFirst: false, portions: 1 },
  choices: [],
  note: null,
  look: null,
  ...more,
});

export const evening: Evening = {
  day: TODAY,
  feedingDay: true,
  servings: [
    serving('A1', 'Shelf A', { offer: null, note: 'Cut a cricket, or wait for the parcel.' }),
    serving('A2', 'Shelf A', { state: 'late', dueFrom: TODAY - 5, dueTo: TODAY - 2 }),
    serving('A3', 'Shelf A', {
      offer: { bin: 'B2', species: 'dubia', heads: 1, fromMm: 30, toMm: 36, killFirst: true, portions: 2 },
    }),
    serving('A4', 'Shelf B', {
      offer: { bin: 'B3', species: 'hydei', heads: 60, fromMm: 2, toMm: 3, killFirst: false, portions: 1 },
    }),
    serving('A5', 'Shelf B'),
  ],
  withheld: [
    {
      animal: 'A6',
      shelf: 'Shelf B',
      reason: 'moulted on Friday 20 November; wait until 27 November.',
      look: null,
    },
  ],
};
