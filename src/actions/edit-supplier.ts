/** Changes what is written of a supplier; days on which nothing is sent are added and taken away one by one. */
import type { DayRange } from '../husbandry/calendar.ts';
import { ok } from '../husbandry/result.ts';
import { asOf, formId, someText } from './fields.ts';
import { findSupplier } from './find.ts';
import { action } from './perform.ts';
import { holiday, supplierChanges, supplierWith } from './supplier-fields.ts';
import { unlessChanged } from './unless-changed.ts';
import { withDays } from './with-days.ts';

export const editSupplier = action({
  verb: 'edit-supplier',
  schema: supplierChanges.extend({
    supplier: someText,
    /** A holiday added to those there are; the same days again stay once. */
    addHoliday: holiday.optional(),
    /** A holiday that falls out of those there are. */
    dropHoliday: holiday.optional(),
    asOf,
    formId,
  }),
  body: async ({ tx }, { formId: _, asOf: seen, supplier: code, addHoliday, dropHoliday, ...given }) => {
    const supplier = await findSupplier(tx, code);
    if (!supplier.ok) return supplier;
    const was = supplier.value;
    const free = await unlessChanged(tx, { noun: 'supplier', code, called: was.name, asOf: seen });
    if (!free.ok) return free;
    const holidays: readonly DayRange[] = given.holidays ?? was.holidays;
    const now = { ...was, holidays: withDays(holidays, { add: addHoliday, drop: dropHoliday }) };
    const { holidays: _set, ...fields } = given;
    const row = await supplierWith(tx, now, fields);
    if (!row.ok) return row;
    return ok({
      summary: `Changed supplier ${row.value.name} (${code})`,
      puts: { supplier: [row.value] },
      reply: { supplier: code },
    });
  },
});
