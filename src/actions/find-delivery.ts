/** Finds a delivery by itself that is still expected, or says what became of it. */
import { problem } from '../husbandry/problems.ts';
import { err, type Result } from '../husbandry/result.ts';
import type { DeliveryRow, Tx } from '../store/index.ts';
import { findRow } from './find.ts';

export async function expectedDelivery(tx: Tx, code: string): Promise<Result<DeliveryRow>> {
  const delivery = await findRow(tx, 'delivery', code);
  if (!delivery.ok) return delivery;
  const { state, purchase } = delivery.value;
  if (purchase !== null)
    return err(
      problem(
        'in-an-order',
        `Delivery "${code}" is part of order ${purchase}: see to the whole box there.`,
        'delivery',
      ),
    );
  if (state === 'expected') return delivery;
  const became = state === 'arrived' ? 'has arrived' : 'was cancelled';
  return err(problem('not-expected', `Delivery "${code}" ${became} already.`, 'delivery'));
}
