/** Brings in many animals and lots as one act: all of them or none. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type AnimalRow, rowsNamed } from '../store/index.ts';
import { animalChanges, changedAnimalRows, newAnimal, newAnimalRows } from './animal-fields.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findAnimal } from './find.ts';
import { historyOf, tooEarly } from './import-history.ts';
import { importedLot, importedLots } from './import-lots.ts';
import { action, type Scene } from './perform.ts';

/** What a list may say of an animal's past. */
const past = { lastFed: civilDay.nullish(), lastMoult: civilDay.nullish() };
const schema = z.strictObject({
  animals: z
    .strictObject({
      new: z.array(newAnimal.extend(past)).default([]),
      changed: z.array(z.strictObject({ code: someText, fields: animalChanges.extend(past) })).default([]),
    })
    .default({ new: [], changed: [] }),
  lots: z.array(importedLot).default([]),
  formId,
});
type Given = z.output<typeof schema>;

export const importRows = action({
  verb: 'import-rows',
  schema,
  body: async (scene, given) => {
    const early = tooEarly(scene.now.today, given);
    if (early !== null) return err(early);
    const animals = await importedAnimals(scene, given.animals);
    if (!animals.ok) return animals;
    const lots = await importedLots(scene, given.lots);
    if (!lots.ok) return lots;
    const { added, changed, history } = animals.value;
    const { bins, entries } = lots.value;
    return ok({
      summary: `Imported ${added.length} new animals, ${changed.length} changed, ${given.lots.length} lots`,
      puts: { animal: [...added, ...changed], bin: bins },
      entries: [...history, ...entries],
      reply: { animals: added.map(({ code }) => code), bins: bins.map(({ code }) => code) },
    });
  },
});

async function importedAnimals(scene: Scene, given: Given['animals']) {
  const fresh = given.new.map(({ lastFed: _, lastMoult: _moult, ...animal }) => animal);
  const added = await newAnimalRows(scene, fresh);
  if (!added.ok) return added;
  const changed = await changedRows(scene, given.changed);
  if (!changed.ok) return changed;
  const history = [
    ...given.new.flatMap((past, at) => historyOf(added.value[at]!.code, past)),
    ...given.changed.flatMap(({ code, fields }) => historyOf(code, fields)),
  ];
  return ok({ added: added.value, changed: changed.value, history });
}

async function changedRows(
  scene: Scene,
  changed: Given['animals']['changed'],
): Promise<Result<readonly AnimalRow[]>> {
  const codes = changed.map(({ code }) => code);
  const twice = codes.find((code, at) => codes.indexOf(code) !== at);
  if (twice !== undefined) return err(problem('named-twice', `"${twice}" is named twice.`, 'code'));
  const rows = new Map((await scene.tx.ask(rowsNamed('animal', codes))).map((row) => [row.code, row]));
  for (const code of codes) {
    const here = rows.get(code)?.leftDay === null ? ok(null) : await findAnimal(scene.tx, code);
    if (!here.ok) return here;
  }
  const changes = changed.map(({ code, fields: { lastFed: _, lastMoult: _moult, ...fields } }) => ({
    row: rows.get(code)!,
    fields,
  }));
  return changedAnimalRows(scene, changes);
}
