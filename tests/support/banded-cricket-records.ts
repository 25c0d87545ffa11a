/**
 * Individual records of the banded cricket, read for tests: Kong, Vadboncoeur, Bertram and MacMillan 2025,
 * doi:10.5281/zenodo.14681072, CC-BY 4.0.
 */
import { readFileSync } from 'node:fs';

export interface Cricket {
  readonly tempC: number;
  readonly cricket: string;
  readonly hatched: number;
  readonly ended: number;
  readonly fate: string;
  /** Days from hatch to adult; null when it never matured. */
  readonly toAdult: number | null;
}

export interface Weighing {
  readonly tempC: number;
  readonly ageDays: number;
  readonly mg: number;
}

const MS_PER_DAY = 86_400_000;

function dayOf(text: string): number {
  const [day, month, year] = text.split('/').map(Number);
  return Date.UTC(year!, month! - 1, day!) / MS_PER_DAY;
}

const rowsOf = (file: string): string[][] =>
  readFileSync(new URL(`../reference/data/${file}`, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));

/** Every cricket that the authors did not exclude. */
const crickets: readonly Cricket[] = rowsOf('gryllodes-survival.csv')
  .filter((cells) => cells[9] === '0')
  .map((cells) => ({
    tempC: Number(cells[1]),
    cricket: cells[2]!,
    hatched: dayOf(cells[4]!),
    ended: dayOf(cells[5]!),
    fate: cells[6]!,
    toAdult: cells[8] === '' ? null : dayOf(cells[8]!) - dayOf(cells[4]!),
  }));

const byCricket = new Map(crickets.map((one) => [`${one.tempC} ${one.cricket}`, one]));

/** Their weighings; the container is weighed empty and with the cricket, in g. */
const weighings: readonly Weighing[] = rowsOf('gryllodes-mass.csv').flatMap((cells) => {
  const one = byCricket.get(`${cells[4]} ${cells[5]}`);
  if (!one) return [];
  const mg = 1000 * (Number(cells[9]) - Number(cells[8]));
  return [{ tempC: one.tempC, ageDays: dayOf(cells[2]!) - one.hatched, mg }];
});

export const cricketsAt = (tempC: number): readonly Cricket[] =>
  crickets.filter((one) => one.tempC === tempC);

/** Masses at one temperature and age, lightest first. */
export const massesAt = (tempC: number, ageDays: number): readonly number[] =>
  weighings
    .filter((one) => one.tempC === tempC && one.ageDays === ageDays)
    .map(({ mg }) => mg)
    .sort((a, b) => a - b);
