/** The bin that prey which comes in goes into: one of its species, or a new one made in the same act. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { plural } from '../husbandry/words.ts';
import type { BinRow } from '../store/index.ts';
import { newBinRow } from './bin-fields.ts';
import { text } from './fields.ts';
import { findBin } from './find.ts';
import type { Scene } from './perform.ts';

/** A bin that is there; left empty, a new one of this name in this room. */
export const into = { bin: text.default(''), room: text.default(''), name: text.default('') };
const intoShape = z.strictObject(into);

export interface Wanted extends z.output<typeof intoShape> {
  readonly species: string;
  /** Who sends it, of a new bin. */
  readonly origin: string;
  readonly demo: boolean;
  /** What its fields are called before their names: 'lines.0.'. */
  readonly at: string;
}

export interface BinFound {
  readonly bin: BinRow;
  readonly made: readonly BinRow[];
}

/** Bins of this act by what they were asked for: a room and a name given twice are one bin. */
export type Made = Map<string, BinRow>;

export async function binFor(scene: Scene, wanted: Wanted, made: Made): Promise<Result<BinFound>> {
  const { bin: code, species, at } = wanted;
  if (code === '') return freshBin(scene, wanted, made);
  const bin = await findBin(scene.tx, code, `${at}bin`);
  if (!bin.ok) return bin;
  const { name, role } = bin.value;
  const holds = plural(scene.facts.species.get(bin.value.species)?.commonName ?? 'other prey');
  if (bin.value.species !== species)
    return err(problem('other-species', `"${name}" holds ${holds}; choose another bin.`, `${at}bin`));
  if (role === 'frozen')
    return err(problem('is-frozen', `"${name}" holds frozen ${holds}; live ones do not go in.`, `${at}bin`));
  return ok({ bin: bin.value, made: [] });
}

async function freshBin(scene: Scene, wanted: Wanted, made: Made): Promise<Result<BinFound>> {
  const { species, room, name, origin, demo, at } = wanted;
  const key = JSON.stringify([species, room, name]);
  const before = made.get(key);
  if (name !== '' && before !== undefined) return ok({ bin: before, made: [] });
  if (room === '')
    return err(problem('no-bin', 'Choose the bin it goes into, or the room of a new one.', `${at}bin`));
  const row = await newBinRow(scene, { ...LIVING, species, room, name, origin, demo });
  if (!row.ok) return err({ ...row.problem, field: `${at}${row.problem.field ?? 'bin'}` });
  made.set(key, row.value);
  return ok({ bin: row.value, made: [row.value] });
}

const LIVING = { role: 'holding', capacity: null, keepAdults: false, space: null, notes: '' } as const;
