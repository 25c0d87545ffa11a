/** A day of a stage chain as a band of transition shares, laid out once for rates that hold for many days. */

/** Diagonals are gone along four at a time: one pass over the heads serves four. */
const AT_ONCE = 4;

/** P[to][from] of one day without births, by diagonals: heads move on by d compartments, d = 0, 1, 2 ... */
export interface BandedDay {
  readonly size: number;
  /** Share that moves from `to - d` to `to`, at [d * size + to]. */
  readonly shares: Float64Array;
  /** For each four diagonals the first compartment they reach, and the one after the last. */
  readonly first: Int32Array;
  readonly end: Int32Array;
  /** First compartment that may bear on the day; for each from there on its newborn alive at the day's end, by compartment. */
  readonly firstBearing: number;
  readonly young: Float64Array;
  readonly youngWidth: number;
  /** Births of the day per head of each compartment from `firstBearing` on. */
  readonly births: Float64Array;
}

/** One column of a day: what becomes of one head, and of what it bears. */
export interface DayColumn {
  readonly heads: Float64Array;
  readonly born: number;
}

/** Shares of a head smaller than this are left out. */
const NEGLIGIBLE = 1e-16;
/** More newborn than this among those that bear: births of births count. */
const BEARING = 1e-13;

/**
 * Lays out a day from its columns: `column(from, laying)` follows one head of a compartment. Births add up in
 * proportion to the laying as long as what is born in a day bears nothing in it; null where it does.
 */
export function bandedDay(
  size: number,
  firstBirth: number,
  column: (from: number, laying: number) => DayColumn,
): BandedDay | null {
  const barren = Array.from({ length: size }, (_, from) => column(from, 0));
  const reach = barren.map(({ heads }, from) => heads.findLastIndex((share) => share > NEGLIGIBLE) - from);
  const width = 1 + reach.reduce((most, n) => Math.max(most, n), 0);
  const firstBearing = Math.max(0, firstBirth - width + 1);
  const bearing = Array.from({ length: size - firstBearing }, (_, k) => column(firstBearing + k, 1));
  const newborn = bearing.map(({ heads }, k) =>
    heads.map((n, j) => n - (barren[firstBearing + k]?.heads[j] as number)),
  );
  if (newborn.some((one) => one.subarray(firstBirth).some((n) => n > BEARING))) return null;
  const youngWidth = Math.max(
    0,
    ...newborn.map((one) => 1 + one.subarray(0, firstBirth).findLastIndex((n) => n > NEGLIGIBLE)),
  );
  const births = Float64Array.from(bearing, ({ born }) => born);
  const young = new Float64Array(bearing.length * youngWidth);
  newborn.forEach((one, k) => {
    young.set(one.subarray(0, youngWidth), k * youngWidth);
  });
  return { size, ...diagonals(barren, width), firstBearing, young, youngWidth, births };
}

/** Columns laid out by diagonals, and where the shares of each four begin and end. */
function diagonals(
  columns: readonly DayColumn[],
  width: number,
): Pick<BandedDay, 'shares' | 'first' | 'end'> {
  const size = columns.length;
  const blocks = Math.ceil(width / AT_ONCE);
  const shares = new Float64Array(blocks * AT_ONCE * size);
  const first = new Int32Array(blocks).fill(size);
  const end = new Int32Array(blocks);
  columns.forEach(({ heads }, from) => {
    for (let d = 0; d < width && from + d < size; d++) {
      const share = heads[from + d] as number;
      if (share <= NEGLIGIBLE) continue;
      const block = Math.floor(d / AT_ONCE);
      shares[d * size + from + d] = share;
      first[block] = Math.min(first[block] as number, from + d);
      end[block] = Math.max(end[block] as number, from + d + 1);
    }
  });
  return { shares, first, end };
}

/** The heads a day on, and what was born at `laying` times the full rate. */
export function afterBandedDay(day: BandedDay, heads: Float64Array, laying: number): DayColumn {
  const { size, first, end, firstBearing, young, youngWidth, births } = day;
  const next = new Float64Array(size);
  for (let block = 0; block < first.length; block++)
    addDiagonals(day, { heads, next, d: block * AT_ONCE, from: first[block]!, end: end[block]! });
  let born = 0;
  for (let k = 0; laying > 0 && k < births.length; k++) {
    const bearing = laying * (heads[firstBearing + k] as number);
    born += bearing * (births[k] as number);
    for (let j = 0; bearing > 0 && j < youngWidth; j++)
      next[j] = (next[j] as number) + bearing * (young[k * youngWidth + j] as number);
  }
  return { heads: next, born };
}

interface Diagonals {
  readonly heads: Float64Array;
  readonly next: Float64Array;
  /** The first of the four. */
  readonly d: number;
  readonly from: number;
  readonly end: number;
}

/** Adds what four diagonals bring to each compartment. */
function addDiagonals({ size, shares }: BandedDay, { heads, next, d, from, end }: Diagonals): void {
  const [first, second, third, fourth] = [d * size, (d + 1) * size, (d + 2) * size, (d + 3) * size];
  // No index below 0 is read: engines leave their fast path there.
  let one = from > d ? (heads[from - d - 1] as number) : 0;
  let two = from > d + 1 ? (heads[from - d - 2] as number) : 0;
  let three = from > d + 2 ? (heads[from - d - 3] as number) : 0;
  for (let to = from; to < end; to++) {
    const here = heads[to - d] as number;
    next[to] =
      (next[to] as number) +
      (shares[first + to] as number) * here +
      (shares[second + to] as number) * one +
      ((shares[third + to] as number) * two + (shares[fourth + to] as number) * three);
    three = two;
    two = one;
    one = here;
  }
}
