/** Heads of a bin brought to a total that was seen: where they breed, by those born since the last look first. */
import { type FactorSeen, factorSeen } from '../../maths/factor-seen.ts';
import type { Policy } from '../policy.ts';
import type { Lot } from './bin.ts';
import type { Chain } from './chain.ts';
import { firstAdult, firstYoung, spreadLot, totalHeads } from './lot.ts';
import type { BinState, Life } from './state.ts';

/** Scales the heads to a total; eggs stay as they are. */
export function withTotal(chain: Chain, heads: Float64Array, total: number): Float64Array {
  const there = totalHeads(heads, chain.firstHead);
  if (there <= 0) return heads;
  const scaled = heads.slice();
  for (let j = chain.firstHead; j < scaled.length; j++) scaled[j] = ((scaled[j] as number) * total) / there;
  return scaled;
}

interface Seen {
  readonly total: number;
  /** Error of what was seen. */
  readonly cv: number;
  readonly policy: Policy;
}

type Brooding = Pick<Life, 'chain' | 'bin'>;

/**
 * The same for a bin of which so many were seen. In a colony how many were born since the last look is less sure than
 * how many of those seen then are left: it comes first, and what is then still wrong is shared by all alike.
 */
export function seenInAll({ chain, bin }: Brooding, state: BinState, seen: Seen): Float64Array {
  const brood = bin.role === 'colony' ? broodOf(chain, state, seen) : null;
  return withTotal(chain, brood ? withBrood(state.heads, brood) : state.heads, seen.total);
}

/**
 * So many in all, of which so many are grown; where nobody was thought to be, the grown are of every age and the young of
 * every length alike.
 */
export function withGrown(
  chain: Chain,
  heads: Float64Array,
  { total, grown }: { readonly total: number; readonly grown: number },
): Float64Array {
  const adult = firstAdult(chain);
  const young = youngOf(chain, heads);
  const known = totalHeads(young, chain.firstHead) > 0;
  const rest = known
    ? withTotal(chain, young, total - grown)
    : spreadLot(chain, ofAllLengths(chain, total - grown));
  const there = totalHeads(heads, adult);
  return rest.map((n, j) => {
    if (j < chain.firstHead) return heads[j] as number;
    if (j < adult) return n;
    return there > 0 ? ((heads[j] as number) * grown) / there : grown / (chain.size - adult);
  });
}

const ofAllLengths = (chain: Chain, heads: number): Lot => ({
  heads,
  fromMm: chain.fromMm[firstYoung(chain)] as number,
  toMm: chain.toMm[firstAdult(chain) - 1] as number,
});

const youngOf = (chain: Chain, heads: Float64Array): Float64Array =>
  heads.map((n, j) => (j < firstAdult(chain) ? n : 0));

/** The same; more or fewer are laid from then on by as much as there were more or fewer young than were reckoned. */
export function countedInAll(
  life: Brooding,
  state: BinState,
  { grown, ...seen }: Seen & { readonly grown: number | null },
): BinState {
  const { chain, bin } = life;
  if (grown !== null) {
    const young = { ...state, heads: youngOf(chain, state.heads) };
    const rest = countedInAll(life, young, { ...seen, total: seen.total - grown, grown: null });
    const heads = rest.heads.map((n, j) => (j < firstAdult(chain) ? n : (state.heads[j] as number)));
    return { ...rest, heads: withGrown(chain, heads, { total: seen.total, grown }) };
  }
  const brood = bin.role === 'colony' ? broodOf(chain, state, seen) : null;
  if (!brood) return { ...state, heads: withTotal(chain, state.heads, seen.total) };
  return {
    ...state,
    heads: withTotal(chain, withBrood(state.heads, brood), seen.total),
    layingLog: { mean: (state.layingLog?.mean ?? 0) + brood.log, variance: brood.variance },
  };
}

/** The heads born since the last look, by substage, and how many times as many they are. */
interface Brood extends FactorSeen {
  readonly young: Float64Array;
}

const withBrood = (heads: Float64Array, { young, log }: Brood): Float64Array =>
  heads.map((n, j) => n + (young[j] as number) * Math.expm1(log));

/**
 * What was seen less those of the last look tells how many were born; how many are laid is known by its log, and since
 * the last look half of all that was not known at first may have changed. What lies further off than twice what could be
 * expected tells of something else, and counts for no more. Null where nobody was born.
 */
function broodOf(chain: Chain, state: BinState, { total, cv, policy }: Seen): Brood | null {
  const { heads, layingLog, doubtCv, bornSince } = state;
  const young = shortest(heads, chain.firstHead, bornSince);
  const born = totalHeads(young);
  const atFirst = policy.layingLogSd.value ** 2;
  const variance = layingLog ? layingLog.variance + atFirst / 2 : atFirst;
  if (born <= 0 || variance <= 0 || total <= 0) return null;
  const others = totalHeads(heads, chain.firstHead) - born;
  const seen = factorSeen({
    variance,
    times: (total - others) / born,
    error: Math.hypot(cv * total, doubtCv * others) / born,
    most: 2 * Math.sqrt(variance),
  });
  return { young, ...seen };
}

/** So many heads, the shortest first. */
function shortest(heads: Float64Array, firstHead: number, many: number): Float64Array {
  let rest = many;
  return heads.map((n, j) => {
    if (j < firstHead) return 0;
    const taken = Math.min(n, rest);
    rest -= taken;
    return taken;
  });
}
