/**
 * The allocation policy: a group takes, among what it may eat alive, first what is nearest to outgrowing it, then what
 * is dead already in the frozen stock, then what must be killed first, then what is cut into portions; species with a
 * share cap beyond it only when nothing else is left; last of all, and in the same order, what is left alone.
 */
import { itemsWorth } from '../prey/index.ts';
import type { Cohort } from './cohorts.ts';
import type { Larder } from './larder.ts';
import type { Menu } from './menu.ts';
import { PASSES, type Pass } from './passes.ts';
import type { Picks, Takes } from './picks.ts';

export interface Wanting {
  readonly group: number;
  readonly day: number;
  /** Items of ideal size wanted in all, and meals they make. */
  readonly items: number;
  readonly meals: number;
}

/** Fewer heads than this in a slice are none. */
const NONE_LEFT = Math.sqrt(Number.EPSILON);

/** Picks prey for a group out of the larder until its items are found or nothing more fits. */
export function pick(larder: Larder, menu: Menu, wanting: Wanting, picks: Picks): void {
  picks.count = 0;
  picks.total = 0;
  for (let s = 0; s < picks.ofSpecies.length; s++) picks.ofSpecies[s] = 0;
  passAll(larder, menu, { wanting, picks, fromResting: false });
  if (picks.hasResting && picks.total < wanting.items - NONE_LEFT)
    passAll(larder, menu, { wanting, picks, fromResting: true });
}

function passAll(larder: Larder, menu: Menu, picking: Omit<Passing, 'pass'>): void {
  const { wanting, picks } = picking;
  const { group } = wanting;
  for (const pass of PASSES) {
    const idle =
      pass.preparation === 'cut'
        ? (menu.portions[group] as number) <= 1
        : !pass.capped && !menu.hasCaps[group];
    if (idle) continue;
    passOver(larder, menu, { ...picking, pass });
    if (picks.total >= wanting.items - NONE_LEFT) return;
  }
}

interface Passing {
  /** From bins that are left alone today, or from all others. */
  readonly fromResting: boolean;
  readonly wanting: Wanting;
  readonly pass: Pass;
  readonly picks: Picks;
}

/** One pass: again and again the slice nearest to its window's end. */
function passOver(larder: Larder, menu: Menu, passing: Passing): void {
  const { wanting, picks } = passing;
  openPass(larder, menu, passing);
  while (picks.total < wanting.items - NONE_LEFT) {
    const c = nearestToOutgrowing(menu, passing);
    if (c < 0) return;
    pickFrom(larder, menu, passing, c);
    lookOn(larder, menu, { picks, group: wanting.group, c });
  }
}

/** Lists the cohorts that are here and have lengths within the pass's bounds, each at its longest that fits. */
function openPass(larder: Larder, menu: Menu, { wanting, pass, picks, fromResting }: Passing): void {
  const { group, day } = wanting;
  const { cohort, lowMm, highMm } = picks.takes[pass.preparation][group] as Takes;
  const { arrivesOn, longestMm, shortestMm, stock } = larder;
  picks.activeCount = 0;
  for (let k = 0; k < cohort.length; k++) {
    const c = cohort[k] as number;
    const low = lowMm[k] as number;
    const high = highMm[k] as number;
    if ((longestMm[c] as number) < low || (shortestMm[c] as number) > high) continue;
    if ((arrivesOn[c] as number) > day) continue;
    const { firstSlice, slices, fedFrom } = stock.cohorts[c] as Cohort;
    if (fedFrom > day !== fromResting || fedFrom === Number.POSITIVE_INFINITY) continue;
    picks.active[picks.activeCount++] = c;
    picks.at[c] = firstSlice + slices;
    picks.lowMm[c] = low;
    picks.highMm[c] = high;
    lookOn(larder, menu, { picks, group, c });
  }
}

/** Moves a cohort on to its next slice that fits and holds heads; its share is 0 when there is none. */
function lookOn(
  larder: Larder,
  menu: Menu,
  { picks, group, c }: { picks: Picks; group: number; c: number },
): void {
  const slice = longestFitting(larder, picks, c);
  const cell = group * menu.species.length + (picks.species[c] as number);
  picks.at[c] = slice;
  picks.share[c] = slice < 0 ? 0 : (larder.lengthMm[slice] as number) / (menu.maxMm[cell] as number);
}

/** Cohort whose longest fitting slice is nearest to outgrowing the group; -1 when nothing fits. */
function nearestToOutgrowing(menu: Menu, { wanting, pass, picks }: Passing): number {
  const { active, activeCount, share } = picks;
  const capped = pass.capped && menu.hasCaps[wanting.group] === 1;
  let best = -1;
  let nearest = 0;
  for (let k = 0; k < activeCount; k++) {
    const c = active[k] as number;
    if ((share[c] as number) <= nearest) continue;
    const species = picks.species[c] as number;
    const cell = wanting.group * menu.species.length + species;
    if (capped && roomUnderCap(menu, { wanting, picks, cell, species }) <= NONE_LEFT) continue;
    nearest = share[c] as number;
    best = c;
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
function longestFitting({ stock, lengthMm, heads }: Larder, picks: Picks, c: number): number {
  const { firstSlice } = stock.cohorts[c] as Cohort;
  const low = picks.lowMm[c] as number;
  const high = picks.highMm[c] as number;
  for (let q = (picks.at[c] as number) - 1; q >= firstSlice; q--) {
    const length = lengthMm[q] as number;
    if (length < low) return -1;
    if (length <= high && (heads[q] as number) > NONE_LEFT) return q;
  }
  return -1;
}

function pickFrom(larder: Larder, menu: Menu, { wanting, pass, picks }: Passing, c: number): void {
  const species = picks.species[c] as number;
  const slice = picks.at[c] as number;
  const cell = wanting.group * menu.species.length + species;
  const wanted = wanting.items - picks.total;
  const room = pass.capped ? Math.min(wanted, roomUnderCap(menu, { wanting, picks, cell, species })) : wanted;
  const most =
    pass.preparation === 'cut' ? (menu.portions[wanting.group] as number) : wanting.items / wanting.meals;
  const worth = Math.min(worthOf(larder, menu, slice, cell), Math.max(1, most));
  const heads = Math.min(larder.heads[slice] as number, room / worth);
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
