/** The lots of an import: each goes into one bin, as it came on a day or as it is counted today. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { BinRow, EntryInput } from '../store/index.ts';
import { newBin, newBinRow } from './bin-fields.ts';
import { civilDay, someText } from './fields.ts';
import { findBin } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import type { Scene } from './perform.ts';

export const importedLot = z.strictObject({
  /** A bin that is here, or else a new one. */
  bin: someText.optional(),
  newBin: newBin.optional(),
  /** What is in it; null when nobody counted. */
  lot: lot.nullable().default(null),
  /** The day it came; without it the lot is what was counted today. */
  came: civilDay.nullish(),
});
type ImportedLot = z.output<typeof importedLot>;

interface Lots {
  readonly bins: readonly BinRow[];
  readonly entries: readonly EntryInput[];
}

/** New bins and the lines of the journal of all lots. */
export async function importedLots(scene: Scene, given: readonly ImportedLot[]): Promise<Result<Lots>> {
  const bins: BinRow[] = [];
  const entries: EntryInput[] = [];
  for (const each of given) {
    const bin = await binOf(scene, each);
    if (!bin.ok) return bin;
    if (each.newBin !== undefined) bins.push(bin.value);
    const entry = entryOf(scene, bin.value.code, each);
    if (!entry.ok) return entry;
    entries.push(...entry.value);
  }
  return ok({ bins, entries });
}

async function binOf(scene: Scene, { bin, newBin: fresh }: ImportedLot): Promise<Result<BinRow>> {
  if (bin !== undefined && fresh === undefined) return findBin(scene.tx, bin);
  if (fresh !== undefined && bin === undefined) return newBinRow(scene, fresh);
  return err(problem('which-bin', 'Each lot goes into one bin: one that is here, or a new one.', 'bin'));
}

function entryOf(
  { now }: Scene,
  bin: string,
  { lot: said, came }: ImportedLot,
): Result<readonly EntryInput[]> {
  if (said === null) return ok([]);
  const content = inOrder(said);
  if (!content.ok) return content;
  const kind = came == null ? 'counted' : 'delivered';
  return ok([{ day: came ?? now.today, kind, bin, ...content.value }]);
}
