/** The page of an absence and the sitter's sheet: days given or taken from the calendar; saving is one act. */

import type { Context, Hono } from 'hono';
import { dayRange } from '../../../views/format.ts';
import { preyName } from '../../../views/names.ts';
import { AwayPage } from '../../../views/pages/away.tsx';
import type { AwayAnswer } from '../../../views/pages/away-answer.ts';
import { AwaySheetPage } from '../../../views/pages/away-sheet.tsx';
import type { FormEntry, Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askOnce } from '../../actions/index.ts';
import { civilDate, type DayRange, isFeedingDay, parseCivilDate } from '../../husbandry/calendar.ts';
import { type AwayAsked, type AwayPlan, withoutAbsence } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import { saveAbsence, twoDates } from './absences.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { sheetOf } from './sitter-sheet.ts';
import { gapLines } from './sources.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function awayRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.away, (c) => showAway(house, c));
  app.get(paths.awaySheetPage, (c) => showSheet(house, c));
  app.post(
    paths.away,
    posted(house, {
      form: () => 'away-save',
      shape: twoDates,
      act: (given, { formId }) => saveAbsence(house, given, formId),
      next: (_, reply: { from: string; to: string } | null) =>
        reply === null ? paths.away : paths.awayOn(reply),
      again: (c, refused) => showAway(house, c, refused),
      fields: { absences: 'to' },
    }),
  );
}

interface Asked {
  readonly entry: FormEntry;
  readonly also: boolean;
  /** The days asked about; null when none are, or when they cannot be. */
  readonly days: DayRange | null;
}

const LONGEST_DAYS = 90;

/** What was asked in the address, or refused when it was saved; with nothing asked, the next absence of the calendar. */
function askedIn(c: Context, { snapshot }: Visit, refused: Refused | null): Asked {
  const { calendar, today } = snapshot;
  const typed = { from: c.req.query('from'), to: c.req.query('to'), also: c.req.query('also') };
  const values = refused === null ? { ...typed } : { ...typed, ...refused.values };
  const also = values.also === 'on';
  if (values.from === undefined && values.to === undefined) {
    const ahead = calendar.absences.filter(({ to }) => to >= today).toSorted((a, b) => a.from - b.from);
    const next = ahead[0] ?? null;
    const start = next === null ? {} : { from: civilDate(next.from), to: civilDate(next.to) };
    return { entry: entryWith(start, {}), also, days: next };
  }
  const said = { from: values.from ?? '', to: values.to ?? '', ...(also ? { also: 'on' } : {}) };
  const problems = { ...refused?.problems, ...problemsIn(said, today) };
  const days = Object.keys(problems).length > 0 ? null : { from: dayIn(said.from), to: dayIn(said.to) };
  return { entry: entryWith(said, problems), also, days };
}

const entryWith = (values: FormEntry['values'], problems: FormEntry['problems']): FormEntry => ({
  name: 'away',
  formId: '',
  values,
  problems,
});

function dayIn(text: string): number {
  const day = parseCivilDate(text);
  return day.ok ? day.value : Number.NaN;
}

/** A sentence for each date that is wrong. */
function problemsIn({ from, to }: { from: string; to: string }, today: number): FormEntry['problems'] {
  const wrong = (text: string): string | null => {
    const day = parseCivilDate(text);
    return day.ok ? null : day.problem.sentence;
  };
  const [first, last] = [wrong(from), wrong(to)];
  if (first !== null || last !== null)
    return { ...(first === null ? {} : { from: first }), ...(last === null ? {} : { to: last }) };
  const [begin, end] = [dayIn(from), dayIn(to)];
  if (begin > end) return { to: `"${from} to ${to}" runs backwards; the earlier day comes first.` };
  if (end < today) return { to: `"${to}" is over; give days that are still to come.` };
  if (end - begin >= LONGEST_DAYS)
    return {
      to: `"${from} to ${to}" is longer than ${LONGEST_DAYS} days; give a shorter time, one after the other.`,
    };
  return {};
}

async function showAway(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const asked = askedIn(c, here, refused);
  const { calendar, today } = here.snapshot;
  const props = {
    ...here,
    asked: asked.entry,
    answer: asked.days === null ? null : await answerOf(house, here, { ...asked, days: asked.days }),
    planned: calendar.absences
      .filter(({ to }) => to >= today)
      .map(({ from, to }) => ({ from: civilDate(from), to: civilDate(to), label: dayRange(from, to) })),
  };
  return page(c, AwayPage(props), statusOf(Object.keys(asked.entry.problems).length > 0));
}

async function answerOf(
  { answering }: House,
  { snapshot, names }: Visit,
  { days, also }: AwayAsked,
): Promise<AwayAnswer> {
  const { calendar, deliveries } = snapshot;
  const room = withoutAbsence(snapshot, days);
  const { plan, rounds } = await askOnce('away', { options: { days, also }, snapshot, answering });
  const { from, to } = plan.absence;
  const inside = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return {
    from: civilDate(days.from),
    to: civilDate(days.to),
    plan,
    rounds,
    saved: calendar.absences.length > room.calendar.absences.length,
    lost: inside.filter((day) => isFeedingDay(room.calendar, day)),
    parcels: deliveries
      .filter(({ day }) => from <= day && day <= to)
      .map(({ day, species, lot }) => ({ day, label: `${lot.heads} ${preyName(names.species, species)}` })),
    sources: gapLines(needing(plan), room),
  };
}

const needing = ({ animals }: AwayPlan): readonly string[] =>
  animals.filter(({ standing }) => standing === 'needs a sitter').map(({ animal }) => animal);

async function showSheet(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const asked = askedIn(c, here, null);
  if (asked.days === null) return showAway(house, c);
  const { plan, rounds, from, to } = await answerOf(house, here, { ...asked, days: asked.days });
  const back = paths.awayOn({ from, to, also: asked.also });
  return page(c, AwaySheetPage({ ...here, ...sheetOf(here.snapshot, plan, rounds), back }));
}
