/** Moves prey from one bin to another of the same species. */
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { plural } from '../husbandry/words.ts';
import { civilDay, formId, someText } from './fields.ts';
import { findBin } from './find.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action } from './perform.ts';

export const move = action({
  verb: 'move',
  schema: lot.extend({ from: someText, to: someText, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async ({ tx, now, facts }, given) => {
    const from = await findBin(tx, given.from, 'from');
    if (!from.ok) return from;
    const to = await findBin(tx, given.to, 'to');
    if (!to.ok) return to;
    if (given.from === given.to)
      return err(problem('same-bin', `"${given.to}" is the bin it comes from.`, 'to'));
    if (from.value.species !== to.value.species)
      return err(
        problem(
          'other-species',
          `"${to.value.name}" holds ${plural(facts.species.get(to.value.species)?.commonName ?? 'other prey')}.`,
          'to',
        ),
      );
    const moved = inOrder(given);
    if (!moved.ok) return moved;
    const day = given.day ?? now.today;
    return ok({
      summary: `Moved ${given.heads} from ${given.from} to ${given.to}`,
      entries: [
        { day, kind: 'moved out', bin: given.from, ...moved.value },
        { day, kind: 'moved in', bin: given.to, ...moved.value },
      ],
      reply: null,
    });
  },
});
