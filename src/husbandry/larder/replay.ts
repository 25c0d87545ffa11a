/** What is in a bin on a day: a replay of what was seen and done since its last anchor. */

import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import type { PreySpecies } from '../prey/index.ts';
import { LENGTH_TO_MASS } from '../units.ts';
import type { Bin, BinEvent, CupLook } from './bin.ts';
import type { Chain } from './chain.ts';
import type { Climate } from './climate.ts';
import { firstYoung, scaleTo, spreadLot, takeAny, takeBetween, totalHeads } from './lot.ts';
import { youngDays } from './rates.ts';
import { settledMix } from './settled-mix.ts';
import { type BinState, emptyState, type Life, nextDay } from './state.ts';

export interface Replay {
  readonly chain: Chain;
  readonly policy: Policy;
  readonly climate: Climate;
  /** Growth speed of this bin over the published one; 1 unless said. */
  readonly speed?: number;
}

/**
 * The bin on the evening of `day`, before tonight's feeding: events in the order given, the engine between their days.
 * Prey offered beyond what the replay holds leave the bin empty: the count is doubted, never the meal.
 */
export function binOn(bin: Bin, day: DayNumber, { chain, policy, climate, speed = 1 }: Replay): BinState {
  const life: Life = { chain, bin, climate, speed };
  const events = bin.events.filter((event) => event.day <= day && event.kind !== 'placed');
  let state = emptyState(chain);
  let at = events[0]?.day ?? day;
  for (const event of events) {
    for (; at < event.day; at++) state = nextDay(life, state, at).state;
    state = afterEvent(state, event, { life, policy });
  }
  for (; at < day; at++) state = nextDay(life, state, at).state;
  return state;
}

interface Setting {
  readonly life: Life;
  readonly policy: Policy;
}

function afterEvent(state: BinState, event: BinEvent, { life, policy }: Setting): BinState {
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
    case 'found dead':
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
  const firstAdult = chain.stages.find(({ kind }) => kind === 'adult')?.first ?? chain.size;
  if (totalHeads(heads, firstAdult) >= 1) return heads;
  const oldest = heads.findLastIndex((n, j) => n >= 1 / 2 && j < firstAdult);
  if (oldest < chain.firstHead) return heads;
  const by = firstAdult - oldest;
  const moved = new Float64Array(chain.size);
  heads.forEach((n, j) => {
    const to = j < chain.firstHead ? j : Math.min(j + by, firstAdult);
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
  const sized = event.fromMm !== null && event.toMm !== null;
  const unknown = totalHeads(state.heads, chain.firstHead) <= 0;
  const range = sized ? { fromMm: event.fromMm as number, toMm: event.toMm as number } : wholeRange(chain);
  const spread = () => spreadLot(chain, { heads: event.heads, ...range });
  const mixed = () =>
    (life.bin.role === 'colony' ? settledMix(life, event.heads, event.day) : null) ?? spread();
  const heads = sized ? spread() : unknown ? mixed() : withTotal(chain, state.heads, event.heads);
  const next = reset(state, event.day, heads, policy.countCv.value);
  return { ...next, fullest: Math.max(state.fullest, event.heads) };
}

const wholeRange = (chain: Chain) => ({
  fromMm: chain.fromMm[firstYoung(chain)] as number,
  toMm: chain.toMm[chain.size - 1] as number,
});

/** Scales the heads to a total; eggs stay as they are. */
function withTotal(chain: Chain, heads: Float64Array, total: number): Float64Array {
  const scaled = scaleTo(
    heads.map((n, j) => (j < chain.firstHead ? 0 : n)),
    total,
  );
  return heads.map((n, j) => (j < chain.firstHead ? n : (scaled[j] as number)));
}

function looked(
  state: BinState,
  event: Extract<BinEvent, { kind: 'looked' }>,
  { life, policy }: Setting,
): BinState {
  const full = life.bin.capacity ?? state.fullest;
  const total = full * policy.levelShares.value[event.level];
  const heads =
    totalHeads(state.heads, life.chain.firstHead) > 0
      ? withTotal(life.chain, state.heads, total)
      : spreadLot(life.chain, { heads: total, ...wholeRange(life.chain) });
  return reset(state, event.day, heads, policy.levelCv.value);
}

/** Live mass of one head in a substage, mg. */
export const massMg = (species: PreySpecies, lengthMm: number): number =>
  species.massPerCubicMm.value * lengthMm ** LENGTH_TO_MASS;

function weighed(chain: Chain, heads: Float64Array, totalMassMg: number): Float64Array {
  const middle = (j: number) => ((chain.fromMm[j] as number) + (chain.toMm[j] as number)) / 2;
  const mass = heads.reduce(
    (sum, n, j) => sum + (j < chain.firstHead ? 0 : n * massMg(chain.species, middle(j))),
    0,
  );
  return mass > 0 ? heads.map((n, j) => (j < chain.firstHead ? n : (n * totalMassMg) / mass)) : heads;
}

function resized(chain: Chain, heads: Float64Array, range: { fromMm: number; toMm: number }): Float64Array {
  const spread = spreadLot(chain, { heads: totalHeads(heads, chain.firstHead), ...range });
  return heads.map((n, j) => (j < chain.firstHead ? n : (spread[j] as number)));
}

/** A cup is known by what can be seen of it; with no start on record its age is taken from its look. */
function cupSeen(state: BinState, event: Extract<BinEvent, { kind: 'cup looked' }>, life: Life): BinState {
  const look: CupLook = event.look;
  if (look === 'finished' || look === 'crashed' || look === 'mites') {
    return { ...reset(state, event.day, new Float64Array(life.chain.size), 0), medium: 0 };
  }
  if (look === 'started') return startedCup(state, event.day, life);
  const known = state.startedOn !== null || totalHeads(state.heads) > 0;
  if (!known) return agedCup(state, event, life);
  if (look === 'slow')
    return { ...state, heads: state.heads.map((n) => n / 2), medium: state.medium / 2, lookedOn: event.day };
  return { ...state, lookedOn: event.day };
}

function startedCup(state: BinState, day: DayNumber, life: Life): BinState {
  const cup = life.chain.species.cup;
  const heads = new Float64Array(life.chain.size);
  const adult = life.chain.stages.find(({ kind }) => kind === 'adult');
  heads[adult?.first ?? 0] = cup?.starters.value ?? 0;
  const medium = cup?.yieldPerCup.value ?? 0;
  return { ...reset(state, day, heads, state.doubtCv), medium, startedOn: day };
}

/** A cup met with larvae is half way to its first flies; one that produces has just got there. */
function agedCup(state: BinState, event: Extract<BinEvent, { kind: 'cup looked' }>, life: Life): BinState {
  const toAdult = life.chain.species.stages.reduce(
    (sum, stage) => sum + youngDays(life.chain.species, stage, keepingOf(life, event.day)),
    0,
  );
  if (!Number.isFinite(toAdult)) return startedCup(state, event.day, life);
  const age = Math.round(event.look === 'larvae' ? toAdult / 2 : toAdult + 1);
  let aged = startedCup(state, event.day - age, life);
  for (let day = event.day - age; day < event.day; day++) aged = nextDay(life, aged, day).state;
  return { ...aged, lookedOn: event.day };
}

const keepingOf = (life: Life, day: DayNumber) => ({
  temp: life.climate.on(day),
  weekMeanC: life.climate.weekMeanOn(day),
  speed: life.speed,
  holdingLossPerDay: 0,
  laying: 0,
});
