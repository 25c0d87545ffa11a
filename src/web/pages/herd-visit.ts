/** A request about many animals: the room as it is, and everybody in it as the list sees them. */
import type { Context } from 'hono';
import { animalMarks } from '../../store/index.ts';
import { herdOf, type Seen } from './herd.ts';
import type { House } from './house.ts';
import { type Visit, visit } from './visit.ts';

export interface Herd extends Visit {
  readonly herd: readonly Seen[];
}

export async function visitHerd(
  house: House,
  c: Context,
  asked: Parameters<typeof visit>[2] = {},
): Promise<Herd> {
  const here = await visit(house, c, asked);
  const marks = await house.context.store.ask(animalMarks);
  return { ...here, herd: herdOf(here.snapshot, marks) };
}
