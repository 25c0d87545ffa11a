/** From a room to a plan's problem, and what each part of the problem stands for. */

import type { Step } from '../../maths/chain-step.ts';
import { noMarket } from '../orders/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Period } from './answer.ts';
import { breedersOf, breedingOf, floorOf } from './breeding.ts';
import type { EatingClass } from './classes.ts';
import { eatingOf } from './eaters.ts';
import { eatersLaid, endPrices, pricedAtEnd } from './eaters-laid.ts';
import { lastPacks } from './end-prices.ts';
import { cheapestItems, mealPrices, middleOfPrices } from './item-prices.ts';
import type { Nodes } from './nodes.ts';
import { type ParcelOf, parcelsOf } from './parcels.ts';
import { passOf } from './passing.ts';
import { periodsOf } from './periods.ts';
import { type Place, placesOf } from './place-of.ts';
import type { Breeders, PlanProblem } from './problem.ts';
import type { PlanQuestion } from './question.ts';
import { restsOf } from './rests.ts';
import { type Laying, passingOf, planPlace } from './standing.ts';
import { type StartOf, startsOf } from './starts.ts';
import { alikePlaces, type Cutting, type Fine, toldBy } from './told.ts';
import { weekBudget } from './week-budget.ts';

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
  const { nodes, eating, fares } = toldBy(
    snapshot,
    { places, everybody },
    { bands: policy.planBands.value, classes: policy.planClasses.value },
  );
  const itemCents = cheapestItems(snapshot, eating);
  const usualCents = middleOfPrices(itemCents);
  const laying = {
    periods,
    policy,
    today: snapshot.today,
    deliveries: snapshot.deliveries,
    keepCents: policy.planKeepShare.value * usualCents,
  };
  const planPlaces = places.map((place, p) => planPlace(place, nodes[p] as Nodes, laying));
  const week = planPlaces.map(
    ({ passes }, p) => passes.at(-1) ?? weekAtEnd(places[p] as Place, nodes[p] as Nodes, laying),
  );
  const served = { eating, places, week, usualCents };
  const eaters = eatersLaid(snapshot, served);
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
  const packs = lastPacks(bought.parcels, planPlaces);
  const prices = endPrices(snapshot, { everybody, fares, week, packs });
  const priced = pricedAtEnd(snapshot, eaters, { ...served, prices });
  const breeding = places.map((place, p) => breedingOf(place, nodes[p] as Nodes, snapshot));
  const breeders = breedersOf({ places, planPlaces, breeding, eaters: priced, policy });
  const floored = planPlaces.map((place, p) => ({ ...place, floor: floorOf(breeders[p] ?? null, place) }));
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
      places: floored,
      eaters: priced,
      parcels: bought.parcels,
      starts: started.starts,
      rests: restsOf({ places, planPlaces: floored, periods, wishes, itemCents: usualCents }),
      pools: [],
      budget: weekBudget(periods, market),
      wholeUntil: periods.length,
    },
    fine: fineOf(snapshot, { places, everybody, laying, usualCents, prices, breeders }),
  };
}

interface Fining extends Cutting {
  readonly laying: Laying;
  readonly usualCents: number;
  readonly prices: ReadonlyMap<string, number>;
  readonly breeders: readonly (Breeders | null)[];
}

/** Who eats what, told finely, places that are eaten from alike as one. */
function fineOf(snapshot: Snapshot, fining: Fining): Fine {
  const { places, everybody, laying, usualCents, prices, breeders } = fining;
  const { policy } = laying;
  const { alike, placeOf } = alikePlaces(places);
  const eatenFrom = alike.map((p) => places[p] as Place);
  const told = toldBy(
    snapshot,
    { places: eatenFrom, everybody },
    { bands: policy.planFineBands.value, classes: policy.planFineClasses.value },
  );
  const nodesAt = (p: number) => told.nodes[p] as Nodes;
  const served = {
    eating: told.eating,
    places: eatenFrom,
    week: eatenFrom.map((place, p) => weekAtEnd(place, nodesAt(p), laying)),
    usualCents,
  };
  return {
    ...told,
    places: alike,
    placeOf,
    eaters: pricedAtEnd(snapshot, eatersLaid(snapshot, served), { ...served, prices }),
    breeders: alike.map((at, p) => {
      const counted = breedingOf(places[at] as Place, nodesAt(p), snapshot);
      const coarse = breeders[at];
      return counted && coarse ? { ...coarse, counts: counted.counts } : null;
    }),
  };
}

/** How prey passes on in a week at the end of the plan. */
function weekAtEnd(place: Place, nodes: Nodes, { periods, policy }: Laying): Step {
  const last = periods[periods.length - 1] as Period;
  return passOf(passingOf(place, nodes, policy), { from: last.from, days: DAYS_PER_WEEK });
}
