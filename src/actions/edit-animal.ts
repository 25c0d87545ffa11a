/** Changes what is written of an animal, and lets it leave when it is sold, given away or lost. */
import { ok } from '../husbandry/result.ts';
import { animalChanges, changedAnimalRows } from './animal-fields.ts';
import { asOf, formId, someText } from './fields.ts';
import { findRow } from './find.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const editAnimal = action({
  verb: 'edit-animal',
  schema: animalChanges.extend({ animal: someText, asOf, formId }),
  body: async (scene, { formId: _, asOf: seen, animal, ...fields }) => {
    const row = await findRow(scene.tx, 'animal', animal);
    if (!row.ok) return row;
    const free = await unlessChanged(scene.tx, { noun: 'animal', code: animal, asOf: seen });
    if (!free.ok) return free;
    const rows = await changedAnimalRows(scene, [{ row: row.value, fields }]);
    if (!rows.ok) return rows;
    return ok({ summary: `Changed ${animal}`, puts: { animal: rows.value }, reply: { animal } });
  },
});
