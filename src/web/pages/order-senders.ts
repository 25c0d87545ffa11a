/** What the boxes of each supplier say, beside what is believed of one nobody knows. */
import type { OrdersProps } from '../../../views/pages/orders-shown.ts';
import { senderOf } from '../../husbandry/orders/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { marketIn } from './supplier-views.ts';

export function sendersShown(snapshot: Snapshot): OrdersProps['senders'] {
  const { policy } = snapshot.facts;
  const { suppliers, arrivals } = marketIn(snapshot);
  const usual = senderOf([], policy);
  return suppliers.flatMap(({ code, name, lossShare, overCountShare }) => {
    const own = arrivals.filter(({ supplier }) => supplier === code);
    if (own.length === 0) return [];
    return [{ code, name, record: senderOf(own, policy), own: { lossShare, overCountShare }, usual }];
  });
}
