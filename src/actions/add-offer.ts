/** Writes down what a supplier offers: a prey species in a size, by the pack, at a price. */
import { ok } from '../husbandry/result.ts';
import { nextCodes } from '../store/index.ts';
import { formId } from './fields.ts';
import { findSupplier } from './find.ts';
import { newOffer, offerWith } from './offer-fields.ts';
import { offerWords } from './offer-words.ts';
import { action } from './perform.ts';

export const addOffer = action({
  verb: 'add-offer',
  schema: newOffer.extend({ formId }),
  body: async (scene, { formId: _, prices, ...given }) => {
    const supplier = await findSupplier(scene.tx, given.supplier);
    if (!supplier.ok) return supplier;
    const [code] = await nextCodes(scene.tx, 'F', 1);
    const row = await offerWith(scene, { ...given, code: code!, prices: [], closed: false }, { prices });
    if (!row.ok) return row;
    return ok({
      summary: `Added an offer of ${supplier.value.name}: ${offerWords(row.value)} (${code})`,
      puts: { offer: [row.value] },
      reply: { offer: row.value.code, supplier: given.supplier },
    });
  },
});
