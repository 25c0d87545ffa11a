/** Writes down somebody who sells prey: a sender of parcels, or a shop to go to. */
import { ok } from '../husbandry/result.ts';
import { nextCodes } from '../store/index.ts';
import { formId } from './fields.ts';
import { action } from './perform.ts';
import { newSupplier, supplierAtFirst, supplierWith } from './supplier-fields.ts';

export const addSupplier = action({
  verb: 'add-supplier',
  schema: newSupplier.extend({ formId }),
  body: async ({ tx }, { formId: _, demo, ...given }) => {
    const { name, kind, dispatchWeekdays } = given;
    const [code] = await nextCodes(tx, 'S', 1);
    const fresh = { ...supplierAtFirst, code: code!, name, kind, dispatchWeekdays, demo };
    const row = await supplierWith(tx, fresh, given);
    if (!row.ok) return row;
    return ok({
      summary: `Added supplier ${name} (${code})`,
      puts: { supplier: [row.value] },
      reply: { supplier: row.value.code },
    });
  },
});
