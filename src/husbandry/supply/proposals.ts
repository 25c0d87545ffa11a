/** What each animal due tonight is offered out of which bin, and what else it could get. */
import { eaterOf } from '../animals/index.ts';
import type { PreyOffer } from '../appetite/index.ts';
import { rests } from '../larder/index.ts';
import { itemsWorth, type LengthWindow, takesDead, windowFor } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { NextMeal } from './next-meal.ts';
import { type Shelf, shelvesOf } from './shelf-stock.ts';

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;

/** The bin an animal is to be fed from wherever its prey fits; by animal. */
type Preferred = ReadonlyMap<string, string>;

export interface Wishes {
  /** Bins the keeper wants some animals to be fed from; where it does not fit the usual stands. */
  readonly prefer?: Preferred;
  /** What there is to choose from; by default the larder as it stands. */
  readonly shelves?: readonly Shelf[];
}

export interface Proposal {
  /** Null when nothing fits. */
  readonly offer: PreyOffer | null;
  /** One of each other bin that holds something it takes, from what is left; a part of the meal when it is short. */
  readonly choices: readonly PreyOffer[];
}

/** Proposals by animal: fragile ones first, then those whose range ends first; each takes from what is then left. */
export function proposalsFor(
  snapshot: Snapshot,
  due: readonly NextMeal[],
  { prefer = new Map(), shelves = shelvesOf(snapshot) }: Wishes,
): ReadonlyMap<string, Proposal> {
  const tables = [...due]
    .sort(
      (a, b) =>
        RANK[a.rule.urgency] - RANK[b.rule.urgency] ||
        a.to - b.to ||
        (a.animal.code < b.animal.code ? -1 : 1),
    )
    .map((each) => tableOf(snapshot, each, shelves));
  const offers = tables.map((table) => ({
    table,
    offer: offerFor(table, prefer.get(table.due.animal.code)),
  }));
  return new Map(
    offers.map(({ table, offer }) => [table.due.animal.code, { offer, choices: choicesOf(table, offer) }]),
  );
}

interface Choice {
  readonly shelf: Shelf;
  readonly window: LengthWindow;
}

/** One animal and the shelves with prey of species it takes. */
interface Table {
  readonly snapshot: Snapshot;
  readonly due: NextMeal;
  readonly eatable: readonly Choice[];
}

function tableOf(snapshot: Snapshot, due: NextMeal, shelves: readonly Shelf[]): Table {
  const eater = eaterOf(due.kind, due.animal);
  const eatable = shelves.flatMap((shelf) => {
    const window = windowFor(due.rule, eater, shelf.species);
    if (shelf.bin.role === 'frozen' && !takesDead(due.rule)) return [];
    return window ? [{ shelf, window }] : [];
  });
  return { snapshot, due, eatable };
}

const PREPARATIONS = ['alive', 'thawed', 'killed', 'cut'] as const;
type Preparation = (typeof PREPARATIONS)[number];

/**
 * The first that there is of: the bin preferred, live prey nearest to outgrowing the animal, frozen, to kill, to cut,
 * treats; of a bin that is left alone only if it is preferred, or nothing else fits.
 */
function offerFor(table: Table, preferred: string | undefined): PreyOffer | null {
  const { snapshot, due, eatable } = table;
  const chosen = eatable.filter(({ shelf }) => shelf.bin.code === preferred);
  const open = eatable.filter(({ shelf }) => !rests(shelf.bin, snapshot.today));
  const staple = open.filter(({ shelf }) => (due.rule.shareCaps.value[shelf.species.form] ?? 1) >= 1);
  for (const choices of [chosen, staple, open, eatable]) {
    for (const preparation of PREPARATIONS) {
      const whole = helpings(table, choices, preparation).find(({ heads, there }) => heads <= there);
      if (whole) return taken(whole);
    }
  }
  return null;
}

/** The other bins, each as it can be given with the least preparation. */
function choicesOf(table: Table, offer: PreyOffer | null): readonly PreyOffer[] {
  return table.eatable.flatMap((choice) => {
    if (choice.shelf.bin.code === offer?.bin) return [];
    const ways = PREPARATIONS.flatMap((preparation) => helpings(table, [choice], preparation));
    const best = ways.find(({ heads, there }) => heads <= there) ?? ways.find(({ there }) => there >= 1);
    return best === undefined ? [] : offerOf(best, Math.min(best.heads, best.there));
  });
}

type Slice = Shelf['slices'][number];

/** Prey of one shelf that fits one animal when prepared so. */
interface Helping {
  readonly shelf: Shelf;
  readonly fitting: readonly Slice[];
  /** Longest fitting prey over the longest the animal takes. */
  readonly nearest: number;
  /** Whole prey items of the meal, and as many as there are. */
  readonly heads: number;
  readonly there: number;
  readonly preparation: Preparation;
  readonly portions: number;
}

/** Nearest to outgrowing the animal first. */
function helpings(table: Table, choices: readonly Choice[], preparation: Preparation): Helping[] {
  const portions = Math.max(1, Math.floor(table.due.rule.portions.value));
  const pieces = preparation === 'cut' ? portions : 1;
  return choices
    .filter(({ shelf }) => (shelf.bin.role === 'frozen') === (preparation === 'thawed'))
    .flatMap(({ shelf, window }): Helping[] => {
      const [low, high] = boundsOf(window, preparation, portions);
      const fitting = shelf.slices.filter(
        ({ lengthMm, heads }) => low <= lengthMm && lengthMm <= high && heads > 0,
      );
      if (fitting.length === 0) return [];
      const heads = headsOf(table, { window, fitting, pieces });
      const there = Math.round(fitting.reduce((sum, slice) => sum + slice.heads, 0));
      const nearest = Math.max(...fitting.map(({ lengthMm }) => lengthMm / window.maxMm));
      return [{ shelf, fitting, nearest, heads, there, preparation, portions: pieces }];
    })
    .sort((a, b) => b.nearest - a.nearest || (a.shelf.bin.code < b.shelf.bin.code ? -1 : 1));
}

function boundsOf(window: LengthWindow, preparation: Preparation, portions: number): [number, number] {
  if (preparation === 'alive') return [window.minMm, window.liveMaxMm];
  if (preparation === 'thawed') return [window.minMm, window.maxMm];
  if (preparation === 'killed') return [window.liveMaxMm, window.maxMm];
  return portions > 1 ? [window.maxMm, window.maxMm * Math.cbrt(portions)] : [1, 0];
}

interface Meal {
  readonly window: LengthWindow;
  readonly fitting: readonly Slice[];
  readonly pieces: number;
}

/** Whole prey items for the meal: the middle of the rule's range at the ideal size, by mass at the size there is. */
function headsOf({ snapshot, due }: Table, { window, fitting, pieces }: Meal): number {
  const [least, most] = due.rule.mealItems.value;
  const items = Math.max(1, Math.round((least + most) / 2)) * due.animal.count;
  const lengths = fitting.map(({ lengthMm }) => lengthMm);
  const middle = (Math.min(...lengths) + Math.max(...lengths)) / 2;
  if (pieces > 1) return Math.max(1, Math.ceil(items / pieces));
  const worth = itemsWorth(middle, window.idealMm, snapshot.facts.policy.smallerItemsMost.value);
  return Math.max(due.animal.count, Math.round(items / worth));
}

/** Takes the meal off the shelf, the longest first, so that the next animal is offered what is then left. */
function taken(helping: Helping): PreyOffer {
  const offer = offerOf(helping, helping.heads);
  let left = helping.heads;
  for (const slice of [...helping.fitting].sort((a, b) => b.lengthMm - a.lengthMm)) {
    const part = Math.min(slice.heads, left);
    slice.heads -= part;
    left -= part;
  }
  return offer;
}

function offerOf({ shelf, fitting, preparation, portions }: Helping, heads: number): PreyOffer {
  const lengths = fitting.map(({ lengthMm }) => lengthMm);
  return {
    bin: shelf.bin.code,
    species: shelf.species.code,
    heads,
    fromMm: Math.min(...lengths),
    toMm: Math.max(...lengths),
    killFirst: preparation === 'killed' || preparation === 'cut',
    portions,
    ...(preparation === 'thawed' ? { thawed: true } : {}),
  };
}
