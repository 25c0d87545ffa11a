/** Changes a room's name or temperatures. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { asOf, formId, someText, tempC } from './fields.ts';
import { findRow } from './find.ts';
import { action } from './perform.ts';
import { said } from './said.ts';
import { unlessChanged } from './unless-changed.ts';

export const editRoom = action({
  verb: 'edit-room',
  schema: z.strictObject({
    room: someText,
    name: someText.optional(),
    dayTempC: tempC.optional(),
    nightTempC: tempC.optional(),
    asOf,
    formId,
  }),
  body: async ({ tx }, { formId: _, asOf: seen, room: code, ...fields }) => {
    const room = await findRow(tx, 'room', code);
    if (!room.ok) return room;
    const free = await unlessChanged(tx, { noun: 'room', code, asOf: seen });
    if (!free.ok) return free;
    const row = { ...room.value, ...said(fields) };
    return ok({ summary: `Changed room ${row.name}`, puts: { room: [row] }, reply: { room: code } });
  },
});
