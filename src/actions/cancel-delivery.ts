/** Says that an expected delivery will not come. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { expectedDelivery } from './find-delivery.ts';
import { action } from './perform.ts';

export const cancelDelivery = action({
  verb: 'cancel-delivery',
  schema: z.strictObject({ delivery: someText, formId }),
  body: async ({ tx }, given) => {
    const order = await expectedDelivery(tx, given.delivery);
    if (!order.ok) return order;
    return ok({
      summary: `Not coming: ${order.value.heads} ${order.value.species}`,
      puts: { delivery: [{ ...order.value, state: 'cancelled' }] },
      reply: null,
    });
  },
});
