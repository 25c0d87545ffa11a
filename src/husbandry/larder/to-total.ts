/** Heads of a bin brought to a total that was seen: where they breed, the young make up most of what was wrong. */
import { recall } from '../../maths/recall.ts';
import { type Stretched, stretchedTo } from '../../maths/stretched.ts';
import type { Policy } from '../policy.ts';
import type { Chain } from './chain.ts';
import { firstAdult, firstYoung, totalHeads } from './lot.ts';
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
  readonly policy: Policy;
}

/**
 * The same for a bin of which so many were seen. In a colony how many are born is far less sure than how many of those
 * counted before are left, and the longer one has lived the more often it was counted: the log of the heads of a length
 * is moved in proportion to its doubt, which falls evenly from that of a newborn to a share of it when grown.
 */
export const seenInAll = (life: Brooding, heads: Float64Array, seen: Seen): Float64Array =>
  stretched(life, heads, seen)?.parts ?? withTotal(life.chain, heads, seen.total);

/**
 * The same once somebody has counted them with this error: by as much as there are more or fewer newborn than were
 * reckoned, more or less is laid from then on. A normal reading of a normal log; since the last one half of all that
 * was not known at first may have changed. What lies further off than twice what could be expected tells of something
 * else, and counts for no more.
 */
export function countedInAll(
  life: Brooding,
  state: BinState,
  { cv, total, policy }: Seen & { readonly cv: number },
): BinState {
  const { heads, layingLog } = state;
  const by = stretched(life, heads, { total, policy });
  if (by === null) return { ...state, heads: withTotal(life.chain, heads, total) };
  const atFirst = policy.layingLogSd.value ** 2;
  const before = layingLog ? layingLog.variance + atFirst / 2 : atFirst;
  const error = ((cv * total) / by.slope) ** 2;
  const share = before > 0 ? before / (before + error) : 0;
  const most = 2 * Math.sqrt(before + error);
  const mean = (layingLog?.mean ?? 0) + share * Math.max(-most, Math.min(most, by.logTimes));
  return { ...state, heads: by.parts, layingLog: { mean, variance: share * error } };
}

type Brooding = Pick<Life, 'chain' | 'bin'>;

const stretched = (
  { chain, bin }: Brooding,
  heads: Float64Array,
  { total, policy }: Seen,
): Stretched | null =>
  bin.role === 'colony' && total > 0
    ? stretchedTo(heads, doubtsOf(chain, policy.grownDoubtShare.value), total)
    : null;

const doubts = new WeakMap<Chain, Map<number, Float64Array>>();

/** By substage, doubt of the number over that of the newborn; 0 of eggs, which nobody counts. */
const doubtsOf = (chain: Chain, grownShare: number): Float64Array => {
  const known = doubts.get(chain) ?? new Map<number, Float64Array>();
  doubts.set(chain, known);
  return recall(known, grownShare, () => {
    const born = chain.fromMm[firstYoung(chain)] as number;
    const grown = chain.fromMm[firstAdult(chain)] as number;
    return chain.fromMm.map((mm, j) => {
      if (j < chain.firstHead) return 0;
      const way = Math.min(1, Math.max(0, (mm - born) / (grown - born)));
      return 1 - (1 - grownShare) * way;
    });
  });
};
