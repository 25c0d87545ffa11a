/** The state of a bin and how it changes in one day: the one engine for bins, colonies and cups. */

import { recall } from '../../maths/recall.ts';
import { type ChainDay, type ChainRates, dayOfChain } from '../../maths/uniformise.ts';
import type { DayNumber } from '../calendar.ts';
import { meanOfDay } from '../prey/index.ts';
import type { Bin } from './bin.ts';
import type { Chain } from './chain.ts';
import type { Climate } from './climate.ts';
import { type Pressure, pressureOf, thinned } from './crowding.ts';
import { firstAdult, totalHeads } from './lot.ts';
import { ratesOfDay, survivalAt } from './rates.ts';

export interface BinState {
  /** Heads by substage, eggs included. */
  readonly heads: Float64Array;
  /** Animals the medium of a cup can still raise; Infinity where there is no medium. */
  readonly medium: number;
  /** Share of the adults that are female, where they were told apart; null: the species' own. */
  readonly femaleShare: number | null;
  /** Log of what is laid over what the species lays, as counts have told; null where none has. */
  readonly layingLog: { readonly mean: number; readonly variance: number } | null;
  /** Heads born, or eggs laid, since the last look. */
  readonly bornSince: number;
  /** Spread (CV) of what is known of the count, on the day of the last look. */
  readonly doubtCv: number;
  readonly lookedOn: DayNumber | null;
  /** Day a cup was started; null for bins and colonies. */
  readonly startedOn: DayNumber | null;
  /** Heads when the bin was fullest since its anchor, for looking by eye without a capacity. */
  readonly fullest: number;
}

/** What one bin's life depends on besides its state. */
export interface Life {
  readonly chain: Chain;
  readonly bin: Bin;
  readonly climate: Climate;
  readonly speed: number;
  /** Followed for few days at this speed: its days are not worth laying out. */
  readonly brief?: boolean;
  /** Nothing is laid, whatever the bin is for: to follow heads without their young. */
  readonly barren?: boolean;
}

export interface DayOfBin {
  readonly state: BinState;
  readonly born: number;
  readonly died: number;
}

export const emptyState = (chain: Chain): BinState => ({
  heads: new Float64Array(chain.size),
  medium: Number.POSITIVE_INFINITY,
  femaleShare: null,
  layingLog: null,
  bornSince: 0,
  doubtCv: 0,
  lookedOn: null,
  startedOn: null,
  fullest: 0,
});

/**
 * The bin one day on. Laying is held to what a cup's medium can raise, and the cup is out past its age. Crowding is a
 * split step: laying is cut first, those crowded out or eaten are taken from what the linear day leaves. Given a
 * `pressure`, the heads suffer that one: a part of a bin is crowded by the whole of it.
 */
export function nextDay(life: Life, state: BinState, day: DayNumber, pressure?: Pressure): DayOfBin {
  if (life.bin.role === 'frozen') return { state, born: 0, died: 0 };
  if (isOut(life, state, day)) return emptied(life, state);
  const rates = ratesOn(life, day);
  const crowd = pressure ?? pressureOf(life, state.heads, rates);
  const laying = layingShare(life, state) * crowd.laying;
  const { linear, medium } = fedDay(life, state, { day, rates, laying });
  const { heads, gone } = thinned(linear.heads, crowd);
  return {
    state: {
      ...state,
      heads,
      medium,
      femaleShare: mixedSexes(life, state, rates),
      bornSince: state.bornSince + linear.born,
      fullest: Math.max(state.fullest, totalHeads(heads, life.chain.firstHead)),
    },
    born: linear.born,
    died: linear.died + gone,
  };
}

const emptied = (life: Life, state: BinState): DayOfBin => ({
  state: { ...state, heads: new Float64Array(life.chain.size) },
  born: 0,
  died: totalHeads(state.heads),
});

/** Share of full laying: none in a holding bin; by the females there are, and by what was learned of this colony. */
function layingShare(life: Life, state: BinState): number {
  if (life.barren || life.bin.role === 'holding') return 0;
  if (life.bin.role === 'cup') return state.medium > 0 ? 1 : 0;
  const usual = life.chain.species.laying?.femaleShare.value ?? 0;
  const learned = state.layingLog ? Math.exp(state.layingLog.mean) : 1;
  return state.femaleShare === null || usual === 0 ? learned : (learned * state.femaleShare) / usual;
}

interface DayGiven {
  readonly day: DayNumber;
  readonly rates: ChainRates;
  readonly laying: number;
}

/** The linear day; in a cup with no more laid than its medium can raise. */
function fedDay(
  life: Life,
  state: BinState,
  { day, rates, laying }: DayGiven,
): { linear: ChainDay; medium: number } {
  const full = dayOfChain(state.heads, rates, laying);
  if (life.bin.role !== 'cup') return { linear: full, medium: state.medium };
  const raised = full.born * survivalToAdult(life, day);
  const room = Math.min(state.medium, dailyYield(life));
  const linear = raised > room ? dayOfChain(state.heads, rates, (laying * room) / raised) : full;
  return { linear, medium: state.medium - Math.min(raised, room) };
}

/** Those that become adult bring the species' own sexes; without anybody told apart there is nothing to follow. */
function mixedSexes({ chain }: Life, state: BinState, rates: ChainRates): number | null {
  const { laying } = chain.species;
  if (state.femaleShare === null || !laying) return state.femaleShare;
  const adult = firstAdult(chain);
  const recruits = (rates.advance[adult - 1] as number) * (state.heads[adult - 1] as number);
  const adults = totalHeads(state.heads, adult) + recruits;
  if (adults <= 0) return null;
  return state.femaleShare + ((laying.femaleShare.value - state.femaleShare) * recruits) / adults;
}

/**
 * Most animals a cup begins to raise in a day: its whole yield over half of its life. Larvae crowd one another, so
 * that a cup yields for weeks and not in one burst; our own choice, which puts the best of a melanogaster cup on days
 * 11 to 26 and of a hydei cup on days 17 to 40 (common practice: 14 to 25 and 21 to 35).
 */
function dailyYield({ chain }: Life): number {
  const cup = chain.species.cup;
  return cup ? cup.yieldPerCup.value / (cup.discardAfterDays.value / 2) : Number.POSITIVE_INFINITY;
}

/** Whether a cup has passed the age at which it goes out. */
function isOut(life: Life, state: BinState, day: DayNumber): boolean {
  const cup = life.chain.species.cup;
  return cup !== null && state.startedOn !== null && day - state.startedOn >= cup.discardAfterDays.value;
}

const ratesByChain = new WeakMap<Chain, Map<string, ChainRates>>();

const steadyRates = new WeakMap<Life, ChainRates>();

/** Rates of a bin on a day at full laying; in a steady climate those of any day. */
export function ratesOn(life: Life, day: DayNumber): ChainRates {
  if (life.climate.changes) return ratesFor(life, day);
  const known = steadyRates.get(life);
  if (known) return known;
  const rates = ratesFor(life, day);
  steadyRates.set(life, rates);
  return rates;
}

/** Kept, since they hold for every such day of such bins. */
function ratesFor({ chain, bin, climate, speed, brief }: Life, day: DayNumber): ChainRates {
  const temp = climate.on(day);
  const weekMeanC = climate.weekMeanOn(day);
  const holds = bin.role === 'holding';
  const lasting = !(climate.changes || brief);
  const kept = ratesByChain.get(chain) ?? new Map<string, ChainRates>();
  ratesByChain.set(chain, kept);
  return recall(kept, `${temp.minC} ${temp.maxC} ${weekMeanC} ${speed} ${holds} ${lasting}`, () =>
    ratesOfDay(chain, {
      lasting,
      temp,
      weekMeanC,
      speed,
      holdingLossPerDay: holds ? chain.species.holdingLossPerDay.value : 0,
      laying: 1,
      crowdedLarvae: holds && chain.species.pupatesAlone === true,
    }),
  );
}

/** Share of eggs or newborn that become adult at this temperature. */
function survivalToAdult(life: Life, day: DayNumber): number {
  const mean = meanOfDay(life.climate.on(day));
  return life.chain.species.stages.reduce((share, stage) => share * survivalAt(stage, mean), 1);
}
