/** How those send from whom something is on its way: what their boxes have taught, and the keeper's own word. */
import { grouped } from '../husbandry/grouped.ts';
import type { Sender } from '../husbandry/larder/index.ts';
import { type Arrival, asSender, senderOf } from '../husbandry/orders/index.ts';
import type { Policy } from '../husbandry/policy.ts';
import { arrivalsUpTo, type PurchaseRow, type SupplierRow } from '../store/index.ts';
import type { Scene } from './perform.ts';

/** By the code of the order. */
export type Senders = ReadonlyMap<string, Sender>;

interface Found {
  readonly suppliers: readonly SupplierRow[];
  readonly arrivals: readonly Arrival[];
  readonly placed: readonly PurchaseRow[];
}

export function sendersOf({ suppliers, arrivals, placed }: Found, policy: Policy): Senders {
  const own = grouped(arrivals, ({ supplier }) => supplier);
  const bySupplier = new Map(suppliers.map((row) => [row.code, row]));
  const senders = placed.flatMap(({ code, supplier }) => {
    const row = bySupplier.get(supplier);
    return row === undefined
      ? []
      : [[code, asSender(row, senderOf(own.get(supplier) ?? [], policy))] as const];
  });
  return new Map(senders);
}

/** Of the supplier whose box is being opened. */
export async function senderNow({ tx, now, facts }: Scene, supplier: SupplierRow): Promise<Sender> {
  const arrivals = await tx.ask(arrivalsUpTo(now.today));
  const own = arrivals.filter((arrival) => arrival.supplier === supplier.code);
  return asSender(supplier, senderOf(own, facts.policy));
}
