/** The size spectrum: one ruler of prey length, what is alive above it, what is eaten and what is missing below. */

import type { Policy } from '../policy.ts';
import { suitability } from '../prey/index.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Spectrum } from './answer.ts';
import type { Menu } from './menu.ts';
import type { Stock } from './stock.ts';
import type { Tally } from './tally.ts';
import type { WeekTally } from './week-tally.ts';

/** Edges of the ruler's bands, equal in the logarithm of length. */
export function rulerEdges(policy: Policy): Float64Array {
  const bands = policy.rulerBands.value;
  const from = policy.rulerFromMm.value;
  const ratio = policy.rulerToMm.value / from;
  return Float64Array.from({ length: bands + 1 }, (_, i) => from * ratio ** (i / bands));
}

/** Means over replicates; what is alive is of today, before tonight's feeding. */
export function spectrumOf(tally: Tally, menu: Menu, stock: Stock): Spectrum {
  const edges = tally.edgesMm;
  const alive = stock.species.map((species, s) => ({
    species: species.code,
    heads: aliveByBand(stock, s, edges),
  }));
  return {
    edgesMm: Array.from(edges),
    alive: alive.filter(({ heads }) => heads.some((n) => n > 0)),
    eaten: Array.from(tally.eatenByBand, (heads) => heads / tally.replicates),
    missing: missingByBand(tally, menu, { from: 0, to: tally.days }),
  };
}

/**
 * The same of one week: alive on its first day before anybody is fed, eaten and missing within it. Every species that is
 * alive in any week has its layer in each.
 */
export function spectrumOfWeek(tally: Tally, weekly: WeekTally, { menu, week }: WeekOf): Spectrum {
  const { bands, species } = weekly;
  const mean = (sums: Float64Array, row: number) =>
    Array.from(sums.subarray(row * bands, (row + 1) * bands), (heads) => heads / tally.replicates);
  const alive = menu.species.map(({ code }, s) => ({
    species: code,
    heads: mean(weekly.alive, week * species + s),
    ever: isEverAlive(weekly, s),
  }));
  return {
    edgesMm: Array.from(tally.edgesMm),
    alive: alive.flatMap(({ ever, ...layer }) => (ever ? layer : [])),
    eaten: mean(weekly.eaten, week),
    missing: missingByBand(tally, menu, daysOfWeek(tally, week)),
  };
}

const isEverAlive = ({ weeks, species, bands, alive }: WeekTally, s: number): boolean =>
  Array.from({ length: weeks }, (_, week) => (week * species + s) * bands).some((row) =>
    alive.subarray(row, row + bands).some((heads) => heads > 0),
  );

interface WeekOf {
  readonly menu: Menu;
  readonly week: number;
}

/** First day of a week of the run, and the day after its last. */
export const daysOfWeek = ({ days }: Tally, week: number): DaySpan => ({
  from: week * DAYS_PER_WEEK,
  to: Math.min(days, (week + 1) * DAYS_PER_WEEK),
});

export interface DaySpan {
  readonly from: number;
  readonly to: number;
}

function aliveByBand(stock: Stock, species: number, edges: Float64Array): number[] {
  const heads = new Array<number>(edges.length - 1).fill(0);
  for (const cohort of stock.cohorts) {
    if (cohort.species !== species || cohort.kind !== 'here' || cohort.frozen) continue;
    const path = cohort.nodes[Math.floor(cohort.nodes.length / 2)];
    for (let q = 0; path && q < cohort.slices; q++) {
      const length = path.lengthMm[q] as number;
      const band = edges.findIndex((edge, i) => edge <= length && length < (edges[i + 1] ?? 0));
      if (band >= 0) heads[band] = (heads[band] as number) + path.heads / cohort.slices;
    }
  }
  return heads;
}

/** Items not found, spread over each group's window by how well a length suits. */
function missingByBand(tally: Tally, menu: Menu, { from, to }: DaySpan): number[] {
  const missing = new Array<number>(tally.edgesMm.length - 1).fill(0);
  menu.groups.forEach((group, g) => {
    const unmet =
      tally.unmet.subarray(g * tally.days + from, g * tally.days + to).reduce((a, b) => a + b, 0) /
      tally.replicates;
    const window = widest([...group.windows.values()]);
    if (unmet <= 0 || !window) return;
    const weights = missing.map((_, i) =>
      suitability(window, Math.sqrt((tally.edgesMm[i] as number) * (tally.edgesMm[i + 1] as number))),
    );
    const total = weights.reduce((a, b) => a + b, 0);
    weights.forEach((weight, i) => {
      if (total > 0) missing[i] = (missing[i] as number) + (unmet * weight) / total;
    });
  });
  return missing;
}

const widest = <W extends { readonly minMm: number; readonly maxMm: number }>(
  windows: readonly W[],
): W | undefined =>
  windows.reduce<W | undefined>(
    (best, w) => (!best || w.maxMm / w.minMm > best.maxMm / best.minMm ? w : best),
    undefined,
  );
