/** Says that an order will not come: nothing of it is expected any more. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { placedOrder } from './find-order.ts';
import { action } from './perform.ts';

export const cancelOrder = action({
  verb: 'cancel-order',
  schema: z.strictObject({ purchase: someText, formId }),
  body: async ({ tx }, given) => {
    const order = await placedOrder(tx, given.purchase);
    if (!order.ok) return order;
    const { purchase, supplier, lines } = order.value;
    return ok({
      summary: `Not coming: the order from “${supplier.name}”`,
      puts: {
        purchase: [{ ...purchase, state: 'cancelled' }],
        delivery: lines.map((line) => ({ ...line, state: 'cancelled' })),
      },
      reply: null,
    });
  },
});
