/** Finds what an act speaks of, or says that it is not here. */
import type { Kind } from '../husbandry/animals/index.ts';
import { civilDate } from '../husbandry/calendar.ts';
import type { PreySpecies } from '../husbandry/prey/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import {
  type AnimalRow,
  type BinRow,
  type Noun,
  type OfferRow,
  type RoomRow,
  type Rows,
  rowNamed,
  rowsOf,
  type SupplierRow,
  type Tx,
} from '../store/index.ts';

const NOUN_WORDS: Readonly<Record<Noun, string>> = {
  kind: 'kind',
  numbers: 'set of numbers',
  room: 'room',
  animal: 'animal',
  bin: 'bin',
  supplier: 'supplier',
  offer: 'offer',
  purchase: 'order',
  delivery: 'delivery',
  planned_change: 'planned change',
  setting: 'setting',
};

/** Any row by its code. */
export async function findRow<N extends Noun>(tx: Tx, noun: N, code: string): Promise<Result<Rows[N]>> {
  const row = await tx.ask(rowNamed(noun, code));
  const word = NOUN_WORDS[noun];
  return row === null
    ? err(problem(`unknown-${word.replace(' ', '-')}`, `There is no ${word} "${code}" here.`, word))
    : ok(row);
}

/** An animal that still lives here. */
export async function findAnimal(tx: Tx, code: string): Promise<Result<AnimalRow>> {
  const animal = await findRow(tx, 'animal', code);
  if (!animal.ok || animal.value.leftDay === null) return animal;
  const { leftReason, leftDay } = animal.value;
  const sentence = `${code} no longer lives here (${leftReason} on ${civilDate(leftDay)}).`;
  return err(problem('animal-left', sentence, 'animal'));
}

/** A bin in use. */
export async function findBin(tx: Tx, code: string, field = 'bin'): Promise<Result<BinRow>> {
  const bin = await findRow(tx, 'bin', code);
  if (!bin.ok) return err({ ...bin.problem, field });
  return bin.value.closed ? err(problem('bin-closed', `Bin "${code}" is no longer in use.`, field)) : bin;
}

/** A supplier that is still bought from. */
export async function findSupplier(tx: Tx, code: string): Promise<Result<SupplierRow>> {
  const supplier = await findRow(tx, 'supplier', code);
  if (!supplier.ok || !supplier.value.closed) return supplier;
  const sentence = `${supplier.value.name} is no longer bought from; undo that first.`;
  return err(problem('supplier-closed', sentence, 'supplier'));
}

/** An offer that is still to be had. */
export async function findOffer(tx: Tx, code: string): Promise<Result<OfferRow>> {
  const offer = await findRow(tx, 'offer', code);
  return offer.ok && offer.value.closed
    ? err(problem('offer-closed', `Offer "${code}" is not to be had any more; undo that first.`, 'offer'))
    : offer;
}

/** A room by its code or its name. */
export async function findRoom(tx: Tx, word: string): Promise<Result<RoomRow>> {
  const found = await tx.ask(
    rowsOf('room', {
      where: 'closed = 0 and (code = ? or lower(name) = lower(?))',
      args: [word, word],
      order: 'code <> name, code',
    }),
  );
  const room = found.find(({ code }) => code === word) ?? found[0];
  return room === undefined
    ? err(problem('unknown-room', `There is no room "${word}" here.`, 'room'))
    : ok(room);
}

export function findKind(facts: Facts, code: string): Result<Kind> {
  const kind = facts.kinds.get(code);
  return kind === undefined
    ? err(problem('unknown-kind', `"${code}" is not a kind of animal in the Book.`, 'kind'))
    : ok(kind);
}

export function findSpecies(facts: Facts, code: string): Result<PreySpecies> {
  const species = facts.species.get(code);
  return species === undefined
    ? err(problem('unknown-species', `"${code}" is not a prey species in the Book.`, 'species'))
    : ok(species);
}
