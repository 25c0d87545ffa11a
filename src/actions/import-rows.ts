/** Brings in many animals and lots as one act: all of them or none. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type AnimalRow, type BinRow, type EntryInput, rowsNamed } from '../store/index.ts';
import { animalChanges, changedAnimalRows, newAnimal, newAnimalRows } from './animal-fields.ts';
import { newBin, newBinRow } from './bin-fields.ts';
import { formId, someText } from './fields.ts';
import { findAnimal, findBin } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action, type Scene } from './perform.ts';

const schema = z.strictObject({
  animals: z
    .strictObject({
      new: z.array(newAnimal).default([]),
      changed: z.array(z.strictObject({ code: someText, fields: animalChanges })).default([]),
    })
    .default({ new: [], changed: [] }),
  /** Each lot goes into a bin that is here, or a new one of its own. */
  lots: z.array(lot.extend({ bin: someText.optional(), newBin: newBin.optional() })).default([]),
  formId,
});
type Given = z.output<typeof schema>;

export const importRows = action({
  verb: 'import-rows',
  schema,
  body: async (scene, given) => {
    const added = await newAnimalRows(scene, given.animals.new);
    if (!added.ok) return added;
    const changed = await changedRows(scene, given.animals.changed);
    if (!changed.ok) return changed;
    const lots = await lotsOf(scene, given.lots);
    if (!lots.ok) return lots;
    const { bins, entries } = lots.value;
    return ok({
      summary: `Imported ${added.value.length} new animals, ${changed.value.length} changed, ${entries.length} lots`,
      puts: { animal: [...added.value, ...changed.value], bin: bins },
      entries,
      reply: { animals: added.value.map(({ code }) => code), bins: bins.map(({ code }) => code) },
    });
  },
});

async function changedRows(
  scene: Scene,
  changed: Given['animals']['changed'],
): Promise<Result<readonly AnimalRow[]>> {
  const codes = changed.map(({ code }) => code);
  const twice = codes.find((code, at) => codes.indexOf(code) !== at);
  if (twice !== undefined) return err(problem('named-twice', `"${twice}" is named twice.`, 'code'));
  const rows = new Map((await scene.tx.ask(rowsNamed('animal', codes))).map((row) => [row.code, row]));
  const missing = codes.find((code) => rows.get(code)?.leftDay !== null);
  if (missing !== undefined) return findAnimal(scene.tx, missing) as Promise<Result<never>>;
  return changedAnimalRows(
    scene,
    changed.map(({ code, fields }) => ({ row: rows.get(code)!, fields })),
  );
}

interface Lots {
  readonly bins: readonly BinRow[];
  readonly entries: readonly EntryInput[];
}

async function lotsOf(scene: Scene, given: Given['lots']): Promise<Result<Lots>> {
  const bins: BinRow[] = [];
  const entries: EntryInput[] = [];
  for (const each of given) {
    const content = inOrder(each);
    if (!content.ok) return content;
    const bin = await binOf(scene, each);
    if (!bin.ok) return bin;
    if (each.newBin !== undefined) bins.push(bin.value);
    const kind = each.newBin === undefined ? 'delivered' : 'counted';
    entries.push({ day: scene.now.today, kind, bin: bin.value.code, ...content.value });
  }
  return ok({ bins, entries });
}

async function binOf(scene: Scene, { bin, newBin: fresh }: Given['lots'][number]): Promise<Result<BinRow>> {
  if (bin !== undefined && fresh === undefined) return findBin(scene.tx, bin);
  if (fresh !== undefined && bin === undefined) return newBinRow(scene, fresh);
  return err(problem('which-bin', 'Each lot goes into one bin: one that is here, or a new one.', 'bin'));
}
