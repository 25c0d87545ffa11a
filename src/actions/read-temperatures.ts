/** Reads temperatures measured in a room from a file: they count on their days, the room's setting on all others. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { DATE_ORDERS, measuredDays, readTemperatures as readFile, withNewer } from '../intake/index.ts';
import { formId, oneOf, someText } from './fields.ts';
import { findRoom } from './find.ts';
import { action } from './perform.ts';

export const readTemperatures = action({
  verb: 'read-temperatures',
  schema: z.strictObject({
    room: someText,
    bytes: z.instanceof(Uint8Array, { error: 'Choose a file.' }),
    /** Which comes first in dates, where the file does not show it. */
    dates: oneOf(DATE_ORDERS).optional(),
    formId,
  }),
  body: async ({ tx, now }, { room: word, bytes, dates }) => {
    const room = await findRoom(tx, word);
    if (!room.ok) return room;
    const read = readFile(bytes, { today: now.today, dates });
    if (!read.ok) return read;
    const { series, leftOut, why } = read.value;
    const measured = measuredDays(series);
    const last = series.from + series.minC.length - 1;
    const days = measured.length;
    return ok({
      summary: `Read temperatures of ${days} days into ${room.value.name} (${spokenDay(series.from)} to ${spokenDay(last)})`,
      puts: { room: [{ ...room.value, series: withNewer(room.value.series, series) }] },
      reply: {
        room: room.value.code,
        days,
        from: series.from,
        to: last,
        /** Days between without a reading. */
        gaps: series.minC.length - days,
        leastC: Math.min(...measured.map(({ minC }) => minC)),
        greatestC: Math.max(...measured.map(({ maxC }) => maxC)),
        leftOut,
        why: why?.sentence ?? null,
      },
    });
  },
});
