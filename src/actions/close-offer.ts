/** Says that an offer is not to be had any more; what was ordered from it still comes. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { findOffer } from './find.ts';
import { offerWords } from './offer-words.ts';
import { action } from './perform.ts';

export const closeOffer = action({
  verb: 'close-offer',
  schema: z.strictObject({ offer: someText, formId }),
  body: async ({ tx }, { offer: code }) => {
    const offer = await findOffer(tx, code);
    if (!offer.ok) return offer;
    return ok({
      summary: `No longer offered: ${offerWords(offer.value)} (${code})`,
      puts: { offer: [{ ...offer.value, closed: true }] },
      reply: { offer: code, supplier: offer.value.supplier },
    });
  },
});
