/** Undoes several acts as one step, newest first, all or none: an act with what rests on it, an evening by shelves. */
import { z } from 'zod';
import { ok, type Result } from '../husbandry/result.ts';
import { actsToUndo, undoTogether } from '../store/index.ts';
import type { Context } from './context.ts';
import { actNumber, formId } from './fields.ts';
import { parse } from './parse.ts';
import { type Done, doneAgain, doneBefore } from './perform.ts';
import { stepWords } from './step-words.ts';
import { undone } from './undo.ts';

const schema = z.strictObject({
  acts: z.array(actNumber).min(1, { error: 'No act is named.' }),
  formId,
});

export async function undoMany(context: Context, input: z.input<typeof schema>): Promise<Result<Done<null>>> {
  const given = parse(schema, input);
  if (!given.ok) return given;
  const { moment, today } = context.clock();
  const mark = { formId: given.value.formId ?? null, verb: 'undo-many', moment, day: today };
  return context.store.write(async (tx) => {
    const before = await doneBefore(tx, mark);
    if (before !== null) return before.ok ? ok(doneAgain<null>(before.value)) : before;
    const targets = await actsToUndo(tx, [...new Set(given.value.acts)]);
    if (!targets.ok) return targets;
    const said = await stepWords(tx.ask, targets.value);
    return undone(tx, await undoTogether(tx, targets.value, { ...mark, said }));
  });
}
