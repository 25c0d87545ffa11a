/** Records a gauge that was measured. */
import { z } from 'zod';
import { err, ok } from '../husbandry/result.ts';
import { beyondKind } from './animal-fields.ts';
import { civilDay, flag, formId, gaugeMm, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { resized } from './life-events.ts';
import { beforeItCame } from './lifetime.ts';
import { recordOf, smallerThanBefore } from './moult-sense.ts';
import { action } from './perform.ts';

export const recordMeasure = action({
  verb: 'record-measure',
  schema: z.strictObject({
    animal: someText,
    gaugeMm,
    day: civilDay.optional(),
    /** A size smaller than the one before the last moult is meant. */
    smaller: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, given) => {
    const animal = await findAnimal(scene.tx, given.animal);
    if (!animal.ok) return animal;
    const day = given.day ?? scene.now.today;
    const early = beforeItCame(animal.value, { day, field: 'day' });
    const { kind } = animal.value;
    const odd = early ?? beyondKind(scene, { kind, gaugeMm: given.gaugeMm });
    if (odd !== null) return err(odd);
    const record = await recordOf(scene, given.animal);
    const moulted = record.moults.findLast((found) => found <= day);
    const wrong = moulted === undefined ? null : smallerThanBefore(record, { ...given, moulted });
    if (wrong !== null) return err(wrong);
    const row = resized(animal.value, { gaugeMm: given.gaugeMm, day, assumed: false });
    return ok({
      summary: `Measured ${given.animal}: ${given.gaugeMm} mm`,
      puts: { animal: [row] },
      entries: [{ day, kind: 'measured', animal: given.animal, details: { gaugeMm: given.gaugeMm } }],
      reply: { gaugeMm: row.gaugeMm },
    });
  },
});
