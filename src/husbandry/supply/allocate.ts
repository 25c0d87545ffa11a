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
  /** Next slice of each cohort to look at, in the pass under way. */
  readonly at: Int32Array;
  /** Items of each species picked. */
  readonly ofSpecies: Float64Array;
}

/** Room for the picks of one group. */
export function picksFor(larder: Larder): Picks {
  const most = larder.stock.totalSlices * (2 + 2) + 1;
  return {
    slice: new Int32Array(most),
    cohort: new Int32Array(most),
    heads: new Float64Array(most),
    items: new Float64Array(most),
    count: 0,
    total: 0,
    at: new Int32Array(larder.stock.cohorts.length),
    ofSpecies: new Float64Array(larder.stock.species.length),
  };
}

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

/** Picks prey for a group until its items are found or nothing more fits; takes nothing yet. */
export function pick(larder: Larder, menu: Menu, wanting: Wanting, picks: Picks): void {
  picks.count = 0;
  picks.total = 0;
  picks.ofSpecies.fill(0);
  for (const pass of PASSES) {
    if (picks.total >= wanting.items - NONE_LEFT) return;
    if (pass.preparation === 'cut' && (menu.portions[wanting.group] as number) <= 1) return;
    passOver(larder, menu, { wanting, pass, picks });
  }
}

interface Passing {
  readonly wanting: Wanting;
  readonly pass: Pass;
  readonly picks: Picks;
}

/** One pass: again and again the slice nearest to its window's end. */
function passOver(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing): void {
  const { cohorts } = larder.stock;
  for (let c = 0; c < cohorts.length; c++) {
    const cohort = cohorts[c] as Cohort;
    const here = (larder.arrivesOn[c] as number) <= wanting.day && eats(menu, wanting.group, cohort.species);
    picks.at[c] = here ? cohort.firstSlice + cohort.slices : -1;
  }
  while (picks.total < wanting.items - NONE_LEFT) {
    const c = nearestToOutgrowing(larder, menu, { wanting, pass, picks });
    if (c < 0) return;
    pickFrom(larder, menu, { wanting, pass, picks, c });
  }
}

const eats = (menu: Menu, group: number, species: number): boolean => {
  const cell = group * menu.species.length + species;
  return (menu.minMm[cell] as number) <= (menu.maxMm[cell] as number);
};

/** Cohort whose longest fitting slice is nearest to outgrowing the group; -1 when none fits. */
function nearestToOutgrowing(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing): number {
  const { cohorts } = larder.stock;
  let best = -1;
  let nearest = 0;
  for (let c = 0; c < cohorts.length; c++) {
    if ((picks.at[c] as number) < 0) continue;
    const cohort = cohorts[c] as Cohort;
    const cell = wanting.group * menu.species.length + cohort.species;
    const cap = (menu.shareCap[cell] as number) * wanting.items;
    const full =
      pass.capped && cap < wanting.items && (picks.ofSpecies[cohort.species] as number) >= cap - NONE_LEFT;
    const slice = full
      ? -1
      : longestFitting(larder, { cohort, from: picks.at[c] as number, cell, menu, pass });
    picks.at[c] = slice < 0 ? -1 : slice + 1;
    if (slice < 0) continue;
    const share = (larder.lengthMm[slice] as number) / (menu.maxMm[cell] as number);
    if (share > nearest) {
      nearest = share;
      best = c;
    }
  }
  return best;
}

interface Search {
  readonly cohort: Cohort;
  /** One past the slice to begin with. */
  readonly from: number;
  readonly cell: number;
  readonly menu: Menu;
  readonly pass: Pass;
}

function longestFitting(larder: Larder, { cohort, from, cell, menu, pass }: Search): number {
  const low = lowerEdge(menu, cell, pass.preparation);
  const high = upperEdge(menu, cell, pass.preparation);
  for (let q = from - 1; q >= cohort.firstSlice; q--) {
    const length = larder.lengthMm[q] as number;
    if (length < low || (length <= low && pass.preparation !== 'alive')) return -1;
    if (length <= high && (larder.heads[q] as number) > NONE_LEFT) return q;
  }
  return -1;
}

const lowerEdge = (menu: Menu, cell: number, preparation: Preparation): number =>
  (preparation === 'alive' ? menu.minMm : preparation === 'killed' ? menu.liveMaxMm : menu.maxMm)[
    cell
  ] as number;

const upperEdge = (menu: Menu, cell: number, preparation: Preparation): number =>
  (preparation === 'alive' ? menu.liveMaxMm : preparation === 'killed' ? menu.maxMm : menu.cutMaxMm)[
    cell
  ] as number;

/** Items one head of this length stands for: by mass, but never more than a meal, or than the portions it is cut into. */
function worthOf(
  larder: Larder,
  menu: Menu,
  { wanting, pass, slice, cell }: { wanting: Wanting; pass: Pass; slice: number; cell: number },
): number {
  const worth = itemsWorth(
    larder.lengthMm[slice] as number,
    menu.idealMm[cell] as number,
    larder.policy.smallerItemsMost.value,
  );
  const most =
    pass.preparation === 'cut' ? (menu.portions[wanting.group] as number) : wanting.items / wanting.meals;
  return Math.min(worth, Math.max(1, most));
}

function pickFrom(larder: Larder, menu: Menu, { wanting, pass, picks, c }: Passing & { c: number }): void {
  const cohort = larder.stock.cohorts[c] as Cohort;
  const slice = (picks.at[c] as number) - 1;
  const cell = wanting.group * menu.species.length + cohort.species;
  const worth = worthOf(larder, menu, { wanting, pass, slice, cell });
  const cap = pass.capped
    ? (menu.shareCap[cell] as number) * wanting.items - (picks.ofSpecies[cohort.species] as number)
    : wanting.items;
  const room = Math.min(wanting.items - picks.total, cap);
  const already = pickedFrom(picks, slice);
  const heads = Math.min((larder.heads[slice] as number) - already, room / worth);
  picks.at[c] = slice;
  if (heads <= 0) return;
  const n = picks.count++;
  picks.slice[n] = slice;
  picks.cohort[n] = c;
  picks.heads[n] = heads;
  picks.items[n] = heads * worth;
  picks.total += heads * worth;
  picks.ofSpecies[cohort.species] = (picks.ofSpecies[cohort.species] as number) + heads * worth;
}

/** Heads of a slice picked in an earlier pass. */
function pickedFrom(picks: Picks, slice: number): number {
  let heads = 0;
  for (let n = 0; n < picks.count; n++) if (picks.slice[n] === slice) heads += picks.heads[n] as number;
  return heads;
}

/** Takes the picked prey out of the larder, in the order picked, until `items` are reached. */
export function take(
  larder: Larder,
  picks: Picks,
  items: number,
  eatenAt: (lengthMm: number, heads: number) => void,
): void {
  const { eaten } = larder.totals;
  let left = items;
  for (let n = 0; n < picks.count && left > NONE_LEFT; n++) {
    const part = Math.min(1, left / (picks.items[n] as number));
    const heads = (picks.heads[n] as number) * part;
    const slice = picks.slice[n] as number;
    larder.heads[slice] = Math.max(0, (larder.heads[slice] as number) - heads);
    const bin = larder.stock.cohorts[picks.cohort[n] as number]?.bin as number;
    eaten[bin] = (eaten[bin] as number) + heads;
    eatenAt(larder.lengthMm[slice] as number, heads);
    left -= (picks.items[n] as number) * part;
  }
}

/** Heads alive that a group could eat whole, alive or killed first. */
export function edibleHeads(
  larder: Larder,
  menu: Menu,
  { group, day }: { group: number; day: number },
): number {
  let sum = 0;
  larder.stock.cohorts.forEach((cohort, c) => {
    if ((larder.arrivesOn[c] as number) > day) return;
    const cell = group * menu.species.length + cohort.species;
    const [low, high] = [menu.minMm[cell] as number, menu.maxMm[cell] as number];
    for (let q = cohort.firstSlice; q < cohort.firstSlice + cohort.slices; q++) {
      const length = larder.lengthMm[q] as number;
      if (low <= length && length <= high) sum += larder.heads[q] as number;
    }
  });
  return sum;
}
