/** Heads of a bin brought to a total that was seen: where they breed, the young make up most of what was wrong. */
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
 * The same for a bin of which so many were seen. In a colony how many are born is less sure than how many of those seen
 * before are left, and the longer one has lived the more often it was seen: the log of the heads of a length is moved in
 * proportion to its doubt. All share that of the last look; that of laying falls evenly from all of it for a newborn to
 * a share when grown.
 */
export const seenInAll = (life: Brooding, state: BinState, seen: Seen): Float64Array =>
  stretched(life, state, seen)?.parts ?? withTotal(life.chain, state.heads, seen.total);

/**
 * The same once somebody has counted them with this error: by as much as there are more or fewer newborn than were
 * reckoned, more or less is laid from then on. A normal reading of a normal log, the surer the more were born since the
 * last look; since then half of all that was not known at first may have changed. What lies further off than twice what
 * could be expected tells of something else, and counts for no more.
 */
export function countedInAll(
  life: Brooding,
  state: BinState,
  { cv, total, policy }: Seen & { readonly cv: number },
): BinState {
  const { heads, layingLog, doubtCv, bornSince } = state;
  const by = stretched(life, state, { total, policy });
  if (by === null) return { ...state, heads: withTotal(life.chain, heads, total) };
  const atFirst = policy.layingLogSd.value ** 2;
  const before = layingLog ? layingLog.variance + atFirst / 2 : atFirst;
  const error =
    bornSince > 0 ? ((Math.hypot(cv, doubtCv) * total) / bornSince) ** 2 : Number.POSITIVE_INFINITY;
  const most = 2 * Math.sqrt(before + error);
  const off = Math.max(-most, Math.min(most, by.logTimes));
  const variance = 1 / (1 / before + 1 / error);
  const share = before > 0 ? 1 - variance / before : 0;
  const mean = (layingLog?.mean ?? 0) + share * off;
  return { ...state, heads: by.parts, layingLog: { mean, variance } };
}

type Brooding = Pick<Life, 'chain' | 'bin'>;

function stretched(
  { chain, bin }: Brooding,
  { heads, doubtCv }: BinState,
  { total, policy }: Seen,
): Stretched | null {
  if (bin.role !== 'colony' || total <= 0) return null;
  const { layingLogSd, grownDoubtShare } = policy;
  const newborn = Math.hypot(doubtCv, layingLogSd.value);
  if (newborn <= 0) return null;
  const doubts = wayToGrown(chain).map((way) =>
    Number.isNaN(way)
      ? 0
      : Math.hypot(doubtCv, layingLogSd.value * (1 - (1 - grownDoubtShare.value) * way)) / newborn,
  );
  return stretchedTo(heads, doubts, total);
}

const ways = new WeakMap<Chain, Float64Array>();

/** Share of the length from born to grown of each substage; NaN of eggs, which nobody counts. */
function wayToGrown(chain: Chain): Float64Array {
  const known = ways.get(chain);
  if (known) return known;
  const born = chain.fromMm[firstYoung(chain)] as number;
  const grown = chain.fromMm[firstAdult(chain)] as number;
  const way = chain.fromMm.map((mm, j) =>
    j < chain.firstHead ? Number.NaN : Math.min(1, Math.max(0, (mm - born) / (grown - born))),
  );
  ways.set(chain, way);
  return way;
}
