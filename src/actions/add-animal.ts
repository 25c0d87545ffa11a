/** Adds an animal, or a group of n alike. */
import { ok } from '../husbandry/result.ts';
import { newAnimal, newAnimalRows } from './animal-fields.ts';
import { formId } from './fields.ts';
import { action } from './perform.ts';

export const addAnimal = action({
  verb: 'add-animal',
  schema: newAnimal.extend({ formId }),
  pastDays: ['gaugeDay'],
  body: async (scene, { formId: _, ...given }) => {
    const rows = await newAnimalRows(scene, [given]);
    if (!rows.ok) return rows;
    const { code, name } = rows.value[0]!;
    return ok({
      summary: `Added ${name === '' ? 'animal' : name} (${code})`,
      puts: { animal: rows.value },
      reply: { animal: code },
    });
  },
});
