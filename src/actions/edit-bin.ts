/** Changes what is written of a bin, or takes it out of use. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { binRemarks } from '../husbandry/supply/index.ts';
import { capacity, fittingSpace, role, space } from './bin-fields.ts';
import { recordOf, settingOn } from './bin-standing.ts';
import { asOf, flag, formId, longText, someText, text } from './fields.ts';
import { findRoom, findRow } from './find.ts';
import { nothingExpected } from './in-use.ts';
import { action } from './perform.ts';
import { placedAt } from './placing.ts';
import { said } from './said.ts';
import { unlessChanged } from './unless-changed.ts';

export const editBin = action({
  verb: 'edit-bin',
  schema: z.strictObject({
    bin: someText,
    name: someText.optional(),
    role: role.optional(),
    room: someText.optional(),
    capacity: capacity.optional(),
    keepAdults: flag.optional(),
    space: space.optional(),
    origin: text.optional(),
    notes: longText.optional(),
    closed: flag.optional(),
    asOf,
    formId,
  }),
  body: async (scene, { formId: _, asOf: seen, bin: code, room: word, ...fields }) => {
    const { tx, facts, now } = scene;
    const bin = await findRow(tx, 'bin', code);
    if (!bin.ok) return bin;
    const free = await unlessChanged(tx, { noun: 'bin', code, asOf: seen });
    if (!free.ok) return free;
    const species = facts.species.get(bin.value.species);
    const fits = species ? fittingSpace(species, fields.space ?? null) : ok(null);
    if (!fits.ok) return fits;
    const room = await findRoom(tx, word ?? bin.value.room);
    if (!room.ok) return room;
    const expected = fields.closed === true ? await nothingExpected(tx, facts, bin.value) : ok(null);
    if (!expected.ok) return expected;
    const after = { room: room.value.code, ownC: bin.value.ownC };
    const placed = await placedAt(scene, bin.value, { after, day: now.today });
    if (!placed.ok) return placed;
    const row = { ...placed.value.row, ...said(fields) };
    const summary = fields.closed === true ? `Took bin ${code} out of use` : `Changed bin ${code}`;
    const setting = await settingOn(scene, now.today);
    const remarks = binRemarks(setting, await recordOf(scene, row, now.today));
    return ok({
      summary,
      puts: { bin: [row] },
      entries: placed.value.entries,
      /** What must be said of it as it is then. */
      reply: { bin: code, remarks },
    });
  },
});
