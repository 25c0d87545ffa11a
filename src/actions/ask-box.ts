/** Asks who cannot wait after a box that was not as ordered: at once where it is kept, else for those who wait. */
import { ok, type Result } from '../husbandry/result.ts';
import type { BoxAnswer, BoxLine } from '../husbandry/supply/index.ts';
import { type Asking, ask, askKept } from './ask.ts';
import type { Context } from './context.ts';

interface BoxAsking extends Pick<Asking<'box'>, 'snapshot' | 'answering'> {
  /** Code of the order. */
  readonly purchase: string;
  readonly lines: readonly BoxLine[];
  /** Whether it is computed when it is not kept. */
  readonly waits: boolean;
}

/** Null where it is not known yet and nobody waits. */
export async function askBox(
  context: Context,
  { purchase, lines, waits, ...asking }: BoxAsking,
): Promise<Result<BoxAnswer | null>> {
  const options = { purchase, lines };
  return waits
    ? ask(context, 'box', { ...asking, options })
    : ok(await askKept(context, 'box', { ...asking, options }));
}
