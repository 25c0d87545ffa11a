/** A list being put in order, as it was sent: what is shown next, before anything is kept. */
import type { Context } from 'hono';
import type { Problem } from '../../husbandry/problems.ts';
import { afterMove, inTypedPlaces } from './walk-moves.ts';

interface SentList {
  /** Names of the lines in the order sent. */
  readonly names: readonly string[];
  readonly places: readonly string[];
  /** The button pressed; empty when it was the one that keeps the order. */
  readonly move: string;
}

/** Every value of a field of the form sent. */
export async function fieldValues(c: Context, field: string): Promise<readonly string[]> {
  if (c.req.method !== 'POST') return [];
  const body = await c.req.parseBody({ all: true });
  return [body[field] ?? []].flat().filter((each) => typeof each === 'string');
}

export async function sentList(c: Context, field: string): Promise<SentList> {
  const [names, places, moves] = await Promise.all([
    fieldValues(c, field),
    fieldValues(c, 'place'),
    fieldValues(c, 'move'),
  ]);
  return { names, places, move: moves.at(-1) ?? '' };
}

interface Ordering<T> {
  readonly nameOf: (item: T) => string;
  /** The order of the button that undoes every arrangement, and its value. */
  readonly plain: { readonly move: string; readonly compare: (a: T, b: T) => number };
}

export interface Shown<T> {
  readonly items: readonly T[];
  readonly changed: boolean;
  /** What is wrong with a place typed. */
  readonly wrong: Problem | null;
}

/** The lines as kept, or those of them that are still here as sent, with the places typed and one more move. */
export function shownOrder<T>(kept: readonly T[], sent: SentList, { nameOf, plain }: Ordering<T>): Shown<T> {
  const placeSent = new Map(sent.names.map((name, at) => [name, at]));
  const rankOf = (item: T) => placeSent.get(nameOf(item)) ?? sent.names.length;
  const asSent = kept.toSorted((a, b) => rankOf(a) - rankOf(b));
  const typed = inTypedPlaces(asSent, sent.places);
  if (!typed.ok) return { items: asSent, changed: true, wrong: typed.problem };
  const items =
    sent.move === plain.move
      ? typed.value.toSorted(plain.compare)
      : afterMove(typed.value, sent.move, nameOf);
  return { items, changed: items.some((item, at) => item !== kept[at]), wrong: null };
}
