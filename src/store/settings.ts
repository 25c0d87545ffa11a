/** The keeper's settings, with what holds until the keeper says otherwise. */
import type { DayRange } from '../husbandry/calendar.ts';
import type { Purse, WeatherSpell } from '../husbandry/orders/index.ts';
import type { ShelfPlace } from '../husbandry/walk.ts';
import type { SettingRow } from './nouns.ts';
import type { Query } from './query.ts';
import { rowsOf } from './rows.ts';

export interface Settings {
  /** Seven weekdays from Monday on which the keeper feeds. */
  readonly feedingWeekdays: readonly boolean[];
  readonly absences: readonly DayRange[];
  /** Seven weekdays from Monday on which a delivery can come. */
  readonly deliveryWeekdays: readonly boolean[];
  readonly leadTimeDays: number;
  readonly units: 'mm' | 'inch';
  readonly purse: Purse;
  /** Cold and heat outside, as the keeper expects them. */
  readonly weather: readonly WeatherSpell[];
  /** Weeks a plan looks ahead. */
  readonly planWeeks: number;
  /** Shelves in the order they are walked; those not named come after, by name. */
  readonly walk: readonly ShelfPlace[];
  /** Settings made for the demo room, which go when it is emptied. */
  readonly ofDemo: readonly string[];
}

/** Tuesday, Friday and Sunday evenings; deliveries from Tuesday to Friday. */
const settingsAtFirst: Settings = {
  feedingWeekdays: [false, true, false, false, true, false, true],
  absences: [],
  deliveryWeekdays: [false, true, true, true, true, false, false],
  leadTimeDays: 3,
  units: 'mm',
  purse: { currency: 'EUR', hourCents: 0, weekMostCents: null },
  weather: [],
  planWeeks: 12,
  walk: [],
  ofDemo: [],
};

const rows = rowsOf('setting');

export const settings: Query<Settings> = {
  ...rows,
  decode: (found) => ({ ...settingsAtFirst, ...asObject(rows.decode(found)) }),
};

const asObject = (found: readonly SettingRow[]): Partial<Settings> =>
  Object.fromEntries(found.map(({ key, value }) => [key, value]));
