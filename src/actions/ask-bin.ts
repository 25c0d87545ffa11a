/** Asks of one bin where it goes, or what its crash means: at once where the answer is kept, else for those who wait. */
import { ok, type Result } from '../husbandry/result.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';
import type { Answers } from './questions.ts';

interface BinAsking<S extends 'bin' | 'crash'> extends Pick<Asking<S>, 'snapshot' | 'answering'> {
  readonly subject: S;
  readonly bin: string;
  /** Whether it is computed when it is not kept. */
  readonly waits: boolean;
}

/** Null where it is not known yet and nobody waits. */
export async function askBin<S extends 'bin' | 'crash'>(
  context: Context,
  { subject, bin, waits, ...asking }: BinAsking<S>,
): Promise<Result<Answers[S] | null>> {
  const options = { bin };
  return waits
    ? ask<S>(context, subject, { ...asking, options })
    : ok(await askKept<S>(context, subject, { ...asking, options }));
}
