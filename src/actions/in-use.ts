/** Whether a room, a bin or a supplier can go: what still stands in it, or is on its way. */
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { fewOf, plural } from '../husbandry/words.ts';
import { type BinRow, type RoomRow, rowsOf, type SupplierRow, type Tx } from '../store/index.ts';

const NAMED = 3;

/** An empty room, or a Problem that says what is in it; who is lent comes back to its room. */
export async function nothingInside(tx: Tx, { code, name }: RoomRow): Promise<Result<null>> {
  const where = (living: string) => ({ where: `room = ? and ${living}`, args: [code] });
  const animals = await tx.ask(rowsOf('animal', where(`(left_day is null or left_reason = 'lent')`)));
  const bins = await tx.ask(rowsOf('bin', where('closed = 0')));
  const changes = await tx.ask(rowsOf('planned_change', where('cancelled = 0')));
  const named = [...animals, ...bins].map((each) => (each.name === '' ? each.code : each.name));
  const plans = changes.map(({ kind, count }) => `a planned ${kind} of ${count}`);
  const inside = [...named, ...plans];
  if (inside.length === 0) return ok(null);
  const sentence = `${name} is in use: ${fewOf(inside, NAMED)}. Move them to another room first.`;
  return err(problem('room-in-use', sentence, 'room'));
}

/** A bin nothing is on its way to, or a Problem that says what is. */
export async function nothingExpected(tx: Tx, facts: Facts, { code, name }: BinRow): Promise<Result<null>> {
  const [order] = await tx.ask(
    rowsOf('delivery', { where: "bin = ? and state = 'expected'", args: [code], order: 'day, code' }),
  );
  if (order === undefined) return ok(null);
  const prey = plural(facts.species.get(order.species)?.commonName ?? 'heads');
  const sentence = `${order.heads} ${prey} are expected for ${name} on ${spokenDay(order.day)}; say first that they do not come.`;
  return err(problem('bin-expected', sentence, 'bin'));
}

/** A supplier nothing is ordered from, or a Problem that says what is under way. */
export async function nothingOrdered(tx: Tx, { code, name }: SupplierRow): Promise<Result<null>> {
  const orders = await tx.ask(
    rowsOf('purchase', {
      where: "supplier = ? and state = 'placed'",
      args: [code],
      order: 'due_day, code',
    }),
  );
  if (orders.length === 0) return ok(null);
  const due = orders.map(({ placedDay, dueDay }) => `of ${spokenDay(placedDay)}, due ${spokenDay(dueDay)}`);
  const sentence = `${name} has orders under way (${fewOf(due, NAMED)}); say first that they came or do not come.`;
  return err(problem('supplier-in-use', sentence, 'supplier'));
}
