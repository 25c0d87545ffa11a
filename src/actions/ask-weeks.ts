/** Asks what the coming weeks look like on the ruler. */
import type { Result } from '../husbandry/result.ts';
import type { WeeksAnswer } from '../husbandry/supply/index.ts';
import { ask, type CoverAsking } from './ask.ts';
import type { Context } from './context.ts';

export const askWeeks = (context: Context, asking: CoverAsking = {}): Promise<Result<WeeksAnswer>> =>
  ask(context, 'weeks', { options: {}, ...asking });
