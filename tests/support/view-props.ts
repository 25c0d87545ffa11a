/** The props of every page, from the invented room. */

import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import type { AwayAnimal, Standing } from '../../src/husbandry/supply/index.ts';
import type { AnimalPageProps } from '../../views/pages/animal.tsx';
import type { AnimalFormProps } from '../../views/pages/animal-form.tsx';
import type { AnimalRow, AnimalsProps } from '../../views/pages/animals.tsx';
import type { AnimalsChangeProps } from '../../views/pages/animals-change.tsx';
import type { AnimalsCheckProps } from '../../views/pages/animals-check.tsx';
import type { AwayProps } from '../../views/pages/away.tsx';
import type { AwayAnswer } from '../../views/pages/away-answer.ts';
import type { AwaySheetProps } from '../../views/pages/away-sheet.tsx';
import type { BinFormProps } from '../../views/pages/bin-form.tsx';
import type { BlankSheetProps } from '../../views/pages/blank-sheet.tsx';
import type { CameBackProps } from '../../views/pages/came-back.tsx';
import type { EveningSheetProps } from '../../views/pages/evening-sheet.tsx';
import type { ImportProps } from '../../views/pages/import.tsx';
import type { KeyInProps } from '../../views/pages/key-in.tsx';
import type { MorningProps } from '../../views/pages/morning.tsx';
import type { SacsProps } from '../../views/pages/sacs.tsx';
import type { SettingsProps } from '../../views/pages/settings.tsx';
import type { SplitProps } from '../../views/pages/split.tsx';
import type { StartProps } from '../../views/pages/start.tsx';
import type { SundayProps } from '../../views/pages/sunday.tsx';
import type { TonightProps } from '../../views/pages/tonight.tsx';
import type { WalkProps } from '../../views/pages/walk.tsx';
import type { WalkShelfProps } from '../../views/pages/walk-shelf.tsx';
import type { SourceLine } from '../../views/partials/sources.tsx';
import { sizes } from './view-bins.ts';
import {
  animal,
  answer,
  evening,
  forms,
  names,
  serving,
  shell,
  shortGroup,
  spectrum,
  TODAY,
} from './view-fixtures.ts';
import { growth, intake, meals, nextMoult, refusals, rungs } from './view-life.ts';
import { moneyProps } from './view-market.ts';

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
  plan: null,
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
  moultless: new Set(),
  waiting: 4,
  nextDay: TODAY + 2,
  anybody: true,
  chosen: new Map(),
  told: { already: [], against: [], untold: 0 },
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
    untold: 0,
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
  remaining: 1,
  leftoversOutHours: 24,
  rows: [
    {
      animal: 'A2',
      name: 'Mr Wick',
      shelf: 'Shelf A',
      offered: '3 banded crickets, 9–12 mm',
      moults: true,
      nearMoult: false,
      likelyLeft: null,
    },
    {
      animal: 'A3',
      name: 'Duchess',
      shelf: 'Shelf A',
      offered: '1 dubia roach, 30–36 mm',
      moults: true,
      nearMoult: true,
      likelyLeft: null,
    },
    {
      animal: 'A1',
      name: 'Hazel',
      shelf: 'Shelf B',
      offered: '1 banded cricket, 5–7 mm',
      moults: true,
      nearMoult: false,
      likelyLeft: null,
    },
    {
      animal: 'A5',
      name: 'Biscuit',
      shelf: 'Shelf B',
      offered: '2 banded crickets, 9–12 mm',
      moults: true,
      nearMoult: false,
      likelyLeft: 'refused the last 2 times',
    },
  ],
};

export const eveningSheetProps: EveningSheetProps = {
  shell,
  day: TODAY,
  feedingDay: true,
  shelves: [
    {
      shelf: 'Shelf A',
      rows: [
        {
          kind: 'feed',
          code: 'A2',
          name: 'Mr Wick',
          late: true,
          heads: 3,
          prey: 'banded crickets',
          lengths: '9–12 mm',
          bin: 'B1',
          first: '',
        },
        {
          kind: 'feed',
          code: 'A3',
          name: 'Duchess',
          late: false,
          heads: 1,
          prey: 'dubia roach',
          lengths: '30–36 mm',
          bin: 'B2',
          first: 'kill first, cut into 2',
        },
        { kind: 'nothing', code: 'A1', name: 'Hazel' },
      ],
    },
    {
      shelf: 'Shelf B',
      rows: [
        { kind: 'leave', code: 'A6', name: 'Tansy', reason: 'moulted on Friday; wait until 27 November.' },
      ],
    },
  ],
  picking: [
    {
      bin: 'B1',
      binName: 'Cricket box 1',
      heads: 212,
      prey: 'medium banded crickets',
      lengths: '9–12 mm',
      killed: 14,
      cut: 0,
    },
    {
      bin: 'B2',
      binName: 'Roach tub',
      heads: 1,
      prey: 'large dubia roach',
      lengths: '30–36 mm',
      killed: 0,
      cut: 1,
    },
  ],
};

export const blankSheetProps: BlankSheetProps = {
  shell,
  day: TODAY,
  days: 7,
  onlyDue: false,
  evenings: [TODAY, TODAY + 2, TODAY + 5],
  shelves: [
    {
      shelf: 'Shelf A',
      rows: [
        { code: 'A1', name: 'Hazel', expected: TODAY + 2 },
        { code: 'A2', name: 'Mr Wick', expected: null },
      ],
    },
  ],
};

export const keyInProps: KeyInProps = {
  shell,
  forms: {
    formId: 'page-1',
    refused: {
      form: 'key-in',
      values: { 'cell:A2': '3 b9', 'cell:A3': 'x' },
      problems: {
        'cell:A2': '"B9" is not a bin in use; there are B1, B2.',
        'cell:A3': '"x" is not understood: write 0, a number, p, m or d, or a number and a bin such as 4 B2.',
      },
    },
  },
  day: TODAY - 2,
  earliest: TODAY - 60,
  latest: [TODAY, TODAY - 2, TODAY - 5],
  everybody: false,
  wrongDay: null,
  bins: [
    { code: 'B1', name: 'Cricket box 1' },
    { code: 'B2', name: 'Roach tub' },
  ],
  written: 3,
  shelves: eveningSheetProps.shelves.map(({ shelf, rows }) => ({
    shelf,
    rows: rows.map((printed) => ({
      code: printed.code,
      name: printed.name,
      printed,
      offer: printed.kind === 'nothing' ? null : undefined,
    })),
  })),
};

const shelf = (name: string, animals: readonly string[]) => ({
  room: 'R1',
  shelf: name,
  key: `R1|${name}`,
  label: name,
  animals,
});

export const walkProps: WalkProps = {
  shell,
  forms,
  shelves: [
    shelf('Rack by the door', ['Hazel', 'Mr Wick', 'Duchess']),
    shelf(
      'Shelf A',
      Array.from({ length: 14 }, (_, i) => `Sling ${i + 1}`),
    ),
    shelf('Shelf B', ['Biscuit']),
  ],
  changed: true,
  revision: '311',
};

export const walkShelfProps: WalkShelfProps = {
  shell,
  forms,
  at: { room: 'R1', shelf: 'Shelf A' },
  label: 'Shelf A',
  animals: [
    { code: 'A1', name: 'Hazel', kindName: 'Red-legged bird-eater' },
    { code: 'A2', name: 'Mr Wick', kindName: 'Red-legged bird-eater' },
    { code: 'A3', name: 'Duchess', kindName: 'Any mantid' },
  ],
  changed: false,
  taken: ['A2'],
  others: [{ value: 'R1|Shelf B', label: 'Shelf B' }],
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
  entries: 5,
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
  moults: true,
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
  ...moneyProps,
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
  kindNames: new Map([['brachypelma', { commonName: 'red knee' }]]),
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

const visitOf = (animal: string, heads: number) => ({
  animal,
  shelf: '',
  dueFrom: TODAY + 4,
  dueTo: TODAY + 8,
  state: 'due' as const,
  offer: {
    bin: 'B1',
    species: 'gryllodes',
    heads,
    fromMm: 3,
    toMm: 4,
    killFirst: heads > 2,
    portions: 1,
  },
  choices: [],
  note: null,
  look: null,
});

const awaits = (animal: string, standing: Standing, days: number): AwayAnimal => ({
  animal,
  urgency: standing === 'needs a sitter' ? 'fragile' : 'robust',
  standing,
  fedBefore: animal === 'A2',
  danger: standing === 'needs a sitter',
  meal: { open: TODAY + 4, missedAfter: TODAY + days, dangerAfter: TODAY + days + 2 },
  reason: standing === 'leave alone' ? 'about to moult; no live prey until it has moulted.' : null,
  latest: standing === 'needs a sitter' ? TODAY + days : null,
});

export const awayProps: AwayProps & { readonly answer: AwayAnswer } = {
  shell,
  forms,
  unit,
  names,
  asked: { name: 'away', formId: '', values: { from: '2026-11-24', to: '2026-12-02' }, problems: {} },
  planned: [{ from: '2026-12-04', to: '2026-12-07', label: 'Fri 4 Dec to Mon 7 Dec' }],
  answer: {
    from: '2026-11-24',
    to: '2026-12-02',
    plan: {
      absence: { from: TODAY + 2, to: TODAY + 10, eve: TODAY + 1, home: TODAY + 11, fedAgain: TODAY + 12 },
      animals: [
        awaits('A1', 'needs a sitter', 7),
        awaits('A4', 'needs a sitter', 8),
        awaits('A2', 'waits', 20),
        awaits('A3', 'misses a meal', 9),
        awaits('A5', 'leave alone', 9),
        awaits('A6', 'first when back', 11),
      ],
      visits: [{ day: TODAY + 7, animals: ['A1', 'A4'] }],
      besides: [],
    },
    rounds: {
      before: { day: TODAY + 1, servings: [visitOf('A2', 2)] },
      visits: [{ day: TODAY + 7, servings: [visitOf('A1', 2), { ...visitOf('A4', 9), offer: null }] }],
      prey: [{ bin: 'B1', species: 'gryllodes', heads: 2, killed: 0 }],
    },
    saved: false,
    lost: [TODAY + 3, TODAY + 7],
    parcels: [{ label: '500 banded crickets', day: TODAY + 5 }],
    sources: [],
  },
};

export const awaySheetProps: AwaySheetProps = {
  shell,
  names,
  unit,
  from: TODAY + 2,
  to: TODAY + 10,
  back: '/away?from=2026-11-24&to=2026-12-02',
  evenings: [
    {
      day: TODAY + 7,
      rows: [
        {
          animal: 'A1',
          place: 'Spare room, A1',
          offer: visitOf('A1', 2).offer,
          cautions: ['urticating hairs'],
        },
        {
          animal: 'A4',
          place: 'Spare room, B2',
          offer: visitOf('A4', 9).offer,
          cautions: ['venom', 'escape'],
        },
      ],
    },
  ],
  leaveAlone: [{ animal: 'A5', place: 'Spare room, B2', reason: 'about to moult; no live prey.' }],
  byHand: false,
  leftoversOutHours: 24,
  cautions: ['venom', 'urticating hairs', 'escape'],
};

const amounts = (means: readonly number[]) =>
  means.map((mean) => ({ mean, variance: 9, low: mean * 0.8, mid: mean, high: mean * 1.25 }));

const sacChange: PlannedChange = {
  code: 'P1',
  kind: 'sac',
  animalKind: 'brachypelma',
  from: TODAY + 30,
  to: TODAY + 40,
  chance: 0.7,
  count: 120,
  gaugeMm: 6,
  room: 'R1',
  animal: 'A3',
  sac: {
    laid: { from: TODAY - 32, to: TODAY - 30 },
    pulled: null,
    hatched: null,
    counted: false,
    settled: null,
    ended: null,
    shareKept: 0.5,
    motherFasts: { from: TODAY - 32, to: TODAY + 29 },
  },
};

export const sacsProps: SacsProps = {
  shell,
  forms,
  unit,
  names,
  revision: 3,
  open: [
    {
      change: sacChange,
      kind: 'red knee',
      regulated: true,
      wave: {
        change: 'P1',
        firstDay: TODAY,
        replicates: 100,
        group: { ...shortGroup, name: 'tarantula spiderlings' },
        without: amounts([14, 15, 13, 14, 15, 14, 13, 14, 14, 15]),
        with: amounts([14, 15, 13, 14, 60, 120, 134, 133, 135, 134]),
        peak: 134,
        peakWithout: 14,
        now: 14,
        peakError: 2,
      },
      prey: {
        fits: [
          { species: 'hydei', size: 'hydei', heads: 130 },
          { species: 'acheta', size: 'pinhead', heads: 80 },
        ],
        cups: {
          species: 'hydei',
          room: 'R1',
          gives: { flies: new Float64Array(40).fill(9), firstDay: 14, bestDay: 21, bestWeek: 137 },
          starts: [
            { day: TODAY + 9, cups: 2 },
            { day: TODAY + 16, cups: 1 },
            { day: TODAY + 23, cups: 1 },
          ],
          wanted: 130,
          spare: 0,
        },
        order: { species: 'acheta', size: 'pinhead', heads: 80, orderBy: TODAY + 24, comes: TODAY + 27 },
      },
    },
  ],
  past: [{ code: 'P2', sentence: 'The sac of Hazel: a dud, 4 Oct 2026' }],
  mothers: [{ value: 'A3', label: 'Duchess' }],
  usualChance: 0.7,
  leftoversOutHours: 24,
  sources: [],
};
