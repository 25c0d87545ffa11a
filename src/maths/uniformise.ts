/** One day of a linear stage chain, exact: x -> exp(A) x by uniformisation. */
import { afterBandedDay, type BandedDay, bandedDay, type DayColumn } from './banded-day.ts';

/**
 * A chain of n compartments with first-order rates per day. Compartment j leaves at exit[j], of which advance[j]
 * enters j + 1 (the rest die); birth[j] per head and day enters compartment birthInto. A[to][from] is never formed.
 */
export interface ChainRates {
  readonly exit: Float64Array;
  readonly advance: Float64Array;
  readonly birth: Float64Array;
  readonly birthInto: number;
  /** These rates hold for many days: their day is laid out once. Which way a day is computed never depends on chance. */
  readonly lasting?: boolean;
}

export interface ChainDay {
  readonly heads: Float64Array;
  readonly born: number;
  readonly died: number;
}

/** A term is left out when all it could still move, births counted, is a smaller share of the heads than this. */
const NEGLIGIBLE = 1e-16;

/** The chain's jumps, made once for a set of rates: I + A/q, with its births from one compartment on. */
interface Jumps {
  /** Rate of the jumps, at least the greatest exit [q]. */
  readonly q: number;
  readonly stay: Float64Array;
  readonly move: Float64Array;
  readonly birth: Float64Array;
  readonly firstBirth: number;
  /** The day of lasting rates, laid out. */
  readonly banded: BandedDay | null;
}

const jumpsOf = new WeakMap<ChainRates, Jumps>();

function jumpsFor(rates: ChainRates): Jumps {
  const known = jumpsOf.get(rates);
  if (known) return known;
  const { exit, advance, birth } = rates;
  const q = Math.max(
    exit.reduce((most, rate) => Math.max(most, rate), 0),
    1e-9,
  );
  const firstBirth = birth.findIndex((rate) => rate > 0);
  const bare: Jumps = {
    q,
    stay: exit.map((rate) => 1 - rate / q),
    move: advance.map((rate) => rate / q),
    birth: birth.map((rate) => rate / q),
    firstBirth: firstBirth < 0 ? birth.length : firstBirth,
    banded: null,
  };
  const jumps = rates.lasting ? { ...bare, banded: bandOf(bare, rates) } : bare;
  jumpsOf.set(rates, jumps);
  return jumps;
}

/**
 * State after one day, with births and deaths of that day; births are `laying` times those of the rates.
 * exp(A) x = sum over m of Poisson(m; q) (I + A/q)^m x, q >= the greatest exit rate
 * (Jensen 1953, Skand. Aktuarietidskr. 36:87-91). Lasting rates are laid out as a band of exp(A) itself.
 * What is neither alive nor newly born has died.
 */
export function dayOfChain(heads: Float64Array, rates: ChainRates, laying = 1): ChainDay {
  return oneDay(jumpsFor(rates), heads, { laying, birthInto: rates.birthInto });
}

interface Births {
  readonly laying: number;
  readonly birthInto: number;
}

const oneDay = (jumps: Jumps, heads: Float64Array, births: Births): DayColumn =>
  jumps.banded ? afterBandedDay(jumps.banded, heads, births.laying) : jumpedDay(jumps, heads, births);

function bandOf(jumps: Jumps, { birthInto }: ChainRates): BandedDay | null {
  const size = jumps.stay.length;
  return bandedDay(size, jumps.firstBirth, (from, laying) => {
    const one = new Float64Array(size);
    one[from] = 1;
    return jumpedDay(jumps, one, { birthInto, laying });
  });
}

/** Compartments below `low` and above `high` hold nothing, and are left out; each jump reaches one further. */
function jumpedDay(jumps: Jumps, heads: Float64Array, { laying, birthInto }: Births): DayColumn {
  const n = heads.length;
  const { q, stay, move, birth, firstBirth } = jumps;
  let now = heads.slice();
  let next = new Float64Array(n);
  let weight = Math.exp(-q);
  const sum = now.map((x) => x * weight);
  let [bornNow, born] = [0, 0];
  const before = totalOf(heads);
  let size = before;
  const negligible = NEGLIGIBLE * size;
  const bears = laying > 0 && firstBirth < n;
  const low = Math.max(0, bears ? birthIntoOr(birthInto, heads) : firstHeld(heads));
  let high = Math.max(
    heads.findLastIndex((x) => x !== 0),
    bears ? birthInto : 0,
  );
  for (let m = 1; m <= q || weight * size > negligible; m++) {
    weight *= q / m;
    high = Math.min(n - 1, high + 1);
    let [incoming, laid] = [0, 0];
    for (let j = firstBirth; j <= high; j++) laid += (birth[j] as number) * (now[j] as number);
    laid *= laying;
    for (let j = low; j <= high; j++) {
      const x = now[j] as number;
      next[j] = (stay[j] as number) * x + incoming;
      incoming = (move[j] as number) * x;
    }
    next[birthInto] = (next[birthInto] as number) + laid;
    for (let j = low; j <= high; j++) sum[j] = (sum[j] as number) + weight * (next[j] as number);
    bornNow += laid;
    born += weight * bornNow;
    size += laid;
    [now, next] = [next, now];
  }
  return { heads: sum, born, died: Math.max(0, before + born - totalOf(sum)) };
}

const firstHeld = (heads: Float64Array): number => heads.findIndex((x) => x !== 0);

/** The first compartment that holds anything once births have come. */
function birthIntoOr(birthInto: number, heads: Float64Array): number {
  const first = firstHeld(heads);
  return first < 0 ? birthInto : Math.min(birthInto, first);
}

function totalOf(heads: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < heads.length; j++) sum += heads[j] as number;
  return sum;
}
