/** What one group takes out of the larder on one evening, in arrays that serve all groups and evenings. */

import type { Cohort } from './cohorts.ts';
import type { Larder } from './larder.ts';
import type { Menu } from './menu.ts';
import { PASSES, type Preparation } from './passes.ts';

/** Prey picked for one group on one day: heads by slice, and the items of ideal size they stand for. */
export interface Picks {
  readonly slice: Int32Array;
  readonly cohort: Int32Array;
  readonly heads: Float64Array;
  readonly items: Float64Array;
  count: number;
  total: number;
  /** Items of each species picked. */
  readonly ofSpecies: Float64Array;
  /** What each group takes by each preparation. */
  readonly takes: Readonly<Record<Preparation, readonly Takes[]>>;
  /** Whether any bin is left alone for a while, which feeds who finds nothing else. */
  readonly hasResting: boolean;
  /** Cohorts in the pass under way. */
  readonly active: Int32Array;
  activeCount: number;
  /** By cohort: its species, its next slice, that slice's share of the way to outgrowing (0: none), the lengths sought. */
  readonly species: Int32Array;
  readonly at: Int32Array;
  readonly share: Float64Array;
  readonly lowMm: Float64Array;
  readonly highMm: Float64Array;
}

/** The cohorts a group takes by one preparation, and the lengths it takes of each. */
export interface Takes {
  readonly cohort: Int32Array;
  readonly lowMm: Float64Array;
  readonly highMm: Float64Array;
}

/** Room for the picks of one group. */
export function picksFor(larder: Larder, menu: Menu): Picks {
  const { cohorts, species, totalSlices } = larder.stock;
  const most = totalSlices * PASSES.length + 1;
  return {
    slice: new Int32Array(most),
    cohort: new Int32Array(most),
    heads: new Float64Array(most),
    items: new Float64Array(most),
    count: 0,
    total: 0,
    ofSpecies: new Float64Array(species.length),
    takes: {
      alive: takesOf(larder, menu, { low: menu.minMm, high: menu.liveMaxMm, of: 'live' }),
      thawed: takesOf(larder, menu, { low: menu.minMm, high: menu.maxMm, of: 'frozen' }),
      killed: takesOf(larder, menu, { low: menu.liveMaxMm, high: menu.maxMm, of: 'live' }),
      cut: takesOf(larder, menu, { low: menu.maxMm, high: menu.cutMaxMm, of: 'live' }),
      whole: takesOf(larder, menu, { low: menu.minMm, high: menu.maxMm, of: 'any' }),
    },
    hasResting: cohorts.some(({ fedFrom }) => fedFrom > 0 && fedFrom < Number.POSITIVE_INFINITY),
    active: new Int32Array(cohorts.length),
    activeCount: 0,
    species: Int32Array.from(cohorts, (cohort) => cohort.species),
    at: new Int32Array(cohorts.length),
    share: new Float64Array(cohorts.length),
    lowMm: new Float64Array(cohorts.length),
    highMm: new Float64Array(cohorts.length),
  };
}

interface Edges {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly of: 'live' | 'frozen' | 'any';
}

/** By group, the cohorts of the species whose lengths between two edges it takes; frozen ones only if it takes dead prey. */
function takesOf({ stock }: Larder, menu: Menu, { low, high, of }: Edges): Takes[] {
  return menu.groups.map((_, group) => {
    const cellOf = (c: number) => group * menu.species.length + (stock.cohorts[c] as Cohort).species;
    const cohort = Int32Array.from(stock.cohorts.keys()).filter((c) => {
      if (stock.cohorts[c]?.frozen ? of === 'live' || menu.takesDead[group] !== 1 : of === 'frozen')
        return false;
      const cell = cellOf(c);
      const [least, most] = [low[cell] as number, high[cell] as number];
      return low === menu.minMm ? least <= most : least < most;
    });
    const edge = (edges: Float64Array) => Float64Array.from(cohort, (c) => edges[cellOf(c)] as number);
    return { cohort, lowMm: edge(low), highMm: edge(high) };
  });
}

/** Settles the picks: as many as make up `items` are eaten, in the order picked; the rest goes back. */
export function settle(
  larder: Larder,
  picks: Picks,
  items: number,
  eatenAt: (lengthMm: number, heads: number) => void,
): void {
  const { eaten } = larder.totals;
  let left = items;
  for (let n = 0; n < picks.count; n++) {
    const part = Math.max(0, Math.min(1, left / (picks.items[n] as number)));
    const slice = picks.slice[n] as number;
    const heads = (picks.heads[n] as number) * part;
    larder.heads[slice] = (larder.heads[slice] as number) + (picks.heads[n] as number) - heads;
    const { bin } = larder.stock.cohorts[picks.cohort[n] as number] as Cohort;
    eaten[bin] = (eaten[bin] as number) + heads;
    if (heads > 0) eatenAt(larder.lengthMm[slice] as number, heads);
    left -= (picks.items[n] as number) * part;
  }
}

/** Heads alive that a group could eat whole, alive or killed first. */
export function edibleHeads(
  larder: Larder,
  picks: Picks,
  { group, day }: { group: number; day: number },
): number {
  const { cohort, lowMm, highMm } = picks.takes.whole[group] as Takes;
  const { arrivesOn, longestMm, shortestMm } = larder;
  let sum = 0;
  for (let k = 0; k < cohort.length; k++) {
    const c = cohort[k] as number;
    const low = lowMm[k] as number;
    const high = highMm[k] as number;
    if ((longestMm[c] as number) < low || (shortestMm[c] as number) > high) continue;
    if ((arrivesOn[c] as number) <= day) sum += headsBetween(larder, c, { low, high });
  }
  return sum;
}

function headsBetween(
  { stock, lengthMm, heads }: Larder,
  c: number,
  { low, high }: { low: number; high: number },
): number {
  const { firstSlice, slices } = stock.cohorts[c] as Cohort;
  let sum = 0;
  for (let q = firstSlice; q < firstSlice + slices; q++) {
    const length = lengthMm[q] as number;
    if (low <= length && length <= high) sum += heads[q] as number;
  }
  return sum;
}
