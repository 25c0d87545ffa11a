/** Where a bin stands and how it is kept: its room, its own temperatures, the cold, quarantine, cleaning. */

import type { Hono } from 'hono';
import { cleanOut, coldStore, placeBin, quarantine, restBin } from '../../actions/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err } from '../../husbandry/result.ts';
import type { DoorEnv } from '../door.ts';
import { about, at, day } from './bin-post.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf } from './route.ts';
import { maybeTemperature, needed } from './typed.ts';

export function binPlaceRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('place'),
    posted(house, {
      ...about(house, 'place'),
      shape: (unit) => ({
        room: needed,
        dayTemp: maybeTemperature(unit),
        nightTemp: maybeTemperature(unit),
        day,
      }),
      act: ({ dayTemp, nightTemp, ...given }, { c, formId }) => {
        if (dayTemp === undefined && nightTemp !== undefined)
          return Promise.resolve(err(problem('needed', 'Say how warm it is by day too.', 'dayTemp')));
        const ownC = dayTemp === undefined ? null : { dayC: dayTemp, nightC: nightTemp ?? dayTemp };
        return placeBin(context, { bin: codeOf(c), ...given, ownC, formId });
      },
      fields: { 'ownC.dayC': 'dayTemp', 'ownC.nightC': 'nightTemp' },
    }),
  );
  app.post(
    at('cold'),
    posted(house, {
      ...about(house, 'cold'),
      shape: (unit) => ({ temp: maybeTemperature(unit), day }),
      act: ({ temp: tempC, ...given }, { c, formId }) =>
        coldStore(context, { bin: codeOf(c), ...given, ...(tempC === undefined ? {} : { tempC }), formId }),
      fields: { tempC: 'temp' },
    }),
  );
  app.post(
    at('quarantine'),
    posted(house, {
      ...about(house, 'quarantine'),
      shape: () => ({ days: needed }),
      act: (given, { c, formId }) => quarantine(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('rest'),
    posted(house, {
      ...about(house, 'rest'),
      shape: () => ({ days: needed }),
      act: (given, { c, formId }) => restBin(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('clean-out'),
    posted(house, {
      ...about(house, 'clean-out'),
      shape: () => ({ eggsLost: needed, day }),
      act: (given, { c, formId }) => cleanOut(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
}
