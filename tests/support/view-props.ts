/** The props of every page, from the invented room. */
import type { AnimalPageProps } from '../../views/pages/animal.tsx';
import type { AnimalFormProps } from '../../views/pages/animal-form.tsx';
import type { AnimalRow, AnimalsProps } from '../../views/pages/animals.tsx';
import type { AnimalsChangeProps } from '../../views/pages/animals-change.tsx';
import type { AnimalsCheckProps } from '../../views/pages/animals-check.tsx';
import type { BinPageProps } from '../../views/pages/bin.tsx';
import type { BinFormProps } from '../../views/pages/bin-form.tsx';
import type { CameBackProps } from '../../views/pages/came-back.tsx';
import type { ImportProps } from '../../views/pages/import.tsx';
import type { LarderProps } from '../../views/pages/larder.tsx';
import type { MorningProps } from '../../views/pages/morning.tsx';
import type { SettingsProps } from '../../views/pages/settings.tsx';
import type { SplitProps } from '../../views/pages/split.tsx';
import type { StartProps } from '../../views/pages/start.tsx';
import type { SundayProps } from '../../views/pages/sunday.tsx';
import type { TonightProps } from '../../views/pages/tonight.tsx';
import type { SourceLine } from '../../views/partials/sources.tsx';
import {
  animal,
  answer,
  binAnswer,
  bins,
  deliveries,
  evening,
  forms,
  names,
  serving,
  shell,
  spectrum,
  TODAY,
} from './view-fixtures.ts';
import { growth, intake, meals, nextMoult, refusals, rungs } from './view-life.ts';

const unit = 'mm' as const;
const sources: readonly SourceLine[] = [
  { what: 'Wait after a moult', value: '7 days', status: 'common practice', source: null },
  {
    what: 'Banded cricket, egg to adult',
    value: '41 days at 30 °C',
    status: 'published',
    source: 'A journal, table 2',
  },
];

export const sundayProps: SundayProps = {
  shell,
  answer,
  names,
  unit,
  actSought: true,
  ahead: null,
  lastWeek: 5,
  delivery: { label: 'the crickets come', day: TODAY + 7 },
  sources,
};

export const tonightProps: TonightProps = {
  shell,
  evening,
  names,
  unit,
  forms,
  cautions: new Map([['A3', ['urticating hairs']]]),
  waiting: 4,
  nextDay: TODAY + 2,
  anybody: true,
  chosen: new Map(),
  told: { already: [], against: [] },
  used: [],
  written: 0,
  earliest: TODAY - 60,
};

/** An evening three days ago, half written down by somebody else, with a bin that held less than was fed. */
export const earlierRoundProps: TonightProps = {
  ...tonightProps,
  evening: {
    ...evening,
    day: TODAY - 3,
    servings: [
      serving('A2', 'Shelf A', {
        look: 'Refused three times in a row: premoult, or something wrong? Look at it; a vet if it is thin or weak.',
        choices: [
          { bin: 'B2', species: 'dubia', heads: 2, fromMm: 9, toMm: 12, killFirst: false, portions: 1 },
          { bin: 'B4', species: 'tenebrio', heads: 1, fromMm: 20, toMm: 24, killFirst: true, portions: 3 },
        ],
      }),
      ...evening.servings.slice(2),
    ],
  },
  chosen: new Map([['Shelf A', 'B2']]),
  told: {
    already: [
      {
        animal: 'A5',
        stands: 'offered 3 banded crickets from Cricket box 1',
        act: '41',
        summary: 'Round of Thu 19 Nov: 2 fed, 0 not',
        minutesAgo: 12,
      },
    ],
    against: [
      {
        animal: 'A1',
        said: 'premoult',
        stands: 'offered 2 banded crickets from Cricket box 1',
        act: '41',
        summary: 'Round of Thu 19 Nov: 2 fed, 0 not',
        minutesAgo: 12,
      },
    ],
  },
  used: [
    {
      bin: 'B1',
      species: 'gryllodes',
      fed: 40,
      before: 25,
      now: { low: 0, mid: 0, high: 0 },
      short: true,
      ask: true,
    },
    {
      bin: 'B2',
      species: 'dubia',
      fed: 6,
      before: 120,
      now: { low: 70, mid: 112, high: 180 },
      short: false,
      ask: true,
    },
    {
      bin: 'B3',
      species: 'hydei',
      fed: 60,
      before: 420,
      now: { low: 350, mid: 360, high: 370 },
      short: false,
      ask: false,
    },
  ],
  written: 2,
};

export const morningProps: MorningProps = {
  shell,
  forms,
  day: TODAY - 1,
  rows: [
    {
      animal: 'A2',
      name: 'Mr Wick',
      shelf: 'Shelf A',
      offered: '3 banded crickets, 9–12 mm',
      nearMoult: false,
    },
    { animal: 'A3', name: 'Duchess', shelf: 'Shelf A', offered: '1 dubia roach, 30–36 mm', nearMoult: true },
    {
      animal: 'A5',
      name: 'Biscuit',
      shelf: 'Shelf B',
      offered: '2 banded crickets, 9–12 mm',
      nearMoult: false,
    },
  ],
};

const row = (code: string, name: string, more: Partial<AnimalRow>): AnimalRow => ({
  code,
  name,
  kindName: 'Red-legged bird-eater',
  stageWord: 'juvenile',
  count: 1,
  place: null,
  ownLengthMm: 14,
  window: { minMm: 4, idealMm: 6, maxMm: 9 },
  next: 'due Thu 26 Nov',
  remarks: [],
  ...more,
});

const shelfA: readonly AnimalRow[] = [
  row('A1', 'Hazel', { remarks: ['size assumed'] }),
  row('A2', 'Mr Wick', {
    stageWord: 'adult',
    ownLengthMm: 52,
    window: { minMm: 14, idealMm: 22, maxMm: 34 },
  }),
  row('A3', 'Duchess', {
    stageWord: 'adult',
    ownLengthMm: 78,
    window: { minMm: 22, idealMm: 36, maxMm: 55 },
    next: 'late since Thu 19 Nov',
    remarks: ['refused 3 times'],
  }),
];
const shelfB: readonly AnimalRow[] = [
  row('A4', 'Sling tray 2', {
    stageWord: 'spiderlings',
    count: 40,
    ownLengthMm: 3,
    window: { minMm: 1.4, idealMm: 2.2, maxMm: 3 },
    next: 'due tonight',
  }),
  row('A6', 'Tansy', { next: 'waits after its moult until Fri 27 Nov' }),
];

const filter = (label: string, count: number, on = false) => ({
  label,
  count,
  on,
  href: `/animals?show=${label.toLowerCase().replaceAll(' ', '-')}`,
});

export const animalsProps: AnimalsProps = {
  shell,
  unit,
  total: 44,
  search: {
    q: '',
    show: [],
    choices: [
      {
        name: 'group',
        label: 'Kinds',
        chosen: '',
        options: [
          { value: '', label: 'All kinds' },
          { value: 'tarantula', label: 'Tarantulas' },
        ],
      },
      {
        name: 'place',
        label: 'Place',
        chosen: '',
        options: [
          { value: '', label: 'All places' },
          { value: 'R1', label: 'All of Spare room', group: 'Spare room' },
          { value: 'R1|Shelf A', label: 'Shelf A', group: 'Spare room' },
        ],
      },
    ],
  },
  filters: [
    filter('Due tonight', 1),
    filter('Late', 1),
    filter('About to moult', 0),
    filter('Hardening', 1),
    filter('Refused twice or more', 1),
    filter('Kept as a group', 1),
  ],
  found: '',
  clear: null,
  instead: [],
  sections: [
    { head: 'Spare room, Shelf A', rows: shelfA },
    { head: 'Spare room, Shelf B', rows: shelfB },
  ],
  leaves: { from: 1, to: 5, of: 5, previous: null, next: null },
  list: '',
  seen: '5.00ff',
  lent: [
    {
      code: 'A5',
      name: 'Biscuit',
      kindName: 'Red-legged bird-eater',
      count: 1,
      to: 'the school',
      since: TODAY - 30,
      back: TODAY - 2,
    },
  ],
};

/** The list as a query with words finds it among the fixtures. */
export function animalsFound(q: string): AnimalsProps {
  if (q === '') return animalsProps;
  const sections = animalsProps.sections
    .map(({ head, rows }) => ({ head, rows: rows.filter(({ name }) => name.toLowerCase().includes(q)) }))
    .filter(({ rows }) => rows.length > 0);
  const of = sections.reduce((sum, { rows }) => sum + rows.length, 0);
  return {
    ...animalsProps,
    search: { ...animalsProps.search, q },
    found: of === 0 ? `None of 5 found: matching “${q}”.` : `${of} of 5 found: matching “${q}”.`,
    clear: '/animals',
    instead: of === 0 ? [{ label: `“${q}”`, href: '/animals', count: 5 }] : [],
    sections,
    leaves: { from: 1, to: of, of, previous: null, next: null },
  };
}

const chosen = { animal: ['A1', 'A2', 'A4'], of: 'ticked', list: 'show=late', seen: '3.00ff' };

export const animalsChangeProps: AnimalsChangeProps = {
  shell,
  forms: {
    formId: 'page-1',
    refused: {
      form: 'move',
      values: { room: '', shelf: '' },
      problems: { shelf: 'Choose a room, write a shelf, or both.' },
    },
  },
  who: '3 animals (42 heads with the groups)',
  names: 'Hazel, Mr Wick and Sling tray 2',
  chosen,
  back: '/animals?show=late',
  rooms: [{ value: 'R1', label: 'Spare room' }],
  shelves: ['Shelf A', 'Shelf B'],
  kinds: [{ value: 'brachypelma', label: 'Red-legged bird-eater', group: 'Tarantulas' }],
};

export const animalsCheckProps: AnimalsCheckProps = {
  shell,
  forms,
  act: 'died',
  headline: '2 animals died on Sunday 22 November; 1 is so already.',
  follows: ['Groups end with all their heads. The records stay.'],
  button: 'Write down the death of 2 animals',
  who: [
    { code: 'A1', name: 'Hazel' },
    { code: 'A2', name: 'Mr Wick' },
  ],
  chosen,
  filled: { day: '2026-11-22' },
  revision: 311,
  action: '/animals/change/died?list=show%3Dlate',
  again: '/animals/change?animal=A1&animal=A2',
  back: '/animals?show=late',
};

export const cameBackProps: CameBackProps = {
  shell,
  forms,
  code: 'A5',
  name: 'Biscuit',
  to: 'the school',
  since: TODAY - 30,
};

export const splitProps: SplitProps = {
  shell,
  unit,
  forms,
  group: { ...animal, code: 'A4', name: 'Sling tray 2', count: 40, gaugeMm: 8, shelf: 'Shelf B' },
  rooms: [{ value: 'R1', label: 'Spare room' }],
  revision: 311,
};

export const animalProps: AnimalPageProps = {
  shell,
  unit,
  forms,
  animal,
  kindName: 'Red-legged bird-eater',
  gaugeWord: 'diagonal leg span',
  stageWord: 'juvenile',
  roomName: 'Spare room',
  ownLengthMm: 14,
  window: { minMm: 4, idealMm: 6, maxMm: 9 },
  next: 'Eats Thursday 26 November: 3 banded crickets of 5–7 mm.',
  cautions: ['urticating hairs'],
  rule: sources,
  ladder: { rungs, next: nextMoult, larder: spectrum, species: names.species },
  fits: { now: 'about 50 dubia roaches and 12 banded crickets', after: 'about 60 banded crickets' },
  appetite: { intake, refusals, meals, from: TODAY - 70 },
  growth,
  record: {
    months: [
      {
        title: 'November 2026',
        lines: [
          {
            id: '40',
            day: TODAY - 8,
            sentence: 'Offered 3 banded crickets, 5–7 mm, from Cricket box 1: taken.',
            undone: false,
            canUndo: false,
          },
        ],
      },
      {
        title: 'September 2026',
        lines: [
          { id: '31', day: TODAY - 55, sentence: 'Moult found.', undone: false, canUndo: true },
          { id: '30', day: TODAY - 55, sentence: 'Died.', undone: true, canUndo: true },
        ],
      },
    ],
    newer: null,
    older: '/animals/A1?page=2#history',
  },
};

const kinds = [
  { value: 'brachypelma', label: 'Red-legged bird-eater', group: 'Tarantulas' },
  { value: 'mantid', label: 'Any mantid', group: 'Mantids' },
];
const rooms = [{ value: 'R1', label: 'Spare room' }];
const sizes = [
  { value: 'pinhead', label: 'Pinhead, 2–4 mm' },
  { value: 'small', label: 'Small, 4–7 mm' },
  { value: 'medium', label: 'Medium, 8–13 mm' },
  { value: 'large', label: 'Large, 14–18 mm' },
];

export const animalFormProps: AnimalFormProps = {
  shell,
  unit,
  forms: {
    formId: 'page-1',
    refused: {
      form: 'animal',
      values: { name: 'Hazel', gauge: '34 furlongs', kind: 'mantid', sex: 'female', count: '1' },
      problems: { gauge: '"34 furlongs" is not a length; write it as 34 mm or 1 1/4 in.' },
    },
  },
  animal: null,
  begun: { hatchedDay: null, hereSince: null },
  kinds,
  rooms,
  shelves: ['Shelf A', 'Shelf B'],
};

export const larderProps: LarderProps = {
  shell,
  unit,
  forms,
  names,
  bins,
  answers: answer.bins,
  horizonDays: 7,
  deliveries,
  sizeClasses: new Map([['gryllodes', sizes]]),
};

export const binProps: BinPageProps = {
  shell,
  unit,
  forms,
  names,
  bin: bins[0]!,
  answer: binAnswer,
  horizonDays: 7,
  sizes,
  otherBins: [{ value: 'B9', label: 'Cricket box 2' }],
  history: [{ id: '12', day: TODAY - 9, sentence: 'Counted 130 heads.', undone: false, canUndo: true }],
};

export const binFormProps: BinFormProps = {
  shell,
  forms,
  bin: null,
  species: [...names.species.values()].map(({ code, commonName }) => ({ value: code, label: commonName })),
  rooms,
  sizes: sizes.map((size) => ({ ...size, group: 'Banded crickets' })),
};

export const startProps: StartProps = {
  shell,
  forms,
  heads: 12,
  bins: 0,
  warmthSaid: true,
  rooms: [{ code: 'R1', name: 'Spare room', dayTempC: 26, nightTempC: 22 }],
  calendar: { feedingWeekdays: [false, true, false, false, true, false, true], absences: [] },
  guesses: ['5 sizes taken from the stage: measure when you can.'],
  kinds: [{ value: 'k', label: 'Mexican redknee', group: 'Tarantulas' }],
  stages: [{ value: 'juvenile', label: 'a juvenile' }],
  species: [{ value: 'acheta-domesticus', label: 'House crickets' }],
  sizes: [{ value: 'acheta-domesticus|pinhead', label: 'pinhead', group: 'House crickets' }],
};

export const settingsProps: SettingsProps = {
  shell,
  forms,
  unit,
  calendar: {
    feedingWeekdays: [false, true, false, true, false, false, true],
    absences: [{ from: TODAY + 12, to: TODAY + 15 }],
  },
  deliveryWeekdays: [false, true, true, true, true, false, false],
  leadTimeDays: 3,
  latest: [
    { id: '9', day: TODAY, sentence: 'Round of Tue 24 Nov: 9 fed, 1 not.', undone: false, canUndo: true },
  ],
  rooms: [{ code: 'R1', name: 'Spare room', dayTempC: 26, nightTempC: 22 }],
  changes: [
    {
      code: 'C1',
      kind: 'sac',
      animalKind: 'brachypelma',
      from: TODAY + 30,
      to: TODAY + 40,
      chance: 0.7,
      count: 120,
      gaugeMm: 3,
      room: 'R1',
      animal: 'A3',
    },
  ],
  kinds,
  animals: [{ value: 'A3', label: 'Duchess' }],
};

export const importProps: ImportProps = {
  shell,
  forms,
  draft: {
    id: 'draft-9',
    what: 'animals',
    columns: [
      { value: 'name', label: 'Name' },
      { value: 'kind', label: 'Kind' },
      { value: 'size', label: 'Size' },
    ],
    choices: kinds,
    reading: {
      ready: false,
      rows: [
        { row: 2, verdict: 'new', written: 'Hazel; red leg; 34 mm', notes: [] },
        {
          row: 3,
          verdict: 'refused',
          written: 'Bob; red leg; big',
          notes: [
            {
              code: 'not-a-length',
              sentence: '"big" is not a length; write it as 34 mm.',
              weight: 'trouble',
            },
          ],
        },
        { row: 4, verdict: 'asked', written: 'Ivy; wobbler; 12 mm', notes: [] },
      ],
      tally: { new: 1, changed: 0, same: 0, asked: 1, refused: 1 },
      problems: [],
      asks: [
        {
          about: 'kind',
          text: 'wobbler',
          sentence: '“wobbler” is not a known kind of animal (row 4). Which is it?',
          near: [{ code: 'mantid', name: 'Any mantid' }],
        },
      ],
      columns: [{ column: 'name', heading: 'Call name' }],
      headings: ['Call name', 'Species', 'DLS'],
      remarks: ['Two empty lines were skipped.'],
      dateOrder: null,
    },
  },
};
