/** Undoes an act as a whole; undoing an undo does the act again. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { actNumbered, type Tx, undoAct } from '../store/index.ts';
import type { Context } from './context.ts';
import { actNumber, formId } from './fields.ts';
import { parse } from './parse.ts';
import { type Done, doneAgain, doneBefore } from './perform.ts';

const schema = z.strictObject({ act: actNumber, formId });

export async function undo(context: Context, input: z.input<typeof schema>): Promise<Result<Done<null>>> {
  const given = parse(schema, input);
  if (!given.ok) return given;
  const { moment, today } = context.clock();
  const mark = { formId: given.value.formId ?? null, verb: 'undo', moment, day: today };
  return context.store.write(async (tx) => {
    const before = await doneBefore(tx, mark);
    if (before !== null) return before.ok ? ok(doneAgain<null>(before.value)) : before;
    const target = await tx.ask(actNumbered(given.value.act));
    if (target === null) return err(problem('unknown-act', `There is no act ${given.value.act}.`, 'act'));
    return undone(tx, await undoAct(tx, target, mark));
  });
}

/** What an undo came to, in the words it was written with. */
export async function undone(tx: Tx, act: Result<number>): Promise<Result<Done<null>>> {
  if (!act.ok) return act;
  const written = await tx.ask(actNumbered(act.value));
  return ok({ act: act.value, summary: written?.summary ?? '', reply: null, again: false });
}
