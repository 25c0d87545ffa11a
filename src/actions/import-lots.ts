/** The lots of an import: each goes into one bin, as it came on a day or as it is counted today. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { BinRow, EntryInput } from '../store/index.ts';
import { newBin, newBinRow } from './bin-fields.ts';
import { civilDay, headsOrNone, longText, someText } from './fields.ts';
import { findBin, findRoom } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import type { Scene } from './perform.ts';
import { said } from './said.ts';

export const importedLot = z.strictObject({
  /** A bin that is here, or else a new one. */
  bin: someText.optional(),
  newBin: newBin.optional(),
  /** What changes of a bin that is here. */
  fields: z
    .strictObject({ name: someText.optional(), room: someText.optional(), notes: longText.optional() })
    .default({}),
  /** What is in it; null when nobody counted. */
  lot: lot.extend({ heads: headsOrNone }).nullable().default(null),
  /** The day it came; without it the lot is what was counted today. A cup was started on it. */
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
    if (each.newBin !== undefined || Object.keys(each.fields).length > 0) bins.push(bin.value);
    const entry =
      bin.value.role === 'cup' ? cupStarted(scene, bin.value, each) : entryOf(scene, bin.value.code, each);
    if (!entry.ok) return entry;
    entries.push(...entry.value);
  }
  return ok({ bins, entries });
}

async function binOf(scene: Scene, { bin, newBin: fresh, fields }: ImportedLot): Promise<Result<BinRow>> {
  if (bin !== undefined && fresh === undefined) return changedBin(scene, bin, fields);
  if (fresh !== undefined && bin === undefined) return newBinRow(scene, fresh);
  return err(problem('which-bin', 'Each lot goes into one bin: one that is here, or a new one.', 'bin'));
}

async function changedBin(
  { tx }: Scene,
  code: string,
  { room: word, ...others }: ImportedLot['fields'],
): Promise<Result<BinRow>> {
  const bin = await findBin(tx, code);
  if (!bin.ok) return bin;
  const room = await findRoom(tx, word ?? bin.value.room);
  return room.ok ? ok({ ...bin.value, ...said(others), room: room.value.code }) : room;
}

/** A new cup was started on the day it came; without a day it is taken to produce now. */
function cupStarted(
  { now }: Scene,
  { code }: BinRow,
  { newBin: fresh, came }: ImportedLot,
): Result<EntryInput[]> {
  if (fresh === undefined) return ok([]);
  const look = came == null ? 'producing' : 'started';
  return ok([{ day: came ?? now.today, kind: 'cup looked', bin: code, details: { look } }]);
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
