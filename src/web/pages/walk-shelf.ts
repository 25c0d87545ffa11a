/** One shelf of the walk: its animals put in order, or moved to another shelf, kept by one act. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { type ShelfAnimal, WalkShelfPage } from '../../../views/pages/walk-shelf.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { arrangeShelf } from '../../actions/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { byCode, type ShelfPlace, sameShelf } from '../../husbandry/walk.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { anyText, needed } from './typed.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';
import { refusedFor } from './walk.ts';
import { inTypedPlaces } from './walk-moves.ts';
import { fieldValues, sentList, shownOrder } from './walk-sent.ts';
import { shelfOf, shelvesOf } from './walk-shelves.ts';

const texts = z.array(z.string()).default([]);

export function walkShelfRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.walkShelf, (c) => showShelf(house, c));
  app.post(paths.walkShelfMoved, (c) => showShelf(house, c));
  app.post(
    paths.walkShelf,
    posted(house, {
      form: () => 'shelf',
      many: ['animal', 'place', 'take'],
      shape: () => ({
        room: needed,
        shelf: anyText,
        animal: texts,
        place: texts,
        take: texts,
        to: anyText,
        newShelf: anyText,
      }),
      act: async (given, { formId }) => {
        const animals = inTypedPlaces(given.animal, given.place);
        if (!animals.ok) return animals;
        const moving = movingIn(given);
        if (!moving.ok) return moving;
        const { room, shelf } = given;
        return arrangeShelf(house.context, {
          at: { room, shelf },
          animals: [...animals.value],
          ...(moving.value === null ? {} : { moving: moving.value }),
          formId,
        });
      },
      next: () => paths.walk,
      again: (c, refused) => showShelf(house, c, refused),
    }),
  );
}

interface Leaving {
  readonly room: string;
  readonly take: readonly string[];
  readonly to: string;
  readonly newShelf: string;
}

/** Who moves where; null when nobody does. */
function movingIn({
  room,
  take,
  to,
  newShelf,
}: Leaving): Result<{ animals: string[]; to: ShelfPlace } | null> {
  const named = to !== '' || newShelf !== '';
  if (take.length === 0 && !named) return ok(null);
  if (take.length === 0)
    return err(problem('nobody-moves', 'Mark who moves there.', to !== '' ? 'to' : 'newShelf'));
  if (!named) return err(problem('no-shelf', 'Say to which shelf those marked “Moves” go.', 'to'));
  return ok({ animals: [...take], to: newShelf === '' ? shelfOf(to) : { room, shelf: newShelf } });
}

const ORDERING = {
  nameOf: ({ code }: ShelfAnimal) => code,
  plain: { move: 'by code', compare: (a: ShelfAnimal, b: ShelfAnimal) => byCode(a.code, b.code) },
};

async function showShelf(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const shelves = shelvesOf(here);
  const at = (await placeAsked(c)) ?? shelves[0] ?? NOWHERE;
  const own = shelves.find((shelf) => sameShelf(shelf, at));
  if (own === undefined) return c.notFound();
  const sent = await sentList(c, 'animal');
  const shown = shownOrder(animalsOn(here, at), sent, ORDERING);
  const wrong = refused ?? refusedFor('shelf', shown.wrong?.sentence);
  const typed = Object.fromEntries(
    await Promise.all(
      ['to', 'newShelf'].map(async (field) => [field, (await fieldValues(c, field)).at(-1) ?? '']),
    ),
  );
  const props = {
    ...here,
    forms: { ...here.forms, refused: { form: 'shelf', values: typed, problems: wrong?.problems ?? {} } },
    at,
    label: own.label,
    animals: shown.items,
    changed: shown.changed,
    taken: await fieldValues(c, 'take'),
    others: shelves.filter((shelf) => shelf !== own).map(({ key, label }) => ({ value: key, label })),
    ...(shown.wrong === null ? {} : { places: sent.places }),
  };
  return page(c, WalkShelfPage(props), statusOf(wrong !== null));
}

const NOWHERE: ShelfPlace = { room: '', shelf: '' };

/** The shelf asked for; null when none is. */
async function placeAsked(c: Context): Promise<ShelfPlace | null> {
  const asked = async (field: string) => (await fieldValues(c, field)).at(-1) ?? c.req.query(field);
  const room = await asked('room');
  return room === undefined ? null : { room, shelf: (await asked('shelf')) ?? '' };
}

/** Who lives there, in the order of the walk. */
const animalsOn = ({ snapshot, names }: Visit, at: ShelfPlace): readonly ShelfAnimal[] =>
  snapshot.animals
    .filter((animal) => sameShelf(animal, at))
    .map(({ code, kind }) => ({
      code,
      name: names.animals.get(code) ?? code,
      kindName: snapshot.facts.kinds.get(kind)?.commonName ?? kind,
    }));
