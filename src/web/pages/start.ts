/** The first steps: a room of one's own, and what is guessed until the keeper says more. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { counted } from '../../../views/format.ts';
import { StartPage } from '../../../views/pages/start.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { heads, headsOrNone } from '../../actions/fields.ts';
import { FIRST_ROOM } from '../../actions/first-room.ts';
import { addAnimal, addBin, editRoom, editSettings, factsNow } from '../../actions/index.ts';
import type { LifeStage } from '../../husbandry/animals/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok } from '../../husbandry/result.ts';
import type { Room, Snapshot } from '../../husbandry/snapshot.ts';
import { gaugeOfStage } from '../../intake/index.ts';
import type { DoorEnv } from '../door.ts';
import { allSizeOptions, everyLength, kindOptions, lengthsChosen, speciesOptions } from './choices.ts';
import type { House } from './house.ts';
import { type FormPost, posted } from './posted.ts';
import { anyText, maybeLengthText, needed, readMm, temperature, typed, weekdays } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

export function startRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.start, (c) => showStart(house, c));
  app.post(paths.startAnimal, posted(house, animalForm(house)));
  app.post(paths.startRoom, async (c) => {
    const room = String((await c.req.parseBody()).room ?? '');
    return posted(house, roomForm(house, room))(c);
  });
  app.post(paths.startFeeding, posted(house, daysForm(house)));
  app.post(paths.startBin, posted(house, binForm(house)));
}

async function showStart(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { snapshot } = here;
  const props = {
    ...here,
    heads: snapshot.animals.reduce((sum, { count }) => sum + count, 0),
    bins: snapshot.bins.length,
    warmthSaid: snapshot.rooms.some(isSaid),
    rooms: snapshot.rooms,
    calendar: snapshot.calendar,
    guesses: guessesOf(snapshot),
    kinds: kindOptions(snapshot.facts),
    stages: STAGES.map(({ value, label }) => ({ value, label })),
    species: speciesOptions(snapshot.facts),
    sizes: allSizeOptions(snapshot.facts),
  };
  return page(c, StartPage(props), statusOf(refused !== null));
}

/** A room that is no longer as the program made it. */
const isSaid = ({ name, dayTempC, nightTempC }: Room): boolean =>
  name !== FIRST_ROOM.name || dayTempC !== FIRST_ROOM.dayTempC || nightTempC !== FIRST_ROOM.nightTempC;

/** What the answer rests on until the keeper says more. */
function guessesOf({ animals, bins, rooms }: Snapshot): string[] {
  const sizes = animals.filter(({ gaugeAssumed }) => gaugeAssumed).length;
  const meals = animals.filter(({ lastOffered }) => lastOffered === null).length;
  const empty = bins.filter(({ role, events }) => role !== 'cup' && events.length === 0).length;
  const guessed = rooms.filter((room) => !isSaid(room));
  return [
    ...(sizes === 0 ? [] : [`${counted(sizes, 'size')} taken from the stage: measure when you can.`]),
    ...(meals === 0
      ? []
      : [`${counted(meals, 'animal')} without a last meal on record: counted as due now.`]),
    ...(empty === 0 ? [] : [`${counted(empty, 'box', 'boxes')} nobody has counted: taken as empty.`]),
    ...guessed.map(
      ({ name, dayTempC, nightTempC }) =>
        `${name}: ${dayTempC} °C by day, ${nightTempC} °C by night, a usual warm room.`,
    ),
  ];
}

const STAGES = [
  { value: 'young', label: 'a spiderling, nymph or froglet' },
  { value: 'juvenile', label: 'a juvenile' },
  { value: 'subadult', label: 'nearly grown' },
  { value: 'adult', label: 'grown' },
] as const satisfies readonly { value: LifeStage; label: string }[];
const stage = z.enum(['young', 'juvenile', 'subadult', 'adult'], { error: 'Choose how grown it is.' });

/** Every form of the page leads back to it. */
const onStart = (house: House, form: string) => ({
  form: () => form,
  next: () => paths.start,
  again: (c: Context, refused: Refused) => showStart(house, c, refused),
});

/** Makes a form's post with its own types. */
const form = <S extends z.ZodRawShape, R>(post: FormPost<S, R>): FormPost<S, R> => post;

const animalForm = (house: House) =>
  form({
    ...onStart(house, 'start-animal'),
    shape: (unit) => ({
      kind: anyText,
      name: anyText,
      count: typed(heads),
      size: maybeLengthText(unit),
      stage,
      room: needed,
    }),
    act: async (given, { unit, formId }) => {
      const { context } = house;
      const kind = (await factsNow(context)).kinds.get(given.kind);
      if (kind === undefined) return err(problem('unknown-kind', 'Choose a kind from the list.', 'kind'));
      const gaugeMm = given.size === '' ? ok(gaugeOfStage(kind, given.stage)) : readMm(unit)(given.size);
      if (!gaugeMm.ok) return err({ ...gaugeMm.problem, field: 'size' });
      return addAnimal(context, {
        kind: kind.code,
        name: given.name === '' ? kind.commonName : given.name,
        count: given.count,
        gaugeMm: gaugeMm.value,
        gaugeAssumed: given.size === '',
        room: given.room,
        formId,
      });
    },
    fields: { gaugeMm: 'size' },
  });

const roomForm = (house: House, room: string) =>
  form({
    ...onStart(house, `start-room-${room}`),
    shape: (unit) => ({ room: anyText, dayTemp: temperature(unit), nightTemp: temperature(unit) }),
    act: ({ dayTemp, nightTemp }, { formId }) =>
      editRoom(house.context, { room, dayTempC: dayTemp, nightTempC: nightTemp, formId }),
    fields: { dayTempC: 'dayTemp', nightTempC: 'nightTemp' },
  });

const daysForm = (house: House) =>
  form({
    ...onStart(house, 'start-feeding'),
    many: ['weekday'],
    shape: () => ({ weekday: weekdays }),
    act: ({ weekday }, { formId }) => editSettings(house.context, { feedingWeekdays: weekday, formId }),
  });

const binForm = (house: House) =>
  form({
    ...onStart(house, 'start-bin'),
    shape: () => ({
      species: anyText,
      size: anyText,
      heads: typed(headsOrNone),
      name: anyText,
      room: needed,
    }),
    act: async (given, { formId }) => {
      const { context } = house;
      const species = (await factsNow(context)).species.get(given.species);
      if (species === undefined)
        return err(problem('unknown-species', 'Choose the prey from the list.', 'species'));
      const lengths =
        given.size === '' ? ok(everyLength(species)) : lengthsChosen(given.size, species, 'size');
      if (!lengths.ok) return lengths;
      const many = Number(given.heads);
      return addBin(context, {
        species: species.code,
        name: given.name,
        room: given.room,
        ...(many === 0 ? {} : { lot: { heads: many, ...lengths.value } }),
        formId,
      });
    },
  });
