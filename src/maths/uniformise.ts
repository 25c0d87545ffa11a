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
  /** Days they were asked for; and the day laid out, once it was asked for often enough to pay. */
  days: number;
  banded: BandedDay | null;
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
  const jumps: Jumps = {
    q,
    stay: exit.map((rate) => 1 - rate / q),
    move: advance.map((rate) => rate / q),
    birth: birth.map((rate) => rate / q),
    firstBirth: firstBirth < 0 ? birth.length : firstBirth,
    days: 0,
    banded: null,
  };
  jumpsOf.set(rates, jumps);
  return jumps;
}

/**
 * State after one day, with births and deaths of that day; births are `laying` times those of the rates.
 * exp(A) x = sum over m of Poisson(m; q) (I + A/q)^m x, q >= the greatest exit rate
 * (Jensen 1953, Skand. Aktuarietidskr. 36:87-91). Rates that come again are laid out as a band of exp(A) itself.
 * What is neither alive nor newly born has died.
 */
export function dayOfChain(heads: Float64Array, rates: ChainRates, laying = 1): ChainDay {
  const jumps = jumpsFor(rates);
  const { heads: next, born } = oneDay(jumps, heads, { laying, birthInto: rates.birthInto });
  return { heads: next, born, died: Math.max(0, totalOf(heads) + born - totalOf(next)) };
}

interface Births {
  readonly laying: number;
  readonly birthInto: number;
}

/** A band costs as much as a day of each compartment alone. */
function oneDay(jumps: Jumps, heads: Float64Array, births: Births): DayColumn {
  const size = heads.length;
  if (jumps.banded === null && ++jumps.days === size)
    jumps.banded = bandedDay(size, jumps.firstBirth, (from, laying) => {
      const one = new Float64Array(size);
      one[from] = 1;
      return jumpedDay(jumps, one, { ...births, laying });
    });
  return jumps.banded ? afterBandedDay(jumps.banded, heads, births.laying) : jumpedDay(jumps, heads, births);
}

function jumpedDay(jumps: Jumps, heads: Float64Array, { laying, birthInto }: Births): DayColumn {
  const n = heads.length;
  const { q, stay, move, birth, firstBirth } = jumps;
  let now = heads.slice();
  let next = new Float64Array(n);
  let weight = Math.exp(-q);
  const sum = now.map((x) => x * weight);
  let [bornNow, born] = [0, 0];
  let size = totalOf(heads);
  const negligible = NEGLIGIBLE * size;
  for (let m = 1; m <= q || weight * size > negligible; m++) {
    weight *= q / m;
    let [incoming, laid] = [0, 0];
    for (let j = firstBirth; j < n; j++) laid += (birth[j] as number) * (now[j] as number);
    laid *= laying;
    for (let j = 0; j < n; j++) {
      const x = now[j] as number;
      next[j] = (stay[j] as number) * x + incoming;
      incoming = (move[j] as number) * x;
    }
    next[birthInto] = (next[birthInto] as number) + laid;
    for (let j = 0; j < n; j++) sum[j] = (sum[j] as number) + weight * (next[j] as number);
    bornNow += laid;
    born += weight * bornNow;
    size += laid;
    [now, next] = [next, now];
  }
  return { heads: sum, born };
}

function totalOf(heads: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < heads.length; j++) sum += heads[j] as number;
  return sum;
}
