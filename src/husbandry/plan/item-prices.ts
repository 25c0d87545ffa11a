/** What an item of prey costs each group: the cheapest on offer, and out of a cup of one's own. */
import { noMarket } from '../orders/index.ts';
import type { Policy } from '../policy.ts';
import { itemsWorth } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { EatingClass } from './classes.ts';
import type { Eating } from './eaters.ts';
import type { Place } from './place-of.ts';

/** By group, the cheapest price of an item of its ideal size among the offers, as packed; the middle of all where none fits. */
export function cheapestItems({ market = noMarket, facts }: Snapshot, eating: readonly Eating[]): number[] {
  const found = eating.map(({ group }) => {
    const prices = market.offers.flatMap((offer) => {
      const window = group.windows.get(offer.species);
      const species = facts.species.get(offer.species);
      if (!window || !species) return [];
      const mm = (offer.fromMm + offer.toMm) / 2;
      if (mm > window.maxMm) return [];
      const items = itemsWorth(mm, window.idealMm, facts.policy.smallerItemsMost.value);
      return [(offer.prices[0]?.packCents ?? 0) / offer.packHeads / Math.min(1, items)];
    });
    return prices.length > 0 ? Math.min(...prices) : null;
  });
  const known = found.filter((cents) => cents !== null && cents > 0) as number[];
  const usual = known.length > 0 ? middleOfPrices(known) : 1;
  return found.map((cents) => (cents !== null && cents > 0 ? cents : usual));
}

/** By group, the middle price of an item or that of a whole meal of its own, whichever is dearer: it is never cheaper to miss one. Of animals alike the meal of all. */
export function mealPrices(
  snapshot: Snapshot,
  everybody: readonly Eating[],
  usualCents: number,
): ReadonlyMap<string, number> {
  const cents = cheapestItems(snapshot, everybody);
  return new Map(
    everybody.map(({ group, mealItems, headsEach }, g) => [
      group.key,
      Math.max(usualCents, (cents[g] as number) * mealItems) * headsEach,
    ]),
  );
}

export const middleOfPrices = (prices: readonly number[]): number =>
  [...prices].sort((a, b) => a - b)[Math.floor(prices.length / 2)] ?? 1;

/** Price of a fly out of a cup of its own, for those who eat from cups. */
export function cupItemCents(
  { fares }: EatingClass,
  { places, usualCents, policy }: { places: readonly Place[]; usualCents: number; policy: Policy },
): number {
  const cups = fares.flatMap(({ place, items }) => {
    const yields = places[place]?.chain.species.cup?.yieldPerCup.value;
    return places[place]?.role === 'cup' && yields
      ? [(policy.planCupItems.value * usualCents) / yields / items]
      : [];
  });
  return Math.min(Number.POSITIVE_INFINITY, ...cups);
}
