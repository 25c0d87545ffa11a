/** Reads what a row of the round showed, as `views/offer-text.ts` writes it. */
import { z } from 'zod';
import { NOTHING_SHOWN } from '../../../views/offer-text.ts';
import { heads, portions, preyMm, someText } from '../../actions/fields.ts';

const offer = z
  .strictObject({
    bin: someText,
    heads,
    fromMm: preyMm,
    toMm: preyMm,
    preparation: z.enum(['alive', 'killed'], {
      error: ({ input }) => `"${input}" is neither alive nor killed.`,
    }),
    portions,
  })
  .refine(({ fromMm, toMm }) => fromMm <= toMm, { error: 'The lengths run backwards.' })
  .transform(({ preparation, ...rest }) => ({ ...rest, preKilled: preparation === 'killed' }));

export type ShownOffer = z.output<typeof offer>;

const PARTS = ['bin', 'heads', 'fromMm', 'toMm', 'preparation', 'portions'] as const;

function read(text: string, context: z.RefinementCtx): ShownOffer {
  const parts = text.split('|');
  const found = offer.safeParse(Object.fromEntries(PARTS.map((name, at) => [name, parts[at]])));
  if (found.success && parts.length === PARTS.length) return found.data;
  const why = found.error?.issues[0]?.message ?? '';
  context.addIssue({ code: 'custom', message: `"${text}" is no offer of this page. ${why}`.trim() });
  return z.NEVER;
}

/** What was proposed; null where nothing was. */
export const shownOffer = z
  .string()
  .trim()
  .transform((text, context) => (text === NOTHING_SHOWN ? null : read(text, context)));

/** What was chosen instead: an offer as shown, or a bin alone; '' for nothing. */
export const otherOffer = z
  .string()
  .trim()
  .transform((text, context): ShownOffer | { readonly bin: string } | undefined => {
    if (text === '') return undefined;
    return text.includes('|') ? read(text, context) : { bin: text };
  });
