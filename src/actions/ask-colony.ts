/** Asks of colonies: how many breeders a wanted harvest needs and the way there, and what a colony's room can give. */
import type {
  ColonyAnswer,
  ColonyQuestion,
  HarvestAnswer,
  HarvestQuestion,
} from '../husbandry/colony/index.ts';
import type { Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';

type Where = Omit<Asking<'colony start' | 'largest harvests'>, 'options'>;

export const askColony = (
  context: Context,
  question: ColonyQuestion,
  where: Where = {},
): Promise<Result<ColonyAnswer>> => ask(context, 'colony start', { ...where, options: question });

/** The answer already kept, or null: it takes seconds to find. */
export const keptColony = (
  context: Context,
  question: ColonyQuestion,
  snapshot: Snapshot,
): Promise<ColonyAnswer | null> => askKept(context, 'colony start', { options: question, snapshot });

export const askHarvests = (
  context: Context,
  question: HarvestQuestion,
  where: Where = {},
): Promise<Result<HarvestAnswer>> => ask(context, 'largest harvests', { ...where, options: question });
