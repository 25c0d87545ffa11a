/** Asks how many the box should hold: what a head that is eaten costs against the packs ordered. */
import type { BulkAnswer, BulkQuestion } from '../husbandry/plan/index.ts';
import type { Result } from '../husbandry/result.ts';
import type { Snapshot } from '../husbandry/snapshot.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';
import type { Found } from './questions.ts';

/** Found is null where the offer cannot come within the weeks, or nobody could eat of it. */
export const askBulk = (
  context: Context,
  question: BulkQuestion,
  where: Omit<Asking<'bulk'>, 'options'> = {},
): Promise<Result<Found<BulkAnswer>>> => ask(context, 'bulk', { ...where, options: question });

/** The answer already kept, or null: it takes seconds to find. */
export const keptBulk = (
  context: Context,
  question: BulkQuestion,
  snapshot: Snapshot,
): Promise<Found<BulkAnswer> | null> => askKept(context, 'bulk', { options: question, snapshot });
