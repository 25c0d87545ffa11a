/** Reads a keeper's list of live prey: the dry run of an import, and what the import will write. */
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { openQuestions, type Questions } from '../asking.ts';
import { assembled } from '../assembling.ts';
import type { DatesRead } from '../cells/date-column.ts';
import { type LengthUnit, readUnit } from '../cells/length.ts';
import { STOCK_WORDS, type StockColumn } from '../columns/words.ts';
import { unsettled, verdictOn } from '../comparing.ts';
import { datesOf } from '../date-cells.ts';
import type { ExistingStock, StockEntry } from '../entries.ts';
import { openSheet, type SheetRow } from '../file/sheet.ts';
import { type Register, register } from '../identity.ts';
import { labelsOnce, numberLikes } from '../labels.ts';
import { type PreyFinder, preyFinder } from '../names/prey.ts';
import type { IntakeOptions } from '../options.ts';
import { type Choice, type Note, type Reading, type RowReading, unreadable } from '../reading.ts';
import { resolveName, wrongAnswers } from '../resolving.ts';
import {
  isSum,
  LEFT_OUT,
  NO_LONGER_KEPT,
  nothingTold,
  SUM_ROW,
  WAITS_FOR_DATES,
  WAITS_FOR_PREY,
  WAITS_FOR_UNIT,
} from '../standing.ts';
import { type StockDraft, stockDraft } from './draft.ts';
import { mergedStock, stockEntryOf } from './merged.ts';

export interface StockOptions extends IntakeOptions {
  readonly species: readonly PreySpecies[];
  /** The larder as it stands, to tell new from changed from same. */
  readonly existing?: readonly ExistingStock[] | undefined;
}

interface Work {
  readonly finder: PreyFinder;
  readonly items: readonly PreySpecies[];
  readonly answers: Readonly<Record<string, string>>;
  readonly questions: Questions;
  readonly dates: DatesRead;
  readonly fileUnit: LengthUnit | null;
  readonly records: Register<StockEntry & { readonly gone?: boolean | undefined }>;
  readonly onceOnly: ReturnType<typeof labelsOnce>;
  readonly numbered: ReturnType<typeof numberLikes>;
}

type Row = SheetRow<StockColumn>;

const writtenIn = ({ cell }: Row): string =>
  [cell('label'), cell('bin'), cell('prey'), cell('size')].filter(Boolean).join(' · ');

/** Sets a draft beside its record, if there is one. */
function settle(draft: StockDraft, written: string, work: Work): RowReading<StockEntry> {
  const { label, notes: labelNotes } = work.onceOnly(draft.entry.label, draft.row);
  const bin = draft.binGiven ? draft.entry.bin : work.numbered(draft.entry.bin);
  const entry = { ...draft.entry, label, bin };
  const record = work.records.claim(identityOf(entry));
  const notes = [...draft.notes, ...labelNotes];
  const about = { row: draft.row, written };
  if (!record) return verdictOn({ ...about, notes, record: null, after: entry });
  const before = stockEntryOf(record);
  const known = { code: record.code, before };
  if (record.gone)
    return verdictOn({ ...about, notes: [...notes, NO_LONGER_KEPT], record: known, after: before });
  const merged = mergedStock(before, { ...draft, entry });
  return verdictOn({ ...about, notes: [...notes, ...merged.notes], record: known, after: merged.after });
}

const choices = (text: string, { finder }: Work): Choice[] =>
  finder.near(text).map(({ code, commonName }) => ({ code, name: commonName }));

function readRow(row: Row, index: number, work: Work): RowReading<StockEntry> {
  const written = writtenIn(row);
  const prey = row.cell('prey');
  const stays = (verdict: 'asked' | 'refused', ...notes: Note[]) =>
    unsettled(row.row, written, verdict, notes);
  if (row.cell('label') + row.cell('bin') + prey === '')
    return stays('refused', nothingTold('a bin nor a prey'));
  if (isSum(row.cell('bin') + prey)) return stays('refused', SUM_ROW);
  const byBin = prey === '' ? work.finder.find(row.cell('bin')) : null;
  const resolved = byBin
    ? ({ kind: 'found', match: byBin } as const)
    : resolveName(prey, work.finder.find, work);
  if (resolved.kind === 'left out') return stays('refused', LEFT_OUT);
  if (resolved.kind === 'unknown') {
    work.questions.put(row.row, { about: 'prey', text: prey, near: choices(prey, work) });
    return stays('asked', WAITS_FOR_PREY);
  }
  const came = work.dates.columns.get('came')?.[index];
  const read = stockDraft(row, { fileUnit: work.fileUnit, came, match: resolved.match });
  if (read.kind === 'draft') return settle(read.draft, written, work);
  if (!read.forUnit) return stays('asked', ...read.notes, WAITS_FOR_DATES);
  work.questions.put(row.row, { about: 'unit', text: row.cell('size'), near: [] });
  return stays('asked', ...read.notes, WAITS_FOR_UNIT);
}

const identityOf = ({ label, bin, species }: StockEntry) => ({ label, name: bin, kind: species });

/** Reads bytes of a CSV file; never throws, writes nothing, and gives the same answer for the same file. */
export function readStock(bytes: Uint8Array, options: StockOptions): Reading<StockEntry> {
  const { species, existing = [], answers = {}, mapping = {} } = options;
  const opened = openSheet(bytes, { table: STOCK_WORDS, needed: 'prey', mapping });
  if (!opened.ok) return unreadable(opened.problem);
  const sheet = opened.value;
  if (sheet.problems.length > 0) return assembled(sheet);
  const dates = datesOf(sheet.rows, ['came'], options);
  const sizeHeading = sheet.columns.find(({ column }) => column === 'size')?.heading;
  const work: Work = {
    finder: preyFinder(species),
    items: species,
    answers,
    questions: openQuestions(),
    dates,
    fileUnit: readUnit(sizeHeading ?? '') ?? options.unit ?? null,
    records: register(existing, identityOf),
    onceOnly: labelsOnce(),
    numbered: numberLikes(),
  };
  const rows = sheet.rows.map((row, index) => readRow(row, index, work));
  return assembled(sheet, {
    rows,
    problems: [...dates.problems, ...wrongAnswers(answers, species)],
    asks: work.questions.all(),
    remarks: dates.remarks,
    dateOrder: dates.order,
  });
}
