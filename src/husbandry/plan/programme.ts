/**
 * The plan as a mixed programme. In each period, of each node: R + sum use <= comes + sum packs brings + P R(before),
 * R what is left [heads]; of each eater: items use + missed + late - late(before) = wanted, so that nothing is eaten
 * before it is due. What is not needed may go, so the first is an inequality.
 */
import { LEAST_FACTOR, type LinearProgramme, type Row } from '../../maths/linear-programme.ts';
import { Columns } from './columns.ts';
import type { PlanEater, PlanPack, PlanParcel, PlanPlace, PlanProblem } from './problem.ts';

/** Where everything stands among the columns. */
export interface Laid {
  readonly programme: LinearProgramme;
  /** Heads left, by place, period and node. */
  readonly left: readonly (readonly number[])[];
  /** Heads used, by eater, period and fare; first column of the row. */
  readonly use: readonly (readonly number[])[];
  readonly late: readonly number[];
  readonly missed: readonly number[];
  /** Parcels sent, packs by parcel and pack (one column a break), cups by start. */
  readonly sent: readonly number[];
  readonly packs: readonly (readonly (readonly number[])[])[];
  readonly cups: readonly number[];
  readonly free: readonly (number | null)[];
  /** Items short of a pool, by pool; first column. */
  readonly short: readonly number[];
}

export function programmeOf(problem: PlanProblem): Laid {
  const columns = new Columns();
  const rows: Row[] = [];
  const { periods } = problem;
  const left = problem.places.map((place) =>
    Array.from({ length: periods }, () => columns.many(place.nodes, { worth: place.keepCents })),
  );
  const use = problem.eaters.map(({ fare }) =>
    Array.from({ length: periods }, () => columns.each(fare.map(({ cents }) => cents))),
  );
  const late = problem.eaters.map((eater) =>
    columns.each(new Array(periods).fill(eater.lateCents), { most: eater.lateMost }),
  );
  const missed = problem.eaters.map((eater) => columns.many(periods, { worth: eater.missedCents }));
  const bought = problem.parcels.map((parcel) => parcelColumns(columns, rows, parcel, problem.wholeUntil));
  const cups = problem.starts.map(({ cents, least, most, period }) =>
    columns.one({ worth: cents, least, most, whole: period < problem.wholeUntil }),
  );
  const short = problem.pools.map(({ cents }) => columns.many(periods, { worth: cents }));
  const laid = {
    left,
    use,
    late,
    missed,
    sent: bought.map(({ sent }) => sent),
    packs: bought.map(({ packs }) => packs),
    free: bought.map(({ free }) => free),
    cups,
    short,
  };
  standing(problem, laid, rows);
  problem.eaters.forEach((eater, e) => {
    eating(eater, { laid, e, periods, rows, columns });
  });
  problem.pools.forEach((pool, k) => {
    for (let t = 0; t < periods; t++) {
      const least = pool.least[t] as number;
      if (least <= 0) continue;
      const terms = pool.fare.map(({ place, node }) => (left[place]?.[t] as number) + node);
      rows.push({
        least,
        most: Number.POSITIVE_INFINITY,
        columns: [...terms, (short[k] as number) + t],
        factors: [...pool.fare.map(({ items }) => items), 1],
      });
    }
  });
  problem.places.forEach((place, p) => {
    bounds(place, left[p] as readonly number[], { columns, rows });
  });
  afterwards(problem, laid, { columns, rows });
  budgets(problem, laid, rows);
  return { ...laid, programme: columns.programme(rows) };
}

interface Bought {
  readonly sent: number;
  readonly free: number | null;
  readonly packs: readonly (readonly number[])[];
}

/** A parcel: sent or not, its packs at each break, and whether its postage is free. */
function parcelColumns(columns: Columns, rows: Row[], parcel: PlanParcel, wholeUntil: number): Bought {
  const whole = parcel.period < wholeUntil;
  const most = 1;
  const least = Number(parcel.packs.some((pack) => pack.least > 0));
  const sent = columns.one({ worth: parcel.postageCents + parcel.labourCents, least, most, whole });
  const mayBeFree = parcel.freeFromCents !== null && (parcel.postageCents > 0 || byWeight(parcel));
  const packs = parcel.packs.map((pack) =>
    packColumns(columns, rows, { pack, sent, whole, weighed: !mayBeFree }),
  );
  const goods = parcel.packs.flatMap((pack, i) =>
    pack.breaks.map(({ cents }, b) => ({ column: packs[i]?.[b] as number, cents })),
  );
  const terms = (column: number, factor: number) => ({
    columns: [...goods.map((each) => each.column), column],
    factors: [...goods.map(({ cents }) => cents), factor],
  });
  if (parcel.minimumCents > 0)
    rows.push({ least: 0, most: Number.POSITIVE_INFINITY, ...terms(sent, -parcel.minimumCents) });
  if (parcel.freeFromCents === null || !mayBeFree) return { sent, packs, free: null };
  const free = columns.one({ worth: -parcel.postageCents, most: 1, whole });
  rows.push({ least: 0, most: Number.POSITIVE_INFINITY, ...terms(free, -parcel.freeFromCents) });
  rows.push({ least: 0, most: 1, columns: [sent, free], factors: [1, -1] });
  if (byWeight(parcel)) weighing(columns, rows, { parcel, packs, free });
  return { sent, packs, free };
}

const byWeight = ({ packs }: PlanParcel): boolean => packs.some(({ weightCents }) => weightCents > 0);

interface Weighing {
  readonly parcel: PlanParcel;
  readonly packs: readonly (readonly number[])[];
  readonly free: number;
}

/** Postage by weight >= that of the packs, unless it is free. */
function weighing(columns: Columns, rows: Row[], { parcel, packs, free }: Weighing): void {
  const paid = columns.one({ worth: 1 });
  const terms = parcel.packs.flatMap(({ weightCents }, j) =>
    (packs[j] ?? []).map((column) => ({ column, cents: -weightCents })),
  );
  const most = parcel.packs.reduce((sum, pack) => sum + pack.weightCents * pack.most, 0);
  rows.push({
    least: 0,
    most: Number.POSITIVE_INFINITY,
    columns: [paid, free, ...terms.map(({ column }) => column)],
    factors: [1, most, ...terms.map(({ cents }) => cents)],
  });
}

interface Packing {
  readonly pack: PlanPack;
  readonly sent: number;
  readonly whole: boolean;
  /** Whether postage by weight is paid with each pack. */
  readonly weighed: boolean;
}

/** One column a price break; from the second on a break is open only where so many packs are bought. */
function packColumns(columns: Columns, rows: Row[], { pack, sent, whole, weighed }: Packing): number[] {
  const { breaks, most, least, weightCents } = pack;
  const has = pack.lineCents > 0 ? columns.one({ worth: pack.lineCents, most: 1, whole }) : sent;
  if (has !== sent) rows.push({ least: 0, most: 1, columns: [sent, has], factors: [1, -1] });
  const each = breaks.map(({ cents }, b) => {
    const top = Math.min(most, (breaks[b + 1]?.fromPacks ?? Number.POSITIVE_INFINITY) - 1);
    return {
      column: columns.one({ worth: cents + (weighed ? weightCents : 0), most: Math.max(0, top), whole }),
      top,
    };
  });
  const all = each.map(({ column }) => column);
  if (breaks.length === 1) rows.push(within(all, has, most));
  else breakRows(rows, { columns, pack, each, has, whole });
  if (least > 0)
    rows.push({ least, most: Number.POSITIVE_INFINITY, columns: all, factors: all.map(() => 1) });
  return all;
}

/** Sum of columns <= most x switch. */
const within = (terms: readonly number[], on: number, most: number): Row => ({
  least: Number.NEGATIVE_INFINITY,
  most: 0,
  columns: [...terms, on],
  factors: [...terms.map(() => 1), -most],
});

interface Breaks {
  readonly columns: Columns;
  readonly pack: PlanPack;
  readonly each: readonly { readonly column: number; readonly top: number }[];
  readonly has: number;
  readonly whole: boolean;
}

/** At most one break is open; an open one has from its first pack to the one before the next. */
function breakRows(rows: Row[], { columns, pack, each, has, whole }: Breaks): void {
  const open = each.map(({ column, top }, b) => {
    const from = pack.breaks[b]?.fromPacks as number;
    const on = columns.one({ most: from <= pack.most ? 1 : 0, whole });
    rows.push(within([column], on, Math.max(0, top)));
    rows.push({
      least: 0,
      most: Number.POSITIVE_INFINITY,
      columns: [column, on],
      factors: [1, -from],
    });
    return on;
  });
  rows.push(within(open, has, 1));
}

type Placed = Pick<Laid, 'left' | 'use' | 'packs' | 'cups'>;

/** What is left and used of a node is at most what is there. */
function standing(problem: PlanProblem, { left, use, packs, cups }: Placed, rows: Row[]): void {
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

interface Eating {
  readonly laid: Pick<Laid, 'use' | 'late' | 'missed'>;
  readonly e: number;
  readonly periods: number;
  readonly rows: Row[];
  readonly columns: Columns;
}

function eating(eater: PlanEater, { laid, e, periods, rows, columns }: Eating): void {
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

interface Building {
  readonly columns: Columns;
  readonly rows: Row[];
}

/** Room for what is left, and breeders that stay. */
function bounds(
  { room, floor, nodes }: PlanPlace,
  left: readonly number[],
  { columns, rows }: Building,
): void {
  for (const first of left) {
    const all = Array.from({ length: nodes }, (_, n) => first + n);
    if (room)
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: room.most,
        columns: all,
        factors: Array.from(room.footprint),
      });
    if (floor && floor.least > 0) {
      const missing = columns.one({ worth: floor.cents, most: floor.least });
      rows.push({
        least: floor.least,
        most: Number.POSITIVE_INFINITY,
        columns: [...all, missing],
        factors: [...floor.counts, 1],
      });
    }
  }
}

/** What is left at the end is worth what it will save, up to what will still be wanted. */
function afterwards(
  { eaters, places, periods }: PlanProblem,
  { left }: Placed,
  { columns, rows }: Building,
): void {
  const drawn = places.map(({ nodes }) => Array.from({ length: nodes }, (): number[] => []));
  for (const { fare, endWanted, endCents } of eaters) {
    if (endWanted <= 0 || endCents <= 0) continue;
    const terms = fare.map(({ place, node, items }) => {
      const column = columns.one({ worth: -endCents * items });
      drawn[place]?.[node]?.push(column);
      return { column, items };
    });
    rows.push({
      least: Number.NEGATIVE_INFINITY,
      most: endWanted,
      columns: terms.map(({ column }) => column),
      factors: terms.map(({ items }) => items),
    });
  }
  drawn.forEach((nodes, p) => {
    nodes.forEach((terms, n) => {
      if (terms.length === 0) return;
      const end = (left[p]?.[periods - 1] as number) + n;
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most: 0,
        columns: [...terms, end],
        factors: [...terms.map(() => 1), -1],
      });
    });
  });
}

type Paid = Pick<Laid, 'sent' | 'packs' | 'free' | 'cups'>;

/** What is paid in a period is at most what may be spent. */
function budgets({ budget, parcels, starts, periods }: PlanProblem, paid: Paid, rows: Row[]): void {
  for (let t = 0; t < periods; t++) {
    const most = budget[t] ?? Number.POSITIVE_INFINITY;
    if (!Number.isFinite(most)) continue;
    const terms: { column: number; cents: number }[] = [];
    parcels.forEach((parcel, i) => {
      if (parcel.paid !== t) return;
      terms.push({ column: paid.sent[i] as number, cents: parcel.postageCents });
      const free = paid.free[i];
      if (free != null) terms.push({ column: free, cents: -parcel.postageCents });
      parcel.packs.forEach(({ breaks, weightCents }, j) => {
        breaks.forEach(({ cents }, b) => {
          terms.push({ column: paid.packs[i]?.[j]?.[b] as number, cents: cents + weightCents });
        });
      });
    });
    starts.forEach(({ period, cents }, i) => {
      if (period === t) terms.push({ column: paid.cups[i] as number, cents });
    });
    if (terms.length > 0)
      rows.push({
        least: Number.NEGATIVE_INFINITY,
        most,
        columns: terms.map(({ column }) => column),
        factors: terms.map(({ cents }) => cents),
      });
  }
}
