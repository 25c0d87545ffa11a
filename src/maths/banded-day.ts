/** A day of a stage chain as a band of transition shares, laid out once for rates that hold for many days. */

/** Diagonals are gone along six at a time: one pass over the heads serves six. */
const AT_ONCE = 6;

/** P[to][from] of one day without births, by diagonals: heads move on by d compartments, d = 0, 1, 2 ... */
export interface BandedDay {
  readonly size: number;
  /** Share that moves from `to - d` to `to`, at [d * size + to]. */
  readonly shares: Float64Array;
  /** For each six diagonals the first compartment they reach, and the one after the last. */
  readonly first: Int32Array;
  readonly end: Int32Array;
  /** First compartment that may bear on the day; for each from there on its newborn alive at the day's end, by compartment. */
  readonly firstBearing: number;
  readonly young: Float64Array;
  readonly youngWidth: number;
  /** Births of the day per head of each compartment from `firstBearing` on. */
  readonly births: Float64Array;
  /** Share of each compartment's heads that dies in the day; and newborn that die in it per head from `firstBearing` on. */
  readonly deaths: Float64Array;
  readonly youngDeaths: Float64Array;
}

/** One column of a day: what becomes of one head, and of what it bears. */
export interface DayColumn {
  readonly heads: Float64Array;
  readonly born: number;
  readonly died: number;
}

/** Shares of a head smaller than this are left out. */
const NEGLIGIBLE = 1e-15;
/** Fewer newborn than this per head are none; more than this among those that bear, and births of births count. */
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
  const mayBear = Math.max(0, firstBirth - width + 1);
  const all = Array.from({ length: size - mayBear }, (_, k) => column(mayBear + k, 1));
  const idle = all.findIndex(({ born }) => born > BEARING);
  const bearing = idle < 0 ? [] : all.slice(idle);
  const firstBearing = size - bearing.length;
  const newborn = bearing.map(({ heads }, k) =>
    heads.map((n, j) => n - (barren[firstBearing + k]?.heads[j] as number)),
  );
  if (newborn.some((one) => one.subarray(firstBirth).some((n) => n > BEARING))) return null;
  const youngWidth = Math.max(
    0,
    ...newborn.map((one) => 1 + one.subarray(0, firstBirth).findLastIndex((n) => n > BEARING)),
  );
  const births = Float64Array.from(bearing, ({ born }) => born);
  const deaths = Float64Array.from(barren, ({ died }) => died);
  const youngDeaths = Float64Array.from(
    bearing,
    ({ died }, k) => died - (deaths[firstBearing + k] as number),
  );
  const young = new Float64Array(bearing.length * youngWidth);
  newborn.forEach((one, k) => {
    young.set(one.subarray(0, youngWidth), k * youngWidth);
  });
  return { size, ...diagonals(barren, width), firstBearing, young, youngWidth, births, deaths, youngDeaths };
}

/** Columns laid out by diagonals, and where the shares of each six begin and end. */
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

/** The heads a day on, what died, and what was born at `laying` times the full rate. */
export function afterBandedDay(day: BandedDay, heads: Float64Array, laying: number): DayColumn {
  const { size, first, end, firstBearing, young, youngWidth, births, deaths, youngDeaths } = day;
  const next = new Float64Array(size);
  for (let block = 0; block < first.length; block++)
    addDiagonals(day, { heads, next, d: block * AT_ONCE, from: first[block]!, end: end[block]! });
  let [born, died] = [0, 0];
  for (let j = 0; j < size; j++) died += (deaths[j] as number) * (heads[j] as number);
  for (let k = 0; laying > 0 && k < births.length; k++) {
    const bearing = laying * (heads[firstBearing + k] as number);
    born += bearing * (births[k] as number);
    died += bearing * (youngDeaths[k] as number);
    for (let j = 0; bearing > 0 && j < youngWidth; j++)
      next[j] = (next[j] as number) + bearing * (young[k * youngWidth + j] as number);
  }
  return { heads: next, born, died };
}

interface Diagonals {
  readonly heads: Float64Array;
  readonly next: Float64Array;
  /** The first of the six. */
  readonly d: number;
  readonly from: number;
  readonly end: number;
}

/** Adds what six diagonals bring to each compartment. */
function addDiagonals({ size, shares }: BandedDay, { heads, next, d, from, end }: Diagonals): void {
  const [s0, s1, s2] = [d * size, (d + 1) * size, (d + 2) * size];
  const [s3, s4, s5] = [(d + 3) * size, (d + 4) * size, (d + 5) * size];
  // No index below 0 is read: engines leave their fast path there.
  const before = (back: number): number => (from - d >= back ? (heads[from - d - back] as number) : 0);
  let [x1, x2, x3, x4, x5] = [before(1), before(2), before(3), before(4), before(5)];
  for (let to = from; to < end; to++) {
    const x0 = heads[to - d] as number;
    next[to] =
      (next[to] as number) +
      ((shares[s0 + to] as number) * x0 + (shares[s1 + to] as number) * x1) +
      ((shares[s2 + to] as number) * x2 + (shares[s3 + to] as number) * x3) +
      ((shares[s4 + to] as number) * x4 + (shares[s5 + to] as number) * x5);
    x5 = x4;
    x4 = x3;
    x3 = x2;
    x2 = x1;
    x1 = x0;
  }
}
