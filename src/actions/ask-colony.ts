/** Asks how many breeders a wanted weekly harvest needs, and the way there from a few starters. */
import type { ColonyAnswer, ColonyQuestion } from '../husbandry/colony/index.ts';
import type { Result } from '../husbandry/result.ts';
import { type Asking, ask } from './ask.ts';
import type { Context } from './context.ts';

export const askColony = (
  context: Context,
  question: ColonyQuestion,
  asking: Omit<Asking<'colony start'>, 'options'> = {},
): Promise<Result<ColonyAnswer>> => ask(context, 'colony start', { ...asking, options: question });
