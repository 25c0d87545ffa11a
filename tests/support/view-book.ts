/** The props of the Book's pages, invented. */
import type { BookProps } from '../../views/pages/book.tsx';
import type { KindProps, StageView } from '../../views/pages/kind.tsx';
import type { NewKindProps } from '../../views/pages/kind-new.tsx';
import type { MethodProps } from '../../views/pages/method.tsx';
import type { PreyProps } from '../../views/pages/prey.tsx';
import type { EffectSide } from '../../views/partials/effect.tsx';
import type { NumberFormProps, NumberGroup } from '../../views/partials/number-form.tsx';
import type { NumberLine } from '../../views/partials/own-numbers.tsx';
import { forms, shell, TODAY } from './view-fixtures.ts';

const unit = 'mm' as const;

const lines: readonly NumberLine[] = [
  {
    field: 'intervalDays',
    what: 'Between meals',
    value: '5 to 9 days',
    status: 'yours',
    source: null,
    own: {
      since: '2026-11-20',
      why: 'They stay plump on less',
      book: '3 to 7 days',
      bookStatus: 'common practice',
      bookSource: 'care sheets',
    },
  },
  {
    field: 'weeklyNeed',
    what: 'Needs in a week',
    value: '30 % to 130 % of its own mass',
    status: 'published',
    source: 'A journal, table 2',
    own: null,
  },
  { field: 'urgency', what: 'When prey is short', value: 'fragile', status: null, source: null, own: null },
];

const stage = (word: string, length: number, more: Partial<StageView> = {}): StageView => ({
  stage: word,
  word,
  from: '',
  prey: 'pinhead to small house crickets',
  often: '1 to 2 every 5 to 9 days',
  window: { minMm: length * 0.4, idealMm: length * 0.7, maxMm: length },
  ownLengthMm: length,
  heads: 0,
  lines: lines.slice(1),
  ...more,
});

const side = (more: Partial<EffectSide> = {}): EffectSide => ({
  takes: 'takes 11–15 mm, best 13 mm: medium house crickets',
  often: '1 to 2 every 5 to 9 days, due Thu 26 Nov',
  need: 'about right: 21 % of its own mass a week; its need is 15 % to 50 %',
  window: { minMm: 11, idealMm: 13, maxMm: 15 },
  ownLengthMm: 20,
  ...more,
});

const effect = {
  finding: 'Changes what 1 of your 2 get.',
  wrong: [],
  lines: [
    {
      who: 'Clove (48 mm)',
      before: side({
        takes: 'takes 9–15 mm, best 12 mm: medium house crickets',
        window: { minMm: 9, idealMm: 12, maxMm: 15 },
      }),
      after: side(),
    },
    { who: 'Tansy (50 mm)', before: side(), after: side() },
  ],
  more: 2,
  week: { before: '6 items of the best size, 2.7 g', after: '5 items of the best size, 2.4 g' },
};

const shared = { forms, unit, code: 'knee', revision: 41, effect };

export const kindProps: KindProps = {
  shell,
  unit,
  forms,
  revision: 41,
  code: 'knee',
  name: 'Genus species',
  commonName: 'red-legged bird-eater',
  group: 'tarantula',
  madeFrom: null,
  lede: '6 of yours. A spiderling of 6 mm takes 2–5 mm, best 3 mm: pinhead house crickets; 1 to 2 every 5 to 9 days.',
  cautions: ['urticating hairs'],
  stages: [
    stage('spiderling', 3, { heads: 4, lines }),
    stage('juvenile', 20, { from: 'from 28 mm of leg span', heads: 2 }),
    stage('adult', 55, { from: 'from 119 mm of leg span' }),
  ],
  whole: lines.slice(1),
  animals: [
    { code: 'A1', name: 'Clove' },
    { code: 'A6', name: 'Tansy' },
  ],
  open: null,
  history: [
    {
      id: '41',
      day: TODAY - 2,
      sentence: 'Changed the rule of red-legged bird-eater, young: interval.',
      undone: false,
      canUndo: true,
    },
  ],
};

/** A rule looked at, with one figure that cannot be. */
export const kindRuleProps: KindProps = {
  ...kindProps,
  open: {
    what: 'rule',
    word: 'juvenile',
    form: {
      ...shared,
      forms: {
        formId: 'page-1',
        refused: {
          form: 'rule',
          values: { stage: 'juvenile', intervalMost: '900', accepts: 'cricket', windowIdeal: '60' },
          problems: { intervalMost: '"900" is not a whole number of days from 1 to 400.' },
        },
      },
      stage: 'juvenile',
      figures: { windowMin: '30', windowIdeal: '60', windowMax: '90', 'cap-cricket': '' },
      accepts: ['cricket', 'fly'],
      refusesHard: true,
      urgency: 'ordinary',
      moults: true,
      preyForms: [
        { value: 'cricket', label: 'Crickets', cap: 'cap-cricket' },
        { value: 'fly', label: 'Flies', cap: 'cap-fly' },
      ],
    },
  },
};

export const kindWholeProps: KindProps = {
  ...kindProps,
  madeFrom: { code: 'tarantula', name: 'tarantula' },
  open: {
    what: 'kind',
    form: { ...shared, figures: { gauge: 'diagonal leg span', bodyPerGauge: '42' }, hasMale: true },
  },
};

const kinds = [
  {
    code: 'knee',
    name: 'Genus species',
    commonName: 'red-legged bird-eater',
    isOwn: false,
    adult: '127–152 mm',
    heads: 6,
    changed: 1,
  },
  {
    code: 'K1',
    name: 'Genus nova',
    commonName: 'new knee',
    isOwn: true,
    adult: '90–120 mm',
    heads: 0,
    changed: 0,
  },
];

export const bookProps: BookProps = {
  shell,
  unit,
  query: '',
  kinds: 86,
  ownKinds: 1,
  preySpecies: 17,
  standing: { published: 549, 'common practice': 2098, 'from memory': 2800, yours: 3 },
  groups: [
    { name: 'tarantulas', general: 'tarantula', kinds },
    { name: 'frogs', general: 'frog', kinds: [] },
  ],
  prey: [
    {
      code: 'acheta-domesticus',
      name: 'Acheta domesticus',
      commonName: 'house cricket',
      lengths: '2–20 mm',
      sizes: 'pinhead, small',
      changed: 2,
    },
  ],
};

export const newKindProps: NewKindProps = {
  shell,
  forms,
  kinds: [{ value: 'tarantula', label: 'Tarantula', group: 'Tarantulas' }],
  from: 'tarantula',
};

/** A sheet of an invented species. */
const sheet: PreyProps['sheet'] = {
  species: 'acheta-domesticus',
  name: 'Acheta domesticus',
  commonName: 'house cricket',
  tempC: 28,
  develops: true,
  stages: [
    { name: 'egg', kind: 'egg', days: 12, cv: 0.2, survival: 1 },
    { name: 'first young', kind: 'young', days: 18.2, cv: 0.22, survival: 0.85 },
  ],
  hatchToAdult: { days: 49.6, cv: 0.12, survival: 0.815 },
  adultDays: 62,
  byAge: [
    { ageDays: 0, massMg: 0.6, lengthMm: 2.2, alive: 1 },
    { ageDays: 7, massMg: 4, lengthMm: 4.1, alive: 0.93 },
  ],
  growth: { perWeek: 1.24, doublingDays: 21 },
  remarks: ['28 °C is outside what was measured of laying (18–26 °C).'],
};

const growth: NumberGroup = {
  code: 'Growth-egg-to-adult',
  about: 'Growth: egg to adult',
  lines: [
    {
      field: 'span.egg-to-adult.points',
      what: 'Days measured',
      value: '66 days at 30 °C',
      status: 'published',
      source: 'A. Writer (2001). Crickets',
      own: null,
      others: [{ said: '4 weeks as a nymph', source: 'rearing notes' }],
      whyNotTheirs: 'measured',
    },
    { ...(lines[0] as NumberLine), field: 'span.egg-to-adult.degreeDays', what: 'Warmth needed above that' },
  ],
};

const sent = { forms, revision: 41, groups: [growth] };

export const preyProps: PreyProps = {
  ...sent,
  shell,
  unit,
  code: 'acheta-domesticus',
  name: 'Acheta domesticus',
  commonName: 'house cricket',
  sheet,
  asked: { typed: '28 °C', problem: null },
  cautions: [
    {
      text: 'A permit is needed here.',
      source: 'https://example.org/papers/of-a-name-too-long-for-the-screen-of-a-phone/2012',
      others: [{ said: 'there too', source: null }],
    },
  ],
  notes: ['Inactive below about 20 °C.'],
  form: null,
  leftOut: [
    { span: 'nymph', tempC: 24, days: 94, foretoldDays: 87, error: -0.07, isEnd: true },
    {
      span: 'nymph',
      tempC: 26,
      days: 67,
      foretoldDays: Number.POSITIVE_INFINITY,
      error: Number.POSITIVE_INFINITY,
      isEnd: false,
    },
  ],
  history: kindProps.history,
};

/** A form with one figure that cannot be. */
const form: NumberFormProps = {
  forms: {
    formId: 'page-1',
    refused: {
      form: 'numbers',
      values: { 'span.egg-to-adult.points.30': '9000' },
      problems: { 'span.egg-to-adult.points.30': '"9000" is not a time from 0.2 to 3,000 days.' },
    },
  },
  action: '/book/prey/acheta-domesticus/numbers',
  back: '/book/prey/acheta-domesticus',
  revision: 41,
  group: growth.code,
  about: growth.about,
  numbers: [
    {
      what: 'Days measured',
      fields: [
        { name: 'span.egg-to-adult.points.18', label: 'At 18 °C, days', start: '200.5' },
        { name: 'span.egg-to-adult.points.30', label: 'At 30 °C, days', start: '66.26' },
      ],
    },
    {
      what: 'Grows fastest at',
      fields: [{ name: 'span.egg-to-adult.optimumC', label: 'Grows fastest at, °C', start: '35' }],
    },
  ],
};

/** The form open, too cold to grow, and a temperature nobody can read. */
export const preyChangeProps: PreyProps = {
  ...preyProps,
  form,
  asked: { typed: 'warm', problem: '"warm" is not a temperature; write it as 26 C or 79 F.' },
  sheet: {
    ...sheet,
    tempC: 10,
    develops: false,
    stages: sheet.stages.map((stage) => ({ ...stage, days: null, survival: null })),
    hatchToAdult: { days: null, cv: 0.12, survival: null },
    byAge: [],
    growth: null,
  },
};

export const methodProps: MethodProps = {
  ...sent,
  shell,
  groups: [
    { ...growth, code: 'Verdict', about: 'Verdict' },
    { ...growth, code: 'Keeping', about: 'Keeping', lines: growth.lines.slice(0, 1) },
  ],
  form: null,
  fixed: [{ what: 'Replicates', value: '400 replicates', status: 'from memory', source: 'our choice' }],
  history: [],
};
