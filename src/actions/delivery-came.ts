/** Takes in a delivery as it came: on its day or late, short or over, of another size or for another bin. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, headsOrNone, preyMm, someText } from './fields.ts';
import { findBin } from './find.ts';
import { expectedDelivery } from './find-delivery.ts';
import { inOrder } from './lot-fields.ts';
import { action } from './perform.ts';

export const deliveryCame = action({
  verb: 'delivery-came',
  schema: z.strictObject({
    delivery: someText,
    /** Heads that came alive. */
    alive: headsOrNone,
    dead: headsOrNone.default(0),
    /** Lengths as they came; by default as ordered. */
    fromMm: preyMm.optional(),
    toMm: preyMm.optional(),
    /** Where it went; by default the bin it was ordered for. Another species goes into a bin of its own. */
    bin: someText.optional(),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async ({ tx, now }, given) => {
    const order = await expectedDelivery(tx, given.delivery);
    if (!order.ok) return order;
    const bin = await findBin(tx, given.bin ?? order.value.bin);
    if (!bin.ok) return bin;
    const { fromMm = order.value.fromMm, toMm = order.value.toMm } = given;
    const came = inOrder({ heads: given.alive, fromMm, toMm });
    if (!came.ok) return came;
    const details = { dead: given.dead, delivery: given.delivery };
    return ok({
      summary: `Came for ${bin.value.code}: ${given.alive} alive, ${given.dead} dead`,
      puts: { delivery: [{ ...order.value, state: 'arrived' }] },
      entries: [
        { day: given.day ?? now.today, kind: 'delivered', bin: bin.value.code, ...came.value, details },
      ],
      reply: { bin: bin.value.code },
    });
  },
});
