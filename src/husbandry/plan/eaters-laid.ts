/** Those who eat as the problem knows them: what they want, of what, what going without costs, what the end is worth to them. */
import type { Step } from '../../maths/chain-step.ts';
import { meanOf } from '../../maths/mean.ts';
import type { Cents } from '../orders/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { EatingClass } from './classes.ts';
import type { Eating } from './eaters.ts';
import { endPricesOf, type Grown } from './end-prices.ts';
import { capsOf, type PreparedFare } from './fares.ts';
import { cheapestItems, cupItemCents } from './item-prices.ts';
import { endFareOf, type Following } from './lasting.ts';
import type { Place } from './place-of.ts';
import type { PlanEater } from './problem.ts';

export interface Served {
  readonly eating: readonly EatingClass[];
  readonly places: readonly Place[];
  /** How the prey of each place passes on in a week. */
  readonly week: readonly Step[];
  readonly usualCents: Cents;
}

/** What is there at the end is not worth anything yet: that rests on what can be bought (`pricedAtEnd`). */
export function eatersLaid(snapshot: Snapshot, { eating, week, usualCents }: Served): PlanEater[] {
  const { policy } = snapshot.facts;
  const cents = cheapestItems(snapshot, eating);
  return eating.map((each, e) => {
    const { group, wanted, lateMost, fares, mealItems } = each;
    const { urgency } = group.rule;
    const itemCents = cents[e] as number;
    return {
      key: group.key,
      urgency,
      wanted,
      lateMost,
      lateCents: itemCents * policy.planLateTimes.value,
      // What nothing can be had for is told as an obstacle; in the sum it would only hide the rest.
      missedCents:
        fares.length > 0
          ? policy.planMissedTimes.value[urgency] * Math.max(itemCents, usualCents / mealItems)
          : 0,
      fare: fares.map(({ how: _, ...fare }) => ({ ...fare, cents: fare.cents * fare.items * itemCents })),
      caps: capsOf(group).map(({ share }) => ({ share, cents: itemCents * policy.planCapTimes.value })),
      end: {
        cents: 0,
        weekly: meanOf(wanted.subarray(wanted.length / 2)),
        fare: endFareOf(fares, followingOf(snapshot, week)),
      },
    };
  });
}

const followingOf = ({ facts: { policy } }: Snapshot, week: readonly Step[]): Following => ({
  week,
  endWeeks: policy.planEndWeeks.value,
  leastItems: policy.planReachShare.value,
});

export interface Ending {
  readonly everybody: readonly Eating[];
  /** Fare of each of them. */
  readonly fares: readonly (readonly PreparedFare[])[];
  readonly week: readonly Step[];
  readonly packs: readonly Grown[];
}

/** By group, what an item that is there at the end could be had for; Infinity where nothing on offer lasts so long. */
export function endPrices(
  snapshot: Snapshot,
  { everybody, fares, week, packs }: Ending,
): ReadonlyMap<string, Cents> {
  const following = followingOf(snapshot, week);
  const prices = endPricesOf(
    fares.map((fare) => endFareOf(fare, following)),
    packs,
  );
  return new Map(everybody.map(({ group }, g) => [group.key, prices[g] as number]));
}

/** The same eaters, to whom what is there at the end is worth less than what it could be had for, bought or out of a cup. */
export function pricedAtEnd(
  snapshot: Snapshot,
  eaters: readonly PlanEater[],
  { eating, places, usualCents, prices }: Served & { readonly prices: ReadonlyMap<string, Cents> },
): PlanEater[] {
  const { policy } = snapshot.facts;
  const usual = cheapestItems(snapshot, eating);
  return eaters.map((eater, e) => {
    const bought = prices.get(eater.key) ?? Number.POSITIVE_INFINITY;
    const cup = cupItemCents(eating[e] as EatingClass, { places, usualCents, policy });
    const cents = Math.min(Number.isFinite(bought) ? bought : (usual[e] as number), cup);
    return { ...eater, end: { ...eater.end, cents: cents * policy.planEndShare.value } };
  });
}
