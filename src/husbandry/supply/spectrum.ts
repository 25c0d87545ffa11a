/** The size spectrum: one ruler of prey length, what is alive above it, what is eaten and what is missing below. */

import type { Policy } from '../policy.ts';
import { suitability } from '../prey/index.ts';
import type { Spectrum } from './answer.ts';
import type { Menu } from './menu.ts';
import type { Stock } from './stock.ts';
import type { Tally } from './tally.ts';

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
    missing: missingByBand(tally, menu),
  };
}

function aliveByBand(stock: Stock, species: number, edges: Float64Array): number[] {
  const heads = new Array<number>(edges.length - 1).fill(0);
  for (const cohort of stock.cohorts) {
    if (cohort.species !== species || cohort.kind !== 'here') continue;
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
function missingByBand(tally: Tally, menu: Menu): number[] {
  const missing = new Array<number>(tally.edgesMm.length - 1).fill(0);
  menu.groups.forEach((group, g) => {
    const unmet =
      tally.unmet.subarray(g * tally.days, (g + 1) * tally.days).reduce((a, b) => a + b, 0) /
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
