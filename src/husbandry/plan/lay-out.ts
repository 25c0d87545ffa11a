/** From a room to a plan's problem, and what each part of the problem stands for. */

import { noMarket } from '../orders/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Period } from './answer.ts';
import type { EatingClass } from './classes.ts';
import { eatingOf } from './eaters.ts';
import { capsOf } from './fares.ts';
import { cheapestItems, cupItemCents, mealPrices, middleOfPrices } from './item-prices.ts';
import type { Nodes } from './nodes.ts';
import { type ParcelOf, parcelsOf } from './parcels.ts';
import { budgetOver, periodsOf } from './periods.ts';
import { type Place, placesOf } from './place-of.ts';
import type { PlanEater, PlanProblem } from './problem.ts';
import type { PlanQuestion } from './question.ts';
import { planPlace } from './standing.ts';
import { type StartOf, startsOf } from './starts.ts';
import { alikePlaces, type Fine, toldBy } from './told.ts';

/** A room laid out for planning. */
export interface LaidOut {
  readonly snapshot: Snapshot;
  readonly periods: readonly Period[];
  readonly places: readonly Place[];
  readonly nodes: readonly Nodes[];
  readonly eating: readonly EatingClass[];
  /** Price of the cheapest item of each group. */
  readonly itemCents: readonly number[];
  /** The middle of them: what prices of misses are told in. */
  readonly usualCents: number;
  /** What a meal of each group is at least worth: the middle price of an item, or its own where that is dearer. */
  readonly mealCents: ReadonlyMap<string, number>;
  readonly parcels: readonly ParcelOf[];
  readonly starts: readonly StartOf[];
  /** Without stock that stands ready. */
  readonly problem: PlanProblem;
  /** Who eats what where plans are lived through. */
  readonly fine: Fine;
}

export function layOut(snapshot: Snapshot, { weeks, wishes }: PlanQuestion): LaidOut {
  const { policy } = snapshot.facts;
  const market = snapshot.market ?? noMarket;
  const periods = periodsOf({ today: snapshot.today, weeks, market });
  const everybody = eatingOf(snapshot, periods);
  const places = placesOf(snapshot);
  const { nodes, eating } = toldBy(
    snapshot,
    { places, everybody },
    { bands: policy.planBands.value, classes: policy.planClasses.value },
  );
  const itemCents = cheapestItems(snapshot, eating);
  const usualCents = middleOfPrices(itemCents);
  const eatersOf = (classes: readonly EatingClass[], from: readonly Place[]) => {
    const cents = cheapestItems(snapshot, classes);
    return classes.map((each, e) =>
      eaterOf(each, {
        cents: cents[e] as number,
        usualCents,
        cupCents: cupItemCents(each, { places: from, usualCents, policy }),
        snapshot,
      }),
    );
  };
  const laying = {
    periods,
    policy,
    today: snapshot.today,
    deliveries: snapshot.deliveries,
    keepCents: policy.planKeepShare.value * usualCents,
    breederCents: policy.planMissedTimes.value.ordinary * usualCents,
  };
  const planPlaces = places.map((place, p) => planPlace(place, nodes[p] as Nodes, laying));
  const eaters = eatersOf(eating, places);
  const { alike, placeOf } = alikePlaces(places);
  const eatenFrom = alike.map((p) => places[p] as Place);
  const fine = toldBy(
    snapshot,
    { places: eatenFrom, everybody },
    { bands: policy.planFineBands.value, classes: policy.planFineClasses.value },
  );
  const buying = {
    today: snapshot.today,
    market,
    policy,
    periods,
    places,
    nodes,
    planPlaces,
    eaters,
    wishes,
  };
  const bought = parcelsOf(buying);
  const { hourCents } = market.purse;
  const started = startsOf({
    policy,
    periods,
    places,
    nodes,
    hourCents,
    itemCents: usualCents,
    wishes,
    eaters,
  });
  return {
    snapshot,
    periods,
    places,
    nodes,
    eating,
    itemCents,
    usualCents,
    mealCents: mealPrices(snapshot, everybody, usualCents),
    parcels: bought.of,
    starts: started.of,
    problem: {
      periods: periods.length,
      places: planPlaces,
      eaters,
      parcels: bought.parcels,
      starts: started.starts,
      pools: [],
      budget: budgetOver(periods, market),
      wholeUntil: periods.length,
    },
    fine: { ...fine, places: alike, placeOf, eaters: eatersOf(fine.eating, eatenFrom) },
  };
}

interface Eats {
  readonly cents: number;
  readonly usualCents: number;
  /** Of an item out of a cup; Infinity where it eats from none. */
  readonly cupCents: number;
  readonly snapshot: Snapshot;
}

function eaterOf(
  { group, wanted, lateMost, fares, mealItems }: EatingClass,
  { cents, usualCents, cupCents, snapshot }: Eats,
): PlanEater {
  const { policy } = snapshot.facts;
  const { urgency } = group.rule;
  const last = wanted[wanted.length - 1] ?? 0;
  return {
    key: group.key,
    urgency,
    wanted,
    lateMost,
    lateCents: cents * policy.planLateTimes.value,
    // What nothing can be had for is told as an obstacle; in the sum it would only hide the rest.
    missedCents:
      fares.length > 0 ? policy.planMissedTimes.value[urgency] * Math.max(cents, usualCents / mealItems) : 0,
    fare: fares.map(({ how: _, ...fare }) => ({ ...fare, cents: fare.cents * fare.items * cents })),
    caps: capsOf(group).map(({ share }) => ({ share, cents: cents * policy.planCapTimes.value })),
    endWanted: last * policy.planEndWeeks.value,
    endCents: Math.min(cents, cupCents) * policy.planEndShare.value,
  };
}
