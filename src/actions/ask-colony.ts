/** Asks how many breeders a wanted weekly harvest needs, and the way there from a few starters. */
import type { ColonyAnswer, ColonyQuestion } from '../husbandry/colony/index.ts';
import type { Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';

export const askColony = (
  context: Context,
  question: ColonyQuestion,
  asking: Omit<Asking<'colony start'>, 'options'> = {},
): Promise<Result<ColonyAnswer>> => ask(context, 'colony start', { ...asking, options: question });

/** The answer already kept, or null: it takes seconds to find. */
export const keptColony = (
  context: Context,
  question: ColonyQuestion,
  snapshot: Snapshot,
): Promise<ColonyAnswer | null> => askKept(context, 'colony start', { options: question, snapshot });
