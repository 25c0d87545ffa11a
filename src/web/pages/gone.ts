/** Who and what is gone, each with its record and the way back. */
import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { GonePage } from '../../../views/pages/gone.tsx';
import { paths } from '../../../views/paths.ts';
import { CAN_COME_BACK } from '../../actions/bring-back.ts';
import { bringBack, undo } from '../../actions/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import {
  actOfForm,
  deathsInGroups,
  type Leaving,
  leavings,
  type Noun,
  restingUpon,
  rowsOf,
  type Store,
  withResting,
} from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import {
  animalLine,
  binLine,
  deathLine,
  orderLine,
  planLine,
  purchaseLine,
  roomLine,
  type Telling,
} from './gone-lines.ts';
import { goneRows } from './gone-rows.ts';
import type { House } from './house.ts';
import { namesOnRecord } from './names.ts';
import { onwards } from './onwards.ts';
import { page, visit } from './visit.ts';

export function goneRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.gone, (c) => showGone(house, c));
  app.post(paths.bringBack, (c) => comeBack(house, c));
}

async function showGone(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { store, facts } = house.context;
  const rows = await goneRows(store);
  const went = await store.ask(leavings);
  const telling: Telling = {
    names: await namesOnRecord(store, facts),
    suppliers: new Map((await store.ask(rowsOf('supplier'))).map(({ code, name }) => [code, name])),
    kinds: here.snapshot.facts.kinds,
    days: new Map(went.map(({ noun, code, day }) => [`${noun} ${code}`, day])),
  };
  const props = {
    ...here,
    animals: rows.animals.map((row) => animalLine(row, telling)),
    deaths: (await store.ask(deathsInGroups)).map((death) => deathLine(death, telling)),
    bins: rows.bins.map((row) => binLine(row, telling)),
    rooms: rows.rooms.map((row) => roomLine(row, telling)),
    orders: [
      ...rows.deliveries.map((row) => orderLine(row, telling)),
      ...rows.purchases.map((row) => purchaseLine(row, telling)),
    ],
    plans: rows.changes.map((row) => planLine(row, telling)),
  };
  return page(c, GonePage(props));
}

const form = z.object({
  what: z.enum(CAN_COME_BACK),
  code: z.string(),
  heads: z.string().optional(),
  formId: z.string().optional(),
});

async function comeBack(house: House, c: Context): Promise<Response> {
  const given = form.safeParse(await c.req.parseBody());
  if (!given.success) return onwards(c, err(problem('unknown', 'This cannot be brought back.')), paths.gone);
  const { what, code, formId } = given.data;
  const before = formId === undefined ? null : await house.context.store.ask(actOfForm(formId));
  const done = before === null ? await broughtBack(house, given.data) : ok(before);
  return onwards(c, done, done.ok ? placeOf(what, code) : paths.gone);
}

const placeOf = (what: Noun, code: string): string => {
  if (what === 'animal') return paths.animal(code);
  return what === 'bin' ? paths.bin(code) : paths.gone;
};

/** Acts about nothing else: undoing one brings back just what went with it. */
const OF_ONE = [
  'record-died',
  'take-away',
  'close-bin',
  'remove-room',
  'cancel-delivery',
  'cancel-order',
  'cancel-change',
];

/** By undoing the act it went with, where that is about nothing else and nothing rests on it; else by a new act. */
async function broughtBack({ context }: House, given: z.output<typeof form>): Promise<Result<unknown>> {
  const went = given.heads === undefined ? await leavingOf(context.store, given) : undefined;
  const free = went !== undefined && (await isFree(context.store, went));
  return free ? undo(context, { act: went.act, formId: given.formId }) : bringBack(context, given);
}

async function leavingOf(store: Store, { what, code }: z.output<typeof form>): Promise<Leaving | undefined> {
  const isGone = (await goneRows(store)).codes.has(code);
  const all = isGone ? await store.ask(leavings) : [];
  return all.find((each) => each.noun === what && each.code === code);
}

const isFree = async ({ ask }: Store, { act, verb }: Leaving): Promise<boolean> =>
  OF_ONE.includes(verb) && withResting(await restingUpon(ask, [act]), [act]).size === 1;
