/** Adds a room with its temperatures by day and by night. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { nextCodes } from '../store/index.ts';
import { flag, formId, someText, tempC } from './fields.ts';
import { action } from './perform.ts';

export const addRoom = action({
  verb: 'add-room',
  schema: z.strictObject({
    name: someText,
    dayTempC: tempC,
    nightTempC: tempC,
    demo: flag.default(false),
    formId,
  }),
  body: async ({ tx }, { formId: _, ...given }) => {
    const [code] = await nextCodes(tx, 'R', 1);
    const row = { ...given, code: code!, closed: false, series: null };
    return ok({
      summary: `Added room ${given.name} (${code})`,
      puts: { room: [row] },
      reply: { room: row.code },
    });
  },
});
