/** The present as the generators see it: what is here, what is gone, and what was done. */
import { civilDate } from '../../../src/husbandry/calendar.ts';
import { rowsOf } from '../../../src/store/index.ts';
import type { Room } from '../room-clock.ts';
import type { Dice } from './draw.ts';

const acts = {
  sql: `select id, undoes is not null as turn from act order by id desc limit 24`,
  args: [],
  decode: (rows: readonly Record<string, unknown>[]) =>
    rows.map(({ id, turn }) => ({ id: Number(id), turn: turn === 1 })),
};

export async function presentOf(room: Room, dice: Dice) {
  const found = await room.store.askAll({
    animals: rowsOf('animal'),
    bins: rowsOf('bin'),
    rooms: rowsOf('room'),
    suppliers: rowsOf('supplier'),
    offers: rowsOf('offer'),
    deliveries: rowsOf('delivery'),
    purchases: rowsOf('purchase'),
    changes: rowsOf('planned_change'),
    kinds: rowsOf('kind'),
    numbers: rowsOf('numbers'),
    acts,
  });
  const { today } = room.clock();
  return {
    ...found,
    dice,
    today: () => civilDate(today),
    /** Mostly in the past days, now and then not yet come. */
    past: () => civilDate(today - dice.whole(0, 4) + (dice.often(0.05) ? 6 : 0)),
    ahead: () => civilDate(today + dice.whole(0, 9) - (dice.often(0.05) ? 20 : 0)),
    /** Mostly one that is here, now and then one that is gone or never was. */
    animal: () => codeOf(dice, found.animals, ({ leftDay }) => leftDay === null, 'A99'),
    bin: () => codeOf(dice, found.bins, ({ closed }) => !closed, 'B99'),
    room: () => codeOf(dice, found.rooms, ({ closed }) => !closed, 'R99'),
    supplier: () => codeOf(dice, found.suppliers, ({ closed }) => !closed, 'S99'),
    offer: () => codeOf(dice, found.offers, ({ closed }) => !closed, 'F99'),
    delivery: () => codeOf(dice, found.deliveries, ({ state }) => state === 'expected', 'D99'),
    change: () => codeOf(dice, found.changes, ({ cancelled }) => !cancelled, 'P99'),
  };
}

export type Present = Awaited<ReturnType<typeof presentOf>>;

function codeOf<T extends { readonly code: string }>(
  dice: Dice,
  rows: readonly T[],
  isHere: (row: T) => boolean,
  unknown: string,
): string {
  const wanted = dice.often(0.93) ? rows.filter(isHere) : rows;
  return dice.often(0.02) ? unknown : (dice.pick(wanted)?.code ?? unknown);
}
