/** Writes down several orders at once, as a plan has them: one step for Undo. A new bin of the same name is one bin. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import type { Made } from './bin-for.ts';
import { formId } from './fields.ts';
import { order, placed } from './order-placed.ts';
import { action } from './perform.ts';

const MOST_ORDERS = 20;

export const placeOrders = action({
  verb: 'place-orders',
  schema: z.strictObject({
    orders: z
      .array(z.strictObject(order).omit({ placedDay: true }))
      .min(1, { error: 'There is nothing to order.' })
      .max(MOST_ORDERS, { error: `At most ${MOST_ORDERS} orders are placed at once.` }),
    formId,
  }),
  body: async (scene, { orders }) => {
    const found = [];
    const made: Made = new Map();
    for (const given of orders) {
      const one = await placed(scene, given, made);
      if (!one.ok) return one;
      found.push(one.value);
    }
    const puts = found.map((one) => one.puts ?? {});
    return ok({
      summary: found.map(({ summary }) => summary).join('; '),
      puts: {
        bin: puts.flatMap(({ bin = [] }) => bin),
        purchase: puts.flatMap(({ purchase = [] }) => purchase),
        delivery: puts.flatMap(({ delivery = [] }) => delivery),
      },
      reply: { purchases: found.map(({ reply }) => reply.purchase) },
    });
  },
});
