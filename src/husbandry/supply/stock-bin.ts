/** One bin laid out for the run: its prey today, the doubt of its count, and what warmth does to its growth. */

import { normalQuantile } from '../../maths/normal.ts';
import { BAND } from '../../maths/quantile.ts';
import { keyOfCode } from '../../maths/random.ts';
import { type Bin, type BinState, binOn, type Chain, chainOf, preyIn, totalHeads } from '../larder/index.ts';
import { type DayTemp, developmentOnDay, meanOfDay, type PreySpecies } from '../prey/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Spread } from './answer.ts';

export interface StockBin {
  readonly bin: Bin;
  readonly species: number;
  readonly key: number;
  /** Doubt of the count on the first day of the horizon: its CV, and its log-sd. */
  readonly countCv: number;
  readonly countLogSd: number;
  /** Log of growth speed per degree of warmth, about the bin's temperature. */
  readonly speedPerDegree: number;
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
  const state = binOn(bin, snapshot.today, { chain, policy, climate });
  const since = state.lookedOn === null || bin.role === 'frozen' ? 0 : snapshot.today - state.lookedOn;
  const cv = Math.hypot(state.doubtCv, policy.doubtGrowthPerDay.value * since);
  return {
    bin,
    chain,
    state,
    heads: totalHeads(preyIn(state, { life: { chain, bin, climate, speed: 1 }, today: snapshot.today })),
    species: species.findIndex(({ code }) => code === bin.species),
    key: keyOfCode(bin.code),
    countCv: cv,
    countLogSd: Math.sqrt(Math.log1p(cv * cv)),
    speedPerDegree: speedPerDegree(chain.species, climate.on(snapshot.today)),
  };
}

/** Heads by the log-normal doubt of the count, whose mean is what the replay says. */
export function headsKnown({ heads, countLogSd: sd }: StockBin): Spread {
  const at = (share: number) => heads * Math.exp(sd * normalQuantile(share) - (sd * sd) / 2);
  return { low: at(BAND.low), mid: at(BAND.mid), high: at(BAND.high) };
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
