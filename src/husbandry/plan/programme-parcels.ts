/** Parcels in the programme: sent or not, packs at each price, minimum orders, postage that is free from a sum. */
import type { Row } from '../../maths/linear-programme.ts';
import type { Columns } from './columns.ts';
import type { PlanPack, PlanParcel } from './problem.ts';

/** Where a parcel stands among the columns. */
export interface ParcelColumns {
  readonly sent: number;
  readonly free: number | null;
  readonly packs: readonly (readonly number[])[];
}

/** A parcel: sent or not, its packs at each break, and whether its postage is free. */
export function parcelColumns(
  columns: Columns,
  rows: Row[],
  parcel: PlanParcel,
  wholeUntil: number,
): ParcelColumns {
  const whole = parcel.period < wholeUntil;
  const most = 1;
  const least = Number(parcel.packs.some((pack) => pack.least > 0));
  const costs = parcel.postageCents + parcel.labourCents;
  // A parcel that costs nothing by itself need not be sent or not.
  const sent = columns.one({ worth: costs, least, most, whole: whole && costs + parcel.minimumCents > 0 });
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
