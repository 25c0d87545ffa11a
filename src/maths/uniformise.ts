/** One day of a linear stage chain, exact: x -> exp(A) x by uniformisation. */

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
  };
  jumpsOf.set(rates, jumps);
  return jumps;
}

/**
 * State after one day, with births and deaths of that day; births are `laying` times those of the rates.
 * exp(A) x = sum over m of Poisson(m; q) (I + A/q)^m x, q >= the greatest exit rate
 * (Jensen 1953, Skand. Aktuarietidskr. 36:87-91). What is neither alive nor newly born has died.
 */
export function dayOfChain(heads: Float64Array, rates: ChainRates, laying = 1): ChainDay {
  const n = heads.length;
  const { q, stay, move, birth, firstBirth } = jumpsFor(rates);
  let now = heads.slice();
  let next = new Float64Array(n);
  let weight = Math.exp(-q);
  const sum = now.map((x) => x * weight);
  let [bornNow, born] = [0, 0];
  const before = totalOf(heads);
  let size = before;
  const negligible = NEGLIGIBLE * size;
  const barren = laying === 0 || firstBirth === n;
  // Nobody comes into the compartments before the first that is lived in, unless births do.
  let first = 0;
  while (barren && first < n && heads[first] === 0) first++;
  for (let m = 1; ; m++) {
    if (m > q && weight * size <= negligible) break;
    weight *= q / m;
    let incoming = 0;
    let laid = 0;
    for (let j = barren ? n : firstBirth; j < n; j++) laid += (birth[j] as number) * (now[j] as number);
    laid *= laying;
    for (let j = first; j < n; j++) {
      const x = now[j] as number;
      next[j] = (stay[j] as number) * x + incoming;
      incoming = (move[j] as number) * x;
    }
    next[rates.birthInto] = (next[rates.birthInto] as number) + laid;
    for (let j = first; j < n; j++) sum[j] = (sum[j] as number) + weight * (next[j] as number);
    bornNow += laid;
    born += weight * bornNow;
    size += laid;
    [now, next] = [next, now];
  }
  return { heads: sum, born, died: Math.max(0, before + born - totalOf(sum)) };
}

function totalOf(heads: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < heads.length; j++) sum += heads[j] as number;
  return sum;
}
