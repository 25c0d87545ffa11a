/** One bin laid out for the run: its prey today, what is believed of it, and what warmth does to its growth. */

import { keyOfCode } from '../../maths/random.ts';
import {
  type Belief,
  type Bin,
  type BinState,
  beliefOf,
  type Chain,
  chainOf,
  preyIn,
  totalHeads,
} from '../larder/index.ts';
import { type DayTemp, developmentOnDay, meanOfDay, type PreySpecies } from '../prey/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Spread } from './answer.ts';

export interface StockBin {
  readonly bin: Bin;
  readonly species: number;
  readonly key: number;
  readonly belief: Belief;
  /** Log of growth speed per degree of warmth, about the bin's temperature. */
  readonly speedPerDegree: number;
  /** Standard deviation of the log of growth speed from today on: the bin's own, and the room's warmth. */
  readonly speedSd: number;
  /** Logs of the growth speeds it is followed ahead at, equally spaced. */
  readonly speedLogs: Float64Array;
  /** Today, at its likeliest growth speed. */
  readonly state: BinState;
  readonly chain: Chain;
  /** Prey in it today, as best known. */
  readonly heads: number;
}

const chains = new WeakMap<PreySpecies, Chain>();

/** The chain of a species, made once. */
function chainFor(species: PreySpecies): Chain {
  const chain = chains.get(species) ?? chainOf(species);
  chains.set(species, chain);
  return chain;
}

function speciesOf(snapshot: Setting, code: string): PreySpecies {
  const species = snapshot.facts.species.get(code);
  if (!species) throw new Error(`there is no prey species ${code}`);
  return species;
}

/** What a bin's state on a day rests on besides its own record. */
export type Setting = Pick<Snapshot, 'today' | 'rooms' | 'removedRooms' | 'facts'>;

/** The bin as it stands on the snapshot's day. */
export function stockBin(snapshot: Setting, bin: Bin, species: readonly PreySpecies[]): StockBin {
  const { policy } = snapshot.facts;
  const chain = chainFor(speciesOf(snapshot, bin.species));
  const climate = binClimate(snapshot, bin);
  const belief = beliefOf(bin, snapshot.today, { chain, policy, climate });
  const speed = Math.exp(belief.speedLog.mean);
  const state = belief.stateAt(speed);
  const perDegree = speedPerDegree(chain.species, climate.on(snapshot.today));
  const speedSd = Math.hypot(belief.speedLog.sd, policy.roomTempSdC.value * perDegree);
  return {
    bin,
    chain,
    belief,
    state,
    heads: totalHeads(preyIn(state, { life: { chain, bin, climate, speed }, today: snapshot.today })),
    species: species.findIndex(({ code }) => code === bin.species),
    key: keyOfCode(bin.code),
    speedPerDegree: perDegree,
    speedSd,
    speedLogs: nodesAbout(belief.speedLog.mean, speedSd, policy.speedNodes.value),
  };
}

/** Standard deviations of the log of growth speed that its nodes reach to either side. */
const REACH = 2;

/** Equally spaced; one alone is the middle. */
const nodesAbout = (mean: number, sd: number, n: number): Float64Array =>
  Float64Array.from({ length: n }, (_, i) =>
    n > 1 ? mean + sd * ((2 * REACH * i) / (n - 1) - REACH) : mean,
  );

/**
 * The bin today, where it grows at this speed from today on. Part of that is warmth to come, so until today it grew at
 * what is to be expected given the whole: mean + (log - mean) x own variance / whole variance.
 */
export function stateAhead({ belief, speedSd }: StockBin, log: number): BinState {
  const { mean, sd } = belief.speedLog;
  const own = speedSd > 0 ? (log - mean) * (sd / speedSd) ** 2 : 0;
  return belief.stateAt(Math.exp(mean + own));
}

/** Prey in the bin, as far as it is known. */
export function headsKnown({ heads, belief }: StockBin): Spread {
  const { mean, low, mid, high } = belief.heads;
  const each = mean > 0 ? heads / mean : 0;
  return { low: each * low, mid: each * mid, high: each * high };
}

/** d ln r / dT of the longest span, over one degree; 0 where nothing grows. */
function speedPerDegree(species: PreySpecies, temp: DayTemp): number {
  const span = species.spans[species.spans.length - 1];
  if (!span) return 0;
  const at = (shift: number) => {
    const day = { minC: temp.minC + shift, maxC: temp.maxC + shift };
    return developmentOnDay(span, day, meanOfDay(day));
  };
  const [colder, warmer] = [at(-1 / 2), at(1 / 2)];
  return colder > 0 && warmer > 0 ? Math.log(warmer / colder) : 0;
}
