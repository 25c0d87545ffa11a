/** The props of the pages of what was done, what is gone, and of labels, from the invented room. */
import type { GoneProps } from '../../views/pages/gone.tsx';
import type { HistoryProps } from '../../views/pages/history.tsx';
import type { LabelText } from '../../views/pages/label-sheets.tsx';
import type { LabelsProps } from '../../views/pages/labels.tsx';
import type { LeftProps } from '../../views/pages/left.tsx';
import type { StepLine } from '../../views/partials/step-list.tsx';
import { forms, shell, TODAY } from './view-fixtures.ts';

const step = (id: string, sentence: string, more: Partial<StepLine> = {}): StepLine => ({
  id,
  day: TODAY,
  time: '21:14',
  sentence,
  parts: [],
  undone: false,
  undo: { id, kind: 'undo', acts: 1 },
  resting: [],
  ...more,
});

export const historyProps: HistoryProps = {
  shell,
  forms,
  sought: { animal: '', bin: '', group: '', words: '' },
  at: 0,
  more: true,
  lines: [
    step('44', 'Hazel seen in premoult.'),
    step('41,42,43', 'Round of Sun 22 Nov: 55 fed, 4 not.', {
      parts: ['Shelf A: 20 fed, 1 not', 'Shelf B: 20 fed, 3 not', 'Shelf C: 15 fed, 0 not'],
    }),
    step('40', 'Duchess moulted.', {
      day: TODAY - 1,
      resting: ['Changed Duchess', 'Duchess moulted'],
      undo: { id: '40,45,46', kind: 'undo', acts: 3 },
    }),
    step('39', 'Counted 130 in Cricket box 1.', {
      day: TODAY - 1,
      undone: true,
      undo: { id: '47', kind: 'again', acts: 1 },
    }),
    step('2', 'Brought in 55 new animals.', {
      day: TODAY - 60,
      undo: null,
      resting: Array(240).fill('Changed Hazel'),
    }),
  ],
  batch: step('41,42,43', 'Round of Sun 22 Nov: 55 fed, 4 not.'),
  animals: [
    { value: 'A3', label: 'Duchess (A3)' },
    { value: 'A1', label: 'Hazel (A1)' },
  ],
  bins: [{ value: 'B1', label: 'Cricket box 1 (B1)' }],
  groups: [{ value: 'rounds', label: 'Rounds' }],
};

export const goneProps: GoneProps = {
  shell,
  forms,
  animals: [
    { what: 'animal', code: 'A7', name: 'Old Moss', why: 'died', day: TODAY - 3 },
    { what: 'animal', code: 'A8', name: 'Sling tray 1', why: 'sold', day: TODAY - 40, count: 12 },
  ],
  deaths: [{ what: 'animal', code: 'A4', name: 'Sling tray 2', why: 'died', day: TODAY - 2, heads: 3 }],
  bins: [{ what: 'bin', code: 'B9', name: 'Cracked tub', why: 'taken out of use', day: TODAY - 9 }],
  rooms: [{ what: 'room', code: 'R2', name: 'Attic', why: 'removed', day: TODAY - 9 }],
  orders: [
    {
      what: 'delivery',
      code: 'D4',
      name: '500 banded crickets for Cricket box 1',
      why: 'not coming',
      day: TODAY - 12,
    },
  ],
  plans: [],
};

export const leftProps: LeftProps = {
  shell,
  forms,
  here: 'animals',
  gone: goneProps.animals[0]!,
  lent: false,
  is: 'Red-legged bird-eater, female',
  refused: ['A7 no longer lives here (died on 2026-11-19).'],
  history: [
    { id: '30', day: TODAY - 3, sentence: 'Died.', undone: false, canUndo: true },
    { id: '12', day: TODAY - 20, sentence: 'Offered 2 banded crickets.', undone: false, canUndo: false },
  ],
};

const label = (code: string, name: string, kind: string, cautions = ''): LabelText => ({
  code,
  address: `preylarder.local:8181/animals/${code}`,
  link: `http://preylarder.local:8181/a/${code}`,
  name,
  kind,
  cautions,
});

export const labelsProps: LabelsProps = {
  shell,
  forms,
  asked: {
    of: ['animals'],
    which: 'all',
    shelf: '',
    since: '',
    code: [],
    size: 'medium',
    paper: 'a4',
    skip: 2,
    from: 0,
  },
  total: 4,
  next: null,
  labels: [
    label('A1', 'Hazel', 'Mexican redknee tarantula', 'kicks hairs'),
    label('A2', 'Mr Wick', 'Any mantid'),
    label(
      'A3',
      'Duchess of the long and winding name',
      'Vietnamese giant centipede',
      'venomous: long tweezers; bolts',
    ),
    label('A112', '', 'Any jumping spider'),
  ],
  onlyHere: true,
  shelves: ['Spare room, Shelf A', 'Spare room, Shelf B'],
  animals: [
    { value: 'A1', label: 'A1 Hazel' },
    { value: 'A2', label: 'A2 Mr Wick' },
  ],
  bins: [{ value: 'B1', label: 'B1 Cricket box 1' }],
};
