/** Reads a keeper's list of live prey: the dry run of an import, and what the import will write. */

import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { STOCK_WORDS, type StockColumn } from '../columns/words.ts';
import { unsettled } from '../comparing.ts';
import type { ExistingStock, StockEntry } from '../entries.ts';
import type { SheetRow } from '../file/sheet.ts';
import { type Listing, readList, settled } from '../listing.ts';
import { type PreyFinder, preyFinder } from '../names/prey.ts';
import type { IntakeOptions } from '../options.ts';
import type { Choice, Note, Reading, RowReading } from '../reading.ts';
import { resolveName } from '../resolving.ts';
import {
  isSum,
  LEFT_OUT,
  nothingTold,
  SUM_ROW,
  WAITS_FOR_DATES,
  WAITS_FOR_PREY,
  WAITS_FOR_UNIT,
} from '../standing.ts';
import { type StockDraft, stockDraft } from './draft.ts';
import { mergedStock } from './merged.ts';

export interface StockOptions extends IntakeOptions {
  readonly species: readonly PreySpecies[];
  /** The larder as it stands, to tell new from changed from same. */
  readonly existing?: readonly ExistingStock[] | undefined;
}

interface Work extends Listing<StockEntry> {
  readonly finder: PreyFinder;
  readonly items: readonly PreySpecies[];
}

type Row = SheetRow<StockColumn>;

const writtenIn = ({ cell }: Row): string =>
  [cell('label'), cell('bin'), cell('prey'), cell('size')].filter(Boolean).join(' · ');

/** A draft of a bin without a name of its own is numbered among its likes. */
function settle(draft: StockDraft, written: string, work: Work): RowReading<StockEntry> {
  const bin = draft.binGiven ? draft.entry.bin : work.numbered(draft.entry.bin);
  const named = { ...draft, entry: { ...draft.entry, bin } };
  return settled(named, work, { written, identityOf, merge: mergedStock });
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
  const { species, existing = [] } = options;
  const world = { finder: preyFinder(species), items: species };
  return readList(bytes, options, {
    table: STOCK_WORDS,
    needed: 'prey',
    dateColumns: ['came'],
    sizeColumn: 'size',
    existing,
    identityOf,
    items: species,
    rowsOf: (row, index, listing) => [readRow(row, index, { ...world, ...listing })],
  });
}
