/** The form of a bin, colony or cup: a new one, or what was said of one is changed. */

import type { Context, Hono } from 'hono';
import type { z } from 'zod';
import { BinFormPage } from '../../../views/pages/bin-form.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { role } from '../../actions/bin-fields.ts';
import { civilDay, heads, headsOrNone } from '../../actions/fields.ts';
import { addBin, type Done, editBin, factsNow, startCup } from '../../actions/index.ts';
import type { Lot } from '../../husbandry/larder/index.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { allSizeOptions, everyLength, lengthsChosen, roomOptions, speciesOptions } from './choices.ts';
import type { House } from './house.ts';
import { posted, type Sent } from './posted.ts';
import { codeOf, route } from './route.ts';
import { anyText, maybe, needed, revision, space, ticked, typed } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

const shape = () => ({
  name: needed,
  role,
  species: needed,
  room: needed,
  capacity: maybe(heads),
  keepAdults: ticked,
  space,
  origin: anyText,
  asOf: revision,
});
const newShape = () => ({ ...shape(), heads: maybe(headsOrNone), size: anyText, day: typed(civilDay) });
type Given = z.output<z.ZodObject<ReturnType<typeof shape>>>;
type New = z.output<z.ZodObject<ReturnType<typeof newShape>>>;
type Added = Promise<Result<Done<{ bin: string }>>>;

export function binFormRoutes(app: Hono<DoorEnv>, house: House): void {
  const form = {
    form: () => 'bin',
    again: (c: Context, refused: Refused) => showForm(house, c, refused),
    next: (_: Context, { bin }: { bin: string }) => paths.bin(bin),
    fields: { 'lot.heads': 'heads' },
  };
  app.get(paths.newBin, (c) => showForm(house, c));
  app.post(
    paths.newBin,
    posted(house, { ...form, shape: newShape, act: (given, sent) => add(house, given, sent) }),
  );
  app.get(route(paths.editBin(':code')), (c) => showForm(house, c));
  app.post(
    route(paths.editBin(':code')),
    posted(house, { ...form, shape, act: (given, sent) => change(house, given, sent) }),
  );
}

async function showForm(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { bins, rooms, facts, revision } = here.snapshot;
  const code = c.req.param('code');
  const bin = bins.find((each) => each.code === code) ?? null;
  if (code !== undefined && bin === null) return c.notFound();
  const props = {
    ...here,
    bin,
    revision,
    species: speciesOptions(facts),
    rooms: roomOptions(rooms),
    sizes: allSizeOptions(facts),
    ...cupAsked(c),
  };
  return page(c, BinFormPage(props), statusOf(refused !== null));
}

/** A cup of this species was asked for by the address. */
function cupAsked(c: Context): { cupOf?: string } {
  const cupOf = c.req.query('cup');
  return cupOf === undefined ? {} : { cupOf };
}

async function add({ context }: House, given: New, { formId }: Sent): Added {
  const { name, room, day, heads: many, size, asOf: _, ...bin } = given;
  const species = (await factsNow(context)).species.get(given.species);
  if (species === undefined)
    return err(problem('unknown-species', 'Choose the prey from the list.', 'species'));
  if (given.role === 'cup') return startCup(context, { species: species.code, name, room, day, formId });
  const lot = lotOf(species, many, size);
  if (!lot.ok) return lot;
  return addBin(context, {
    ...bin,
    name,
    room,
    day,
    formId,
    ...(lot.value === null ? {} : { lot: lot.value }),
  });
}

/** What is in it; null when nobody said, or when there is nothing. */
function lotOf(species: PreySpecies, heads: string | undefined, size: string): Result<Lot | null> {
  const many = Number(heads ?? 0);
  const lengths = size === '' ? ok(everyLength(species)) : lengthsChosen(size, species, 'size');
  if (!lengths.ok) return lengths;
  return ok(many === 0 ? null : { heads: many, ...lengths.value });
}

async function change({ context }: House, given: Given, { c, formId }: Sent): Added {
  const code = codeOf(c);
  const bin = await context.store.ask(rowNamed('bin', code));
  if (bin !== null && bin.species !== given.species)
    return err(problem('other-species', 'Prey of another species goes into a bin of its own.', 'species'));
  const { species: _, capacity, ...fields } = given;
  return editBin(context, {
    bin: code,
    ...fields,
    capacity: capacity ?? null,
    formId,
  });
}
