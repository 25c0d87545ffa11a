/** Tonight: who is due, what to offer each out of which bin, and who must be left alone. */
import { eaterOf } from '../animals/index.ts';
import type { Evening, PreyOffer, Serving } from '../appetite/index.ts';
import { type DayNumber, isFeedingDay } from '../calendar.ts';
import { itemsWorth, type LengthWindow, windowFor } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { type NextMeal, nextMealOf, reasonToWait } from './next-meal.ts';
import { type Shelf, shelvesOf } from './shelf-stock.ts';

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;

/** The round of a snapshot's day, before anybody is fed. Servings come in the order of the shelves given. */
export function eveningOf(snapshot: Snapshot): Evening {
  const { today, calendar } = snapshot;
  const feedingDay = isFeedingDay(calendar, today);
  const here = snapshot.animals.map((animal) => nextMealOf(snapshot, animal));
  const withheld = here.flatMap((due) => {
    const reason = due.from <= today ? reasonToWait(due, today) : null;
    return reason === null ? [] : [{ animal: due.animal.code, shelf: due.animal.shelf, reason }];
  });
  const alone = new Set(withheld.map(({ animal }) => animal));
  const due = feedingDay ? here.filter(({ animal, tonight }) => tonight && !alone.has(animal.code)) : [];
  const offers = offersFor(snapshot, due);
  return {
    day: today,
    feedingDay,
    servings: due.map((each) => servingOf(each, { today, offer: offers.get(each.animal.code) ?? null })),
    withheld,
  };
}

function servingOf(
  { animal, from, to }: NextMeal,
  { today, offer }: { today: DayNumber; offer: PreyOffer | null },
): Serving {
  return {
    animal: animal.code,
    shelf: animal.shelf,
    dueFrom: from,
    dueTo: to,
    state: today > to ? 'late' : 'due',
    offer,
    note:
      offer === null
        ? 'Nothing in the larder fits tonight.'
        : offer.killFirst
          ? 'Kill or crush the prey first.'
          : null,
  };
}

/** Offers by animal, fragile first, then those whose range ends first. */
function offersFor(snapshot: Snapshot, due: readonly NextMeal[]): Map<string, PreyOffer> {
  const shelves = shelvesOf(snapshot);
  const order = [...due].sort(
    (a, b) =>
      RANK[a.rule.urgency] - RANK[b.rule.urgency] || a.to - b.to || (a.animal.code < b.animal.code ? -1 : 1),
  );
  const offers = new Map<string, PreyOffer>();
  for (const each of order) {
    const offer = offerFor(snapshot, each, shelves);
    if (offer) offers.set(each.animal.code, offer);
  }
  return offers;
}

type Preparation = 'alive' | 'killed' | 'cut';

/** The first that there is of: live prey nearest to outgrowing the animal, prey to kill first, prey to cut, treats. */
function offerFor(snapshot: Snapshot, due: NextMeal, shelves: Shelf[]): PreyOffer | null {
  const eater = eaterOf(due.kind, due.animal);
  const eatable = shelves.flatMap((shelf) => {
    const window = windowFor(due.rule, eater, shelf.species);
    return window ? [{ shelf, window }] : [];
  });
  const staple = eatable.filter(({ shelf }) => (due.rule.shareCaps.value[shelf.species.form] ?? 1) >= 1);
  for (const choice of [staple, eatable]) {
    for (const preparation of ['alive', 'killed', 'cut'] as const) {
      const offer = fromShelves(snapshot, { due, choice, preparation });
      if (offer) return offer;
    }
  }
  return null;
}

interface Choice {
  readonly shelf: Shelf;
  readonly window: LengthWindow;
}

interface Offering {
  readonly due: NextMeal;
  readonly choice: readonly Choice[];
  readonly preparation: Preparation;
}

/** From the bin whose longest fitting prey is nearest to the window's end and holds a whole meal. */
function fromShelves(snapshot: Snapshot, { due, choice, preparation }: Offering): PreyOffer | null {
  const portions = Math.max(1, Math.floor(due.rule.portions.value));
  const found = choice
    .map(({ shelf, window }) => {
      const [low, high] = boundsOf(window, preparation, portions);
      const fitting = shelf.slices.filter(
        ({ lengthMm, heads }) => low <= lengthMm && lengthMm <= high && heads > 0,
      );
      return {
        shelf,
        window,
        fitting,
        nearest: Math.max(0, ...fitting.map(({ lengthMm }) => lengthMm / window.maxMm)),
      };
    })
    .filter(({ fitting }) => fitting.length > 0)
    .sort((a, b) => b.nearest - a.nearest || (a.shelf.bin.code < b.shelf.bin.code ? -1 : 1));
  for (const { shelf, window, fitting } of found) {
    const heads = headsOf(snapshot, { due, window, fitting, pieces: preparation === 'cut' ? portions : 1 });
    const there = fitting.reduce((sum, slice) => sum + slice.heads, 0);
    if (heads <= Math.round(there)) return taken(shelf, { fitting, heads, preparation, portions });
  }
  return null;
}

function boundsOf(window: LengthWindow, preparation: Preparation, portions: number): [number, number] {
  if (preparation === 'alive') return [window.minMm, window.liveMaxMm];
  if (preparation === 'killed') return [window.liveMaxMm, window.maxMm];
  return portions > 1 ? [window.maxMm, window.maxMm * Math.cbrt(portions)] : [1, 0];
}

interface Meal {
  readonly due: NextMeal;
  readonly window: LengthWindow;
  readonly fitting: readonly { readonly lengthMm: number; readonly heads: number }[];
  readonly pieces: number;
}

/** Whole prey items for the meal: the middle of the rule's range at the ideal size, by mass at the size there is. */
function headsOf({ facts }: Snapshot, { due, window, fitting, pieces }: Meal): number {
  const [least, most] = due.rule.mealItems.value;
  const items = Math.max(1, Math.round((least + most) / 2)) * due.animal.count;
  const lengths = fitting.map(({ lengthMm }) => lengthMm);
  const middle = (Math.min(...lengths) + Math.max(...lengths)) / 2;
  if (pieces > 1) return Math.max(1, Math.ceil(items / pieces));
  const worth = itemsWorth(middle, window.idealMm, facts.policy.smallerItemsMost.value);
  return Math.max(due.animal.count, Math.round(items / worth));
}

interface Taking {
  readonly fitting: { lengthMm: number; heads: number }[];
  readonly heads: number;
  readonly preparation: Preparation;
  readonly portions: number;
}

/** Takes the meal off the shelf, the longest first, so that the next animal is offered what is then left. */
function taken(shelf: Shelf, { fitting, heads, preparation, portions }: Taking): PreyOffer {
  const lengths = fitting.map(({ lengthMm }) => lengthMm);
  let left = heads;
  for (const slice of [...fitting].sort((a, b) => b.lengthMm - a.lengthMm)) {
    const part = Math.min(slice.heads, left);
    slice.heads -= part;
    left -= part;
  }
  return {
    bin: shelf.bin.code,
    species: shelf.species.code,
    heads,
    fromMm: Math.min(...lengths),
    toMm: Math.max(...lengths),
    killFirst: preparation !== 'alive',
    portions: preparation === 'cut' ? portions : 1,
  };
}
