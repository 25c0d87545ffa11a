/** What a new order comes to while it is typed; with script alone, since every number it adds up stands in the form. */
import type { OrderTotal } from '../../src/husbandry/orders/index.ts';
import { money } from '../format/money.ts';
import { paths } from '../paths.ts';

/** Asks anew a little after every key. */
export const OrderTotalPart = ({ begun }: { readonly begun: boolean }) => (
  <div
    id="order-total"
    role="status"
    data-hx-get={paths.newOrderTotal}
    data-hx-include="closest form"
    data-hx-trigger={`${begun ? 'load, ' : ''}input from:'closest form' delay:300ms`}
    data-hx-swap="innerHTML"
    {...LEFT_AS_IT_WAS}
  />
);

/** What goes wrong is not shown in place of a sum. */
const LEFT_AS_IT_WAS = { 'data-hx-status:4xx': 'swap:none', 'data-hx-status:5xx': 'swap:none' };

interface TotalProps {
  readonly total: OrderTotal;
  readonly currency: string;
}

export const TotalWords = ({ total, currency }: TotalProps) => {
  const { goodsCents, postageCents, shortCents, toFreeCents } = total;
  const sum = (cents: number): string => money(cents, currency);
  return (
    <>
      <p>
        {postageCents === 0 ? null : `${sum(goodsCents)} of goods and ${sum(postageCents)} postage: `}
        <strong>{sum(goodsCents + postageCents)}</strong>
      </p>
      {shortCents === 0 ? null : <p class="problem">{sum(shortCents)} under the least order.</p>}
      {toFreeCents === 0 ? null : <p>{sum(toFreeCents)} more and the postage is free.</p>}
    </>
  );
};
