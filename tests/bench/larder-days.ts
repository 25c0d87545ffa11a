/** Colonies of all species followed for weeks, crowded ones among them: what is timed, and what its twin must agree on. */
import { preySpecies } from '../../src/facts/prey/index.ts';
import type { Bin } from '../../src/husbandry/larder/bin.ts';
import type { Chain } from '../../src/husbandry/larder/chain.ts';
import type { BinState, Life } from '../../src/husbandry/larder/state.ts';
import type { ChainRates } from '../../src/maths/uniformise.ts';

export type LarderCore = Pick<typeof import('../../src/husbandry/larder/chain.ts'), 'chainOf'> &
  Pick<typeof import('../../src/husbandry/larder/climate.ts'), 'steadyClimate'> &
  Pick<typeof import('../../src/husbandry/larder/state.ts'), 'emptyState' | 'nextDay' | 'ratesOn'>;

export interface LarderDays {
  readonly days: number;
  /** Plays all bins from the start; heads of each at the end, eggs too. */
  readonly play: () => readonly number[];
  /** Everything the twin reads. */
  readonly input: () => Float64Array;
}

const CAPACITY = 800;
const PER_SUBSTAGE = 3;

export function larderDays(core: LarderCore, { bins, weeks }: { bins: number; weeks: number }): LarderDays {
  const days = 7 * weeks;
  const lives = Array.from({ length: bins }, (_, i) => lifeOf(core, i));
  const start = ({ chain }: Life): BinState => {
    const state = core.emptyState(chain);
    return { ...state, heads: new Float64Array(chain.size).fill(PER_SUBSTAGE) };
  };
  const play = () =>
    lives.map((life) => {
      let state = start(life);
      for (let day = 0; day < days; day++) state = core.nextDay(life, state, day).state;
      return state.heads.reduce((sum, n) => sum + n, 0);
    });
  const input = () =>
    Float64Array.from([bins, days, ...lives.flatMap((life) => columnsOf(life.chain, core.ratesOn(life, 0)))]);
  return { days, play, input };
}

/** The n-th bin, its species in turn; each lives at a temperature of its own, so that no two share their rates. */
function lifeOf(core: LarderCore, i: number): Life {
  const species = preySpecies[i % preySpecies.length]!;
  const chain = core.chainOf(species);
  const bin: Bin = {
    code: `B${i}`,
    name: `B${i}`,
    species: species.code,
    role: 'colony',
    room: 'room',
    capacity: CAPACITY,
    keepAdults: false,
    events: [],
  };
  const mean = 26 + i / 20;
  return { chain, bin, climate: core.steadyClimate({ minC: mean - 2, maxC: mean + 2 }), speed: 1 };
}

const columnsOf = (chain: Chain, { exit, advance, birth }: ChainRates): number[] => [
  chain.size,
  chain.firstHead,
  CAPACITY,
  chain.species.crowding?.deathsPerDayOver.value ?? 0,
  ...exit,
  ...advance,
  ...birth,
  ...Array.from(chain.stageOf, (s) => Number(chain.stages[s]?.kind === 'egg')),
  ...Array.from({ length: chain.size }, () => PER_SUBSTAGE),
];
