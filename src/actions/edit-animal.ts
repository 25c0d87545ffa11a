/** Changes what is written of an animal, and lets it leave when it is sold, given away or lost. */
import { err, ok } from '../husbandry/result.ts';
import { animalChanges, changedAnimalRows } from './animal-fields.ts';
import { asOf, civilDay, formId, someText } from './fields.ts';
import { findRow } from './find.ts';
import { historyOf } from './import-history.ts';
import { pastTooEarly } from './lifetime.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const editAnimal = action({
  verb: 'edit-animal',
  schema: animalChanges.extend({
    animal: someText,
    /** A meal taken and a moult found that were not written down. */
    lastTaken: civilDay.optional(),
    lastMoult: civilDay.optional(),
    asOf,
    formId,
  }),
  pastDays: ['lastTaken', 'lastMoult', 'hatchedDay', 'hereSince'],
  body: async (scene, { formId: _, asOf: seen, animal, lastTaken, lastMoult, ...fields }) => {
    const row = await findRow(scene.tx, 'animal', animal);
    if (!row.ok) return row;
    const free = await unlessChanged(scene.tx, { noun: 'animal', code: animal, asOf: seen });
    if (!free.ok) return free;
    const rows = await changedAnimalRows(scene, [{ row: row.value, fields }]);
    if (!rows.ok) return rows;
    const early = pastTooEarly(rows.value[0]!, { lastTaken, lastMoult });
    if (early !== null) return err(early);
    return ok({
      summary: `Changed ${animal}`,
      puts: { animal: rows.value },
      entries: historyOf(animal, { lastFed: lastTaken, lastMoult }),
      reply: { animal },
    });
  },
});
