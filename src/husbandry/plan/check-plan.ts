/**
 * Checks a proposal against its problem without the programme that made it: nothing eaten that is not there, whole
 * packs within their bounds, parcels that can be had, room, budget and every meal accounted for.
 */
import { parcelFaults, restFaults, startFaults } from './bound-faults.ts';
import { exceeds, type Fault } from './fault.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanPlace, PlanProblem } from './problem.ts';
import type { Proposal } from './proposal.ts';

/** Everything that is wrong; empty for a plan that can be carried out. `slack` is what rounding may leave, relative to 1 + the amount. */
export function faultsOf(problem: PlanProblem, proposal: Proposal, slack: number): Fault[] {
  return [
    ...conservation(problem, proposal, slack),
    ...meals(problem, proposal, slack),
    ...belowNothing(problem, proposal, slack),
    ...problem.parcels.flatMap((parcel, i) => parcelFaults(parcel, proposal.packs[i] ?? [], slack)),
    ...startFaults(problem, proposal),
    ...restFaults(problem, proposal),
    ...problem.places.flatMap((place, p) => roomFaults(place, proposal.flows.left[p] ?? [], slack)),
    ...budgetFaults(problem, proposal, slack),
  ];
}

/** Heads used and left of each node are no more than came and passed on. */
function conservation(problem: PlanProblem, { packs, cups, flows }: Proposal, slack: number): Fault[] {
  const faults: Fault[] = [];
  const { places, parcels, starts, eaters, periods } = problem;
  places.forEach((place, p) => {
    for (let t = 0; t < periods; t++) {
      const there = Float64Array.from(place.comes[t] ?? new Float64Array(place.nodes));
      const add = (heads: ArrayLike<number>, times: number) => {
        for (let n = 0; n < place.nodes; n++) there[n] = (there[n] as number) + times * (heads[n] ?? 0);
      };
      parcels.forEach((parcel, i) => {
        if (parcel.period !== t) return;
        parcel.packs.forEach((pack, j) => {
          if (pack.place === p) add(pack.brings, packs[i]?.[j] ?? 0);
        });
      });
      starts.forEach((start, i) => {
        if (start.place === p) add(start.brings[t] ?? [], cups[i] ?? 0);
      });
      const before = flows.left[p]?.[t - 1];
      const pass = place.passes[t - 1];
      if (before && pass)
        add(
          pass.map((row) => row.reduce((sum, share, from) => sum + share * (before[from] as number), 0)),
          1,
        );
      const goes = Float64Array.from(flows.left[p]?.[t] ?? new Float64Array(place.nodes));
      eaters.forEach(({ fare }, e) => {
        fare.forEach((each, k) => {
          if (each.place === p) goes[each.node] = (goes[each.node] as number) + (flows.use[e]?.[t]?.[k] ?? 0);
        });
      });
      goes.forEach((amount, n) => {
        if (exceeds(amount, there[n] as number, slack))
          faults.push({
            what: 'conservation',
            sentence: `${place.key}, node ${n}, period ${t}: ${amount} used and left of ${there[n]}.`,
          });
      });
    }
  });
  return faults;
}

function meals({ eaters, periods }: PlanProblem, { flows }: Proposal, slack: number): Fault[] {
  const faults: Fault[] = [];
  eaters.forEach((eater, e) => {
    for (let t = 0; t < periods; t++) {
      const eaten = eater.fare.reduce((sum, { items }, k) => sum + items * (flows.use[e]?.[t]?.[k] ?? 0), 0);
      const late = flows.late[e]?.[t] ?? 0;
      const before = t > 0 ? (flows.late[e]?.[t - 1] ?? 0) : 0;
      const given = eaten + late + (flows.missed[e]?.[t] ?? 0);
      const wanted = (eater.wanted[t] as number) + before;
      if (Math.abs(given - wanted) > slack * (1 + wanted))
        faults.push({
          what: 'meals',
          sentence: `${eater.key}, period ${t}: ${given} accounted for of ${wanted}.`,
        });
      if (exceeds(late, eater.lateMost[t] as number, slack))
        faults.push({
          what: 'late',
          sentence: `${eater.key}, period ${t}: ${late} wait, ${eater.lateMost[t]} may.`,
        });
    }
  });
  return faults;
}

/** Nobody eats, waits for, misses or leaves less than nothing. */
function belowNothing({ places, eaters }: PlanProblem, { flows }: Proposal, slack: number): Fault[] {
  const isBelow = (row: Float64Array) => row.some((amount) => amount < -slack);
  const heads = places.flatMap(({ key }, p): Fault[] =>
    (flows.left[p] ?? []).some(isBelow)
      ? [{ what: 'conservation', sentence: `${key}: less than nothing is left.` }]
      : [],
  );
  const meals = eaters.flatMap(({ key }, e): Fault[] => {
    const items = [...(flows.use[e] ?? []), flows.late[e], flows.missed[e]];
    return items.some((row) => row !== undefined && isBelow(row))
      ? [{ what: 'meals', sentence: `${key}: less than nothing is eaten, waited for or missed.` }]
      : [];
  });
  return [...heads, ...meals];
}

const roomFaults = ({ key, room }: PlanPlace, left: readonly Float64Array[], slack: number): Fault[] =>
  left.flatMap((heads, t): Fault[] => {
    if (!room) return [];
    const load = heads.reduce((sum, n, node) => sum + n * (room.footprint[node] as number), 0);
    return exceeds(load, room.most, slack)
      ? [{ what: 'room', sentence: `${key}, period ${t}: ${load} where ${room.most} find room.` }]
      : [];
  });

function budgetFaults({ parcels, starts, budget }: PlanProblem, proposal: Proposal, slack: number): Fault[] {
  return Array.from(budget, (most, t) => {
    const bought = parcels.reduce((sum, parcel, i) => {
      if (parcel.paid !== t) return sum;
      const { goods, postage } = parcelCost(parcel, proposal.packs[i] ?? []);
      return sum + goods + postage;
    }, 0);
    const begun = starts.reduce(
      (sum, { paid, cents }, i) => sum + (paid === t ? cents * (proposal.cups[i] ?? 0) : 0),
      0,
    );
    return { t, most, spent: bought + begun };
  }).flatMap(({ t, most, spent }): Fault[] =>
    exceeds(spent, most, slack)
      ? [{ what: 'budget', sentence: `week ${t}: ${spent} spent, ${most} may be.` }]
      : [],
  );
}
