/** An animal leaves, a bin is taken out of use, a room is removed. */

import type { Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay, oneOf } from '../../actions/fields.ts';
import { closeBin, removeRoom, takeAway } from '../../actions/index.ts';
import { WAYS_TO_LEAVE } from '../../actions/take-away.ts';
import type { DoorEnv } from '../door.ts';
import { showAnimal } from './animal.ts';
import { showBin } from './bin.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { onSettings } from './settings.ts';
import { needed, typed } from './typed.ts';

export function leavingRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    route(paths.animalAct(':code', 'left')),
    posted(house, {
      form: () => 'left',
      shape: () => ({ reason: oneOf(WAYS_TO_LEAVE), day: typed(civilDay) }),
      act: (given, { c, formId }) => takeAway(context, { animal: codeOf(c), ...given, formId }),
      next: (c) => paths.animal(codeOf(c)),
      again: (c, refused: Refused) => showAnimal(house, c, refused),
    }),
  );
  app.post(
    route(paths.binAct(':code', 'close')),
    posted(house, {
      form: () => 'close',
      shape: () => ({}),
      act: (_, { c, formId }) => closeBin(context, { bin: codeOf(c), formId }),
      fields: { bin: '' },
      next: (c) => paths.bin(codeOf(c)),
      again: (c, refused: Refused) => showBin(house, c, refused),
    }),
  );
  app.post(paths.settingsAct('rooms/remove'), async (c) => {
    const { room } = await c.req.parseBody();
    const post = posted(house, {
      ...onSettings(house, () => `remove-${String(room)}`),
      shape: () => ({ room: needed }),
      act: (given, { formId }) => removeRoom(context, { ...given, formId }),
      fields: { room: '' },
    });
    return post(c);
  });
}
