/** Reads a keeper's list of animals: the dry run of an import, and what the import will write. */

import type { Kind } from '../../husbandry/animals/index.ts';
import { ANIMAL_WORDS, type AnimalColumn } from '../columns/words.ts';
import { unsettled } from '../comparing.ts';
import type { AnimalEntry, ExistingAnimal } from '../entries.ts';
import type { SheetRow } from '../file/sheet.ts';
import { type Listing, readList, settled } from '../listing.ts';
import { kindFinder } from '../names/kinds.ts';
import type { IntakeOptions } from '../options.ts';
import type { Choice, Note, Reading, RowReading } from '../reading.ts';
import {
  isSum,
  LEFT_OUT,
  NONE_HERE,
  nothingTold,
  SUM_ROW,
  WAITS_FOR_DATES,
  WAITS_FOR_KIND,
  WAITS_FOR_UNIT,
} from '../standing.ts';
import { type AnimalDraft, draftsOf } from './draft.ts';
import { type KindWorld, kindText, partSexes, resolveKind } from './kind-cell.ts';
import { mergedAnimal } from './merged.ts';

export interface AnimalOptions extends IntakeOptions {
  readonly kinds: readonly Kind[];
  /** The collection as it stands, to tell new from changed from same. */
  readonly existing?: readonly ExistingAnimal[] | undefined;
}

interface Work extends KindWorld, Listing<AnimalEntry> {}

type Row = SheetRow<AnimalColumn>;

const cellsOf = ({ cell }: Row) => ({
  kind: partSexes(cell('kind')).kind,
  genus: cell('genus'),
  who: cell('who'),
  label: cell('label'),
});

const writtenIn = ({ cell }: Row): string =>
  [cell('label'), cell('who'), cell('genus'), cell('kind')].filter(Boolean).join(' · ');

/** A draft that has no name of its own is numbered among its likes. */
function settle(draft: AnimalDraft, written: string, work: Work): RowReading<AnimalEntry> {
  const name = draft.given.name ? draft.entry.name : work.numbered(draft.entry.name);
  const named = { ...draft, entry: { ...draft.entry, name } };
  return settled(named, work, { written, identityOf, merge: mergedAnimal });
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
  const { kinds, existing = [] } = options;
  const world = { finder: kindFinder(kinds), kinds, existing };
  return readList(bytes, options, {
    table: ANIMAL_WORDS,
    needed: 'kind',
    dateColumns: ['fed', 'moulted'],
    sizeColumn: 'size',
    existing,
    identityOf,
    items: kinds,
    rowsOf: (row, index, listing) => readRow(row, index, { ...world, ...listing }),
  });
}
