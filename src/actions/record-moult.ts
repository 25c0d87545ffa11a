/** Records a moult that was found. */
import { z } from 'zod';
import { err, ok } from '../husbandry/result.ts';
import { beyondKind } from './animal-fields.ts';
import { civilDay, flag, formId, gaugeMm, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { moulted } from './life-events.ts';
import { moultOutOfTurn, recordOf, smallerThanBefore } from './moult-sense.ts';
import { action } from './perform.ts';

export const recordMoult = action({
  verb: 'record-moult',
  schema: z.strictObject({
    animal: someText,
    found: civilDay.optional(),
    earliest: civilDay.optional(),
    gaugeMm: gaugeMm.optional(),
    /** A size smaller than the one before the moult is meant. */
    smaller: flag.default(false),
    formId,
  }),
  pastDays: ['found', 'earliest'],
  body: async (scene, given) => {
    const animal = await findAnimal(scene.tx, given.animal);
    if (!animal.ok) return animal;
    const { earliest, smaller } = given;
    const moult = { earliest, gaugeMm: given.gaugeMm, found: given.found ?? scene.now.today };
    const record = await recordOf(scene, given.animal);
    const wrong =
      moultOutOfTurn(record, moult) ??
      (moult.gaugeMm === undefined
        ? null
        : (beyondKind(scene, { kind: animal.value.kind, gaugeMm: moult.gaugeMm }) ??
          smallerThanBefore(record, { gaugeMm: moult.gaugeMm, moulted: moult.found, smaller })));
    if (wrong !== null) return err(wrong);
    const event = await moulted(scene, animal.value, moult);
    if (!event.ok) return event;
    const { row, entries } = event.value;
    return ok({
      summary: `${given.animal} moulted`,
      puts: { animal: [row] },
      entries,
      reply: { gaugeMm: row.gaugeMm },
    });
  },
});
