/** Props of the larder and of a bin's page: a box of crickets, its page before it is worked out, a colony, a crash. */
import { speciesByCode } from '../../src/facts/prey/index.ts';
import type { BinOutlook } from '../../src/husbandry/colony/index.ts';
import type { Bin } from '../../src/husbandry/larder/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/species.ts';
import type { BinGoes, BinLearned, BinWeek, CrashAnswer } from '../../src/husbandry/supply/index.ts';
import type { BinPageProps } from '../../views/pages/bin.tsx';
import type { LarderProps } from '../../views/pages/larder.tsx';
import {
  answer,
  binAnswer,
  bins,
  deliveries,
  edgesMm,
  forms,
  hump,
  names,
  shell,
  shortGroup,
  spread,
  TODAY,
} from './view-fixtures.ts';

const unit = 'mm' as const;
export const sizes = [
  { value: 'pinhead', label: 'Pinhead, 2–4 mm' },
  { value: 'small', label: 'Small, 4–7 mm' },
  { value: 'medium', label: 'Medium, 8–13 mm' },
  { value: 'large', label: 'Large, 14–18 mm' },
];

const WEEKS = 13;

const cricketWeek = (week: number): BinWeek => ({
  day: TODAY + 7 * week,
  heads: spread(97 - 5 * week, 12 + 2 * week),
  bySize: [
    { size: 'small', heads: Math.max(0, 60 - 30 * week) },
    { size: 'medium', heads: Math.max(0, 37 + 10 * week - 3 * week * week) },
    { size: 'large', heads: Math.min(60, 12 * week) },
    { size: 'larger', heads: 0 },
  ],
  byBand: hump(97 - 5 * week, Math.min(18, 10 * 1.1 ** week), 0.16),
});

const outlook: BinOutlook = {
  bin: 'B1',
  revision: 1,
  replicates: 60,
  weeks: Array.from({ length: WEEKS }, (_, week) => cricketWeek(week)),
  edgesMm,
  capacity: { heads: 120, bySize: false },
  feeds: [
    {
      key: 'small',
      name: 'small juveniles',
      fromMm: 3.8,
      toMm: 12,
      fitsFrom: spread(0, 0),
      outgrownOn: { low: 8, mid: 11, high: 15 },
    },
    { key: 'grown', name: 'adults', fromMm: 9, toMm: 30, fitsFrom: spread(0, 0), outgrownOn: null },
  ],
  culls: [],
  takes: null,
};

const goes: BinGoes = {
  bin: 'B1',
  outgrows: { name: 'small juveniles', from: TODAY + 11, some: false },
  full: 0.8,
  overFrom: null,
  mostAdult: TODAY + 40,
  doublingDays: null,
};

const evidence = { counts: 3, levels: 0, weighings: 1, sizes: 2, firstAdults: 0, timesDead: 4, dead: 41 };

const learned: BinLearned = {
  speed: { low: 0.9, mid: 1.18, high: 1.4, tooLittle: false },
  hazard: { low: 0.4, mid: 0.8, high: 1.7, tooLittle: true },
  laying: { low: 0.31, mid: 0.44, high: 0.62, tooLittle: false },
  evidence,
  looks: [{ day: TODAY - 9, kind: 'counted', heads: 130, expected: { low: 120, mid: 152, high: 190 } }],
};
const tooLittle: BinLearned = {
  ...learned,
  speed: { low: 0.66, mid: 1, high: 1.5, tooLittle: true },
  laying: null,
  evidence: { ...evidence, counts: 0, weighings: 0, sizes: 0, dead: 0 },
  looks: [],
};

export const binProps: BinPageProps = {
  shell,
  unit,
  forms,
  names,
  bin: {
    ...bins[0]!,
    origin: 'the Saturday market',
    events: [
      { kind: 'counted', day: TODAY - 9, heads: 130, fromMm: null, toMm: null },
      { kind: 'moved out', day: TODAY - 4, heads: 20 },
    ],
  },
  species: speciesByCode.get('acheta-domesticus') as PreySpecies,
  remarks: [],
  kept: { apartUntil: null, restsUntil: null, keepsTo: null },
  now: { ...binAnswer, learned },
  lastLook: learned.looks[0]!,
  goes,
  warmth: { minC: 22, maxC: 26 },
  outlook,
  whole: true,
  answer: binAnswer,
  horizonDays: 7,
  crash: null,
  sizes,
  rooms: [{ value: 'R1', label: 'Spider room' }],
  quarantineDays: 7,
  leftAlive: [
    { value: '0', label: 'None left' },
    { value: '5', label: 'A few left' },
    { value: '24', label: 'A quarter left' },
  ],
  otherBins: [{ value: 'B9', label: 'Cricket box 2' }],
  sources: [
    { what: 'Bins grow slower or faster', value: 'by about 25 %', status: 'from memory', source: null },
  ],
  history: [{ id: '12', day: TODAY - 9, sentence: 'Counted 130 heads.', undone: false, canUndo: true }],
};

export const binSoonProps: BinPageProps = { ...binProps, outlook: null, answer: null, whole: false };

const colony: Bin = {
  ...bins[2]!,
  events: [{ kind: 'counted', day: TODAY, heads: 80, fromMm: null, toMm: null }],
};

export const colonyProps: BinPageProps = {
  ...binProps,
  bin: colony,
  species: speciesByCode.get('blaptica-dubia') as PreySpecies,
  now: {
    headsNow: spread(480, 40),
    lookedDaysAgo: 0,
    lengthsNow: { low: 5, mid: 12, high: 38 },
    learned: tooLittle,
  },
  goes: {
    ...goes,
    bin: 'B2',
    outgrows: null,
    full: 0.82,
    overFrom: TODAY + 20,
    mostAdult: null,
    doublingDays: 49,
  },
  outlook: {
    ...outlook,
    bin: 'B2',
    feeds: [],
    capacity: { heads: 600, bySize: true },
    weeks: outlook.weeks.map((each, week) => ({
      ...each,
      heads: spread(480 + 40 * week, 40 + 10 * week),
      bySize: [
        { size: 'small', heads: 220 + 30 * week },
        { size: 'medium', heads: 120 + 5 * week },
        { size: 'adult', heads: 140 + 5 * week },
      ],
      byBand: hump(480, 12, 0.5),
    })),
    culls: [
      { why: 'room', day: TODAY + 20, heads: 90, size: { name: 'small', fromMm: 6, toMm: 12 } },
      { why: 'males', day: TODAY, heads: 14, size: null },
    ],
    takes: {
      weeklyShare: 0.094,
      most: [
        { size: 'small', heads: 88 },
        { size: 'medium', heads: 61 },
        { size: 'adult', heads: 34 },
      ],
    },
  },
};

const { key, name, urgency, window, animals, heads } = shortGroup;
const crashAnswer: CrashAnswer = {
  bin: 'B1',
  revision: 1,
  days: 28,
  replicates: 100,
  short: [
    {
      ...{ key, name, urgency, window, animals, heads },
      from: TODAY + 4,
      chance: 0.81,
      chanceBefore: 0.1,
      instead: [{ bin: 'B2', species: 'dubia', heads: 21 }],
      start: [
        { kind: 'cup', species: 'hydei', yields: TODAY + 16, best: TODAY + 19, weekly: 130 },
        { kind: 'order', species: 'gryllodes', size: 'small', orderBy: TODAY + 1, yields: TODAY + 4 },
        { kind: 'leave to breed', bin: 'B1', yields: null },
      ],
    },
  ],
  atRisk: [{ bin: 'B4', species: 'tenebrio', shares: 'origin' }],
};

export const crashedProps: BinPageProps = {
  ...binProps,
  bin: { ...bins[0]!, events: [{ kind: 'died off', day: TODAY, left: 5 }] },
  now: {
    headsNow: spread(5, 2),
    lookedDaysAgo: 0,
    lengthsNow: { low: 9, mid: 13, high: 18 },
    learned,
  },
  crash: { day: TODAY, atRisk: crashAnswer.atRisk, answer: crashAnswer },
};

export const larderProps: LarderProps = {
  shell,
  unit,
  forms,
  names,
  bins,
  answers: answer.bins,
  horizonDays: 7,
  goes: new Map([
    ['B1', goes],
    ['B2', colonyProps.goes!],
  ]),
  kept: new Map([['B4', { apartUntil: TODAY + 5, restsUntil: null, keepsTo: TODAY + 60 }]]),
  lines: [
    { species: 'dubia', bins: ['B2'], apart: 1, days: 84, allLost: 0.0165, withOneMore: 0.0165 ** 2 },
    { species: 'hydei', bins: ['B3', 'B7'], apart: 2, days: 84, allLost: 0.0003, withOneMore: 0.000_005 },
  ],
  cups: [
    {
      species: 'hydei',
      weekly: 118,
      starts: [
        { day: TODAY, cups: 2 },
        { day: TODAY + 9, cups: 1 },
      ],
    },
  ],
  deliveries,
  sizeClasses: new Map([['gryllodes', sizes]]),
};
