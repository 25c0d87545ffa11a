/** A sac came to nothing: a dud, or eaten by its mother; her fast is over. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { action } from './perform.ts';
import { fastEnded, findOpenSac, notBeforeLaid } from './sac-dates.ts';

export const endSac = action({
  verb: 'end-sac',
  schema: z.strictObject({ change: someText, day: civilDay, how: oneOf(['dud', 'eaten']), formId }),
  pastDays: ['day'],
  body: async ({ tx }, { change, day, how }) => {
    const found = await findOpenSac(tx, change);
    if (!found.ok) return found;
    const { row, sac, words } = found.value;
    const after = notBeforeLaid(sac, day);
    if (!after.ok) return after;
    const ended = { ...sac, ended: { how, day }, motherFasts: fastEnded(sac.motherFasts, day) };
    return ok({
      summary: how === 'dud' ? `The ${words} was a dud` : `The ${words} was eaten`,
      puts: { planned_change: [{ ...row, sac: ended }] },
      reply: null,
    });
  },
});
