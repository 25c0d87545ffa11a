/** What living plans through in fates needs to hand, so that nothing is made anew for each of thousands of plans. */
import type { Fates } from './fates.ts';
import type { Living } from './living.ts';
import type { PlanEater, PlanPlace } from './problem.ts';

/** Sums over all fates. */
export interface Noted {
  /** Heads eaten, at [(period * eaters + eater) * nodes + node]. */
  readonly eaten: Float64Array;
  /** Heads eaten by all in each fate by itself, at [(fate * periods + period) * nodes + node]. */
  readonly taken: Float64Array;
  /** Items late, and items that stand ready after the meals, at [period * eaters + eater]. */
  readonly late: Float64Array;
  readonly ready: Float64Array;
  /** Items missed in each fate by itself, at [(fate * periods + period) * eaters + eater]. */
  readonly missedIn: Float64Array;
  /** One number: what is left after the last period is worth, less what colonies have lost. */
  readonly endCents: Float64Array;
}

/** Arrays that serve every fate of every plan, and how the plan last settled on stood at the start of each period. */
export interface Room {
  readonly fates: Fates;
  /** Who eats, told finely. */
  readonly living: Living;
  /** A change dearer in each of so many fates is not tried in the others. */
  readonly tried: number;
  /** What the plan settled on costs in each fate, and all fates: the dearest, the cheapest, the next dearest ... */
  readonly settled: Float64Array;
  readonly order: Int32Array;
  /** Share of each slice that nobody has eaten yet. */
  readonly rest: Float64Array;
  /** Colonies, and what each should be worth at the end, in breeders, at [fate * colonies + colony]. */
  readonly breeding: readonly Breeding[];
  readonly bredLeast: Float64Array;
  /** Heads of each node, before and after the meals of a period, and of those left alone meanwhile. */
  readonly there: Float64Array;
  readonly before: Float64Array;
  readonly aside: Float64Array;
  readonly late: Float64Array;
  /** What is noted of every meal; null where only the cost is asked for. */
  readonly noted: Noted | null;
  /** Items the eater just fed goes without. */
  readonly wants: Float64Array;
  /** Items that may wait without being missed, at [(fate * periods + period) * eaters + eater]. */
  readonly waits: Float64Array;
  /** Lots of the plan under way, and how many times each is there. */
  readonly active: Int32Array;
  readonly times: Float64Array;
  /** By fate and period: what is not eaten of each slice, items late by eater, cost so far. */
  readonly restAt: Float64Array;
  readonly lateAt: Float64Array;
  readonly centsAt: Float64Array;
}

/** A colony that is kept: its first node, what a head of each counts as a breeder, how many are wanted, the price of one that is missing. */
export interface Breeding {
  readonly first: number;
  readonly counts: Float64Array;
  readonly wanted: number;
  readonly cents: number;
}

export function roomFor(fates: Fates, living: Living, tried: number): Room {
  const { nodes, problem } = living;
  const floats = (size: number) => new Float64Array(size);
  const breeding = problem.places.flatMap(({ floor }, p): Breeding[] =>
    floor ? [breedingFrom(floor, living.first[p] as number)] : [],
  );
  const moments = fates.count * problem.periods;
  return {
    fates,
    living,
    tried,
    settled: floats(fates.count),
    order: Int32Array.from({ length: fates.count }, (_, fate) => fate),
    breeding,
    bredLeast: bredIn(fates, breeding),
    rest: floats(fates.slices),
    there: floats(nodes),
    before: floats(nodes),
    aside: floats(nodes),
    late: floats(problem.eaters.length),
    noted: null,
    wants: floats(1),
    waits: waitsIn(fates, problem.eaters),
    active: new Int32Array(fates.lots.length),
    times: floats(fates.lots.length),
    restAt: floats(moments * fates.slices),
    lateAt: floats(moments * problem.eaters.length),
    centsAt: floats(moments),
  };
}

const breedingFrom = (
  { counts, cents, least }: NonNullable<PlanPlace['floor']>,
  first: number,
): Breeding => ({ first, counts, cents, wanted: least[least.length - 1] as number });

/** As much as is wanted, no more than where nobody ate of it. */
function bredIn(fates: Fates, breeding: readonly Breeding[]): Float64Array {
  const least = new Float64Array(fates.count * breeding.length);
  for (let fate = 0; fate < fates.count; fate++) {
    const moment = ((fate + 1) * fates.periods - 1) * fates.lots.length;
    const [from, end] = [fates.from[moment] as number, fates.from[moment + fates.lots.length] as number];
    breeding.forEach(({ first, counts, wanted }, c) => {
      let worth = 0;
      for (let at = from; at < end; at++)
        worth += (counts[(fates.node[at] as number) - first] ?? 0) * (fates.heads[at] as number);
      least[fate * breeding.length + c] = Math.min(wanted, worth);
    });
  }
  return least;
}

/** As many as in the mean, times what is wanted in this fate, this period and the one before, over what is in the mean. */
function waitsIn(
  { wanted, count, periods, eaters: size }: Fates,
  eaters: readonly PlanEater[],
): Float64Array {
  const waits = new Float64Array(count * periods * size);
  for (let fate = 0; fate < count; fate++)
    for (let t = 0; t < periods; t++) {
      const at = (fate * periods + t) * size;
      eaters.forEach(({ lateMost, wanted: mean }, e) => {
        const before = t > 0 ? t - 1 : t;
        const usual = (mean[t] as number) + (mean[before] as number);
        const here = (wanted[at + e] as number) + (wanted[at - (t - before) * size + e] as number);
        waits[at + e] = (lateMost[t] as number) * (usual > 0 ? here / usual : 1);
      });
    }
  return waits;
}
