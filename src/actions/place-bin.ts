/** Puts a bin into another room, or gives it temperatures of its own: a heater, a cooler, a fridge. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { binRemarks } from '../husbandry/supply/index.ts';
import { recordOf, settingOn } from './bin-standing.ts';
import { civilDay, formId, someText, tempC } from './fields.ts';
import { findBin, findRoom } from './find.ts';
import { action } from './perform.ts';
import { placedAt } from './placing.ts';

export const placeBin = action({
  verb: 'place-bin',
  schema: z.strictObject({
    bin: someText,
    /** Left out: where it stands. */
    room: someText.optional(),
    /** Its own temperatures, null for those of the room; left out: as they are. */
    ownC: z.strictObject({ dayC: tempC, nightC: tempC }).nullable().optional(),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin: code, room: word, ownC, day = scene.now.today }) => {
    const bin = await findBin(scene.tx, code);
    if (!bin.ok) return bin;
    const room = await findRoom(scene.tx, word ?? bin.value.room);
    if (!room.ok) return room;
    const after = { room: room.value.code, ownC: ownC === undefined ? bin.value.ownC : ownC };
    const placed = await placedAt(scene, bin.value, { after, day });
    if (!placed.ok) return placed;
    const { row, entries } = placed.value;
    const own =
      after.ownC === null ? '' : `, ${after.ownC.dayC} °C by day and ${after.ownC.nightC} °C by night`;
    const setting = await settingOn(scene, scene.now.today);
    const remarks = binRemarks(setting, await recordOf(scene, row, scene.now.today));
    return ok({
      summary: `Put ${code} in ${after.room}${own}`,
      puts: { bin: [row] },
      entries,
      /** What must be said of it there. */
      reply: { bin: code, remarks },
    });
  },
});
