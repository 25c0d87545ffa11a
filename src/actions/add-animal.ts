/** Adds an animal, or a group of n alike. */
import { err, ok } from '../husbandry/result.ts';
import { newAnimal, newAnimalRows } from './animal-fields.ts';
import { civilDay, formId } from './fields.ts';
import { historyOf } from './import-history.ts';
import { pastTooEarly } from './lifetime.ts';
import { action } from './perform.ts';

export const addAnimal = action({
  verb: 'add-animal',
  schema: newAnimal.extend({ lastTaken: civilDay.optional(), lastMoult: civilDay.optional(), formId }),
  pastDays: ['gaugeDay', 'lastTaken', 'lastMoult', 'hatchedDay', 'hereSince'],
  body: async (scene, { formId: _, lastTaken, lastMoult, ...given }) => {
    const rows = await newAnimalRows(scene, [given]);
    if (!rows.ok) return rows;
    const { code, name } = rows.value[0]!;
    const early = pastTooEarly(rows.value[0]!, { lastTaken, lastMoult });
    if (early !== null) return err(early);
    return ok({
      summary: `Added ${name === '' ? 'animal' : name} (${code})`,
      puts: { animal: rows.value },
      entries: historyOf(code, { lastFed: lastTaken, lastMoult }),
      reply: { animal: code },
    });
  },
});
