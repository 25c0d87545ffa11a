/** A bin's record after a row: the row adds and corrects, never empties, and never turns back the clock. */
import type { StockEntry } from '../entries.ts';
import { type Note, said } from '../reading.ts';
import type { StockDraft } from './draft.ts';

const NEWER = said('record-newer', 'The record already holds a later arrival, which is kept.');

function lotAfter(before: StockEntry, row: StockEntry): Pick<StockEntry, 'lot' | 'sizeAssumed' | 'came'> {
  const { lot, sizeAssumed } = row.lot ? row : before;
  const came = row.came ?? before.came;
  if (!row.lot || !before.lot || !row.sizeAssumed) return { lot, sizeAssumed, came };
  const { fromMm, toMm } = before.lot;
  return { lot: { heads: row.lot.heads, fromMm, toMm }, sizeAssumed: before.sizeAssumed, came };
}

export function mergedStock(
  before: StockEntry,
  { entry, binGiven }: StockDraft,
): { readonly after: StockEntry; readonly notes: readonly Note[] } {
  const newer = before.came !== null && entry.came !== null && before.came > entry.came;
  const { lot, sizeAssumed, came } = newer ? before : lotAfter(before, entry);
  const after: StockEntry = {
    label: entry.label ?? before.label,
    bin: binGiven ? entry.bin : before.bin,
    species: entry.species,
    role: before.role,
    lot,
    sizeAssumed,
    came,
    room: entry.room || before.room,
    notes: entry.notes || before.notes,
  };
  return { after, notes: newer ? [NEWER] : [] };
}
