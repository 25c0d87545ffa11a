/** From a room to a plan's problem, and what each part of the problem stands for. */

import { noMarket } from '../orders/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Period } from './answer.ts';
import { classesOf, type EatingClass } from './classes.ts';
import { type Eating, eatingOf } from './eaters.ts';
import { capsOf, faresOf } from './fares.ts';
import { cheapestItems, cupItemCents, middleOfPrices } from './item-prices.ts';
import { type Cut, edgesOf, type Nodes, nodesOf } from './nodes.ts';
import { type ParcelOf, parcelsOf } from './parcels.ts';
import { periodsOf } from './periods.ts';
import { type Place, placesOf } from './place-of.ts';
import { poolsOf } from './pools.ts';
import type { PlanEater, PlanProblem } from './problem.ts';
import type { PlanQuestion } from './question.ts';
import { planPlace } from './standing.ts';
import { type StartOf, startsOf } from './starts.ts';

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
  readonly parcels: readonly ParcelOf[];
  readonly starts: readonly StartOf[];
  /** Without stock that stands ready. */
  readonly problem: PlanProblem;
}

export function layOut(snapshot: Snapshot, { weeks, wishes }: PlanQuestion): LaidOut {
  const { policy } = snapshot.facts;
  const market = snapshot.market ?? noMarket;
  const periods = periodsOf({ today: snapshot.today, weeks, market });
  const everybody = eatingOf(snapshot, periods);
  const places = placesOf(snapshot);
  const nodes = nodesBySpecies(snapshot, places, everybody);
  const served = places.map((place, p) => ({ place, nodes: nodes[p] as Nodes }));
  const fares = everybody.map(({ group }) => faresOf(group, served, snapshot.facts));
  const eating = classesOf(everybody, fares, policy.planClasses.value);
  const itemCents = cheapestItems(snapshot, eating);
  const usualCents = middleOfPrices(itemCents);
  const laying = {
    periods,
    policy,
    today: snapshot.today,
    deliveries: snapshot.deliveries,
    keepCents: policy.planKeepShare.value * usualCents,
    breederCents: policy.planMissedTimes.value.ordinary * usualCents,
  };
  const planPlaces = places.map((place, p) => planPlace(place, nodes[p] as Nodes, laying));
  const eaters = eating.map((each, e) =>
    eaterOf(each, {
      cents: itemCents[e] as number,
      usualCents,
      cupCents: cupItemCents(each, { places, usualCents, policy }),
      snapshot,
    }),
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
  const { hourCents, weekMostCents } = market.purse;
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
    parcels: bought.of,
    starts: started.of,
    problem: {
      periods: periods.length,
      places: planPlaces,
      eaters,
      parcels: bought.parcels,
      starts: started.starts,
      pools: [],
      budget: new Float64Array(periods.length).fill(weekMostCents ?? Number.POSITIVE_INFINITY),
      wholeUntil: periods.length,
    },
  };
}

/** Odds of a chance: what a miss costs over what a head too many costs, where that chance of having enough is best (newsvendor). */
const oddsOf = (chance: number): number => chance / (1 - chance);

/** The same problem with stock that stands ready with this chance, and misses priced so that it is worth it. */
export function withReady(laid: LaidOut, level: number): PlanProblem {
  const { snapshot, eating, problem, itemCents, parcels } = laid;
  const { policy } = snapshot.facts;
  const leads = parcels
    .filter(({ supplier }) => supplier.kind === 'parcel')
    .map(({ orderBy, comes }) => comes - orderBy);
  const pools = poolsOf({
    eating,
    eaters: problem.eaters,
    policy,
    seed: snapshot.seed,
    level,
    leadDays: leads.length > 0 ? Math.min(...leads) : 0,
    readyCents: itemCents.map((cents) => cents * policy.planReadyTimes.value),
  });
  const times = oddsOf(level) / oddsOf(policy.planSafetyLevels.value[0] as number);
  const eaters = problem.eaters.map((eater) => ({ ...eater, missedCents: eater.missedCents * times }));
  return { ...problem, eaters, pools };
}

/** Bands of each place's species, cut where windows of the groups begin and end; one set a species. */
function nodesBySpecies(snapshot: Snapshot, places: readonly Place[], eating: readonly Eating[]): Nodes[] {
  const { planBands, planBandRatio } = snapshot.facts.policy;
  const bySpecies = new Map<string, Nodes>();
  return places.map(({ species, chain }) => {
    const known = bySpecies.get(species);
    if (known) return known;
    const cuts = eating.flatMap(({ group, wanted }): Cut[] => {
      const window = group.windows.get(species);
      const weight = wanted.reduce((a, b) => a + b, 0);
      if (!window) return [];
      return [...new Set([window.minMm, window.liveMaxMm, window.maxMm])].map((mm) => ({ mm, weight }));
    });
    const edges = edgesOf(chain, cuts, { most: planBands.value, ratio: planBandRatio.value });
    const made = nodesOf(chain, edges);
    bySpecies.set(species, made);
    return made;
  });
}

interface Eats {
  readonly cents: number;
  readonly usualCents: number;
  /** Of an item out of a cup; Infinity where it eats from none. */
  readonly cupCents: number;
  readonly snapshot: Snapshot;
}

function eaterOf(
  { group, wanted, lateMost, fares }: EatingClass,
  { cents, usualCents, cupCents, snapshot }: Eats,
): PlanEater {
  const { policy } = snapshot.facts;
  const { urgency, mealItems } = group.rule;
  const [few, many] = mealItems.value;
  const last = wanted[wanted.length - 1] ?? 0;
  return {
    key: group.key,
    urgency,
    wanted,
    lateMost,
    lateCents: cents * policy.planLateTimes.value,
    // What nothing can be had for is told as an obstacle; in the sum it would only hide the rest.
    missedCents:
      fares.length > 0 ? (usualCents * policy.planMissedTimes.value[urgency]) / ((few + many) / 2) : 0,
    fare: fares.map(({ how: _, ...fare }) => ({ ...fare, cents: fare.cents * fare.items * cents })),
    caps: capsOf(group).map(({ share }) => ({ share, cents: cents * policy.planCapTimes.value })),
    endWanted: last * policy.planEndWeeks.value,
    endCents: Math.min(cents, cupCents) * policy.planEndShare.value,
  };
}
