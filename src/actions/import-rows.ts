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
      summary: summaryOf(added.length, changed.length, given.lots.length),
      puts: { animal: [...added, ...changed], bin: bins },
      entries: [...history, ...entries],
      reply: { animals: added.map(({ code }) => code), bins: bins.map(({ code }) => code) },
    });
  },
});

/** 'Brought in 15 new animals, 2 changed and 3 bins', leaving out what is none. */
function summaryOf(added: number, changed: number, lots: number): string {
  const parts = [
    ...(added > 0 ? [added === 1 ? '1 new animal' : `${added} new animals`] : []),
    ...(changed > 0 ? [changed === 1 ? '1 changed animal' : `${changed} changed animals`] : []),
    ...(lots > 0 ? [lots === 1 ? '1 bin' : `${lots} bins`] : []),
  ];
  return `Brought in ${inOneBreath(parts)}`;
}

const inOneBreath = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? 'nothing') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

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
