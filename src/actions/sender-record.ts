/** How a supplier sends, from the boxes that came and the keeper's own word. */
import type { Sender } from '../husbandry/larder/index.ts';
import { asSender, senderOf } from '../husbandry/orders/index.ts';
import { arrivalsUpTo, type SupplierRow } from '../store/index.ts';
import type { Scene } from './perform.ts';

export async function recordOfSender({ tx, now, facts }: Scene, supplier: SupplierRow): Promise<Sender> {
  const arrivals = await tx.ask(arrivalsUpTo(now.today));
  const own = arrivals.filter((arrival) => arrival.supplier === supplier.code);
  return asSender(supplier, senderOf(own, facts.policy));
}
