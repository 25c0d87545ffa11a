/** Rows of the programme that tie its periods together: what stands where, and who eats. */
import { LEAST_FACTOR, type Row } from '../../maths/linear-programme.ts';
import type { Columns } from './columns.ts';
import type { PlanEater, PlanPlace, PlanPool, PlanProblem } from './problem.ts';
import type { Laid } from './programme.ts';

type Placed = Pick<Laid, 'left' | 'use' | 'packs' | 'cups'>;

/** What is left and used of a node is at most what is there. */
export function standingRows(problem: PlanProblem, { left, use, packs, cups }: Placed, rows: Row[]): void {
  const { periods, places, parcels, starts } = problem;
  const takers = takersOf(problem);
  for (let p = 0; p < places.length; p++) {
    const place = places[p] as PlanPlace;
    for (let t = 0; t < periods; t++) {
      for (let n = 0; n < place.nodes; n++) {
        const columns = [(left[p]?.[t] as number) + n];
        const factors = [1];
        const add = (column: number, factor: number) => {
          if (Math.abs(factor) < LEAST_FACTOR) return;
          columns.push(column);
          factors.push(factor);
        };
        for (const { e, k } of takers[p]?.[n] ?? []) add((use[e]?.[t] as number) + k, 1);
        const before = t > 0 ? place.passes[t - 1]?.[n] : undefined;
        before?.forEach((share, from) => {
          add((left[p]?.[t - 1] as number) + from, -share);
        });
        parcels.forEach(({ period, packs: inside }, i) => {
          if (period !== t) return;
          inside.forEach((pack, j) => {
            if (pack.place === p)
              for (const column of packs[i]?.[j] ?? []) add(column, -(pack.brings[n] as number));
          });
        });
        starts.forEach(({ place: at, brings }, i) => {
          if (at === p) add(cups[i] as number, -(brings[t]?.[n] ?? 0));
        });
        rows.push({ least: Number.NEGATIVE_INFINITY, most: place.comes[t]?.[n] ?? 0, columns, factors });
      }
    }
  }
}

/** Who eats from each node: by place and node, eater and which of its fare. */
function takersOf({ places, eaters }: PlanProblem): { e: number; k: number }[][][] {
  const takers = places.map(({ nodes }) =>
    Array.from({ length: nodes }, (): { e: number; k: number }[] => []),
  );
  eaters.forEach(({ fare }, e) => {
    fare.forEach(({ place, node }, k) => {
      takers[place]?.[node]?.push({ e, k });
    });
  });
  return takers;
}

interface EatingLaid {
  readonly laid: Pick<Laid, 'use' | 'late' | 'missed'>;
  readonly e: number;
  readonly periods: number;
  readonly rows: Row[];
  readonly columns: Columns;
}

export function eatingRows(eater: PlanEater, { laid, e, periods, rows, columns }: EatingLaid): void {
  for (let t = 0; t < periods; t++) {
    const first = laid.use[e]?.[t] as number;
    const late = (laid.late[e] as number) + t;
    const terms = eater.fare.map((_, k) => first + k);
    const before = t > 0 ? [late - 1] : [];
    const wanted = eater.wanted[t] as number;
    rows.push({
      least: wanted,
      most: wanted,
      columns: [...terms, (laid.missed[e] as number) + t, late, ...before],
      factors: [...eater.fare.map(({ items }) => items), 1, 1, ...before.map(() => -1)],
    });
    eater.caps.forEach(({ share, cents }, cap) => {
      const over = columns.one({ worth: cents });
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: share * wanted,
        columns: [...terms.filter((_, k) => eater.fare[k]?.cap === cap), over],
        factors: [...eater.fare.filter((fare) => fare.cap === cap).map(({ items }) => items), -1],
      });
    });
  }
}

interface Ready {
  readonly left: Laid['left'];
  /** First of the columns that say how much is not ready. */
  readonly short: number;
  readonly rows: Row[];
}

/** What stands ready after the meals of a period, and what is short of it, is at least what was asked for. */
export function readyRows({ fare, least }: PlanPool, { left, short, rows }: Ready): void {
  least.forEach((items, t) => {
    if (items <= 0) return;
    const terms = fare.map(({ place, node }) => (left[place]?.[t] as number) + node);
    rows.push({
      least: items,
      most: Number.POSITIVE_INFINITY,
      columns: [...terms, short + t],
      factors: [...fare.map((each) => each.items), 1],
    });
  });
}
