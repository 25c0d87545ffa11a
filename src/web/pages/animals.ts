/** Animals: the list in shelf order, one animal with its record, and what may be written down about it. */

import type { Context, Hono } from 'hono';
import { AnimalPage } from '../../../views/pages/animal.tsx';
import { type AnimalRow, AnimalsPage } from '../../../views/pages/animals.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { type Animal, ruleOf } from '../../husbandry/animals/index.ts';
import { eveningOf } from '../../husbandry/supply/index.ts';
import { actsAbout, roundDone, rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { historyLines } from './history.ts';
import type { House } from './house.ts';
import { showLeftAnimal } from './left.ts';
import { eatingOf, nextInShort, nextMeal } from './meals.ts';
import { route } from './route.ts';
import { ruleLines } from './sources.ts';
import { page, type Visit, visit } from './visit.ts';

export function animalRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.animals, (c) => showAnimals(house, c));
  app.get(route(paths.animal(':code')), (c) => showAnimal(house, c));
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

export async function showAnimal(
  house: House,
  c: Context,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const animal = here.snapshot.animals.find(({ code }) => code === c.req.param('code'));
  if (animal === undefined) return showLeftAnimal({ house, c, here, refused });
  const { kind, ...eating } = eatingOf(animal, here.snapshot.facts);
  const props = {
    ...here,
    ...eating,
    animal: { ...animal, name: here.names.animals.get(animal.code) ?? animal.code },
    kindName: kind.commonName,
    gaugeWord: kind.gauge,
    roomName: here.names.rooms.get(animal.room) ?? animal.room,
    next: await nextFor(house, here, animal),
    cautions: kind.cautions,
    rule: ruleLines(ruleOf(kind, animal)),
    history: await historyOf(house, here, animal.code),
  };
  return page(c, AnimalPage(props), refused === null ? 200 : 422);
}

async function nextFor(
  { context }: House,
  { snapshot, names, unit }: Visit,
  animal: Animal,
): Promise<string> {
  const done = (await context.store.ask(roundDone(snapshot.today))).includes(animal.code);
  const { servings } = eveningOf(snapshot);
  const serving = done ? undefined : servings.find((each) => each.animal === animal.code);
  return nextMeal(snapshot, animal, { names, unit, offer: serving?.offer ?? null });
}

async function historyOf({ context }: House, { names, unit }: Visit, code: string) {
  const { acts, bins } = await context.store.askAll({ acts: actsAbout('animal', code), bins: rowsOf('bin') });
  const speciesOf = new Map(bins.map((bin) => [bin.code, bin.species]));
  const allBins = new Map(bins.map((bin) => [bin.code, bin.name]));
  return historyLines(acts, { about: 'animal', names: { ...names, bins: allBins }, unit, speciesOf });
}
