/** Money, the weather outside and the weeks of a plan: forms of the settings page. */
import type { Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { planWeeks } from '../../actions/fields.ts';
import { editSettings } from '../../actions/index.ts';
import { currencyCode, money } from '../../actions/money-fields.ts';
import type { DoorEnv } from '../door.ts';
import { twoDates } from './absences.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { onSettings } from './settings.ts';
import { outside, typed, typedOrEmpty } from './typed.ts';

export function moneyRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    paths.settingsAct('purse'),
    posted(house, {
      ...onSettings(house, () => 'purse'),
      shape: () => ({
        currency: typed(currencyCode),
        hour: typedOrEmpty(money),
        weekMost: typedOrEmpty(money),
      }),
      act: ({ hour, ...given }, { formId }) =>
        editSettings(context, { purse: { ...given, hour: hour === '' ? 0 : hour }, formId }),
    }),
  );
  app.post(
    paths.settingsAct('plan'),
    posted(house, {
      ...onSettings(house, () => 'plan'),
      shape: () => ({ planWeeks: typed(planWeeks) }),
      act: (given, { formId }) => editSettings(context, { ...given, formId }),
    }),
  );
  weatherRoutes(app, house);
}

function weatherRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const form = onSettings(house, () => 'weather');
  app.post(
    paths.settingsAct('weather'),
    posted(house, {
      ...form,
      shape: (unit) => ({ ...twoDates(), outside: outside(unit) }),
      act: ({ outside: tempC, ...days }, { formId }) =>
        editSettings(context, { spell: { ...days, tempC }, formId }),
      fields: { spell: 'to' },
    }),
  );
  app.post(
    paths.settingsAct('weather/remove'),
    posted(house, {
      ...form,
      shape: twoDates,
      act: (days, { formId }) => editSettings(context, { noSpell: days, formId }),
    }),
  );
}
