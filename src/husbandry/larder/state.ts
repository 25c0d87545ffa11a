/** The state of a bin and how it changes in one day: the one engine for bins, colonies and cups. */

import { type ChainDay, type ChainRates, dayOfChain } from '../../maths/uniformise.ts';
import type { DayNumber } from '../calendar.ts';
import { type DayTemp, meanOfDay } from '../prey/index.ts';
import type { Bin } from './bin.ts';
import type { Chain } from './chain.ts';
import { totalHeads } from './lot.ts';
import { ratesOfDay, survivalAt } from './rates.ts';

export interface BinState {
  /** Heads by substage, eggs included. */
  readonly heads: Float64Array;
  /** Animals the medium of a cup can still raise; Infinity where there is no medium. */
  readonly medium: number;
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
  readonly temp: DayTemp;
  readonly speed: number;
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
  doubtCv: 0,
  lookedOn: null,
  startedOn: null,
  fullest: 0,
});

/** Share of full laying: none in a holding bin; above a colony's capacity it falls as capacity over heads. */
function layingShare(life: Life, state: BinState): number {
  if (life.barren || life.bin.role === 'holding') return 0;
  if (life.bin.role === 'cup') return state.medium > 0 ? 1 : 0;
  const heads = totalHeads(state.heads, life.chain.firstHead);
  return life.bin.capacity && heads > life.bin.capacity ? life.bin.capacity / heads : 1;
}

/** The bin one day on. Laying is held to what a cup's medium can raise, and the cup is out past its age. */
export function nextDay(life: Life, state: BinState, day: DayNumber): DayOfBin {
  if (isOut(life, state, day))
    return {
      state: { ...state, heads: new Float64Array(life.chain.size) },
      born: 0,
      died: totalHeads(state.heads),
    };
  const laying = layingShare(life, state);
  const full = stepWith(life, state, laying);
  const raised = full.born * survivalToAdult(life);
  const room = Math.min(state.medium, dailyYield(life));
  const share = raised > room ? room / raised : 1;
  const { heads, born, died } = share < 1 ? stepWith(life, state, laying * share) : full;
  const medium = state.medium - Math.min(raised, room);
  return {
    state: {
      ...state,
      heads,
      medium,
      fullest: Math.max(state.fullest, totalHeads(heads, life.chain.firstHead)),
    },
    born,
    died,
  };
}

/**
 * Most animals a cup begins to raise in a day: its whole yield over half of its life. Larvae crowd one another, so
 * that a cup yields for weeks and not in one burst; our own choice, which puts the best of a melanogaster cup on days
 * 11 to 26 and of a hydei cup on days 17 to 40 (common practice: 14 to 25 and 21 to 35).
 */
function dailyYield({ bin, chain }: Life): number {
  const cup = chain.species.cup;
  if (bin.role !== 'cup' || !cup) return Number.POSITIVE_INFINITY;
  return cup.yieldPerCup.value / (cup.discardAfterDays.value / 2);
}

/** Whether a cup has passed the age at which it goes out. */
function isOut(life: Life, state: BinState, day: DayNumber): boolean {
  const cup = life.chain.species.cup;
  return cup !== null && state.startedOn !== null && day - state.startedOn >= cup.discardAfterDays.value;
}

const ratesByLife = new WeakMap<Life, Map<number, ChainRates>>();

/** Rates of a life at a share of full laying; kept, since they hold for every day of that life. */
function ratesOf(life: Life, laying: number): ChainRates {
  const kept = ratesByLife.get(life) ?? new Map<number, ChainRates>();
  ratesByLife.set(life, kept);
  const known = kept.get(laying);
  if (known) return known;
  const rates = ratesOfDay(life.chain, {
    temp: life.temp,
    weekMeanC: meanOfDay(life.temp),
    speed: life.speed,
    holdingLossPerDay: life.bin.role === 'holding' ? life.chain.species.holdingLossPerDay.value : 0,
    laying,
  });
  kept.set(laying, rates);
  return rates;
}

const stepWith = (life: Life, state: BinState, laying: number): ChainDay =>
  dayOfChain(state.heads, ratesOf(life, laying));

/** Share of eggs or newborn that become adult at this temperature. */
function survivalToAdult(life: Life): number {
  const mean = meanOfDay(life.temp);
  return life.chain.species.stages.reduce((share, stage) => share * survivalAt(stage, mean), 1);
}
