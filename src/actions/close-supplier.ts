/** Buys from a supplier no more. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { findSupplier } from './find.ts';
import { nothingOrdered } from './in-use.ts';
import { action } from './perform.ts';

export const closeSupplier = action({
  verb: 'close-supplier',
  schema: z.strictObject({ supplier: someText, formId }),
  body: async ({ tx }, { supplier: code }) => {
    const supplier = await findSupplier(tx, code);
    if (!supplier.ok) return supplier;
    const free = await nothingOrdered(tx, supplier.value);
    if (!free.ok) return free;
    return ok({
      summary: `No longer buys from ${supplier.value.name} (${code})`,
      puts: { supplier: [{ ...supplier.value, closed: true }] },
      reply: { supplier: code },
    });
  },
});
