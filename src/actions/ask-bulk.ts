/** Asks how many the box should hold: what a head that is eaten costs against the packs ordered. */
import type { BulkQuestion } from '../husbandry/plan/index.ts';
import type { Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';
import type { Answers } from './questions.ts';

export const askBulk = (
  context: Context,
  question: BulkQuestion,
  where: Omit<Asking<'bulk'>, 'options'> = {},
): Promise<Result<Answers['bulk']>> => ask(context, 'bulk', { ...where, options: question });

/** The answer already kept, or null: it takes seconds to find. */
export const keptBulk = (
  context: Context,
  question: BulkQuestion,
  snapshot: Snapshot,
): Promise<Answers['bulk'] | null> => askKept(context, 'bulk', { options: question, snapshot });
