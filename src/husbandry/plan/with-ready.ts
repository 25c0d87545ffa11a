/** A problem made ready to be solved and lived through: stock that stands ready with some chance, misses priced so that it is worth it. */
import type { LaidOut } from './lay-out.ts';
import type { Nodes } from './nodes.ts';
import { poolsOf } from './pools.ts';
import type { Breeders, PlanEater, PlanPlace, PlanProblem } from './problem.ts';

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
  return { ...problem, eaters: problem.eaters.map(pricedFor(laid, level)), pools };
}

/** A miss priced so that stock with this chance of being enough is worth it. */
const pricedFor = ({ snapshot }: LaidOut, level: number) => {
  const [first] = snapshot.facts.policy.planSafetyLevels.value;
  const times = oddsOf(level) / oddsOf(first as number);
  return (eater: PlanEater): PlanEater => ({ ...eater, missedCents: eater.missedCents * times });
};

/** As many as are wanted, whatever there would be: each fate finds that for itself. */
const floorFrom = (breeders: Breeders | null, periods: number): PlanPlace['floor'] =>
  breeders && { ...breeders, least: new Float64Array(periods).fill(breeders.wanted) };

/** What plans of a problem are lived through with: the same decisions, and those who eat told finely. */
export function finely(laid: LaidOut, problem: PlanProblem, level: number): PlanProblem {
  const { nodes, eaters, breeders, placeOf } = laid.fine;
  const rests = problem.rests.map((rest) => ({ ...rest, place: placeOf[rest.place] as number }));
  const places = laid.fine.places.map((at, p) => ({
    ...(problem.places[at] as PlanPlace),
    nodes: (nodes[p] as Nodes).all.length,
    passes: [],
    comes: [],
    room: null,
    floor: floorFrom(breeders[p] ?? null, problem.periods),
  }));
  return { ...problem, places, rests, eaters: eaters.map(pricedFor(laid, level)), pools: [] };
}
