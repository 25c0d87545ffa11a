/** Removes an empty room; one in use says what is in it. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { rowsOf } from '../store/index.ts';
import { formId, someText } from './fields.ts';
import { findRoom } from './find.ts';
import { nothingInside } from './in-use.ts';
import { action } from './perform.ts';

export const removeRoom = action({
  verb: 'remove-room',
  schema: z.strictObject({ room: someText, formId }),
  body: async ({ tx }, given) => {
    const room = await findRoom(tx, given.room);
    if (!room.ok) return room;
    const rooms = await tx.ask(rowsOf('room', { where: 'closed = 0' }));
    if (rooms.length === 1)
      return err(
        problem('only-room', `${room.value.name} is your only room; add another one first.`, 'room'),
      );
    const free = await nothingInside(tx, room.value);
    if (!free.ok) return free;
    return ok({
      summary: `Removed room ${room.value.name} (${room.value.code})`,
      puts: { room: [{ ...room.value, closed: true }] },
      reply: { room: room.value.code },
    });
  },
});
