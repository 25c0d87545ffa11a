/** Changes what is written of a bin, or takes it out of use. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { capacity } from './bin-fields.ts';
import { flag, formId, longText, someText } from './fields.ts';
import { findRoom, findRow } from './find.ts';
import { action } from './perform.ts';
import { said } from './said.ts';

export const editBin = action({
  verb: 'edit-bin',
  schema: z.strictObject({
    bin: someText,
    name: someText.optional(),
    room: someText.optional(),
    capacity: capacity.optional(),
    keepAdults: flag.optional(),
    notes: longText.optional(),
    closed: flag.optional(),
    formId,
  }),
  body: async ({ tx }, { formId: _, bin: code, room: word, ...fields }) => {
    const bin = await findRow(tx, 'bin', code);
    if (!bin.ok) return bin;
    const room = await findRoom(tx, word ?? bin.value.room);
    if (!room.ok) return room;
    const row = { ...bin.value, ...said(fields), room: room.value.code };
    const summary = fields.closed === true ? `Took bin ${code} out of use` : `Changed bin ${code}`;
    return ok({ summary, puts: { bin: [row] }, reply: { bin: code } });
  },
});
