/** Asks where the bins go; kept until something changes. */
import type { BinGoes } from '../husbandry/supply/index.ts';
import { type Asking, ask } from './ask.ts';
import type { Context } from './context.ts';

/** Where the living bins are likeliest to go; nothing where that cannot be had just now. */
export async function askBinsGo(
  context: Context,
  where: Omit<Asking<'bins go'>, 'options'> = {},
): Promise<readonly BinGoes[]> {
  const answer = await ask(context, 'bins go', { ...where, options: null });
  return answer.ok ? (answer.value.found ?? []) : [];
}
