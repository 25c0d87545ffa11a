/**
 * The allocation policy: a group takes, among what it may eat alive, first what is nearest to outgrowing it, then what
 * must be killed first, then what is cut into portions; species with a share cap beyond it only when nothing else is left.
 */
import { itemsWorth } from '../prey/matching.ts';
import type { Larder } from './larder.ts';
import type { Menu } from './menu.ts';
import type { Cohort } from './stock.ts';

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
  /** Cohorts of the species each group takes. */
  readonly cohortsOf: readonly Int32Array[];
  /** Cohorts in the pass under way and, by cohort, one past the next slice to look at and the lengths sought. */
  readonly active: Int32Array;
  activeCount: number;
  readonly at: Int32Array;
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
    cohortsOf: menu.groups.map((_, group) => cohortsOf(larder, menu, group)),
    active: new Int32Array(cohorts.length),
    activeCount: 0,
    at: new Int32Array(cohorts.length),
    lowMm: new Float64Array(cohorts.length),
    highMm: new Float64Array(cohorts.length),
  };
}

const cohortsOf = (larder: Larder, menu: Menu, group: number): Int32Array =>
  Int32Array.from(larder.stock.cohorts.flatMap(({ species }, c) => (eats(menu, group, species) ? [c] : [])));

const eats = (menu: Menu, group: number, species: number): boolean => {
  const cell = group * menu.species.length + species;
  return (menu.minMm[cell] as number) <= (menu.maxMm[cell] as number);
};

export interface Wanting {
  readonly group: number;
  readonly day: number;
  /** Items of ideal size wanted in all, and meals they make. */
  readonly items: number;
  readonly meals: number;
}

type Preparation = 'alive' | 'killed' | 'cut';

interface Pass {
  readonly preparation: Preparation;
  readonly capped: boolean;
}

const PASSES: readonly Pass[] = [
  { preparation: 'alive', capped: true },
  { preparation: 'killed', capped: true },
  { preparation: 'alive', capped: false },
  { preparation: 'killed', capped: false },
  { preparation: 'cut', capped: false },
];

/** Fewer heads than this in a slice are none. */
const NONE_LEFT = Math.sqrt(Number.EPSILON);

/** Picks prey for a group out of the larder until its items are found or nothing more fits. */
export function pick(larder: Larder, menu: Menu, wanting: Wanting, picks: Picks): void {
  const { group } = wanting;
  picks.count = 0;
  picks.total = 0;
  picks.ofSpecies.fill(0);
  for (const pass of PASSES) {
    const idle =
      pass.preparation === 'cut'
        ? (menu.portions[group] as number) <= 1
        : !pass.capped && !menu.hasCaps[group];
    if (idle) continue;
    passOver(larder, menu, { wanting, pass, picks });
    if (picks.total >= wanting.items - NONE_LEFT) return;
  }
}

interface Passing {
  readonly wanting: Wanting;
  readonly pass: Pass;
  readonly picks: Picks;
}

/** One pass: again and again the slice nearest to its window's end. */
function passOver(larder: Larder, menu: Menu, passing: Passing): void {
  const { wanting, picks } = passing;
  openPass(larder, menu, passing);
  while (picks.total < wanting.items - NONE_LEFT) {
    const c = nearestToOutgrowing(larder, menu, passing);
    if (c < 0) return;
    pickFrom(larder, menu, passing, c);
  }
}

/** Lists the cohorts that are here and have lengths within the pass's bounds. */
function openPass(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing): void {
  const cohorts = picks.cohortsOf[wanting.group] as Int32Array;
  picks.activeCount = 0;
  for (let k = 0; k < cohorts.length; k++) {
    const c = cohorts[k] as number;
    const cohort = larder.stock.cohorts[c] as Cohort;
    const cell = wanting.group * menu.species.length + cohort.species;
    const low = lowerEdge(menu, cell, pass.preparation);
    const high = upperEdge(menu, cell, pass.preparation);
    const here = (larder.arrivesOn[c] as number) <= wanting.day;
    if (!here || (larder.longestMm[c] as number) < low || (larder.shortestMm[c] as number) > high) continue;
    picks.active[picks.activeCount++] = c;
    picks.at[c] = cohort.firstSlice + cohort.slices;
    picks.lowMm[c] = low;
    picks.highMm[c] = high;
  }
}

const lowerEdge = (menu: Menu, cell: number, preparation: Preparation): number =>
  (preparation === 'alive' ? menu.minMm : preparation === 'killed' ? menu.liveMaxMm : menu.maxMm)[
    cell
  ] as number;

const upperEdge = (menu: Menu, cell: number, preparation: Preparation): number =>
  (preparation === 'alive' ? menu.liveMaxMm : preparation === 'killed' ? menu.maxMm : menu.cutMaxMm)[
    cell
  ] as number;

/** Cohort whose longest fitting slice is nearest to outgrowing the group; -1 when nothing fits. */
function nearestToOutgrowing(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing): number {
  let best = -1;
  let nearest = 0;
  for (let k = 0; k < picks.activeCount; k++) {
    const c = picks.active[k] as number;
    if ((picks.at[c] as number) < 0) continue;
    const { species } = larder.stock.cohorts[c] as Cohort;
    const cell = wanting.group * menu.species.length + species;
    const room = pass.capped ? roomUnderCap(menu, { wanting, picks, cell, species }) : 1;
    const slice = room > NONE_LEFT ? longestFitting(larder, picks, c) : -1;
    picks.at[c] = slice < 0 ? -1 : slice + 1;
    const share = slice < 0 ? 0 : (larder.lengthMm[slice] as number) / (menu.maxMm[cell] as number);
    if (share > nearest) {
      nearest = share;
      best = c;
    }
  }
  return best;
}

interface Capped {
  readonly wanting: Wanting;
  readonly picks: Picks;
  readonly cell: number;
  readonly species: number;
}

/** Items of a species the group may still have tonight. */
function roomUnderCap(menu: Menu, { wanting, picks, cell, species }: Capped): number {
  const share = menu.shareCap[cell] as number;
  return share < 1 ? share * wanting.items - (picks.ofSpecies[species] as number) : wanting.items;
}

/** Longest slice of a cohort within the lengths sought that still holds heads; -1 when there is none. */
function longestFitting(larder: Larder, picks: Picks, c: number): number {
  const { firstSlice } = larder.stock.cohorts[c] as Cohort;
  for (let q = (picks.at[c] as number) - 1; q >= firstSlice; q--) {
    const length = larder.lengthMm[q] as number;
    if (length < (picks.lowMm[c] as number)) return -1;
    if (length <= (picks.highMm[c] as number) && (larder.heads[q] as number) > NONE_LEFT) return q;
  }
  return -1;
}

function pickFrom(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing, c: number): void {
  const { species } = larder.stock.cohorts[c] as Cohort;
  const slice = (picks.at[c] as number) - 1;
  const cell = wanting.group * menu.species.length + species;
  const wanted = wanting.items - picks.total;
  const room = pass.capped ? Math.min(wanted, roomUnderCap(menu, { wanting, picks, cell, species })) : wanted;
  const most =
    pass.preparation === 'cut' ? (menu.portions[wanting.group] as number) : wanting.items / wanting.meals;
  const worth = Math.min(worthOf(larder, menu, slice, cell), Math.max(1, most));
  const heads = Math.min(larder.heads[slice] as number, room / worth);
  picks.at[c] = slice;
  larder.heads[slice] = (larder.heads[slice] as number) - heads;
  const n = picks.count++;
  picks.slice[n] = slice;
  picks.cohort[n] = c;
  picks.heads[n] = heads;
  picks.items[n] = heads * worth;
  picks.total += heads * worth;
  picks.ofSpecies[species] = (picks.ofSpecies[species] as number) + heads * worth;
}

/** Items of ideal size one head of a slice stands for, by mass. */
const worthOf = (larder: Larder, menu: Menu, slice: number, cell: number): number =>
  itemsWorth(
    larder.lengthMm[slice] as number,
    menu.idealMm[cell] as number,
    larder.policy.smallerItemsMost.value,
  );

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
  menu: Menu,
  { picks, group, day }: { picks: Picks; group: number; day: number },
): number {
  const cohorts = picks.cohortsOf[group] as Int32Array;
  let sum = 0;
  for (let k = 0; k < cohorts.length; k++) {
    const c = cohorts[k] as number;
    const cohort = larder.stock.cohorts[c] as Cohort;
    const cell = group * menu.species.length + cohort.species;
    if ((larder.arrivesOn[c] as number) <= day) {
      sum += headsBetween(larder, {
        cohort,
        c,
        low: menu.minMm[cell] as number,
        high: menu.maxMm[cell] as number,
      });
    }
  }
  return sum;
}

interface Between {
  readonly cohort: Cohort;
  readonly c: number;
  readonly low: number;
  readonly high: number;
}

function headsBetween(larder: Larder, { cohort, c, low, high }: Between): number {
  if ((larder.longestMm[c] as number) < low || (larder.shortestMm[c] as number) > high) return 0;
  let sum = 0;
  for (let q = cohort.firstSlice; q < cohort.firstSlice + cohort.slices; q++) {
    const length = larder.lengthMm[q] as number;
    if (low <= length && length <= high) sum += larder.heads[q] as number;
  }
  return sum;
}
