/** Changes the keeper's settings; what is not named stays. */
import { z } from 'zod';
import type { DayRange } from '../husbandry/calendar.ts';
import { ok, type Result } from '../husbandry/result.ts';
import { rowsOf, type SettingRow, settings, type Tx } from '../store/index.ts';
import { civilDay, flag, formId, leadDays, oneOf } from './fields.ts';
import { action } from './perform.ts';
import { forwards } from './sac-dates.ts';
import { said } from './said.ts';

const DAYS = 7;
const weekdays = z.array(flag).length(DAYS, { error: 'Seven weekdays are needed, from Monday to Sunday.' });

const daysAway = z.strictObject({ from: civilDay, to: civilDay });

export const editSettings = action({
  verb: 'edit-settings',
  schema: z.strictObject({
    feedingWeekdays: weekdays.optional(),
    absences: z.array(daysAway).optional(),
    /** Days away added to those there are; the same days again stay once. */
    away: daysAway.optional(),
    /** Days away that fall out of those there are. */
    notAway: daysAway.optional(),
    deliveryWeekdays: weekdays.optional(),
    leadTimeDays: leadDays.optional(),
    units: oneOf(['mm', 'inch']).optional(),
    /** For the demo room: never in place of what the keeper has set, and gone with the room. */
    demo: flag.default(false),
    formId,
  }),
  body: async ({ tx }, { formId: _, demo, away, notAway, ...given }) => {
    const absences = await absencesWith(tx, given.absences, { away, notAway });
    const inOrder = forwardsAll(absences ?? []);
    if (!inOrder.ok) return inOrder;
    const rows = Object.entries(said({ ...given, absences })).map(([key, value]) => ({ key, value }));
    const setting = demo ? await madeForDemo(tx, rows) : await madeByKeeper(tx, rows);
    return ok({ summary: summaryOf(rows), puts: { setting }, reply: null });
  },
});

interface Changed {
  readonly away: DayRange | undefined;
  readonly notAway: DayRange | undefined;
}

/** All days away, the earliest first; undefined where nothing is said of them. */
async function absencesWith(
  tx: Tx,
  given: readonly DayRange[] | undefined,
  { away, notAway }: Changed,
): Promise<readonly DayRange[] | undefined> {
  if (away === undefined && notAway === undefined) return given;
  const isOther = ({ from, to }: DayRange) =>
    [away, notAway].every((each) => each === undefined || each.from !== from || each.to !== to);
  const others = (given ?? (await tx.ask(settings)).absences).filter(isOther);
  return [...others, ...(away === undefined ? [] : [away])].toSorted((a, b) => a.from - b.from);
}

function forwardsAll(absences: readonly DayRange[]): Result<null> {
  const backwards = absences.find(({ from, to }) => from > to);
  return backwards === undefined ? ok(null) : forwards(backwards, 'absences');
}

const WORDS: Readonly<Record<string, string>> = {
  feedingWeekdays: 'feeding days',
  absences: 'days away',
  deliveryWeekdays: 'delivery days',
  leadTimeDays: 'days from order to door',
  units: 'units',
};

/** 'Changed the delivery days and days from order to door'. */
function summaryOf(rows: readonly SettingRow[]): string {
  const named = rows.map(({ key }) => WORDS[key] ?? key);
  return named.length === 0 ? 'Changed no setting' : `Changed the ${named.join(' and ')}`;
}

/** What the keeper has not set, marked as belonging to the demo room. */
async function madeForDemo(tx: Tx, rows: readonly SettingRow[]): Promise<readonly SettingRow[]> {
  const { ofDemo } = await tx.ask(settings);
  const set = new Set((await tx.ask(rowsOf('setting'))).map(({ key }) => key));
  const free = rows.filter(({ key }) => !set.has(key) || ofDemo.includes(key));
  const marked = new Set([...ofDemo, ...free.map(({ key }) => key)]);
  return [...free, { key: 'ofDemo', value: [...marked] }];
}

/** What the keeper sets belongs to the demo room no more. */
async function madeByKeeper(tx: Tx, rows: readonly SettingRow[]): Promise<readonly SettingRow[]> {
  const { ofDemo } = await tx.ask(settings);
  const left = ofDemo.filter((key) => !rows.some((row) => row.key === key));
  return left.length === ofDemo.length ? rows : [...rows, { key: 'ofDemo', value: left }];
}
