/** Says that an order comes on another day than was expected: all of it, as it is one box. */
import { z } from 'zod';
import { civilDate } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import { civilDay, formId, someText } from './fields.ts';
import { placedOrder } from './find-order.ts';
import { action } from './perform.ts';

const FARTHEST_DAYS = 366;

export const orderLate = action({
  verb: 'order-late',
  schema: z.strictObject({ purchase: someText, day: civilDay, formId }),
  body: async ({ tx, now }, { purchase, day }) => {
    const order = await placedOrder(tx, purchase);
    if (!order.ok) return order;
    const { supplier, lines } = order.value;
    const date = civilDate(day);
    if (day < now.today)
      return err(problem('before-today', `"${date}" has passed; say when it comes now.`, 'day'));
    if (day > now.today + FARTHEST_DAYS)
      return err(problem('date-out-of-range', `"${date}" is more than a year away.`, 'day'));
    return ok({
      summary: `The order from “${supplier.name}” now comes on ${spokenDay(day)}`,
      puts: { delivery: lines.map((line) => ({ ...line, day })) },
      reply: { purchase },
    });
  },
});
