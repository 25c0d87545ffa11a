/** A sheet keyed in afterwards: one cell an animal, all of it one act of its evening. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { KeyInPage } from '../../../views/pages/key-in.tsx';
import type { KeyRow } from '../../../views/pages/key-in-line.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { loadSnapshot } from '../../actions/index.ts';
import { type DayNumber, type FeedingCalendar, isFeedingDay } from '../../husbandry/calendar.ts';
import { roundDone } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { besideCells, cellFields, type Keyed, recordCells } from './key-in-rows.ts';
import { posted } from './posted.ts';
import { eveningAsked } from './round-day.ts';
import { roundLeft } from './round-left.ts';
import { roundAgain } from './round-told.ts';
import { byShelf, eveningRows } from './sheet-rows.ts';
import { typed } from './typed.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function keyInRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.keyIn, (c) => showKeyIn(house, c));
  app.post(paths.keyIn, (c) => recordKeyIn(house, c));
}

const codes = z.array(z.string()).default([]);

async function recordKeyIn(house: House, c: Context): Promise<Response> {
  const asked = await c.req.parseBody({ all: true });
  const rows = cellFields(asked, await loadSnapshot(house.context));
  const post = posted(house, {
    form: () => 'key-in',
    many: ['animal'],
    shape: () => ({
      day: typed(civilDay),
      who: z.string().optional(),
      animal: codes,
      ...rows,
    }),
    act: (given, { formId }) => recordCells(house, given as unknown as Keyed, formId),
    next: (_, reply) => roundAgain(reply, { today: house.context.clock().today, sent: {} }),
    again: (_, refused) => showKeyIn(house, c, refused),
    fields: besideCells([asked.animal ?? []].flat().map(String)),
  });
  return post(c);
}

async function showKeyIn(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const { store, clock, facts } = house.context;
  const { today } = clock();
  const latest = feedingDaysUpTo(today, (await loadSnapshot(house.context)).calendar);
  const asked = eveningAsked(refused?.values.day ?? c.req.query('day') ?? undefined, { today, facts });
  const wanted = c.req.query('day') === undefined && refused === null ? latest[0] : undefined;
  const day = wanted ?? (asked.ok ? asked.value : today);
  const here = await visit(house, c, { refused, day });
  const everybody = (refused?.values.who ?? c.req.query('who')) === 'all';
  const props = {
    ...here,
    shell: { ...here.shell, today },
    day,
    earliest: today - facts.policy.roundBackDays.value,
    latest,
    everybody,
    wrongDay: asked.ok ? null : asked.problem.sentence,
    bins: here.snapshot.bins.map(({ code, name }) => ({ code, name })),
    written: (await store.ask(roundDone(day))).length,
    shelves: await rowsFor(house, here, everybody),
  };
  return page(c, KeyInPage(props), statusOf(refused !== null || !asked.ok));
}

/** Who stands on the sheet of that evening, and everybody else where that is wanted. */
async function rowsFor(house: House, here: Visit, everybody: boolean) {
  const { store } = house.context;
  const evening = await roundLeft(house, here.snapshot);
  const offers = new Map(evening.servings.map(({ animal, offer }) => [animal, offer]));
  const printed = new Map(
    eveningRows(here, evening).flatMap(({ rows }) => rows.map((row) => [row.code, row])),
  );
  const done = new Set(await store.ask(roundDone(here.snapshot.today)));
  return byShelf(here, ({ code }): KeyRow | null => {
    const row = printed.get(code) ?? null;
    if (done.has(code) || (row === null && !everybody)) return null;
    return { code, name: here.names.animals.get(code) ?? code, printed: row, offer: offers.get(code) };
  });
}

const LOOKED_BACK = 14;
const DAYS_OFFERED = 4;

/** The last feeding days up to a day, latest first. */
const feedingDaysUpTo = (today: DayNumber, calendar: FeedingCalendar): readonly DayNumber[] =>
  Array.from({ length: LOOKED_BACK }, (_, back) => today - back)
    .filter((day) => isFeedingDay(calendar, day))
    .slice(0, DAYS_OFFERED);
