/** What a bin suffers when there are many in it: less laying, deaths above capacity, eggs and pupae eaten. */
import type { ChainRates } from '../../maths/uniformise.ts';
import type { Eaten, StageKind } from '../prey/index.ts';
import type { Bin, Space } from './bin.ts';
import type { Chain, ChainStage } from './chain.ts';
import { totalHeads } from './lot.ts';

export interface Pressure {
  /** Share of full laying. */
  readonly laying: number;
  /** Share of each stage that gets through the day; null where all do. */
  readonly kept: Float64Array | null;
  readonly stages: readonly ChainStage[];
}

/** What a bin can carry, in the measure its load is in; null where nobody has said. */
export interface Capacity {
  readonly heads: number;
  /** Larger heads count for more: by the square of their length against an adult's. */
  readonly bySize: boolean;
}

/** By its space where the species' need of it is known, else by the keeper's own number of heads. */
export function capacityOf(
  { capacity, space }: Pick<Bin, 'capacity' | 'space'>,
  { species }: Chain,
): Capacity | null {
  const { crowding } = species;
  if (space && crowding?.by === space.by)
    return { heads: space.units * crowding.headsPerUnit.value, bySize: true };
  return capacity === null ? null : { heads: capacity, bySize: false };
}

/** How much of the capacity is taken, in the capacity's own measure. */
export function loadOf(chain: Chain, heads: Float64Array, { bySize }: Pick<Capacity, 'bySize'>): number {
  if (!bySize) return totalHeads(heads, chain.firstHead);
  let load = 0;
  for (let j = chain.firstHead; j < heads.length; j++)
    load += (heads[j] as number) * (chain.footprint[j] as number);
  return load;
}

interface Crowded {
  readonly chain: Chain;
  readonly bin: Bin;
}

/** Nothing suffers. */
export const NO_PRESSURE: Pressure = { laying: 1, kept: null, stages: [] };

/**
 * Above capacity laying falls as capacity over load, and deaths rise by mu_c (load/capacity - 1) per day. Of a stage
 * of D mean days that is eaten, the share u^(1/D) gets through a day, so that u of it gets through the stage.
 */
export function pressureOf({ chain, bin }: Crowded, heads: Float64Array, rates: ChainRates): Pressure {
  if (bin.role === 'cup' || bin.role === 'frozen') return NO_PRESSURE;
  const capacity = capacityOf(bin, chain);
  const over = capacity && capacity.heads > 0 ? loadOf(chain, heads, capacity) / capacity.heads : 0;
  const deaths = Math.max(0, over - 1) * (chain.species.crowding?.deathsPerDayOver.value ?? 0);
  const notEaten = uneatenOnDay(chain, { heads, rates, space: bin.space ?? null });
  const laying = over > 1 ? 1 / over : 1;
  if (deaths === 0 && notEaten === null) return { ...NO_PRESSURE, laying };
  const kept = Float64Array.from(
    chain.stages,
    ({ kind }, s) => Math.exp(kind === 'egg' ? 0 : -deaths) * (notEaten?.[s] ?? 1),
  );
  return { laying, kept, stages: chain.stages };
}

interface Medium {
  readonly heads: Float64Array;
  readonly rates: ChainRates;
  readonly space: Space | null;
}

/** Share of each stage that is not eaten on a day; null where nobody eats. */
function uneatenOnDay(chain: Chain, { heads, rates, space }: Medium): Float64Array | null {
  const rules = chain.species.crowding?.eaten ?? [];
  if (rules.length === 0 || !space || space.by !== 'medium' || space.units <= 0) return null;
  const perGram = (kind: StageKind) =>
    chain.stages.reduce((sum, stage) => sum + (stage.kind === kind ? headsIn(stage, heads) : 0), 0) /
    space.units;
  const eaters = { young: perGram('young'), adult: perGram('adult') };
  return Float64Array.from(
    chain.stages,
    ({ kind, first, count }) => uneaten(rules, kind, eaters) ** ((rates.exit[first] as number) / count),
  );
}

/** Those that eat, per gram of medium. */
type Eaters = Readonly<Record<Eaten['by'], number>>;

/**
 * Share of a stage that gets through it uneaten: exp(-sum of c x eaters per gram)
 * (Dennis, Desharnais, Cushing & Costantino 1995, Ecol. Monogr. 65:261-281, eq. 2-4).
 */
export const uneaten = (rules: readonly Eaten[], stage: StageKind, eaters: Eaters): number =>
  Math.exp(
    -rules.reduce((sum, rule) => sum + (rule.stage === stage ? rule.perEater.value * eaters[rule.by] : 0), 0),
  );

function headsIn({ first, count }: ChainStage, heads: Float64Array): number {
  let sum = 0;
  for (let j = first; j < first + count; j++) sum += heads[j] as number;
  return sum;
}

/** What is left of the heads under this pressure, and how many are gone. */
export function thinned(
  heads: Float64Array,
  { kept, stages }: Pressure,
): { heads: Float64Array; gone: number } {
  if (kept === null) return { heads, gone: 0 };
  const left = heads.slice();
  let gone = 0;
  stages.forEach(({ first, count }, s) => {
    const share = kept[s] as number;
    for (let j = first; j < first + count; j++) {
      const here = left[j] as number;
      left[j] = here * share;
      gone += here * (1 - share);
    }
  });
  return { heads: left, gone };
}
