/** One animal with its record, and what may be written down about it. */

import type { Context, Hono } from 'hono';
import { AnimalPage } from '../../../views/pages/animal.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { type LifeRecord, loadLife } from '../../actions/index.ts';
import { type Animal, moults, ruleOf } from '../../husbandry/animals/index.ts';
import { nextMealOf } from '../../husbandry/supply/index.ts';
import { actsAbout, roundDone, rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { lifeProps } from './animal-life.ts';
import { recordLines, recordPage } from './animal-record.ts';
import { eveningNow, standingNow } from './evening-now.ts';
import type { House } from './house.ts';
import { showLeftAnimal } from './left.ts';
import { cautionsFor, eatingOf, nextMeal } from './meals.ts';
import { route } from './route.ts';
import { ruleLines } from './sources.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function animalRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(route(paths.animal(':code')), (c) => showAnimal(house, c));
}

export async function showAnimal(
  house: House,
  c: Context,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const animal = here.snapshot.animals.find(({ code }) => code === c.req.param('code'));
  if (animal === undefined) return showLeftAnimal({ house, c, here, refused });
  const { kind, ...eating } = eatingOf(animal, here.snapshot.facts);
  const life = await loadLife(house.context, animal.code, here.snapshot.today);
  const standing = await standingNow(house, here.snapshot);
  const props = {
    ...here,
    ...eating,
    ...lifeProps(here, animal, { life, standing }),
    animal: { ...animal, name: here.names.animals.get(animal.code) ?? animal.code },
    kindName: kind.commonName,
    gaugeWord: kind.gauge,
    moults: moults(kind),
    roomName: here.names.rooms.get(animal.room) ?? animal.room,
    next: await nextFor(house, here, animal),
    cautions: cautionsFor(animal, here.snapshot),
    rule: ruleLines(ruleOf(kind, animal)),
    record: await recordOf(house, here, { code: animal.code, life, asked: Number(c.req.query('page') ?? 1) }),
  };
  return page(c, AnimalPage(props), statusOf(refused !== null));
}

async function nextFor(house: House, { snapshot, names, unit }: Visit, animal: Animal): Promise<string> {
  const done = (await house.context.store.ask(roundDone(snapshot.today))).includes(animal.code);
  const due = !done && nextMealOf(snapshot, animal).tonight;
  const servings = due ? (await eveningNow(house, snapshot)).servings : [];
  const serving = servings.find((each) => each.animal === animal.code);
  return nextMeal(snapshot, animal, { names, unit, offer: serving?.offer ?? null });
}

interface Asked {
  readonly code: string;
  readonly life: LifeRecord;
  /** Page of the record. */
  readonly asked: number;
}

const MOST_ACTS = 5000;

async function recordOf({ context }: House, { names, unit, snapshot }: Visit, { code, life, asked }: Asked) {
  const { acts, bins } = await context.store.askAll({
    acts: actsAbout('animal', code, MOST_ACTS),
    bins: rowsOf('bin'),
  });
  const speciesOf = new Map(bins.map((bin) => [bin.code, bin.species]));
  const allBins = new Map(bins.map((bin) => [bin.code, bin.name]));
  const { kinds } = snapshot.facts;
  const telling = { about: 'animal' as const, names: { ...names, bins: allBins }, unit, speciesOf, kinds };
  const lines = recordLines({ acts, meals: life.meals }, telling);
  return recordPage(lines, Number.isInteger(asked) ? asked : 1, paths.animal(code));
}
