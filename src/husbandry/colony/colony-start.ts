/** Colony start: the smallest breeding stock for a wanted weekly harvest, and the way there from a few starters. */
import { solver } from '../../maths/linear-programme.ts';
import type { ColonyGrowth } from '../larder/index.ts';
import { err, ok, type Result } from '../result.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import type { Wanted } from './breeding.ts';
import { type BreedingStock, fewestBreeders } from './breeding-stock.ts';
import {
  type Asked,
  amissIn,
  breedingAsked,
  type ColonyQuestion,
  cannotLast,
  tempOf,
} from './colony-question.ts';
import { breakEvenWeek, type Costs, costsOf } from './costs.ts';
import { largestFirst, sizesOf } from './sizes.ts';
import { type StartWeek, startPath } from './start-path.ts';
import { type SustainingStock, sustainingStock } from './sustaining-stock.ts';
import { weeksOf } from './sustains.ts';

export interface ColonyStart extends SustainingStock {
  readonly species: string;
  /** Growth of a colony with room from which nothing is taken. */
  readonly growth: Pick<ColonyGrowth, 'perWeek' | 'doublingDays' | 'generationDays' | 'weeklyShare'>;
  /** By means: with fewer the harvest cannot last; females, the males they need, and the weekly surplus of other sizes. */
  readonly smallest: Pick<BreedingStock, 'females' | 'males' | 'surplus'>;
  /** The largest size first: the order of what is taken on the path. */
  readonly wanted: readonly Wanted[];
  /** From the starters, by means, towards the sustaining stock. */
  readonly path: readonly StartWeek[];
  /** First week in which anything is taken, and in which all that is wanted is; null where none. */
  readonly firstHarvest: number | null;
  readonly fullHarvest: number | null;
  /** Heads bought before the harvest lasts, or to the end of the path. */
  readonly bridge: number;
  /** Weeks after the first full harvest that fall short again: breeders of one age lay, age and die together. */
  readonly shortAgain: number;
  /** First week from which enough weeks are met to the end of the path, a generation or more; null where none. */
  readonly lastsFrom: number | null;
  readonly costs: readonly Costs[] | null;
  readonly breakEven: number | null;
}

export interface ColonyAnswer {
  readonly revision: number;
  readonly outcome: Result<ColonyStart>;
}

/** The answer to a question of the room's facts. The colony is lived through many times: seconds. */
export async function colonyStart(snapshot: Snapshot, question: ColonyQuestion): Promise<ColonyAnswer> {
  const { revision } = snapshot;
  const asked = breedingAsked(snapshot.facts, question);
  if (!asked.ok) return { revision, outcome: asked };
  const amiss = amissIn(question, asked.value.breeding);
  if (amiss) return { revision, outcome: err(amiss) };
  const stock = fewestBreeders(await solver(), asked.value.breeding, question.wanted);
  if (stock === null)
    return { revision, outcome: err(cannotLast(asked.value.breeding.chain.species.commonName)) };
  return { revision, outcome: ok(started(snapshot, question, { ...asked.value, stock })) };
}

interface Settled extends Asked {
  readonly stock: BreedingStock;
}

function started(
  snapshot: Snapshot,
  question: ColonyQuestion,
  { breeding, growth, stock }: Settled,
): ColonyStart {
  const { policy } = snapshot.facts;
  const wanted = largestFirst(question.wanted);
  const judged = sustainingStock({ breeding, wanted, stock, policy, seed: snapshot.seed });
  const breeders = judged.sustaining ?? { females: Math.ceil(stock.females), males: Math.ceil(stock.males) };
  const path = startPath({
    breeding,
    temp: tempOf(question),
    starters: question.starters,
    binSize: question.binSize,
    breeders,
    sizes: sizesOf(breeding, { wanted, stock, times: breeders.females / stock.females }),
    weeks: weeksOf(policy.colonyYears.value),
  });
  const costs = question.prices && costsOf(path, question.prices);
  return {
    species: question.species,
    growth: {
      perWeek: growth.perWeek,
      doublingDays: growth.doublingDays,
      generationDays: growth.generationDays,
      weeklyShare: growth.weeklyShare,
    },
    smallest: { females: stock.females, males: stock.males, surplus: stock.surplus },
    ...judged,
    wanted,
    path,
    ...harvestsOf(path, {
      weeksMet: policy.colonyWeeksMet.value,
      generationWeeks: growth.generationDays / DAYS_PER_WEEK,
    }),
    costs,
    breakEven: costs && breakEvenWeek(costs),
  };
}

type Harvests = Pick<ColonyStart, 'firstHarvest' | 'fullHarvest' | 'bridge' | 'shortAgain' | 'lastsFrom'>;

/** When harvests begin, are full and last, and what is bought until then; to within one head. */
function harvestsOf(path: readonly StartWeek[], enough: Enough): Harvests {
  const first = path.find(({ taken }) => taken.some((heads) => heads >= 1));
  const full = path.find(({ bought }) => bought < 1);
  const lasting = lastsFrom(path, enough);
  return {
    firstHarvest: first?.week ?? null,
    fullHarvest: full?.week ?? null,
    bridge: path
      .slice(0, lasting === null ? path.length : lasting - 1)
      .reduce((sum, { bought }) => sum + bought, 0),
    shortAgain: path.slice(full?.week ?? path.length).filter(({ bought }) => bought >= 1).length,
    lastsFrom: lasting,
  };
}

/** Share of weeks to be met, for no less than a generation. */
interface Enough {
  readonly weeksMet: number;
  readonly generationWeeks: number;
}

/** First of the weeks that is met and so are enough of all that follow. */
function lastsFrom(path: readonly StartWeek[], { weeksMet, generationWeeks }: Enough): number | null {
  let met = 0;
  let from: number | null = null;
  for (let i = path.length - 1; i >= 0; i--) {
    const { week, bought } = path[i] as StartWeek;
    if (bought >= 1) continue;
    met += 1;
    if (met >= weeksMet * (path.length - i)) from = week;
  }
  return from !== null && path.length - from >= generationWeeks ? from : null;
}
