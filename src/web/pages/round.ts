/** The round as it is sent: what each row showed, unless a mark says otherwise; each sending is one act. */
import type { Context } from 'hono';
import { z } from 'zod';
import type { Refused } from '../../../views/partials/form.tsx';
import { standing } from '../../actions/evening-standing.ts';
import { civilDay, headsOrNone } from '../../actions/fields.ts';
import { type Done, loadSnapshot, recordEvening } from '../../actions/index.ts';
import { NOBODY_LEFT } from '../../actions/record-evening.ts';
import { civilDate, type DayNumber, parseCivilDate } from '../../husbandry/calendar.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import { eveningLines } from '../../store/index.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { type Row, rowsOf, type Sheet } from './round-rows.ts';
import { shelfOf } from './round-shelves.ts';
import { type RoundReply, roundAgain } from './round-told.ts';
import { otherOffer, shownOffer } from './shown-offer.ts';
import { maybe, typed } from './typed.ts';

const MARKS = ['notFed', 'premoult', 'moulted', 'died'] as const;
const codes = z.array(z.string()).default([]);
const shape = {
  day: typed(civilDay),
  shelf: z.string().optional(),
  animal: codes,
  notFed: codes,
  premoult: codes,
  moulted: codes,
  died: codes,
};

/** Fields of single rows and shelves, by what stands before the colon. */
const OF_ROWS: Readonly<Record<string, z.ZodType>> = {
  heads: maybe(headsOrNone),
  bin: otherOffer,
  offer: shownOffer,
  from: z.string(),
};

const rowShape = (names: readonly string[]): Readonly<Record<string, z.ZodType>> =>
  Object.fromEntries(
    names.flatMap((name) => {
      const field = name.includes(':') ? OF_ROWS[name.slice(0, name.indexOf(':'))] : undefined;
      return field === undefined ? [] : [[name, field]];
    }),
  );

/** Reads the marks and records the rows of one shelf, or all that are left. */
export async function recordRound(
  house: House,
  c: Context,
  again: (refused: Refused) => Promise<Response>,
): Promise<Response> {
  const asked = await c.req.parseBody({ all: true });
  const post = posted(house, {
    form: () => 'round',
    many: ['animal', ...MARKS],
    part: 'shelf',
    shape: () => ({ ...shape, ...rowShape(Object.keys(asked)) }),
    act: (given, { formId }) => recordSheet(house, given as unknown as Sheet, formId),
    next: (_, reply) => roundAgain(reply, { today: house.context.clock().today, sent: asked }),
    again: (_, refused) => again(refused),
  });
  return post(c);
}

async function recordSheet(
  house: House,
  sheet: Sheet,
  formId: string | undefined,
): Promise<Result<Done<RoundReply>>> {
  const { context } = house;
  const day = parseCivilDate(sheet.day);
  if (!day.ok) return day;
  const snapshot = await loadSnapshot(context, day.value);
  const all = await rowsOf(house, snapshot, sheet);
  if (!all.ok) return all;
  const rows = shelfOf(snapshot, sheet, all.value);
  if (!rows.ok) return rows;
  if (rows.value.length === 0) return ok(nothingNew(day.value, { already: [], against: [] }));
  const done = await recordEvening(context, { day: sheet.day, rows: [...rows.value], formId });
  if (done.ok || done.problem.code !== NOBODY_LEFT) return done;
  const lines = await context.store.ask(eveningLines(day.value));
  return ok(nothingNew(day.value, standing(rows.value.map(saying), lines, formId)));
}

/** A doubled or late sending is not an error: nothing is written, and what it said is told. */
const nothingNew = (
  day: DayNumber,
  { already, against }: Pick<RoundReply, 'already' | 'against'>,
): Done<RoundReply> => ({
  act: 0,
  summary: '',
  reply: { evening: civilDate(day), recorded: 0, already, against },
  again: true,
});

const saying = (row: Row) => ({
  animal: row.animal,
  outcome: row.outcome,
  bulk: row.bulk === true,
  ...(row.outcome === 'offered' ? { bin: row.bin, heads: Number(row.heads) } : {}),
});
