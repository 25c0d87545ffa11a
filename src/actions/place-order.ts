/** Writes down an order with a supplier. */
import { z } from 'zod';
import { formId } from './fields.ts';
import { order, placed } from './order-placed.ts';
import { action } from './perform.ts';

export const placeOrder = action({
  verb: 'place-order',
  schema: z.strictObject({ ...order, formId }),
  pastDays: ['placedDay'],
  body: placed,
});
