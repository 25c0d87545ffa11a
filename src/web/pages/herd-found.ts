/** Those of the animals here that a query finds, in the order it asks for, and how many another would find. */

import { placeOfKey } from '../../husbandry/walk.ts';
import type { Seen } from './herd.ts';
import type { HerdQuery, Order } from './herd-query.ts';

const ROWS_A_PAGE = 100;

type Test = (seen: Seen) => boolean;

/** Whether an animal is what the query asks for. */
function asked({ q, show, group, stage, place }: HerdQuery): Test {
  const words = q.toLowerCase().split(/\s+/);
  const { room, shelf } = placeOfKey(place);
  return ({ animal, kind, rule, traits, text }) =>
    show.every((trait) => traits.has(trait)) &&
    (group === '' || kind.group === group) &&
    (stage === '' || rule.stage === stage) &&
    (room === '' || animal.room === room) &&
    (shelf === null || animal.shelf === shelf) &&
    words.every((word) => text.includes(word));
}

export const countFor = (herd: readonly Seen[], query: HerdQuery): number => herd.filter(asked(query)).length;

export const foundIn = (herd: readonly Seen[], query: HerdQuery): readonly Seen[] => {
  const found = herd.filter(asked(query));
  return query.order === 'walk' ? found : found.toSorted(IN_ORDER[query.order]);
};

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const IN_ORDER: Readonly<Record<Exclude<Order, 'walk'>, (a: Seen, b: Seen) => number>> = {
  meal: (a, b) => mealKey(a) - mealKey(b) || a.meal.to - b.meal.to,
  size: (a, b) => a.referenceMm - b.referenceMm,
  name: (a, b) => byName.compare(a.animal.name || a.animal.code, b.animal.name || b.animal.code),
};

/** Those that wait and those with no feeding day ahead come last. */
const mealKey = ({ waits, meal }: Seen): number =>
  waits !== null || meal.evening === null ? Number.MAX_SAFE_INTEGER : meal.evening;

export interface Leaf {
  readonly page: number;
  readonly pages: number;
  /** Place of the first row shown, counted from 0. */
  readonly from: number;
  readonly rows: readonly Seen[];
}

/** One page of what was found; a page past the end is the last. */
export function leafOf(found: readonly Seen[], page: number): Leaf {
  const pages = Math.max(1, Math.ceil(found.length / ROWS_A_PAGE));
  const at = Math.min(page, pages);
  const from = (at - 1) * ROWS_A_PAGE;
  return { page: at, pages, from, rows: found.slice(from, from + ROWS_A_PAGE) };
}
