/** Merges bins: all of one goes into another of its species, and the emptied one is out of use. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { civilDay, flag, formId, someText } from './fields.ts';
import { findBin } from './find.ts';
import { holdsSame, movedIn } from './going-in.ts';
import { nothingExpected } from './in-use.ts';
import { action } from './perform.ts';
import { allAsked, takeOut, unlessApart } from './taking-out.ts';

export const mergeBins = action({
  verb: 'merge-bins',
  schema: z.strictObject({
    bin: someText,
    to: someText,
    day: civilDay.optional(),
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin: code, to, sure, day: on }) => {
    const { tx, now, facts } = scene;
    const from = await findBin(tx, code);
    if (!from.ok) return from;
    const into = await findBin(tx, to, 'to');
    if (!into.ok) return into;
    const day = on ?? now.today;
    const cup = [from.value, into.value].find(({ role }) => role === 'cup');
    if (cup) return err(problem('is-a-cup', `${cup.name} is a cup: flies are not put together.`, 'to'));
    for (const check of [
      holdsSame(scene, from.value, into.value),
      allAsked(unlessApart(from.value, day, sure), unlessApart(into.value, day, sure)),
      await nothingExpected(tx, facts, from.value),
    ])
      if (!check.ok) return check;
    const taken = await takeOut(scene, {
      bin: from.value,
      day,
      kind: 'moved out',
      heads: 'all',
      lengths: () => null,
      sure: true,
    });
    if (!taken.ok) return taken;
    return ok({
      summary: `Merged ${code} into ${to}`,
      puts: { bin: [{ ...from.value, closed: true }] },
      entries: [...taken.value.entries, ...movedIn(to, day, taken.value.lots)],
      reply: { bin: to },
    });
  },
});
