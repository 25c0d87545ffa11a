/** What an event does to what is known of a bin. */

import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import type { BinEvent } from './bin.ts';
import type { Chain } from './chain.ts';
import { cupSeen } from './cup-seen.ts';
import { firstAdult, firstYoung, massOf, spreadLot, takeAny, takeBetween, totalHeads } from './lot.ts';
import { settledMix } from './settled-mix.ts';
import type { BinState, Life } from './state.ts';
import { countedInAll, withGrown, withTotal } from './to-total.ts';

export interface Setting {
  readonly life: Life;
  readonly policy: Policy;
}

/** What an event does to the bin as it was known: a look says how many there are, a handful taken out is missing after. */
export function afterEvent(state: BinState, event: BinEvent, { life, policy }: Setting): BinState {
  const { chain } = life;
  switch (event.kind) {
    case 'delivered':
      return withLot(state, event, { chain, cv: policy.overCountCv.value });
    case 'moved in':
      return withLot(state, event, { chain, cv: policy.countCv.value });
    case 'counted':
      return counted(state, event, { life, policy });
    case 'looked':
      return looked(state, event, { life, policy });
    case 'weighed':
      return reset(state, event.day, weighed(chain, state.heads, event.massMg), policy.weighCv.value);
    case 'size seen':
      return { ...state, heads: resized(chain, state.heads, event) };
    case 'offered':
      return { ...state, heads: takeBetween(chain, state.heads, event).left };
    case 'discarded':
      return { ...state, heads: takeAny(chain, state.heads, event.heads).left };
    case 'culled':
    case 'moved out':
      return { ...state, heads: takenOut(chain, state.heads, event) };
    case 'cup looked':
      return cupSeen(state, event, life);
    case 'first adults':
      return { ...state, heads: withFirstAdults(chain, state.heads) };
    case 'sexed':
      return { ...state, femaleShare: shareOf(event.females, event.females + event.males) };
    case 'cleaned out':
      return cleanedOut(state, event.eggsLost, life);
    case 'died off':
      return diedOff(state, event, { life, policy });
    // The days have taken them already: who is found dead has died since the last look.
    case 'found dead':
    case 'placed':
      return state;
  }
}

const shareOf = (part: number, whole: number): number | null => (whole > 0 ? part / whole : null);

function takenOut(
  chain: Chain,
  heads: Float64Array,
  event: { heads: number; fromMm?: number | null; toMm?: number | null },
): Float64Array {
  const { heads: wanted, fromMm, toMm } = event;
  return fromMm == null || toMm == null
    ? takeAny(chain, heads, wanted).left
    : takeBetween(chain, heads, { heads: wanted, fromMm, toMm }).left;
}

/** First adults seen where the replay has none yet: those about to become adult are taken to have done so. */
function withFirstAdults(chain: Chain, heads: Float64Array): Float64Array {
  const adult = firstAdult(chain);
  if (totalHeads(heads, adult) >= 1) return heads;
  const oldest = heads.findLastIndex((n, j) => n >= 1 / 2 && j < adult);
  if (oldest < chain.firstHead) return heads;
  const by = adult - oldest;
  const moved = new Float64Array(chain.size);
  heads.forEach((n, j) => {
    const to = j < chain.firstHead ? j : Math.min(j + by, adult);
    moved[to] = (moved[to] as number) + n;
  });
  return moved;
}

const withoutEggs = (chain: Chain, heads: Float64Array, share: number): Float64Array =>
  heads.map((n, j) => (chain.stages[chain.stageOf[j] as number]?.kind === 'egg' ? n * (1 - share) : n));

/** A share of the eggs is gone; a cup has new medium. */
const cleanedOut = (state: BinState, eggsLost: number, { chain, bin }: Life): BinState => ({
  ...state,
  heads: withoutEggs(chain, state.heads, eggsLost),
  medium: bin.role === 'cup' ? (chain.species.cup?.yieldPerCup.value ?? state.medium) : state.medium,
});

/** So many are left after a crash, of all sizes alike; a count by eye. */
function diedOff(
  state: BinState,
  event: Extract<BinEvent, { kind: 'died off' }>,
  { life, policy }: Setting,
): BinState {
  const { chain } = life;
  const left = withTotal(chain, state.heads, event.left);
  const eggs = withoutEggs(chain, left, life.bin.role === 'colony' ? 0 : 1);
  return reset(state, event.day, eggs, policy.levelCv.value);
}

const reset = (state: BinState, day: DayNumber, heads: Float64Array, doubtCv: number): BinState => ({
  ...state,
  heads,
  doubtCv,
  bornSince: 0,
  lookedOn: day,
});

function withLot(
  state: BinState,
  event: Extract<BinEvent, { kind: 'delivered' | 'moved in' }>,
  { chain, cv }: { chain: Chain; cv: number },
): BinState {
  const added = spreadLot(chain, event.lot);
  const before = totalHeads(state.heads);
  const heads = state.heads.map((n, j) => n + (added[j] as number));
  const total = before + event.lot.heads;
  const doubtCv = total > 0 ? Math.hypot(state.doubtCv * before, cv * event.lot.heads) / total : cv;
  return { ...state, heads, doubtCv, lookedOn: event.day, fullest: Math.max(state.fullest, total) };
}

function counted(
  state: BinState,
  event: Extract<BinEvent, { kind: 'counted' }>,
  { life, policy }: Setting,
): BinState {
  const { chain } = life;
  const grown = event.grown ?? null;
  const sized = event.fromMm !== null && event.toMm !== null;
  const unknown = totalHeads(state.heads, chain.firstHead) <= 0;
  const range = sized ? { fromMm: event.fromMm as number, toMm: event.toMm as number } : wholeRange(chain);
  const spread = () => withEggsOf(chain, state.heads, spreadLot(chain, { heads: event.heads, ...range }));
  const mixed = () => {
    const mix = (life.bin.role === 'colony' ? settledMix(life, event.heads, event.day) : null) ?? spread();
    return grown === null ? mix : withGrown(chain, mix, { total: event.heads, grown });
  };
  const cv = policy.countCv.value;
  const isAfresh = sized || unknown || event.heads === 0;
  const afresh = () => (sized ? spread() : event.heads === 0 ? new Float64Array(chain.size) : mixed());
  const seen = isAfresh
    ? { ...state, heads: afresh() }
    : countedInAll(life, state, { total: event.heads, grown, cv, policy });
  const next = reset(seen, event.day, seen.heads, cv);
  return { ...next, fullest: Math.max(state.fullest, event.heads) };
}

const wholeRange = (chain: Chain) => ({
  fromMm: chain.fromMm[firstYoung(chain)] as number,
  toMm: chain.toMm[chain.size - 1] as number,
});

function looked(
  state: BinState,
  event: Extract<BinEvent, { kind: 'looked' }>,
  { life, policy }: Setting,
): BinState {
  const full = life.bin.capacity ?? state.fullest;
  const total = full * policy.levelShares.value[event.level];
  const cv = policy.levelCv.value;
  const seen =
    totalHeads(state.heads, life.chain.firstHead) > 0
      ? countedInAll(life, state, { total, grown: null, cv, policy })
      : { ...state, heads: spreadLot(life.chain, { heads: total, ...wholeRange(life.chain) }) };
  return reset(seen, event.day, seen.heads, cv);
}

function weighed(chain: Chain, heads: Float64Array, totalMassMg: number): Float64Array {
  const mass = massOf(chain, heads);
  return mass > 0 ? heads.map((n, j) => (j < chain.firstHead ? n : (n * totalMassMg) / mass)) : heads;
}

function resized(chain: Chain, heads: Float64Array, range: { fromMm: number; toMm: number }): Float64Array {
  const spread = spreadLot(chain, { heads: totalHeads(heads, chain.firstHead), ...range });
  return withEggsOf(chain, heads, spread);
}

/** The heads of one distribution with the eggs of another: who looks at heads sees no eggs. */
const withEggsOf = (chain: Chain, eggs: Float64Array, heads: Float64Array): Float64Array =>
  heads.map((n, j) => (j < chain.firstHead ? (eggs[j] as number) : n));
