/** Says that a planned change will not happen. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { findRow } from './find.ts';
import { action } from './perform.ts';

export const cancelChange = action({
  verb: 'cancel-change',
  schema: z.strictObject({ change: someText, formId }),
  body: async ({ tx }, given) => {
    const change = await findRow(tx, 'planned_change', given.change);
    if (!change.ok) return change;
    return ok({
      summary: `No longer planned: ${change.value.kind} of ${change.value.count}`,
      puts: { planned_change: [{ ...change.value, cancelled: true }] },
      reply: null,
    });
  },
});
