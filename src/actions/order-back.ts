/** Brings a cancelled order back: all of it is expected again, in the bins it was ordered for. */
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { rowsOf } from '../store/index.ts';
import { findBin, findRow } from './find.ts';
import type { Body, Scene } from './perform.ts';

export async function orderBack(
  { tx }: Scene,
  code: string,
): Promise<Result<Body<{ readonly code: string }>>> {
  const order = await findRow(tx, 'purchase', code);
  if (!order.ok) return order;
  if (order.value.state !== 'cancelled')
    return err(problem('is-here', `Order ${code} is not gone.`, 'purchase'));
  const lines = await tx.ask(
    rowsOf('delivery', { where: "purchase = ? and state = 'cancelled'", args: [code] }),
  );
  for (const { bin } of lines) {
    const found = await findBin(tx, bin);
    if (!found.ok) return found;
  }
  return ok({
    summary: `Expected again: order ${code}`,
    puts: {
      purchase: [{ ...order.value, state: 'placed' }],
      delivery: lines.map((line) => ({ ...line, state: 'expected' })),
    },
    reply: { code },
  });
}
