/** A day of a stage chain as a band of transition shares, laid out once for rates that hold for many days. */

/** P[to][from] of one day without births: heads move by no more than `width - 1` compartments. */
export interface BandedDay {
  readonly size: number;
  readonly width: number;
  /** Share that moves from `to - d` to `to`, at [to * width + d]. */
  readonly shares: Float64Array;
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
const NEGLIGIBLE = 1e-17;
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
  const shares = new Float64Array(size * width);
  barren.forEach(({ heads }, from) => {
    for (let d = 0; d < width && from + d < size; d++)
      shares[(from + d) * width + d] = heads[from + d] as number;
  });
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
  return { size, width, shares, firstBearing, young, youngWidth, births };
}

/** The heads a day on, and what was born at `laying` times the full rate. */
export function afterBandedDay(day: BandedDay, heads: Float64Array, laying: number): DayColumn {
  const { size, width, shares, firstBearing, young, youngWidth, births } = day;
  const next = new Float64Array(size);
  for (let to = 0; to < size; to++) {
    const most = to < width - 1 ? to + 1 : width;
    const row = to * width;
    let [even, odd] = [0, 0];
    let d = 0;
    for (; d + 1 < most; d += 2) {
      even += (shares[row + d] as number) * (heads[to - d] as number);
      odd += (shares[row + d + 1] as number) * (heads[to - d - 1] as number);
    }
    if (d < most) even += (shares[row + d] as number) * (heads[to - d] as number);
    next[to] = even + odd;
  }
  let born = 0;
  for (let k = 0; laying > 0 && k < births.length; k++) {
    const bearing = laying * (heads[firstBearing + k] as number);
    born += bearing * (births[k] as number);
    for (let j = 0; bearing > 0 && j < youngWidth; j++)
      next[j] = (next[j] as number) + bearing * (young[k * youngWidth + j] as number);
  }
  return { heads: next, born };
}
