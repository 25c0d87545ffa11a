/** Changes the keeper's settings; what is not named stays. */
import { z } from 'zod';
import type { DayRange } from '../husbandry/calendar.ts';
import type { WeatherSpell } from '../husbandry/orders/index.ts';
import { ok, type Result } from '../husbandry/result.ts';
import { rowsOf, type SettingRow, type Settings, settings, type Tx } from '../store/index.ts';
import { civilDay, flag, formId, leadDays, oneOf, planWeeks, sevenDays } from './fields.ts';
import { action } from './perform.ts';
import { purseFields, purseOf } from './purse-fields.ts';
import { forwards } from './sac-dates.ts';
import { said } from './said.ts';
import { outsideC } from './supplier-fields.ts';
import { withDays } from './with-days.ts';

const daysAway = z.strictObject({ from: civilDay, to: civilDay });
/** Days on which it is so cold or so hot outside. */
const weatherSpell = daysAway.extend({ tempC: outsideC });

export const editSettings = action({
  verb: 'edit-settings',
  schema: z.strictObject({
    feedingWeekdays: sevenDays.optional(),
    absences: z.array(daysAway).optional(),
    /** Days away added to those there are; the same days again stay once. */
    away: daysAway.optional(),
    /** Days away that fall out of those there are. */
    notAway: daysAway.optional(),
    deliveryWeekdays: sevenDays.optional(),
    leadTimeDays: leadDays.optional(),
    units: oneOf(['mm', 'inch']).optional(),
    purse: purseFields.optional(),
    /** Cold or heat outside, added to what there is; of the same days the newer holds. */
    spell: weatherSpell.optional(),
    /** Days whose weather is no longer expected. */
    noSpell: daysAway.optional(),
    planWeeks: planWeeks.optional(),
    /** For the demo room: never in place of what the keeper has set, and gone with the room. */
    demo: flag.default(false),
    formId,
  }),
  body: async ({ tx }, { formId: _, demo, away, notAway, spell, noSpell, purse: money, ...given }) => {
    const now = await tx.ask(settings);
    const absences = absencesWith(now, given.absences, { away, notAway });
    const inOrder = forwardsAll(absences ?? [], 'absences');
    if (!inOrder.ok) return inOrder;
    const spellInOrder = spell === undefined ? ok(null) : forwards(spell, 'spell');
    if (!spellInOrder.ok) return spellInOrder;
    const purse = money === undefined ? ok(undefined) : purseOf(money);
    if (!purse.ok) return purse;
    const weather = weatherWith(now, { spell, noSpell });
    const changed = said({ ...given, absences, purse: purse.value, weather });
    const rows = Object.entries(changed).map(([key, value]) => ({ key, value }));
    const setting = demo ? await madeForDemo(tx, rows) : await madeByKeeper(tx, rows);
    return ok({ summary: summaryOf(rows), puts: { setting }, reply: null });
  },
});

interface Changed {
  readonly away: DayRange | undefined;
  readonly notAway: DayRange | undefined;
}

/** All days away, the earliest first; undefined where nothing is said of them. */
function absencesWith(
  { absences }: Settings,
  given: readonly DayRange[] | undefined,
  { away, notAway }: Changed,
): readonly DayRange[] | undefined {
  if (away === undefined && notAway === undefined) return given;
  return withDays(given ?? absences, { add: away, drop: notAway });
}

interface Weather {
  readonly spell: WeatherSpell | undefined;
  readonly noSpell: DayRange | undefined;
}

/** All spells, the earliest first; undefined where nothing is said of them. */
function weatherWith({ weather }: Settings, { spell, noSpell }: Weather) {
  if (spell === undefined && noSpell === undefined) return undefined;
  const left = withDays<DayRange>(weather, { add: undefined, drop: noSpell }) as readonly WeatherSpell[];
  return withDays(left, { add: spell, drop: undefined });
}

function forwardsAll(days: readonly DayRange[], field: string): Result<null> {
  const backwards = days.find(({ from, to }) => from > to);
  return backwards === undefined ? ok(null) : forwards(backwards, field);
}

const WORDS: Readonly<Record<string, string>> = {
  feedingWeekdays: 'feeding days',
  absences: 'days away',
  deliveryWeekdays: 'delivery days',
  leadTimeDays: 'days from order to door',
  units: 'units',
  purse: 'currency and what you spend',
  weather: 'weather outside',
  planWeeks: 'weeks a plan looks ahead',
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
