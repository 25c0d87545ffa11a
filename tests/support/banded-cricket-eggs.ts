/**
 * Eggs and their hatching in pairs of the banded cricket, read for tests: Kong, Vadboncoeur, Bertram and MacMillan
 * 2025, doi:10.5281/zenodo.14681072, CC-BY 4.0.
 */
import { readFileSync } from 'node:fs';

export interface Pair {
  /** Temperature its parents grew up at. */
  readonly tempC: number;
  /** Eggs of two days each, by the female's days of adult life on the day they were counted. */
  readonly eggs: readonly { readonly adultDays: number; readonly count: number }[];
}

export interface Batch {
  /** What the authors wrote of its hatching; one batch without has a day. */
  readonly hatched: boolean;
  /** Days from laying to the first hatchling; null where none hatched. */
  readonly days: number | null;
}

const MS_PER_DAY = 86_400_000;

function dayOf(text: string): number {
  const [day, month, year] = text.split('/').map(Number);
  return Date.UTC(year!, month! - 1, day!) / MS_PER_DAY;
}

function rowsOf(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../reference/data/${file}`, import.meta.url), 'utf8');
  const [head, ...lines] = text.trim().split(/\r?\n/);
  const names = head!.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((cell, i) => [names[i]!, cell])));
}

const parents = rowsOf('gryllodes-f1-parents.csv').filter((row) => row.pair !== '');

function pairOf({ pair, ...counts }: Record<string, string>): Pair[] {
  const both = parents.filter((row) => row.pair === pair);
  const female = both.find((row) => row.sex === 'Female');
  if (!female || both.some((row) => row.excluded !== '0')) return [];
  const eggs = Object.entries(counts)
    .filter(([, count]) => count !== '')
    .map(([date, count]) => ({
      adultDays: dayOf(date.replace('date_', '')) - dayOf(female.date_adult!),
      count: Number(count),
    }));
  return [{ tempC: Number(female.temperature), eggs }];
}

/** Every pair of which neither was left out by the authors. */
export const pairs: readonly Pair[] = rowsOf('gryllodes-f1-eggs.csv').flatMap(pairOf);

export const batches: readonly Batch[] = rowsOf('gryllodes-f1-hatch.csv').map((row) => ({
  hatched: row.hatching_success === '1',
  days: row.date_hatched === '' ? null : dayOf(row.date_hatched!) - dayOf(row.date_laid!),
}));
