/** Changes what is written of an offer: its size, its pack, its prices. */
import { ok } from '../husbandry/result.ts';
import { asOf, formId, someText } from './fields.ts';
import { findOffer } from './find.ts';
import { offerChanges, offerWith } from './offer-fields.ts';
import { offerWords } from './offer-words.ts';
import { action } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

export const editOffer = action({
  verb: 'edit-offer',
  schema: offerChanges.extend({ offer: someText, asOf, formId }),
  body: async (scene, { formId: _, asOf: seen, offer: code, ...fields }) => {
    const offer = await findOffer(scene.tx, code);
    if (!offer.ok) return offer;
    const called = offerWords(offer.value);
    const free = await unlessChanged(scene.tx, { noun: 'offer', code, called, asOf: seen });
    if (!free.ok) return free;
    const row = await offerWith(scene, offer.value, fields);
    if (!row.ok) return row;
    return ok({
      summary: `Changed the offer of ${offerWords(row.value)} (${code})`,
      puts: { offer: [row.value] },
      reply: { offer: code, supplier: row.value.supplier },
    });
  },
});
