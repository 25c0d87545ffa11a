/** The form of an animal: a new one moves in, or what was said of one is changed. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { type LengthUnit, lengthText } from '../../../views/format.ts';
import { AnimalFormPage } from '../../../views/pages/animal-form.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { sex } from '../../actions/animal-fields.ts';
import { civilDay, heads } from '../../actions/fields.ts';
import { addAnimal, type Done, editAnimal, factsNow, loadSnapshot } from '../../actions/index.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import { civilDate, type DayNumber } from '../../husbandry/calendar.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Mm } from '../../husbandry/units.ts';
import { gaugeOfStage } from '../../intake/index.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { kindOptions, roomOptions } from './choices.ts';
import type { House } from './house.ts';
import { posted, type Sent } from './posted.ts';
import { codeOf, route } from './route.ts';
import { anyText, maybe, maybeLengthText, needed, readMm, revision, ticked, typed } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

const shape = (unit: LengthUnit) => ({
  name: needed,
  kind: z.string({ error: 'Choose a kind.' }).trim().min(1, { error: 'Choose a kind.' }),
  count: typed(heads),
  sex,
  gauge: maybeLengthText(unit),
  room: needed,
  shelf: anyText,
  lastMoult: maybe(civilDay),
  lastTaken: maybe(civilDay),
  hatchedDay: maybe(civilDay),
  hereSince: maybe(civilDay),
  matured: ticked,
  asOf: revision,
});
type Given = z.output<z.ZodObject<ReturnType<typeof shape>>>;

export function animalFormRoutes(app: Hono<DoorEnv>, house: House): void {
  const form = {
    form: () => 'animal',
    shape,
    again: (c: Context, refused: Refused) => showForm(house, c, refused),
    next: (_: Context, { animal }: { animal: string }) => paths.animal(animal),
    fields: { gaugeMm: 'gauge' },
  };
  app.get(paths.newAnimal, (c) => showForm(house, c));
  app.post(paths.newAnimal, posted(house, { ...form, act: (given, sent) => moveIn(house, given, sent) }));
  app.get(route(paths.editAnimal(':code')), (c) => showForm(house, c));
  app.post(
    route(paths.editAnimal(':code')),
    posted(house, { ...form, act: (given, sent) => change(house, given, sent) }),
  );
}

async function showForm(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { animals, rooms, facts, revision } = here.snapshot;
  const code = c.req.param('code');
  const animal = animals.find((each) => each.code === code) ?? null;
  if (code !== undefined && animal === null) return c.notFound();
  const shelves = [...new Set(animals.map(({ shelf }) => shelf))].filter((shelf) => shelf !== '');
  const row = animal === null ? null : await house.context.store.ask(rowNamed('animal', animal.code));
  const begun = { hatchedDay: row?.hatchedDay ?? null, hereSince: row?.hereSince ?? null };
  const props = {
    ...here,
    animal,
    begun,
    shelves,
    revision,
    kinds: kindOptions(facts),
    rooms: roomOptions(rooms),
  };
  return page(c, AnimalFormPage(props), statusOf(refused !== null));
}

/** A size left empty is taken from the middle of the stage: a juvenile, or grown when it has matured. */
async function moveIn(
  house: House,
  given: Given,
  { unit, formId }: Sent,
): Promise<Result<Done<{ animal: string }>>> {
  const { gauge, asOf: _, ...fields } = given;
  const kind = (await factsNow(house.context)).kinds.get(given.kind);
  if (kind === undefined) return err(problem('unknown-kind', 'Choose a kind from the list.', 'kind'));
  const assumed = gauge === '';
  const stage = given.matured ? 'mature male' : 'juvenile';
  const read = assumed ? ok(gaugeOfStage(kind, stage)) : readMm(unit)(gauge);
  if (!read.ok) return err({ ...read.problem, field: 'gauge' });
  return addAnimal(house.context, {
    ...fields,
    sex: sexOf(given),
    gaugeMm: read.value,
    gaugeAssumed: assumed,
    formId,
  });
}

/** Whoever has matured so is a male. */
const sexOf = (given: Given) => (given.matured && given.sex === 'unsexed' ? 'male' : given.sex);

async function change(
  house: House,
  given: Given,
  { c, unit, formId }: Sent,
): Promise<Result<Done<{ animal: string }>>> {
  const { context } = house;
  const code = codeOf(c);
  const snapshot = await loadSnapshot(context);
  const animal = snapshot.animals.find((each) => each.code === code);
  const row = await context.store.ask(rowNamed('animal', code));
  if (animal === undefined || row === null)
    return err(problem('unknown-animal', `"${code}" does not live here.`));
  const { gauge, lastTaken, lastMoult, hatchedDay = null, hereSince = null, ...fields } = given;
  const gaugeMm = gaugeTyped(gauge, animal, unit);
  if (!gaugeMm.ok) return err({ ...gaugeMm.problem, field: 'gauge' });
  const meal = later(lastTaken, animal.lastTaken, 'lastTaken');
  const moult = later(lastMoult, animal.lastMoult?.found ?? null, 'lastMoult');
  if (!meal.ok) return meal;
  if (!moult.ok) return moult;
  const dates = { lastTaken: meal.value, lastMoult: moult.value };
  return editAnimal(context, {
    ...fields,
    ...dates,
    hatchedDay,
    hereSince,
    animal: code,
    sex: sexOf(given),
    gaugeMm: gaugeMm.value,
    formId,
  });
}

/** The size typed; undefined where it is left as it was shown. */
function gaugeTyped(gauge: string, animal: Animal, unit: LengthUnit): Result<Mm | undefined> {
  const untouched = gauge === '' || gauge === lengthText(animal.gaugeMm, unit);
  return untouched ? ok(undefined) : readMm(unit)(gauge);
}

/** A date left as it was shown says nothing; an earlier one than the record's would change nothing. */
function later(
  given: string | undefined,
  recorded: DayNumber | null,
  field: string,
): Result<string | undefined> {
  if (given === undefined || recorded === null) return ok(given);
  const shown = civilDate(recorded);
  if (given === shown) return ok(undefined);
  if (given > shown) return ok(given);
  return err(
    problem(
      'earlier',
      `"${given}" is before the last on record (${shown}); undo that in its record first.`,
      field,
    ),
  );
}
