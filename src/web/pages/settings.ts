/** Settings: when you feed, when prey can come, how lengths are written, and the light. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { SettingsPage } from '../../../views/pages/settings.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { leadDays } from '../../actions/fields.ts';
import { editSettings } from '../../actions/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { PlannedChange } from '../../husbandry/snapshot.ts';
import { latestActs, settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { safePath } from '../safe-path.ts';
import { currencyOptions, kindOptions } from './choices.ts';
import { keepTheme } from './cookies.ts';
import { latestLines } from './history.ts';
import type { House } from './house.ts';
import { namesOnRecord } from './names.ts';
import { posted } from './posted.ts';
import { typed, weekdays } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

async function showSettings(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const { store } = house.context;
  const here = await visit(house, c, { refused });
  const { calendar, deliveryWeekdays, leadTimeDays, rooms, changes, animals, facts } = here.snapshot;
  const props = {
    ...here,
    calendar,
    deliveryWeekdays,
    leadTimeDays,
    rooms,
    ...(await moneySet(house, here.snapshot.today)),
    changes: changes.filter(isAhead),
    kinds: kindOptions(facts),
    kindNames: facts.kinds,
    animals: animals.map(({ code }) => ({ value: code, label: here.names.animals.get(code) ?? code })),
    latest: latestLines(await store.ask(latestActs(LATEST_SHOWN)), await namesOnRecord(store, facts)),
  };
  return page(c, SettingsPage(props), statusOf(refused !== null));
}

/** Money, and the weather that is not over yet. */
async function moneySet({ context }: House, today: DayNumber) {
  const { purse, weather, planWeeks } = await context.store.ask(settings);
  return { purse, weather: weather.filter(({ to }) => to >= today), planWeeks, currencies: currencyOptions };
}

/** Neither come to nothing nor fed for the first time. */
export const isAhead = ({ sac }: PlannedChange): boolean => (sac?.ended ?? sac?.settled ?? null) === null;

const LATEST_SHOWN = 12;

/** What a form of the settings page shares with the others. */
export const onSettings = (house: House, form: (c: Context) => string) => ({
  form,
  next: () => paths.settings,
  again: (c: Context, refused: Refused) => showSettings(house, c, refused),
});

export function settingsRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.get(paths.settings, (c) => showSettings(house, c));
  app.post(
    paths.settingsAct('feeding'),
    posted(house, {
      ...onSettings(house, () => 'feeding'),
      many: ['weekday'],
      shape: () => ({ weekday: weekdays }),
      act: (given, { formId }) => editSettings(context, { feedingWeekdays: given.weekday, formId }),
    }),
  );
  app.post(
    paths.settingsAct('deliveries'),
    posted(house, {
      ...onSettings(house, () => 'deliveries'),
      many: ['weekday'],
      shape: () => ({ weekday: weekdays, leadTimeDays: typed(leadDays) }),
      act: ({ weekday, leadTimeDays }, { formId }) =>
        editSettings(context, {
          deliveryWeekdays: weekday,
          leadTimeDays: Number(leadTimeDays),
          formId,
        }),
    }),
  );
  app.post(
    paths.settingsAct('units'),
    posted(house, {
      ...onSettings(house, () => 'units'),
      shape: () => ({ unit: z.enum(['mm', 'in'], { error: 'Choose millimetres or inches.' }) }),
      act: ({ unit }, { formId }) => editSettings(context, { units: unit === 'in' ? 'inch' : 'mm', formId }),
    }),
  );
  app.post(paths.settingsAct('theme'), changeLight);
}

const light = z.object({ theme: z.enum(['system', 'light', 'dark', 'red']), back: z.string().optional() });

/** The light is this browser's own: no act, and a word that is none leaves it as it is. */
async function changeLight(c: Context): Promise<Response> {
  const read = light.safeParse(await c.req.parseBody());
  if (read.success) keepTheme(c, read.data.theme);
  return c.redirect(safePath(read.data?.back ?? paths.settings), 303);
}
