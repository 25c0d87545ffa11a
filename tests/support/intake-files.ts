/** Files and readings for tests of intake, all on one invented day. */
import {
  type AnimalEntry,
  type AnimalOptions,
  type ExistingAnimal,
  type ExistingStock,
  type Reading,
  readAnimals,
  readStock,
  type StockEntry,
  type StockOptions,
} from '../../src/intake/index.ts';
import { INVENTED_KINDS } from './invented-kinds.ts';
import { INVENTED_PREY } from './invented-prey.ts';

/** 2026-03-23. */
const TODAY = 20_535;

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

export const animalsIn = (
  file: string | Uint8Array,
  options: Partial<AnimalOptions> = {},
): Reading<AnimalEntry> =>
  readAnimals(typeof file === 'string' ? utf8(file) : file, {
    today: TODAY,
    kinds: INVENTED_KINDS,
    ...options,
  });

export const stockIn = (
  file: string | Uint8Array,
  options: Partial<StockOptions> = {},
): Reading<StockEntry> =>
  readStock(typeof file === 'string' ? utf8(file) : file, {
    today: TODAY,
    species: INVENTED_PREY,
    ...options,
  });

/** The records as they stand once a reading is written. */
function written<E extends object>(reading: Reading<E>): (E & { code: string })[] {
  return reading.rows.flatMap(({ becomes, code }, index) =>
    becomes ? [{ ...becomes, code: code ?? `X${index + 1}` }] : [],
  );
}

export const animalsWritten = (reading: Reading<AnimalEntry>): ExistingAnimal[] => written(reading);
export const stockWritten = (reading: Reading<StockEntry>): ExistingStock[] => written(reading);

/** The notes of a reading's rows, in order, as sentences. */
export const sentences = (reading: Reading<unknown>): string[] =>
  reading.rows.flatMap(({ notes }) => notes.map(({ sentence }) => sentence));
