/** A list being put in order: places typed and buttons pressed, before anything is kept. */
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';

/** The list with those whose place was typed anew put there, the others closing up; places count from 1. */
export function inTypedPlaces<T>(items: readonly T[], places: readonly string[]): Result<readonly T[]> {
  const wrong = places.slice(0, items.length).find((typed) => !/^[1-9]\d{0,5}$/.test(typed.trim()));
  if (wrong !== undefined) return err(noPlace(wrong, items.length));
  const typed = items.map((item, at) => ({ item, at, place: Number(places[at] ?? at + 1) - 1 }));
  const order = typed.filter(({ at, place }) => place === at).map(({ item }) => item);
  const moved = typed.filter(({ at, place }) => place !== at).toSorted((a, b) => a.place - b.place);
  for (const { item, place } of moved) order.splice(place, 0, item);
  return ok(order);
}

const noPlace = (typed: string, last: number) =>
  problem('not-a-place', `"${typed}" is not a place; write a number from 1 to ${last}.`);

const MOVES: Readonly<Record<string, (at: number) => number>> = {
  up: (at) => Math.max(0, at - 1),
  down: (at) => at + 1,
  top: () => 0,
};

/** The list after one button: 'up:A2', 'down:A2' or 'top:A2', where A2 names an item; anything else moves nothing. */
export function afterMove<T>(items: readonly T[], move: string, nameOf: (item: T) => string): readonly T[] {
  const [way = '', ...name] = move.split(':');
  const at = items.findIndex((item) => nameOf(item) === name.join(':'));
  const target = MOVES[way];
  const item = items[at];
  if (target === undefined || item === undefined) return items;
  const order = items.filter((_, place) => place !== at);
  order.splice(target(at), 0, item);
  return order;
}
