/** The young of a sac are out, counted or not: it is certain now, and the first feed is near. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { civilDay, formId, heads, someText } from './fields.ts';
import { findKind } from './find.ts';
import { feedAfterHatch } from './note-sac.ts';
import { action } from './perform.ts';
import { fastEnded, findOpenSac, notBeforeLaid } from './sac-dates.ts';

export const hatchSac = action({
  verb: 'hatch-sac',
  schema: z.strictObject({ change: someText, day: civilDay, count: heads.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, facts }, { change, day, count }) => {
    const found = await findOpenSac(tx, change);
    if (!found.ok) return found;
    const { row, sac, words } = found.value;
    const after = notBeforeLaid(sac, day);
    if (!after.ok) return after;
    const kind = findKind(facts, row.animalKind);
    if (!kind.ok) return kind;
    const { from, to } = feedAfterHatch(kind.value, day);
    const hatched = {
      ...sac,
      hatched: day,
      counted: count !== undefined || sac.counted,
      motherFasts: fastEnded(sac.motherFasts, day),
    };
    return ok({
      summary: `The ${words} has hatched${count === undefined ? '' : `: ${count} young`}`,
      puts: {
        planned_change: [
          { ...row, fromDay: from, toDay: to, chance: 1, count: count ?? row.count, sac: hatched },
        ],
      },
      reply: null,
    });
  },
});
