/** The props of the pages of what was done, what is gone, and of labels, from the invented room. */
import type { HistoryProps } from '../../views/pages/history.tsx';
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
