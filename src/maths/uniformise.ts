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

/**
 * State after one day, with births and deaths of that day.
 * exp(A) x = sum over m of Poisson(m; q) (I + A/q)^m x, q >= the greatest exit rate
 * (Jensen 1953, Skand. Aktuarietidskr. 36:87-91). Births and deaths are two absorbing compartments more.
 */
export function dayOfChain(heads: Float64Array, rates: ChainRates): ChainDay {
  const n = heads.length;
  const q = Math.max(
    rates.exit.reduce((most, rate) => Math.max(most, rate), 0),
    1e-9,
  );
  let [now, next] = [heads.slice(), new Float64Array(n)];
  const sum = new Float64Array(n);
  let [bornNow, diedNow, born, died] = [0, 0, 0, 0];
  let weight = Math.exp(-q);
  let size = heads.reduce((total, x) => total + x, 0);
  const negligible = NEGLIGIBLE * size;
  for (let m = 0; ; m++) {
    for (let j = 0; j < n; j++) sum[j] = (sum[j] as number) + weight * (now[j] as number);
    born += weight * bornNow;
    died += weight * diedNow;
    if (m > q && weight * size <= negligible) return { heads: sum, born, died };
    const flows = jump({ now, next, rates, q });
    bornNow += flows.born;
    diedNow += flows.died;
    size += flows.born;
    [now, next] = [next, now];
    weight *= q / (m + 1);
  }
}

interface Jump {
  readonly now: Float64Array;
  readonly next: Float64Array;
  readonly rates: ChainRates;
  readonly q: number;
}

/** next = (I + A/q) now; returns what was born and died in the jump. */
function jump({ now, next, rates, q }: Jump): { born: number; died: number } {
  const { exit, advance, birth } = rates;
  let born = 0;
  let died = 0;
  let incoming = 0;
  for (let j = 0; j < now.length; j++) {
    const x = now[j] as number;
    const leaving = ((exit[j] as number) * x) / q;
    const moving = ((advance[j] as number) * x) / q;
    next[j] = x - leaving + incoming;
    incoming = moving;
    died += leaving - moving;
    born += ((birth[j] as number) * x) / q;
  }
  next[rates.birthInto] = (next[rates.birthInto] as number) + born;
  return { born, died: died + incoming };
}
