/** Decisions lived through: what they cost in the programme's own prices, and the flows that go with them. */
import type { Cents } from '../orders/index.ts';
import { leftWorth } from './left-worth.ts';
import type { EaterLaid, Living, PassedOn } from './living.ts';
import { decisionsCost } from './parcel-cost.ts';
import type { PlanEater, PlanProblem } from './problem.ts';
import type { Decisions, Flows } from './proposal.ts';
import { asideIn, putBack, setAside } from './set-aside.ts';

/** Where flows are noted, for those who want them. */
interface Noted {
  readonly use: Float64Array[][];
  readonly late: Float64Array[];
  readonly missed: Float64Array[];
}

/** What decisions cost, in the programme's prices. */
export const costOfPlan = (living: Living, decided: Decisions): Cents =>
  decisionsCost(living.problem, decided) + lived(living, decided, null);

/** Flows of decisions. */
export function flowsOf(living: Living, decided: Decisions): Flows {
  const { eaters, periods, places } = living.problem;
  const noted: Noted = {
    use: eaters.map(({ fare }) => Array.from({ length: periods }, () => new Float64Array(fare.length))),
    late: eaters.map(() => new Float64Array(periods)),
    missed: eaters.map(() => new Float64Array(periods)),
  };
  lived(living, decided, noted);
  const left = places.map(({ nodes }, p) =>
    Array.from({ length: periods }, (_, t) => {
      const from = t * living.nodes + (living.first[p] as number);
      return living.left.slice(from, from + nodes);
    }),
  );
  return { ...noted, left };
}

/** Lives decisions through; returns what is beside their own price: late, missed, kept, not ready; less what is left. */
function lived(living: Living, decided: Decisions, noted: Noted | null): number {
  const { problem, nodes, there, left } = living;
  const late = new Float64Array(problem.eaters.length);
  const aside = asideIn(problem, living.first, decided);
  let cents = 0;
  for (let t = 0; t < problem.periods; t++) {
    arrive(living, decided, t);
    setAside(aside, t, living);
    for (const e of living.order) cents += feed(living, { e, t, late, noted });
    putBack(aside, t, living);
    makeRoom(living);
    left.set(there, t * nodes);
    cents += standingCents(living, t);
  }
  return cents - leftWorth(living, living.there);
}

/** Heads of every node before anybody eats. */
function arrive(
  { problem, nodes, comes, passes, there, left, first }: Living,
  decided: Decisions,
  t: number,
): void {
  const rows = passes[t] as readonly PassedOn[];
  const before = (t - 1) * nodes;
  for (let n = 0; n < nodes; n++) {
    let heads = comes[t * nodes + n] as number;
    const { columns, factors } = rows[n] as PassedOn;
    for (let k = 0; k < columns.length; k++)
      heads += (factors[k] as number) * (left[before + (columns[k] as number)] as number);
    there[n] = heads;
  }
  const add = (place: number, heads: ArrayLike<number> | undefined, times: number): void => {
    if (times <= 0 || !heads) return;
    const offset = first[place] as number;
    for (let n = 0; n < heads.length; n++)
      there[offset + n] = (there[offset + n] as number) + times * (heads[n] as number);
  };
  for (let i = 0; i < problem.parcels.length; i++) {
    const { period, packs } = problem.parcels[i] as PlanProblem['parcels'][number];
    if (period !== t) continue;
    for (let j = 0; j < packs.length; j++)
      add(packs[j]?.place as number, packs[j]?.brings, decided.packs[i]?.[j] ?? 0);
  }
  for (let i = 0; i < problem.starts.length; i++)
    add(problem.starts[i]?.place as number, problem.starts[i]?.brings[t], decided.cups[i] ?? 0);
}

interface Feeding {
  readonly e: number;
  readonly t: number;
  /** Items that wait, by eater. */
  readonly late: Float64Array;
  readonly noted: Noted | null;
}

/**
 * Feeds one eater and returns what that costs beside the prey; caps on shares hold in a first round and are priced in a
 * second, and last comes what is left alone.
 */
function feed({ problem, eaters, there, aside }: Living, { e, t, late, noted }: Feeding): number {
  const eater = problem.eaters[e] as PlanEater;
  const { fare, node, items, cents, cap, capRoom } = eaters[e] as EaterLaid;
  const wanted = eater.wanted[t] as number;
  let wants = wanted + (late[e] as number);
  let cost = 0;
  for (let c = 0; c < capRoom.length; c++) capRoom[c] = (eater.caps[c]?.share ?? 1) * wanted;
  const rounds = capRoom.length > 0 ? [there, there, aside] : [there, aside];
  rounds.forEach((from, round) => {
    const within = round === 0 && rounds.length > 2;
    for (let k = 0; k < node.length && wants > 0; k++) {
      const heads = from[node[k] as number] as number;
      if (heads <= 0) continue;
      const of = cap[k] as number;
      const most = within && of >= 0 ? Math.min(wants, capRoom[of] as number) : wants;
      if (most <= 0) continue;
      const taken = Math.min(heads, most / (items[k] as number));
      from[node[k] as number] = heads - taken;
      const eaten = taken * (items[k] as number);
      wants -= eaten;
      cost += taken * (cents[k] as number);
      if (of >= 0) capRoom[of] = (capRoom[of] as number) - eaten;
      if (noted) {
        const use = noted.use[e]?.[t] as Float64Array;
        use[fare[k] as number] = (use[fare[k] as number] as number) + taken;
      }
    }
  });
  for (let c = 0; c < capRoom.length; c++)
    cost += Math.max(0, -(capRoom[c] as number)) * (eater.caps[c]?.cents ?? 0);
  wants = Math.max(0, wants);
  const waits = Math.min(wants, eater.lateMost[t] as number);
  late[e] = waits;
  if (noted) {
    (noted.late[e] as Float64Array)[t] = waits;
    (noted.missed[e] as Float64Array)[t] = wants - waits;
  }
  return cost + waits * eater.lateCents + (wants - waits) * eater.missedCents;
}

/** What finds no room goes, of every size alike. */
function makeRoom({ problem, there, first }: Living): void {
  problem.places.forEach(({ room, nodes }, p) => {
    if (!room) return;
    const from = first[p] as number;
    let load = 0;
    for (let n = 0; n < nodes; n++) load += (there[from + n] as number) * (room.footprint[n] as number);
    if (load <= room.most) return;
    for (let n = 0; n < nodes; n++) there[from + n] = ((there[from + n] as number) * room.most) / load;
  });
}

/** Price of keeping what is left, of breeders missing, and of what is not ready. */
function standingCents({ problem, nodes, there, first, keepCents, pools }: Living, t: number): number {
  let cents = 0;
  for (let n = 0; n < nodes; n++) cents += (there[n] as number) * (keepCents[n] as number);
  problem.places.forEach(({ floor, nodes: own }, p) => {
    if (!floor) return;
    let kept = 0;
    for (let n = 0; n < own; n++)
      kept += (there[(first[p] as number) + n] as number) * (floor.counts[n] as number);
    cents += floor.cents * Math.max(0, (floor.least[t] as number) - kept);
  });
  for (let k = 0; k < pools.length; k++) {
    const { node, items } = pools[k] as Living['pools'][number];
    const pool = problem.pools[k] as PlanProblem['pools'][number];
    const least = pool.least[t] as number;
    if (least <= 0) continue;
    let ready = 0;
    for (let i = 0; i < node.length; i++)
      ready += (items[i] as number) * (there[node[i] as number] as number);
    cents += pool.cents * Math.max(0, least - ready);
  }
  return cents;
}
