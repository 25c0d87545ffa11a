/** Where prey taken out of a bin goes: a bin of its own kind, or a new one. */
import type { DayNumber } from '../husbandry/calendar.ts';
import type { BinRole, Lot } from '../husbandry/larder/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { plural } from '../husbandry/words.ts';
import { type BinRow, type EntryInput, rowsOf } from '../store/index.ts';
import { newBinRow } from './bin-fields.ts';
import { findBin } from './find.ts';
import type { Scene } from './perform.ts';

export interface Going {
  readonly from: BinRow;
  /** Code of a bin; '' for a new one. */
  readonly to: string;
  /** Of a new bin. */
  readonly role: BinRole;
  readonly name: string;
}

export interface Into {
  readonly bin: BinRow;
  /** The row, where it is new. */
  readonly made: readonly BinRow[];
}

/** The bin named, which must be able to hold this prey, or a new one in the same room. */
export async function placeFor(scene: Scene, { from, to, role, name }: Going): Promise<Result<Into>> {
  if (to === '') {
    const made = await newBinRow(scene, { ...ofSame(from), role, name });
    if (!made.ok) return made;
    const bin = { ...made.value, ...keptLike(from, role) };
    return ok({ bin, made: [bin] });
  }
  const bin = await findBin(scene.tx, to, 'to');
  if (!bin.ok) return bin;
  const fits = holdsSame(scene, from, bin.value);
  return fits.ok ? ok({ bin: bin.value, made: [] }) : fits;
}

const ofSame = ({ species, room, name, demo }: BinRow) => ({
  species,
  room,
  demo,
  origin: name,
  capacity: null,
  keepAdults: false,
  space: null,
  notes: '',
});

/** Quarantine goes with the prey; a second bin of the same use is kept as the first. */
const keptLike = ({ quarantineUntil, keepAdults, ownC, ...from }: BinRow, role: BinRole) =>
  role === from.role ? { quarantineUntil, keepAdults, ownC } : { quarantineUntil };

/** Another bin of the same species, both alive or both frozen; a cup takes nobody in. */
export function holdsSame({ facts }: Scene, from: BinRow, to: BinRow): Result<null> {
  const wrong = (code: string, sentence: string) => err(problem(code, sentence, 'to'));
  if (from.code === to.code) return wrong('same-bin', `"${to.code}" is the bin it comes from.`);
  const prey = plural(facts.species.get(to.species)?.commonName ?? 'other prey');
  if (from.species !== to.species) return wrong('other-species', `"${to.name}" holds ${prey}.`);
  if (to.role === 'cup') return wrong('is-a-cup', `"${to.name}" is a cup: start a new one instead.`);
  if (to.role === 'frozen' && from.role !== 'frozen')
    return wrong('is-frozen', `"${to.name}" holds frozen ${prey}; cull into it instead.`);
  if (from.role === 'frozen' && to.role !== 'frozen')
    return wrong('is-alive', `"${to.name}" holds live ${prey}; frozen ones do not go in.`);
  return ok(null);
}

/** The frozen stock of a bin's species, the first there is; '' where there is none. */
export async function frozenStock({ tx }: Scene, { species }: BinRow): Promise<string> {
  const [first] = await tx.ask(
    rowsOf('bin', { where: "closed = 0 and role = 'frozen' and species = ?", args: [species] }),
  );
  return first?.code ?? '';
}

/** The lines of the journal for lots that come into a bin. */
export const movedIn = (bin: string, day: DayNumber, lots: readonly Lot[]): readonly EntryInput[] =>
  lots.map((lot) => ({ day, kind: 'moved in', bin, ...lot }));
