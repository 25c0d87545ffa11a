/** Sees to it that there is a room, so that animals and bins have a place from the first day. */
import { z } from 'zod';
import { ok, type Result } from '../husbandry/result.ts';
import { nextCodes, revision, rowsOf } from '../store/index.ts';
import type { Context } from './context.ts';
import { formId } from './fields.ts';
import { action } from './perform.ts';

/** A usual warm room; the keeper sets its true temperatures. */
export const FIRST_ROOM = { name: 'Room', dayTempC: 26, nightTempC: 22 } as const;

const makeRoom = action({
  verb: 'first-room',
  schema: z.strictObject({ formId }),
  body: async ({ tx }) => {
    const [code] = await nextCodes(tx, 'R', 1);
    const room = { ...FIRST_ROOM, code: code!, demo: false, closed: false, series: null };
    return ok({ summary: `Added ${room.name}`, puts: { room: [room] }, reply: { room: room.code } });
  },
});

/** Adds a room where there is none; asked twice at once, still one. */
export async function firstRoom(context: Context): Promise<Result<unknown>> {
  const { rooms, at } = await context.store.askAll({
    rooms: rowsOf('room', { where: 'closed = 0' }),
    at: revision,
  });
  return rooms.length > 0 ? ok(null) : makeRoom(context, { formId: `first-room-${at}` });
}
