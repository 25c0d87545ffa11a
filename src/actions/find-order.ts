/** Finds an order that is still on its way, with its lines, or says what became of it. */
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type DeliveryRow, type PurchaseRow, rowsOf, type SupplierRow, type Tx } from '../store/index.ts';
import { findRow } from './find.ts';

export interface PlacedOrder {
  readonly purchase: PurchaseRow;
  readonly supplier: SupplierRow;
  /** What is expected of it, in the order written. */
  readonly lines: readonly DeliveryRow[];
}

export async function placedOrder(tx: Tx, code: string): Promise<Result<PlacedOrder>> {
  const purchase = await findRow(tx, 'purchase', code);
  if (!purchase.ok) return purchase;
  if (purchase.value.state !== 'placed') {
    const became = purchase.value.state === 'arrived' ? 'has come' : 'was cancelled';
    return err(problem('not-placed', `Order "${code}" ${became} already.`, 'purchase'));
  }
  const supplier = await findRow(tx, 'supplier', purchase.value.supplier);
  if (!supplier.ok) return supplier;
  const expected = { where: "purchase = ? and state = 'expected'", args: [code], order: IN_ORDER };
  const lines = await tx.ask(rowsOf('delivery', expected));
  return ok({ purchase: purchase.value, supplier: supplier.value, lines });
}

const IN_ORDER = 'cast(substr(code, 2) as integer)';
