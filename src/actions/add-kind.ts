/** Makes a kind of the keeper's own from one that is there: all its numbers, under a name of its own. */
import { z } from 'zod';
import { err, ok } from '../husbandry/result.ts';
import { nextCodes } from '../store/index.ts';
import { formId, someText, text } from './fields.ts';
import { findKind } from './find.ts';
import { kindValued } from './kind-edited.ts';
import { whyNotFree } from './kind-names.ts';
import { rowOf } from './own-values.ts';
import { action } from './perform.ts';

export const addKind = action({
  verb: 'add-kind',
  schema: z.strictObject({
    /** The kind whose numbers it begins with. */
    from: someText,
    name: someText,
    commonName: someText,
    why: text.default(''),
    formId,
  }),
  body: async ({ tx, now, book, facts }, { from, name, commonName, why }) => {
    const source = findKind(facts, from);
    if (!source.ok) return err({ ...source.problem, field: 'from' });
    const taken = whyNotFree(facts, null, { name, commonName });
    if (taken !== null) return err(taken);
    const [code] = await nextCodes(tx, 'K', 1);
    const { changes } = await rowOf(tx, from);
    const row = { code: code!, base: source.value.madeFrom ?? from, changes };
    const after = kindValued((values) => ({ ...values, name, commonName, aliases: [] }), {
      ...{ book, row, now, why },
    });
    if (!after.ok) return after;
    return ok({
      summary: `Made the kind ${name} from ${source.value.name}`,
      puts: { kind: [after.value] },
      reply: { kind: code! },
    });
  },
});
