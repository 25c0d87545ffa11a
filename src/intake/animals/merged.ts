/** An animal's record after a row: the row adds and corrects, never empties, and never turns back the clock. */
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { AnimalEntry } from '../entries.ts';
import { type Note, said } from '../reading.ts';
import type { AnimalDraft } from './draft.ts';

const later = (before: DayNumber | null, after: DayNumber | null): DayNumber | null =>
  before === null || after === null ? (after ?? before) : Math.max(before, after);

/** Whether the record knows of a moult that the row does not. */
const hasOutgrown = (before: AnimalEntry, row: AnimalEntry): boolean =>
  before.lastMoult !== null && row.lastMoult !== null && before.lastMoult > row.lastMoult;

function gaugeAfter(before: AnimalEntry, row: AnimalEntry): Pick<AnimalEntry, 'gaugeMm' | 'gaugeAssumed'> {
  const { gaugeMm, gaugeAssumed } = row.gaugeAssumed || hasOutgrown(before, row) ? before : row;
  return { gaugeMm, gaugeAssumed };
}

function kept(before: AnimalEntry, row: AnimalEntry): Note[] {
  const newer = (a: DayNumber | null, b: DayNumber | null) => a !== null && b !== null && a > b;
  const what = [
    newer(before.lastFed, row.lastFed) ? 'feeding' : '',
    newer(before.lastMoult, row.lastMoult) ? 'moult' : '',
  ].filter(Boolean);
  if (what.length === 0) return [];
  return [said('record-newer', `The record already holds a later ${what.join(' and ')}, which is kept.`)];
}

export function mergedAnimal(
  before: AnimalEntry,
  { entry, given }: AnimalDraft,
): { readonly after: AnimalEntry; readonly notes: readonly Note[] } {
  const after: AnimalEntry = {
    label: entry.label ?? before.label,
    name: given.name ? entry.name : before.name,
    kind: given.kind ? entry.kind : before.kind,
    count: given.count ? entry.count : before.count,
    sex: entry.sex === 'unsexed' ? before.sex : entry.sex,
    matured: entry.matured || before.matured,
    stageOverride: entry.stageOverride ?? before.stageOverride,
    ...gaugeAfter(before, entry),
    lastFed: later(before.lastFed, entry.lastFed),
    lastMoult: later(before.lastMoult, entry.lastMoult),
    shelf: entry.shelf || before.shelf,
    room: entry.room || before.room,
    notes: entry.notes || before.notes,
  };
  return { after, notes: kept(before, entry) };
}
