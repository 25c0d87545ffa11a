/**
 * What the best use of given stock costs, whatever brought it: written from the words of a plan's problem alone, with
 * no column for what is left. What stands in a node is what came to it and passed on, less what of that was eaten or
 * thrown away before; solved on a dense table of our own.
 */
import type { PlanEater, PlanPlace, PlanProblem } from '../../../src/husbandry/plan/problem.ts';
import { type DenseRow, leastOf } from './dense-simplex.ts';

/** Heads brought by place, period and node, beside what comes whatever is decided. */
export type Brought = readonly (readonly Float64Array[])[];

class Programme {
  readonly worth: number[] = [];
  readonly rows: DenseRow[] = [];
  fixed = 0;

  column(worth: number): number {
    return this.worth.push(worth) - 1;
  }

  row(factors: ReadonlyMap<number, number>, sense: DenseRow['sense'], right: number): void {
    this.rows.push({ factors, sense, right });
  }
}

/** Heads of a node as a fixed number less factors of columns. */
interface Standing {
  heads: number;
  readonly gone: Map<number, number>;
}

const into = (sum: Map<number, number>, column: number, factor: number): void => {
  if (factor !== 0) sum.set(column, (sum.get(column) ?? 0) + factor);
};

/** Late, missed, kept, prepared, not ready, breeders short, less what the end is worth. */
export function leastUseCost(problem: PlanProblem, brought: Brought): number {
  const { periods, places, eaters, pools } = problem;
  const p = new Programme();
  const meals = eaters.map((eater) =>
    Array.from({ length: periods }, (_, t) => ({
      use: eater.fare.map(({ cents }) => p.column(cents)),
      late: p.column(eater.lateCents),
      missed: p.column(eater.missedCents),
      t,
    })),
  );
  const left = places.map((place, i) => {
    const eaten = (t: number, node: number): number[] =>
      eaters.flatMap(({ fare }, e) =>
        fare.flatMap((each, k) => (each.place === i && each.node === node ? [meals[e]![t]!.use[k]!] : [])),
      );
    return standingOver(p, { place, periods, brought: brought[i]!, eaten });
  });
  for (const [e, eater] of eaters.entries()) mealRows(p, eater, meals[e]!);
  pools.forEach(({ fare, least, cents }) => {
    least.forEach((ready, t) => {
      if (ready <= 0) return;
      const parts = fare.map(({ place, node, items }) => ({
        standing: left[place]![t]![node]!,
        factor: items,
      }));
      atLeast(p, parts, { least: ready, cents });
    });
  });
  for (const [i, place] of places.entries()) placeRows(p, place, left[i]!);
  endRows(p, problem, left);
  return p.fixed + leastOf(p.worth, p.rows);
}

interface Following {
  readonly place: PlanPlace;
  readonly periods: number;
  readonly brought: readonly Float64Array[];
  readonly eaten: (t: number, node: number) => number[];
}

/** By period and node; nothing can be eaten or thrown away that is not there. */
function standingOver(p: Programme, { place, periods, brought, eaten }: Following): Standing[][] {
  const all: Standing[][] = [];
  for (let t = 0; t < periods; t++) {
    const pass = place.passes[t - 1];
    const now = Array.from({ length: place.nodes }, (_, node): Standing => {
      const standing: Standing = {
        heads: place.comes[t]![node]! + (brought[t]?.[node] ?? 0),
        gone: new Map(),
      };
      pass?.[node]?.forEach((share, from) => {
        const before = all[t - 1]![from]!;
        standing.heads += share * before.heads;
        for (const [column, factor] of before.gone) into(standing.gone, column, share * factor);
      });
      for (const column of [...eaten(t, node), p.column(0)]) into(standing.gone, column, 1);
      p.row(standing.gone, '<=', standing.heads);
      return standing;
    });
    for (const { heads, gone } of now) {
      p.fixed += place.keepCents * heads;
      for (const [column, factor] of gone) p.worth[column]! -= place.keepCents * factor;
    }
    all.push(now);
  }
  return all;
}

interface Meal {
  readonly use: readonly number[];
  readonly late: number;
  readonly missed: number;
}

function mealRows(p: Programme, eater: PlanEater, meals: readonly Meal[]): void {
  meals.forEach(({ use, late, missed }, t) => {
    const row = new Map<number, number>();
    for (const [k, column] of use.entries()) into(row, column, eater.fare[k]!.items);
    into(row, late, 1);
    into(row, missed, 1);
    if (t > 0) into(row, meals[t - 1]!.late, -1);
    p.row(row, '=', eater.wanted[t]!);
    if (Number.isFinite(eater.lateMost[t]!)) p.row(new Map([[late, 1]]), '<=', eater.lateMost[t]!);
    eater.caps.forEach(({ share, cents }, cap) => {
      const capped = new Map<number, number>([[p.column(cents), -1]]);
      use.forEach((column, k) => {
        if (eater.fare[k]!.cap === cap) into(capped, column, eater.fare[k]!.items);
      });
      p.row(capped, '<=', share * eater.wanted[t]!);
    });
  });
}

interface Part {
  readonly standing: Standing;
  readonly factor: number;
}

/** What stands there and what is short of it come to at least so much. */
function atLeast(
  p: Programme,
  parts: readonly Part[],
  { least, cents }: { least: number; cents: number },
): void {
  const row = new Map<number, number>([[p.column(cents), 1]]);
  let heads = 0;
  for (const { standing, factor } of parts) {
    heads += factor * standing.heads;
    for (const [column, gone] of standing.gone) into(row, column, -factor * gone);
  }
  p.row(row, '>=', least - heads);
}

function placeRows(p: Programme, { room, floor }: PlanPlace, left: readonly Standing[][]): void {
  for (const [t, nodes] of left.entries()) {
    if (floor)
      atLeast(
        p,
        nodes.map((standing, n) => ({ standing, factor: floor.counts[n]! })),
        { least: floor.least[t]!, cents: floor.cents },
      );
    if (!room) continue;
    const row = new Map<number, number>();
    let load = 0;
    nodes.forEach(({ heads, gone }, n) => {
      load += room.footprint[n]! * heads;
      for (const [column, factor] of gone) into(row, column, room.footprint[n]! * factor);
    });
    p.row(row, '>=', load - room.most);
  }
}

/** What is left is worth what it saves those who will want it, no more of it than they want while it lasts. */
function endRows(
  p: Programme,
  { eaters, periods }: PlanProblem,
  left: readonly (readonly Standing[][])[],
): void {
  const drawn = new Map<Standing, number[]>();
  for (const { end } of eaters) {
    const columns = end.fare.map(({ place, node, items, span }) => {
      const standing = left[place]![periods - 1]![node]!;
      const column = p.column(-end.cents * items);
      drawn.set(standing, [...(drawn.get(standing) ?? []), column]);
      p.row(new Map([[column, items]]), '<=', end.weekly * span);
      return column;
    });
    for (const { until: week } of end.fare) {
      const past = end.fare.flatMap(({ until, items }, k): [number, number][] =>
        until <= week ? [[columns[k]!, items]] : [],
      );
      p.row(new Map(past), '<=', end.weekly * week);
    }
  }
  for (const [{ heads, gone }, columns] of drawn) {
    const row = new Map(gone);
    for (const column of columns) into(row, column, 1);
    p.row(row, '<=', heads);
  }
}
