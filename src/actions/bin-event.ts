/** Turns a line of the journal about a bin into the event the core knows. */
import type { BinEvent, Lot } from '../husbandry/larder/index.ts';
import type { BinEventRow } from '../store/index.ts';

export function binEvent(row: BinEventRow): BinEvent {
  const { day, kind } = row;
  switch (kind) {
    case 'delivered':
      return { day, kind, lot: lotOf(row), dead: row.dead ?? 0 };
    case 'moved in':
      return { day, kind, lot: lotOf(row) };
    case 'offered':
      return { day, kind, ...lotOf(row) };
    case 'counted':
      return { day, kind, heads: row.heads ?? 0, fromMm: row.fromMm, toMm: row.toMm, grown: row.grown };
    case 'discarded':
    case 'found dead':
      return { day, kind, heads: row.heads ?? 0 };
    case 'culled':
    case 'moved out':
      return { day, kind, heads: row.heads ?? 0, fromMm: row.fromMm, toMm: row.toMm };
    case 'died off':
      return { day, kind, left: row.heads ?? 0 };
    case 'first adults':
      return { day, kind };
    case 'sexed':
      return { day, kind, females: row.females ?? 0, males: row.males ?? 0 };
    case 'cleaned out':
      return { day, kind, eggsLost: row.eggsLost ?? 0 };
    case 'size seen':
      return { day, kind, fromMm: row.fromMm ?? 0, toMm: row.toMm ?? 0 };
    case 'looked':
      return { day, kind, level: row.level ?? 'none' };
    case 'weighed':
      return { day, kind, massMg: row.massMg ?? 0, sample: row.sample };
    case 'cup looked':
      return { day, kind, look: row.look ?? 'started' };
    case 'placed':
      return { day, kind, before: row.before ?? NOWHERE, after: row.after ?? NOWHERE };
  }
}

/** No entry is written without its places; a row that lost them says so by name. */
const NOWHERE = { room: '', ownC: null };

const lotOf = ({ heads, fromMm, toMm }: BinEventRow): Lot => ({
  heads: heads ?? 0,
  fromMm: fromMm ?? 0,
  toMm: toMm ?? 0,
});
