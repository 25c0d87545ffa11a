/** Sheets to print: the evening as proposed, with boxes to tick; and a blank one to write on. */
import type { Context, Hono } from 'hono';
import { BlankSheetPage } from '../../../views/pages/blank-sheet.tsx';
import { EveningSheetPage } from '../../../views/pages/evening-sheet.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import { isFeedingDay } from '../../husbandry/calendar.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { nextMealOf } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { pickingOf } from './picking.ts';
import { roundLeft } from './round-left.ts';
import { byShelf, eveningRows } from './sheet-rows.ts';
import { page, type Visit, visit } from './visit.ts';

export function sheetRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.sheet, (c) => (c.req.query('blank') === '1' ? showBlank(house, c) : showEvening(house, c)));
}

/** The day an address names, or today where it names none that can be read. */
function dayAsked(c: Context, today: DayNumber): DayNumber {
  const read = civilDay.safeParse(c.req.query('day'));
  return read.success ? read.data : today;
}

async function showEvening(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c, { day: dayAsked(c, house.context.clock().today) });
  const evening = await roundLeft(house, here.snapshot);
  const offers = evening.servings.flatMap(({ offer }) => offer ?? []);
  const props = {
    shell: here.shell,
    day: here.snapshot.today,
    feedingDay: evening.feedingDay,
    shelves: eveningRows(here, evening),
    picking: pickingOf(offers, { ...here, facts: here.snapshot.facts }),
  };
  return page(c, EveningSheetPage(props));
}

const MOST_DAYS = 14;
const USUAL_DAYS = 7;
/** Evenings that find room beside one another on a page. */
const MOST_EVENINGS = 7;

async function showBlank(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c, { day: dayAsked(c, house.context.clock().today) });
  const asked = Number(c.req.query('days') ?? USUAL_DAYS);
  const days = asked >= 1 ? Math.min(MOST_DAYS, Math.round(asked)) : USUAL_DAYS;
  const onlyDue = c.req.query('who') === 'due';
  const evenings = eveningsOf(here.snapshot, days).slice(0, MOST_EVENINGS);
  const shelves = byShelf(here, (animal) => {
    const { from, evening } = nextMealOf(here.snapshot, animal);
    if (onlyDue && from >= here.snapshot.today + days) return null;
    return { code: animal.code, name: nameIn(here, animal.code), expected: evening };
  });
  return page(
    c,
    BlankSheetPage({ shell: here.shell, day: here.snapshot.today, days, onlyDue, evenings, shelves }),
  );
}

const nameIn = ({ names }: Visit, code: string): string => names.animals.get(code) ?? code;

/** The evenings on which this keeper feeds, from the snapshot's day on. */
const eveningsOf = ({ today, calendar }: Snapshot, days: number): readonly DayNumber[] =>
  Array.from({ length: days }, (_, ahead) => today + ahead).filter((day) => isFeedingDay(calendar, day));
