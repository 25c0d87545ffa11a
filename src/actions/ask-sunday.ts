/** Asks the Sunday question, with the act that helps most or, where nobody reads of it, without the search for it. */
import { ok, type Result } from '../husbandry/result.ts';
import type { CoverAnswer } from '../husbandry/supply/index.ts';
import { ask, askKept, type CoverAsking } from './ask.ts';
import type { Context } from './context.ts';

/** The full answer. */
export const askSunday = (context: Context, asking: CoverAsking = {}): Promise<Result<CoverAnswer>> =>
  ask(context, 'sunday', { options: {}, ...asking });

export interface Cover {
  readonly answer: CoverAnswer;
  /** Whether an act was looked for: what is kept in full is given in full. */
  readonly actSought: boolean;
}

/** The answer as soon as it can be had: the full one where it is kept, else the one without the search for an act. */
export async function askCover(context: Context, asking: CoverAsking = {}): Promise<Result<Cover>> {
  const full = await askKept(context, 'sunday', { options: {}, ...asking });
  if (full !== null) return ok({ answer: full, actSought: true });
  const cover = await ask(context, 'sunday', { ...asking, options: { ...asking.options, seeksAct: false } });
  if (!cover.ok) return cover;
  const settled = cover.value.verdict === 'lasts' || cover.value.verdict === 'empty';
  return ok({ answer: cover.value, actSought: settled });
}
