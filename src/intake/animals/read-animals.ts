/** Reads a keeper's list of animals: the dry run of an import, and what the import will write. */
import type { Kind } from '../../husbandry/animals/index.ts';
import { openQuestions, type Questions } from '../asking.ts';
import { assembled } from '../assembling.ts';
import type { DatesRead } from '../cells/date-column.ts';
import { type LengthUnit, readUnit } from '../cells/length.ts';
import { ANIMAL_WORDS, type AnimalColumn } from '../columns/words.ts';
import { unsettled, verdictOn } from '../comparing.ts';
import { datesOf } from '../date-cells.ts';
import type { AnimalEntry, ExistingAnimal } from '../entries.ts';
import { openSheet, type SheetRow } from '../file/sheet.ts';
import { type Register, register } from '../identity.ts';
import { labelsOnce, numberLikes } from '../labels.ts';
import { kindFinder } from '../names/kinds.ts';
import type { IntakeOptions } from '../options.ts';
import { type Choice, type Note, type Reading, type RowReading, unreadable } from '../reading.ts';
import { wrongAnswers } from '../resolving.ts';
import {
  isSum,
  LEFT_OUT,
  NO_LONGER_KEPT,
  NONE_HERE,
  nothingTold,
  SUM_ROW,
  WAITS_FOR_DATES,
  WAITS_FOR_KIND,
  WAITS_FOR_UNIT,
} from '../standing.ts';
import { type AnimalDraft, draftsOf } from './draft.ts';
import { type KindWorld, kindText, partSexes, resolveKind } from './kind-cell.ts';
import { entryOf, mergedAnimal } from './merged.ts';

export interface AnimalOptions extends IntakeOptions {
  readonly kinds: readonly Kind[];
  /** The collection as it stands, to tell new from changed from same. */
  readonly existing?: readonly ExistingAnimal[] | undefined;
}

interface Work extends KindWorld {
  readonly questions: Questions;
  readonly dates: DatesRead;
  readonly fileUnit: LengthUnit | null;
  readonly records: Register<AnimalEntry & { readonly gone?: boolean | undefined }>;
  readonly onceOnly: ReturnType<typeof labelsOnce>;
  readonly numbered: ReturnType<typeof numberLikes>;
}

type Row = SheetRow<AnimalColumn>;

const cellsOf = ({ cell }: Row) => ({
  kind: partSexes(cell('kind')).kind,
  genus: cell('genus'),
  who: cell('who'),
  label: cell('label'),
});

const writtenIn = ({ cell }: Row): string =>
  [cell('label'), cell('who'), cell('genus'), cell('kind')].filter(Boolean).join(' · ');

/** Sets a draft beside its record, if there is one. */
function settle(draft: AnimalDraft, written: string, work: Work): RowReading<AnimalEntry> {
  const { label, notes: labelNotes } = work.onceOnly(draft.entry.label, draft.row);
  const name = draft.given.name ? draft.entry.name : work.numbered(draft.entry.name);
  const entry = { ...draft.entry, label, name };
  const record = work.records.claim(entry);
  const notes = [...draft.notes, ...labelNotes];
  const about = { row: draft.row, written };
  if (!record) return verdictOn({ ...about, notes, record: null, after: entry });
  const before = entryOf(record);
  const known = { code: record.code, before };
  if (record.gone)
    return verdictOn({ ...about, notes: [...notes, NO_LONGER_KEPT], record: known, after: before });
  const merged = mergedAnimal(before, { ...draft, entry });
  return verdictOn({ ...about, notes: [...notes, ...merged.notes], record: known, after: merged.after });
}

const choices = (text: string, { finder }: Work): Choice[] =>
  finder.near(text).map(({ code, name }) => ({ code, name }));

function readRow(row: Row, index: number, work: Work): readonly RowReading<AnimalEntry>[] {
  const cells = cellsOf(row);
  const written = writtenIn(row);
  const stays = (verdict: 'asked' | 'refused', ...notes: Note[]) => [
    unsettled(row.row, written, verdict, notes),
  ];
  if (written === '') return stays('refused', nothingTold('an animal nor a kind'));
  if (isSum(written)) return stays('refused', SUM_ROW);
  const resolved = resolveKind(cells, work);
  if (resolved.kind === 'left out') return stays('refused', LEFT_OUT);
  if (resolved.kind === 'unknown') {
    const text = kindText(cells);
    work.questions.put(row.row, { about: 'kind', text, near: choices(text || cells.who, work) });
    return stays('asked', WAITS_FOR_KIND);
  }
  const dates = {
    fed: work.dates.columns.get('fed')?.[index],
    moulted: work.dates.columns.get('moulted')?.[index],
  };
  const read = draftsOf(row, { fileUnit: work.fileUnit, dates, match: resolved.match });
  if (read.kind === 'none here') return stays('refused', ...read.notes, NONE_HERE);
  if (read.kind === 'drafts') return read.drafts.map((draft) => settle(draft, written, work));
  if (!read.forUnit) return stays('asked', ...read.notes, WAITS_FOR_DATES);
  work.questions.put(row.row, { about: 'unit', text: row.cell('size'), near: [] });
  return stays('asked', ...read.notes, WAITS_FOR_UNIT);
}

const identityOf = ({ label, name, kind }: AnimalEntry) => ({ label, name, kind });

/** Reads bytes of a CSV file; never throws, writes nothing, and gives the same answer for the same file. */
export function readAnimals(bytes: Uint8Array, options: AnimalOptions): Reading<AnimalEntry> {
  const { kinds, existing = [], answers = {}, mapping = {} } = options;
  const opened = openSheet(bytes, { table: ANIMAL_WORDS, needed: 'kind', mapping });
  if (!opened.ok) return unreadable(opened.problem);
  const sheet = opened.value;
  if (sheet.problems.length > 0) return assembled(sheet);
  const dates = datesOf(sheet.rows, ['fed', 'moulted'], options);
  const sizeHeading = sheet.columns.find(({ column }) => column === 'size')?.heading;
  const work: Work = {
    finder: kindFinder(kinds),
    kinds,
    answers,
    existing,
    questions: openQuestions(),
    dates,
    fileUnit: readUnit(sizeHeading ?? '') ?? options.unit ?? null,
    records: register(existing, identityOf),
    onceOnly: labelsOnce(),
    numbered: numberLikes(),
  };
  const rows = sheet.rows.flatMap((row, index) => readRow(row, index, work));
  return assembled(sheet, {
    rows,
    problems: [...dates.problems, ...wrongAnswers(answers, kinds)],
    asks: work.questions.all(),
    remarks: dates.remarks,
    dateOrder: dates.order,
  });
}
