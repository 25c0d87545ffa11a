/**
 * Where the prey of a bin will be, day by day: cohorts of heads that came together, each cut into slices of equal
 * heads by rank of development. A slice keeps its rank, so that its lengths are the quantiles of the engine's own
 * distribution, and heads eaten from a slice are missing from that slice ever after.
 */
import type { DayNumber } from '../calendar.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Chain } from './chain.ts';
import { capacityOf, NO_PRESSURE, type Pressure, pressureOf } from './crowding.ts';
import { totalHeads } from './lot.ts';
import { type BinState, emptyState, type Life, nextDay, ratesOn } from './state.ts';

/** Longer than any prey: has left the stages that are fed. */
const OUTGROWN_MM = Number.POSITIVE_INFINITY;
/** Longer than any prey too, so that lengths ascend: an adult kept back to breed. */
export const KEPT_MM = Number.MAX_VALUE;

export interface CohortPath {
  /** Day of the horizon on which the heads are there first. */
  readonly arrives: number;
  /** Heads on arrival, without any being eaten. */
  readonly heads: number;
  /** Share of them alive, by days since arrival; first is 1. */
  readonly alive: Float64Array;
  /** Length of slice q on day t since arrival, at [t * slices + q], ascending in q; 0 not to be fed yet. */
  readonly lengthMm: Float64Array;
  readonly slices: number;
}

export interface PathOptions {
  readonly life: Life;
  readonly today: DayNumber;
  readonly days: number;
  /** Most slices a cohort is cut into. */
  readonly slices: number;
  /** Heads that are here by the best guess, of which each slice has one at least; by default those of the state. */
  readonly headsHere?: number;
}

/** Cohorts of a bin from its state today: what is there, and what hatches or emerges on each later day. */
export function pathsOf(state: BinState, options: PathOptions): CohortPath[] {
  const { life, days, slices, today } = options;
  const { chain } = life;
  const ahead = wholeBin(state, options);
  const here = preyIn(state, { life, today });
  const count = totalHeads(here);
  const sliceCount = Math.max(1, Math.min(slices, Math.round(options.headsHere ?? count)));
  const paths = [pathFrom(here, { ...options, ahead, slices: sliceCount, arrives: 0, heads: count })];
  if (life.bin.role === 'holding' || life.bin.role === 'frozen') return paths;
  const newborn = new Float64Array(chain.size);
  newborn[chain.firstHead] = 1;
  const young = Math.ceil(Math.sqrt(slices));
  let path: CohortPath | null = null;
  for (let day = 1; day < days; day++) {
    const heads = ahead.hatched[day] as number;
    if (path === null || (ahead.changes && day % DAYS_PER_WEEK === 0))
      path = pathFrom(newborn, { ...options, ahead, slices: young, arrives: day, heads: 1 });
    paths.push({ ...path, arrives: day, heads });
  }
  return paths;
}

/** The bin as a whole over the horizon: what its heads suffer each day, and what hatches (for flies: emerges). */
interface Ahead {
  readonly pressures: readonly Pressure[];
  /** Heads new on each day of the horizon, day 0 none. */
  readonly hatched: Float64Array;
  /** Days are not alike: those that hatch in different weeks have different lives. */
  readonly changes: boolean;
}

function wholeBin(state: BinState, { life, days, today }: PathOptions): Ahead {
  const { chain, bin } = life;
  const hatched = new Float64Array(days);
  const pressures: Pressure[] = [];
  const barren: Life = { ...life, barren: true };
  const staysAsItIs = bin.role === 'holding' && !life.climate.changes && !capacityOf(bin, chain)?.bySize;
  let now = state;
  for (let day = 0; day < days; day++) {
    const on = today + day;
    const pressure = pressureOf(life, now.heads, ratesOn(life, on));
    pressures.push(pressure);
    if (staysAsItIs && pressure.kept === null) break;
    if (day + 1 === days) break;
    const next = nextDay(life, now, on, pressure).state;
    const grown = { ...now, heads: withoutImmature(chain, now.heads), startedOn: null };
    const alone = nextDay(barren, grown, on, pressure).state;
    hatched[day + 1] = Math.max(
      0,
      totalHeads(next.heads, chain.firstHead) - totalHeads(alone.heads, chain.firstHead),
    );
    now = next;
  }
  const changes = life.climate.changes || pressures.some(({ kept }) => kept !== null);
  return { pressures, hatched, changes };
}

const withoutImmature = (chain: Chain, heads: Float64Array): Float64Array =>
  heads.map((n, j) => (j < chain.firstHead ? 0 : n));

/** What is in the bin to be fed: neither eggs nor, in a cup, pupae; nor a cup's starters, which are there to lay. */
export function preyIn(state: BinState, { life, today }: Pick<PathOptions, 'life' | 'today'>): Float64Array {
  const heads = withoutImmature(life.chain, state.heads);
  const starters = life.chain.species.cup?.starters.value ?? 0;
  if (state.startedOn === null || starters === 0) return heads;
  const barren: Life = { ...life, barren: true };
  const first = new Float64Array(life.chain.size);
  first[life.chain.firstHead] = starters;
  let alive: BinState = { ...emptyState(life.chain), heads: first };
  for (let day = state.startedOn; day < today; day++) alive = nextDay(barren, alive, day).state;
  return heads.map((n, j) => Math.max(0, n - (alive.heads[j] as number)));
}

interface Start {
  readonly ahead: Ahead;
  /** Days into the horizon at which they are followed from. */
  readonly arrives: number;
  readonly heads: number;
}

function pathFrom(heads: Float64Array, options: PathOptions & Start): CohortPath {
  const { life, days, slices, today, ahead, arrives } = options;
  const alive = new Float64Array(days);
  const lengthMm = new Float64Array(days * slices);
  const barren: Life = { ...life, barren: true };
  let state: BinState = { ...emptyState(life.chain), heads };
  const atStart = totalHeads(heads);
  for (let day = 0; day < days; day++) {
    alive[day] = atStart > 0 ? totalHeads(state.heads) / atStart : 1;
    sliceLengths(life, state.heads, lengthMm.subarray(day * slices, (day + 1) * slices));
    const on = Math.min(arrives + day, days - 1);
    const pressure = ahead.pressures[on] ?? NO_PRESSURE;
    if (day + 1 < days) state = nextDay(barren, state, today + on, pressure).state;
  }
  return { arrives: options.arrives, heads: options.heads, alive, lengthMm, slices };
}

/** Lengths at the middle ranks of equal slices of the heads; below the stages that are fed 0, above them none. */
function sliceLengths(life: Life, heads: Float64Array, lengths: Float64Array): void {
  const total = totalHeads(heads);
  if (total <= 0) return void lengths.fill(0);
  let substage = 0;
  let below = 0;
  for (let q = 0; q < lengths.length; q++) {
    const rank = ((q + 1 / 2) / lengths.length) * total;
    while (substage < heads.length - 1 && below + (heads[substage] as number) < rank) {
      below += heads[substage] as number;
      substage++;
    }
    const within = (rank - below) / (heads[substage] as number);
    lengths[q] = edibleLength(life, substage, Math.min(1, Math.max(0, within)));
  }
}

function edibleLength({ chain, bin }: Life, substage: number, within: number): number {
  const stage = chain.stages[chain.stageOf[substage] as number];
  if (stage?.kind === 'adult' && bin.keepAdults) return KEPT_MM;
  if (!stage?.fed) return substage < firstFed(chain) ? 0 : OUTGROWN_MM;
  const [from, to] = [chain.fromMm[substage] as number, chain.toMm[substage] as number];
  return from + (to - from) * within;
}

const firstFed = (chain: Chain): number => chain.stages.find(({ fed }) => fed)?.first ?? 0;
