/** Rows of all that is gone, the latest first where a day is known. */
import { rowsOf, type Store } from '../../store/index.ts';

export async function goneRows(store: Store) {
  const rows = await store.askAll({
    animals: rowsOf('animal', {
      where: "left_day is not null and left_reason <> 'lent'",
      order: 'left_day desc, code',
    }),
    bins: rowsOf('bin', { where: 'closed = 1' }),
    rooms: rowsOf('room', { where: 'closed = 1' }),
    deliveries: rowsOf('delivery', {
      where: "state = 'cancelled' and purchase is null",
      order: 'day desc, code',
    }),
    purchases: rowsOf('purchase', { where: "state = 'cancelled'", order: 'due_day desc, code' }),
    changes: rowsOf('planned_change', { where: 'cancelled = 1', order: 'from_day desc, code' }),
  });
  const codes = new Set(Object.values(rows).flatMap((each) => each.map(({ code }) => code)));
  return { ...rows, codes };
}
