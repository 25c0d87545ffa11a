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
      return { day, kind, heads: row.heads ?? 0, fromMm: row.fromMm, toMm: row.toMm };
    case 'discarded':
    case 'moved out':
      return { day, kind, heads: row.heads ?? 0 };
    case 'size seen':
      return { day, kind, fromMm: row.fromMm ?? 0, toMm: row.toMm ?? 0 };
    case 'looked':
      return { day, kind, level: row.level ?? 'none' };
    case 'weighed':
      return { day, kind, massMg: row.massMg ?? 0 };
    case 'cup looked':
      return { day, kind, look: row.look ?? 'started' };
  }
}

const lotOf = ({ heads, fromMm, toMm }: BinEventRow): Lot => ({
  heads: heads ?? 0,
  fromMm: fromMm ?? 0,
  toMm: toMm ?? 0,
});
