/** The larder laid out in arrays: what is alive in each bin on each day of the horizon, and what a replicate draws of it. */
import { keyOfCode } from '../../maths/random.ts';
import type { Bin, ExpectedDelivery } from '../larder/bin.ts';
import { type Chain, chainOf } from '../larder/chain.ts';
import { spreadLot, totalHeads } from '../larder/lot.ts';
import { type CohortPath, pathsOf, preyIn } from '../larder/path.ts';
import { binOn } from '../larder/replay.ts';
import { type BinState, emptyState, type Life } from '../larder/state.ts';
import { type DayTemp, developmentOnDay, meanOfDay } from '../prey/rate.ts';
import type { PreySpecies } from '../prey/species.ts';
import { roomTemp } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';

/** Heads that came together, at each of a few growth speeds. */
export interface Cohort {
  readonly bin: number;
  readonly species: number;
  /** Day of the horizon on which they are there first, if nothing is late. */
  readonly arrives: number;
  readonly kind: 'here' | 'hatched' | 'delivered';
  /** First slice in the run's arrays, and number of slices. */
  readonly firstSlice: number;
  readonly slices: number;
  readonly nodes: readonly CohortPath[];
  /** Key of a delivery's own draws. */
  readonly key: number;
}

export interface StockBin {
  readonly bin: Bin;
  readonly species: number;
  readonly key: number;
  /** Log-sd of the count on the first day of the horizon. */
  readonly countLogSd: number;
  /** Log of growth speed per degree of warmth, about the bin's temperature. */
  readonly speedPerDegree: number;
  readonly state: BinState;
  readonly chain: Chain;
  /** Prey in it today, as best known. */
  readonly heads: number;
}

export interface Stock {
  readonly species: readonly PreySpecies[];
  readonly bins: readonly StockBin[];
  readonly cohorts: readonly Cohort[];
  readonly totalSlices: number;
  readonly days: number;
  /** Logs of the growth speeds of the nodes, equally spaced. */
  readonly speedLogs: Float64Array;
}

/**
 * Bins and deliveries laid out already, for trials that change one of them: kept by the very object, for one day,
 * horizon and set of facts.
 */
export interface Laid {
  readonly bins: Map<Bin, StockBin>;
  readonly paths: Map<Bin | ExpectedDelivery, readonly (readonly CohortPath[])[]>;
}

export const nothingLaid = (): Laid => ({ bins: new Map(), paths: new Map() });

/** What is kept of a thing, or made and kept. */
function keptOr<K, V>(kept: Map<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = make();
  kept.set(key, made);
  return made;
}

const chains = new WeakMap<PreySpecies, Chain>();

/** The chain of a species, made once. */
function chainFor(species: PreySpecies): Chain {
  const chain = chains.get(species) ?? chainOf(species);
  chains.set(species, chain);
  return chain;
}

/** Lays out the larder for a horizon of `days` days from the snapshot's day. */
export function stockOf(snapshot: Snapshot, days: number, laid: Laid = nothingLaid()): Stock {
  const species = [...snapshot.facts.species.values()].sort((a, b) => (a.code < b.code ? -1 : 1));
  const speedLogs = nodesOf(snapshot);
  const sorted = [...snapshot.bins].sort((a, b) => (a.code < b.code ? -1 : 1));
  const bins = sorted.map((bin) => keptOr(laid.bins, bin, () => stockBin(snapshot, bin, species)));
  const parts = bins.flatMap((bin, b) => cohortsOf(snapshot, bin, { b, days, speedLogs, laid }));
  let firstSlice = 0;
  const cohorts = parts.map((part) => {
    const cohort = { ...part, firstSlice };
    firstSlice += part.slices;
    return cohort;
  });
  return { species, bins, cohorts, totalSlices: firstSlice, days, speedLogs };
}

function speciesOf(snapshot: Snapshot, code: string): PreySpecies {
  const species = snapshot.facts.species.get(code);
  if (!species) throw new Error(`there is no prey species ${code}`);
  return species;
}

/** Equally spaced nodes over two standard deviations of the log of growth speed, either side. */
function nodesOf({ facts }: Snapshot): Float64Array {
  const n = facts.policy.speedNodes.value;
  const sd = facts.policy.speedLogSd.value;
  return Float64Array.from({ length: n }, (_, i) => (n > 1 ? sd * ((2 * 2 * i) / (n - 1) - 2) : 0));
}

function stockBin(snapshot: Snapshot, bin: Bin, species: readonly PreySpecies[]): StockBin {
  const { policy } = snapshot.facts;
  const chain = chainFor(speciesOf(snapshot, bin.species));
  const temp = roomTemp(snapshot.rooms, bin.room);
  const state = binOn(bin, snapshot.today, { chain, policy, temp });
  const since = state.lookedOn === null ? 0 : snapshot.today - state.lookedOn;
  const cv = Math.hypot(state.doubtCv, policy.doubtGrowthPerDay.value * since);
  return {
    bin,
    chain,
    state,
    heads: totalHeads(preyIn(state, { life: { chain, bin, temp, speed: 1 }, today: snapshot.today })),
    species: species.findIndex(({ code }) => code === bin.species),
    key: keyOfCode(bin.code),
    countLogSd: Math.sqrt(Math.log1p(cv * cv)),
    speedPerDegree: speedPerDegree(chain.species, temp),
  };
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

type Unplaced = Omit<Cohort, 'firstSlice'>;

interface CohortLayout {
  readonly b: number;
  readonly days: number;
  readonly speedLogs: Float64Array;
  readonly laid: Laid;
}

function cohortsOf(
  snapshot: Snapshot,
  bin: StockBin,
  { b, days, speedLogs, laid }: CohortLayout,
): Unplaced[] {
  const own = keptOr(laid.paths, bin.bin, () =>
    atSpeeds(snapshot, bin, { state: bin.state, days, speedLogs }),
  );
  const cohorts = (bin.bin.reserved ? [] : own).map(
    (nodes, c): Unplaced => ({
      bin: b,
      species: bin.species,
      arrives: nodes[0]?.arrives as number,
      kind: c === 0 ? 'here' : 'hatched',
      slices: nodes[0]?.slices as number,
      nodes,
      key: bin.key,
    }),
  );
  const coming = snapshot.deliveries
    .filter((delivery) => delivery.bin === bin.bin.code)
    .sort((x, y) => (x.code < y.code ? -1 : 1));
  return [
    ...cohorts,
    ...coming.flatMap((delivery) => deliveredCohort(snapshot, bin, { delivery, b, days, speedLogs, laid })),
  ];
}

interface SpeedLayout {
  readonly state: BinState;
  readonly days: number;
  readonly speedLogs: Float64Array;
}

/** Paths of the bin's cohorts, each at every speed; the cohorts of all speeds are the same in number and day. */
function atSpeeds(
  snapshot: Snapshot,
  bin: StockBin,
  { state, days, speedLogs }: SpeedLayout,
): CohortPath[][] {
  const temp = roomTemp(snapshot.rooms, bin.bin.nextRoom ?? bin.bin.room);
  const slices = snapshot.facts.policy.slices.value;
  const bySpeed = Array.from(speedLogs, (log) => {
    const life: Life = { chain: bin.chain, bin: bin.bin, temp, speed: Math.exp(log) };
    return pathsOf(state, { life, today: snapshot.today, days, slices });
  });
  const first = bySpeed[0] as CohortPath[];
  const aligned = first.map((_, c) => bySpeed.map((paths) => paths[c] as CohortPath));
  return aligned.filter((nodes, c) => c === 0 || nodes.some(({ heads }) => heads > 0));
}

function deliveredCohort(
  snapshot: Snapshot,
  bin: StockBin,
  { delivery, b, days, speedLogs, laid }: CohortLayout & { delivery: ExpectedDelivery },
): Unplaced[] {
  const arrives = Math.max(0, delivery.day - snapshot.today);
  if (arrives >= days) return [];
  const paths = keptOr(laid.paths, delivery, () => {
    const state = { ...emptyState(bin.chain), heads: spreadLot(bin.chain, delivery.lot) };
    const holding: StockBin = { ...bin, bin: { ...bin.bin, role: 'holding' } };
    return atSpeeds(snapshot, holding, { state, days, speedLogs });
  });
  const nodes = (paths[0] as readonly CohortPath[]).map((path) => ({ ...path, arrives }));
  const slices = nodes[0]?.slices as number;
  return [
    {
      bin: b,
      species: bin.species,
      arrives,
      kind: 'delivered',
      slices,
      nodes,
      key: keyOfCode(delivery.code),
    },
  ];
}
