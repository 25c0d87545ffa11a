/** What the keeper answers about a list: kinds, units, the order of dates, which heading is which column. */
import {
  ANIMAL_COLUMNS,
  DATE_ORDERS,
  type DateOrder,
  LENGTH_UNITS,
  type LengthUnit,
  STOCK_COLUMNS,
} from '../../intake/index.ts';
import type { KeptDraft } from './drafts.ts';

type Form = Readonly<Record<string, unknown>>;

const ANSWER = 'answer:';
const COLUMN = 'column:';
/** Chosen for rows that are to be left out. */
const LEAVE_OUT = '-';

/** The draft with these answers added to those given before. */
export function answered(draft: KeptDraft, form: Form): KeptDraft {
  const columns: readonly string[] = draft.what === 'animals' ? ANIMAL_COLUMNS : STOCK_COLUMNS;
  const mapping = textsUnder(form, COLUMN).filter(([column]) => columns.includes(column));
  const answers = textsUnder(form, ANSWER)
    .filter(([, answer]) => answer !== '')
    .map(([text, answer]) => [text, answer === LEAVE_OUT ? '' : answer] as const);
  const { options } = draft;
  return {
    ...draft,
    options: {
      mapping: mapping.length > 0 ? Object.fromEntries(mapping) : options.mapping,
      answers: Object.fromEntries([...Object.entries(options.answers ?? {}), ...answers]),
      dates: form.dates === undefined ? options.dates : datesChosen(form.dates),
      unit: unitChosen(form.unit) ?? options.unit,
    },
  };
}

const textsUnder = (form: Form, start: string): (readonly [string, string])[] =>
  Object.entries(form)
    .filter(([name]) => name.startsWith(start))
    .map(([name, value]) => [name.slice(start.length), String(value)] as const);

const datesChosen = (value: unknown): DateOrder | undefined => DATE_ORDERS.find((order) => order === value);
const unitChosen = (value: unknown): LengthUnit | undefined => LENGTH_UNITS.find((unit) => unit === value);
