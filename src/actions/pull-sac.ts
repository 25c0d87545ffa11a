/** A sac was taken from its mother; her fast is over. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, someText } from './fields.ts';
import { action } from './perform.ts';
import { fastEnded, findOpenSac, notBeforeLaid } from './sac-dates.ts';

export const pullSac = action({
  verb: 'pull-sac',
  schema: z.strictObject({ change: someText, day: civilDay, formId }),
  pastDays: ['day'],
  body: async ({ tx }, { change, day }) => {
    const found = await findOpenSac(tx, change);
    if (!found.ok) return found;
    const { row, sac, words } = found.value;
    const after = notBeforeLaid(sac, day);
    if (!after.ok) return after;
    const pulled = { ...sac, pulled: day, motherFasts: fastEnded(sac.motherFasts, day) };
    return ok({
      summary: `Took the ${words} from its mother`,
      puts: { planned_change: [{ ...row, sac: pulled }] },
      reply: null,
    });
  },
});
