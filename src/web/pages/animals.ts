/** Animals: the list in shelf order. */

import type { Context, Hono } from 'hono';
import { type AnimalRow, AnimalsPage } from '../../../views/pages/animals.tsx';
import { paths } from '../../../views/paths.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { eatingOf, nextInShort } from './meals.ts';
import { page, type Visit, visit } from './visit.ts';

export function animalsRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.animals, (c) => showAnimals(house, c));
}

const LONGEST_QUERY = 200;

async function showAnimals(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { snapshot } = here;
  const query = (c.req.query('q') ?? '').slice(0, LONGEST_QUERY).trim();
  const total = snapshot.animals.reduce((heads, { count }) => heads + count, 0);
  const rows = snapshot.animals.map((animal) => rowOf(here, animal)).filter(matches(query));
  return page(c, AnimalsPage({ ...here, query, total, rows }));
}

function rowOf({ snapshot, names }: Visit, animal: Animal): AnimalRow {
  const { kind, ownLengthMm, window, stageWord } = eatingOf(animal, snapshot.facts);
  return {
    code: animal.code,
    name: names.animals.get(animal.code) ?? animal.code,
    kindName: kind.commonName,
    stageWord,
    count: animal.count,
    room: names.rooms.get(animal.room) ?? animal.room,
    shelf: animal.shelf,
    ownLengthMm,
    window,
    next: nextInShort(snapshot, animal),
  };
}

/** Every word asked for stands somewhere in the row. */
const matches =
  (query: string) =>
  ({ code, name, kindName, stageWord, room, shelf }: AnimalRow): boolean => {
    const text = [code, name, kindName, stageWord, room, shelf].join(' ').toLowerCase();
    return query
      .toLowerCase()
      .split(/\s+/)
      .every((word) => text.includes(word));
  };
