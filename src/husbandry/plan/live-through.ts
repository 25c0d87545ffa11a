/** A plan's decisions lived through period by period by a fixed policy, without a solver: who eats what, what is left. */

import { decisionsCost } from './parcel-cost.ts';
import type { PlanEater, PlanPlace, PlanProblem } from './problem.ts';
import type { Decisions, Flows } from './proposal.ts';

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;

/** Fragile first, then those with least fare; each from the cheapest node, of those the one nearest to outgrowing. */
export function liveThrough(problem: PlanProblem, decided: Decisions): Flows {
  const { eaters, periods, places } = problem;
  const series = (count: number) => eaters.map(() => new Float64Array(count));
  const flows = {
    use: eaters.map(({ fare }) => Array.from({ length: periods }, () => new Float64Array(fare.length))),
    late: series(periods),
    missed: series(periods),
    left: places.map(({ nodes }) => Array.from({ length: periods }, () => new Float64Array(nodes))),
  };
  const order = eaters
    .map((_, e) => e)
    .sort((a, b) => rankOf(eaters[a] as PlanEater) - rankOf(eaters[b] as PlanEater) || a - b);
  const fares = eaters.map(faresInOrder);
  for (let t = 0; t < periods; t++) {
    const there = thereIn(problem, decided, { t, left: flows.left });
    for (const e of order) feed(eaters[e] as PlanEater, { e, t, there, flows, order: fares[e] as number[] });
    there.forEach((heads, p) => {
      (flows.left[p] as Float64Array[])[t]?.set(withinRoom(places[p] as PlanPlace, heads));
    });
  }
  return flows;
}

const rankOf = ({ urgency, fare }: PlanEater): number => RANK[urgency] + fare.length / (fare.length + 1);

const faresInOrder = ({ fare }: PlanEater): number[] =>
  fare
    .map((_, k) => k)
    .sort((a, b) => {
      const [x, y] = [fare[a], fare[b]];
      return (x?.cents ?? 0) - (y?.cents ?? 0) || (y?.node ?? 0) - (x?.node ?? 0);
    });

interface Now {
  readonly t: number;
  readonly left: readonly (readonly Float64Array[])[];
}

/** Heads of every node before anybody eats. */
function thereIn(
  { places, parcels, starts }: PlanProblem,
  { packs, cups }: Decisions,
  { t, left }: Now,
): Float64Array[] {
  const there = places.map(({ nodes, comes, passes }, p) => {
    const heads = Float64Array.from(comes[t] ?? new Float64Array(nodes));
    const before = left[p]?.[t - 1];
    passes[t - 1]?.forEach((row, to) => {
      heads[to] =
        (heads[to] as number) + row.reduce((sum, share, from) => sum + share * (before?.[from] ?? 0), 0);
    });
    return heads;
  });
  const add = (place: number, heads: ArrayLike<number>, times: number) => {
    const sum = there[place] as Float64Array;
    for (let n = 0; n < sum.length; n++) sum[n] = (sum[n] as number) + times * (heads[n] ?? 0);
  };
  parcels.forEach((parcel, i) => {
    if (parcel.period !== t) return;
    parcel.packs.forEach(({ place, brings }, j) => {
      add(place, brings, packs[i]?.[j] ?? 0);
    });
  });
  starts.forEach(({ place, brings }, i) => {
    add(place, brings[t] ?? [], cups[i] ?? 0);
  });
  return there;
}

interface Feeding {
  readonly e: number;
  readonly t: number;
  readonly there: readonly Float64Array[];
  readonly flows: Flows;
  readonly order: readonly number[];
}

function feed(eater: PlanEater, { e, t, there, flows, order }: Feeding): void {
  const late = flows.late[e] as Float64Array;
  let wants = (eater.wanted[t] as number) + (t > 0 ? (late[t - 1] as number) : 0);
  const use = flows.use[e]?.[t] as Float64Array;
  const room = eater.caps.map(({ share }) => share * (eater.wanted[t] as number));
  for (const isCapped of [true, false]) {
    for (const k of order) {
      const { place, node, items, cap } = eater.fare[k] as PlanEater['fare'][number];
      const heads = there[place] as Float64Array;
      const most = isCapped && cap >= 0 ? Math.min(wants, room[cap] as number) : wants;
      const taken = Math.min(heads[node] as number, Math.max(0, most) / items);
      heads[node] = (heads[node] as number) - taken;
      use[k] = (use[k] as number) + taken;
      wants -= taken * items;
      if (cap >= 0) room[cap] = (room[cap] as number) - taken * items;
    }
  }
  wants = Math.max(0, wants);
  late[t] = Math.min(wants, eater.lateMost[t] as number);
  (flows.missed[e] as Float64Array)[t] = wants - (late[t] as number);
}

/** What finds no room goes, of every size alike. */
function withinRoom({ room }: PlanPlace, heads: Float64Array): Float64Array {
  const load = room ? heads.reduce((sum, n, node) => sum + n * (room.footprint[node] as number), 0) : 0;
  return room && load > room.most ? heads.map((n) => (n * room.most) / load) : heads;
}

/** What the programme would minimise, of decisions and flows given. */
export function planCost(problem: PlanProblem, decided: Decisions, flows: Flows): number {
  const { eaters, places, periods, pools } = problem;
  let value = decisionsCost(problem, decided);
  eaters.forEach((eater, e) => {
    for (let t = 0; t < periods; t++) {
      const over = eater.caps.map(({ share }) => -share * (eater.wanted[t] as number));
      eater.fare.forEach(({ cents, items, cap }, k) => {
        const used = flows.use[e]?.[t]?.[k] ?? 0;
        value += cents * used;
        if (cap >= 0) over[cap] = (over[cap] as number) + items * used;
      });
      eater.caps.forEach(({ cents }, cap) => {
        value += cents * Math.max(0, over[cap] as number);
      });
      value += eater.lateCents * (flows.late[e]?.[t] ?? 0) + eater.missedCents * (flows.missed[e]?.[t] ?? 0);
    }
  });
  places.forEach(({ keepCents, floor }, p) => {
    for (const heads of flows.left[p] ?? []) {
      value += keepCents * heads.reduce((a, b) => a + b, 0);
      const kept = floor ? heads.reduce((sum, n, node) => sum + n * (floor.counts[node] as number), 0) : 0;
      if (floor) value += floor.cents * Math.max(0, floor.least - kept);
    }
  });
  for (const { fare, least, cents } of pools) {
    for (let t = 0; t < periods; t++) {
      const ready = fare.reduce(
        (sum, each) => sum + each.items * (flows.left[each.place]?.[t]?.[each.node] ?? 0),
        0,
      );
      value += cents * Math.max(0, (least[t] as number) - ready);
    }
  }
  return value - endValue(problem, flows);
}

/** What is left at the end, handed to those who will want it in the order in which they are fed. */
function endValue({ eaters, places, periods }: PlanProblem, flows: Flows): number {
  const left = places.map((_, p) => Float64Array.from(flows.left[p]?.[periods - 1] ?? []));
  const order = [...eaters.keys()].sort(
    (a, b) => (eaters[b]?.endCents ?? 0) - (eaters[a]?.endCents ?? 0) || a - b,
  );
  let value = 0;
  for (const e of order) {
    const { fare, endWanted, endCents } = eaters[e] as PlanEater;
    let wants = endWanted;
    for (const { place, node, items } of fare) {
      const heads = left[place] as Float64Array;
      const taken = Math.min(heads[node] as number, wants / items);
      heads[node] = (heads[node] as number) - taken;
      wants -= taken * items;
      value += endCents * items * taken;
    }
  }
  return value;
}
