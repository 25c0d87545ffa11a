/** Many animals at once: chosen in the list, one act, looked over in words, then done as one step. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { AnimalsChangePage, type ChosenFields } from '../../../views/pages/animals-change.tsx';
import { AnimalsCheckPage } from '../../../views/pages/animals-check.tsx';
import { AnimalsRefusedPage } from '../../../views/pages/animals-refused.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { type HerdAct, paths } from '../../../views/paths.ts';
import { problem } from '../../husbandry/problems.ts';
import { err } from '../../husbandry/result.ts';
import type { DoorEnv } from '../door.ts';
import { kindOptions, roomOptions } from './choices.ts';
import { type Choosing, choosing, chosenIn } from './chosen.ts';
import type { Seen } from './herd.ts';
import { actFields, type Filled, perform } from './herd-acts.ts';
import { animalsWords, checked, fewNames } from './herd-check.ts';
import { addressOf, queryIn } from './herd-query.ts';
import { visitHerd } from './herd-visit.ts';
import type { House } from './house.ts';
import { posted, type Sent } from './posted.ts';
import { besideField, readFields, type Typed, valuesOf } from './sent-fields.ts';
import { revision, ticked } from './typed.ts';
import { page, statusOf } from './visit.ts';

const MANY = ['animal'];

export function animalsChangeRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.changeAnimals, (c) => showChange(house, c, { typed: c.req.queries() }));
  for (const act of Object.keys(actFields) as HerdAct[]) {
    app.get(paths.herdAct(act), (c) => showCheck(house, c, act));
    app.post(
      paths.herdAct(act),
      posted(house, {
        form: () => act,
        shape: () => ({ ...actFields[act], ...choosing, asOf: revision, sure: ticked }),
        many: MANY,
        act: (given, sent) => doIt(house, { ...given, act } as Sure, sent),
        next: (c) => listIn(c.req.query('list')),
        again: async (c, refused) => showChange(house, c, { typed: await sentAgain(c), refused }),
      }),
    );
  }
}

type Sure = Filled & Choosing & { readonly asOf: number | undefined; readonly sure: boolean };

/** The list an address speaks of. */
const listIn = (list: string | undefined): string => addressOf(queryIn(new URLSearchParams(list ?? '')));

async function sentAgain(c: Context): Promise<Typed> {
  const body = await c.req.parseBody({ all: true });
  return Object.fromEntries(Object.entries(body).map(([name, value]) => [name, [value].flat().map(String)]));
}

interface Asked {
  readonly typed: Typed;
  readonly refused?: Refused;
}

/** Fields of who is chosen, however they came. */
const choosingIn = ({ animal = [], of, list, seen }: Typed): Choosing =>
  z
    .object(choosing)
    .catch({ animal: [], of: 'ticked', list: '', seen: '' })
    .parse({
      animal,
      of: of?.at(-1),
      list: list?.at(-1),
      seen: seen?.at(-1),
    });

/** Which act? Asked of those chosen. */
async function showChange(house: House, c: Context, { typed, refused }: Asked): Promise<Response> {
  const here = await visitHerd(house, c, { refused: refused ?? null });
  const asked = choosingIn(typed);
  const back = listIn(asked.list);
  const chosen = chosenIn(here, asked);
  if (!chosen.ok)
    return page(c, AnimalsRefusedPage({ shell: here.shell, sentence: chosen.problem.sentence, back }), 422);
  const { animals, rooms, facts } = here.snapshot;
  const props = {
    ...here,
    who: animalsWords(chosen.value),
    names: fewNames(chosen.value, here.names.animals),
    chosen: fieldsOf(asked, chosen.value),
    back,
    rooms: roomOptions(rooms),
    shelves: [...new Set(animals.map(({ shelf }) => shelf))].filter((shelf) => shelf !== ''),
    kinds: kindOptions(facts),
  };
  return page(c, AnimalsChangePage(props), statusOf(refused !== undefined));
}

/** Only those ticked are named one by one. */
const fieldsOf = ({ of, list, seen }: Choosing, chosen: readonly Seen[]): ChosenFields => ({
  animal: of === 'ticked' ? chosen.map(({ animal }) => animal.code) : [],
  of,
  list,
  seen,
});

/** What will change, in words; or the acts again with what is wrong. */
async function showCheck(house: House, c: Context, act: HerdAct): Promise<Response> {
  const typed = c.req.queries();
  const { today } = house.context.clock();
  const shape = { ...actFields[act], ...choosing };
  const read = readFields(typed, { shape, many: MANY, today });
  const refuse = (problems: Refused['problems']) =>
    showChange(house, c, { typed, refused: { form: act, values: valuesOf(typed), problems } });
  if (!read.ok) return refuse(read.problems);
  const { animal: _, of, list, seen, ...fields } = read.given;
  const asked = choosingIn(typed);
  const here = await visitHerd(house, c);
  const chosen = chosenIn(here, asked);
  if (!chosen.ok) return refuse({ '': chosen.problem.sentence });
  const words = checked(here, chosen.value, { ...fields, act } as Filled);
  if (!words.ok) return refuse(besideField(words.problem, shape));
  const props = {
    ...here,
    ...words.value,
    act,
    who: words.value.changing.map(({ animal: { code } }) => ({
      code,
      name: here.names.animals.get(code) ?? code,
    })),
    chosen: fieldsOf(asked, chosen.value),
    filled: textsOf(fields),
    revision: here.snapshot.revision,
    action: `${paths.herdAct(act)}?${new URLSearchParams({ list })}`,
    again: againOf(fieldsOf(asked, chosen.value)),
    back: listIn(list),
  };
  return page(c, AnimalsCheckPage(props));
}

const textsOf = (fields: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
  );

function againOf({ animal, of, list, seen }: ChosenFields): string {
  const pairs = [
    ...animal.map((code): [string, string] => ['animal', code]),
    ['of', of],
    ['list', list],
    ['seen', seen],
  ];
  return `${paths.changeAnimals}?${new URLSearchParams(pairs as [string, string][])}`;
}

/** Those chosen are looked up once more: a list that has changed since is refused whole. */
async function doIt(house: House, { animal, of, list, seen, asOf, sure, ...filled }: Sure, sent: Sent) {
  const here = await visitHerd(house, sent.c);
  const chosen = chosenIn(here, { animal, of, list, seen });
  if (!chosen.ok) return chosen;
  const words = checked(here, chosen.value, filled as Filled);
  if (!words.ok) return words;
  if (filled.act === 'died' && !sure)
    return err(problem('not-sure', 'Tick that they died: this is asked once more for many at once.'));
  const animals = words.value.changing.map(({ animal: { code } }) => code);
  return perform(house.context, filled as Filled, { animals, asOf, formId: sent.formId });
}
