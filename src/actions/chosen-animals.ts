/** The animals an act of many speaks of: all known, all here, and none changed since the page was read. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type AnimalRow, rowsNamed } from '../store/index.ts';
import { someText } from './fields.ts';
import { findAnimal } from './find.ts';
import type { Scene } from './perform.ts';
import { unlessAnyChanged } from './unless-changed.ts';

const MOST_ANIMALS = 50_000;

/** Codes of one or more animals. */
export const animalCodes = z
  .array(someText)
  .min(1, { error: 'Nobody is chosen.' })
  .max(MOST_ANIMALS, { error: `Choose at most ${MOST_ANIMALS.toLocaleString('en-GB')}.` });

interface Chosen {
  readonly animals: readonly string[];
  /** Revision of the page they were chosen on. */
  readonly asOf?: number | undefined;
}

/** Their rows, in the order of their codes. */
export async function chosenAnimals(
  { tx }: Scene,
  { animals, asOf }: Chosen,
): Promise<Result<readonly AnimalRow[]>> {
  const codes = [...new Set(animals)];
  const rows = await tx.ask(rowsNamed('animal', codes));
  const here = new Set(rows.filter(({ leftDay }) => leftDay === null).map(({ code }) => code));
  const missing = codes.find((code) => !here.has(code));
  if (missing !== undefined) return refused(missing, await findAnimal(tx, missing));
  const free = await unlessAnyChanged(tx, { noun: 'animal', codes, asOf });
  return free.ok ? ok(rows) : free;
}

const refused = (code: string, found: Result<AnimalRow>): Result<never> =>
  found.ok ? err(problem('animal-left', `${code} no longer lives here.`, 'animal')) : found;

/** '14 animals', or the one by its code. */
export const manyWords = (rows: readonly AnimalRow[]): string =>
  rows.length === 1 ? rows[0]!.code : `${rows.length.toLocaleString('en-GB')} animals`;
