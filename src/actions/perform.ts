/** Performs a verb of the keeper: check what came in, then one act in one transaction; a form counts once. */
import type { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { type Act, type ActBody, type ActMark, actOfForm, addAct, type Tx } from '../store/index.ts';
import type { Context, Now } from './context.ts';
import { factsIn } from './facts-now.ts';
import { afterToday, parse } from './parse.ts';

/** What an act came to. */
export interface Done<R = unknown> {
  /** Number of the act, to undo it by. */
  readonly act: number;
  readonly summary: string;
  readonly reply: R;
  /** The same form had been performed before; nothing was done again. */
  readonly again: boolean;
}

export interface Scene {
  readonly tx: Tx;
  readonly now: Now;
  /** The Book as the keeper changed it. */
  readonly facts: Facts;
  /** The Book as it came. */
  readonly book: Facts;
}

export interface Body<R> extends ActBody {
  readonly reply: R;
}

export interface Verb<S extends z.ZodType, R> {
  readonly verb: string;
  readonly schema: S;
  /** Fields that hold days which must have come. */
  readonly pastDays?: readonly string[];
  readonly body: (scene: Scene, given: z.output<S>) => Promise<Result<Body<R>>>;
}

/** Makes the action of a verb. */
export const action =
  <S extends z.ZodType, R>(verb: Verb<S, R>) =>
  async (context: Context, input: z.input<S>): Promise<Result<Done<R>>> => {
    const now = context.clock();
    const given = parse(verb.schema, input);
    if (!given.ok) return given;
    const early = (verb.pastDays ?? []).flatMap((field) => future(given.value, field, now));
    if (early[0] !== undefined) return err(early[0]);
    const mark = markOf(verb.verb, given.value, now);
    const { facts: book } = context;
    return once(context, mark, async (tx) =>
      verb.body({ tx, now, book, facts: await factsIn(tx, book) }, given.value),
    );
  };

function future(given: unknown, field: string, now: Now) {
  const day = (given as Readonly<Record<string, unknown>>)[field];
  return typeof day === 'number' ? (afterToday(day, now.today, field) ?? []) : [];
}

const markOf = (verb: string, given: unknown, now: Now): ActMark => ({
  formId: (given as { formId?: string }).formId ?? null,
  verb,
  moment: now.moment,
  day: now.today,
});

const once = <R>(
  context: Context,
  mark: ActMark,
  body: (tx: Tx) => Promise<Result<Body<R>>>,
): Promise<Result<Done<R>>> =>
  context.store.write(async (tx) => {
    const before = await doneBefore(tx, mark);
    if (before !== null) return before.ok ? ok(doneAgain<R>(before.value)) : before;
    const wanted = await body(tx);
    if (!wanted.ok) return wanted;
    const act = await addAct(tx, mark, wanted.value);
    return ok({ act, summary: wanted.value.summary, reply: wanted.value.reply, again: false });
  });

/** The act this form led to before, or null. */
export async function doneBefore(tx: Tx, mark: ActMark): Promise<Result<Act> | null> {
  const act = mark.formId === null ? null : await tx.ask(actOfForm(mark.formId));
  if (act === null) return null;
  return act.verb === mark.verb
    ? ok(act)
    : err(problem('form-used', `This form was already used to ${act.verb.replaceAll('-', ' ')}.`, 'formId'));
}

/** What a form that was performed before came to. */
export const doneAgain = <R>(act: Act): Done<R> => ({
  act: act.id,
  summary: act.summary,
  reply: act.reply as R,
  again: true,
});
