/** One form posted: read every field, do one act, go on to a page; or show the form again as it was typed. */
import type { Context } from 'hono';
import type { z } from 'zod';
import type { LengthUnit } from '../../../views/format.ts';
import type { Refused } from '../../../views/partials/form.tsx';
import type { Done } from '../../actions/index.ts';
import type { Result } from '../../husbandry/result.ts';
import { actOfForm, settings } from '../../store/index.ts';
import type { House } from './house.ts';
import { besideField, readFields, type Typed, valuesOf } from './sent-fields.ts';
import { daysTold } from './told-days.ts';
import { unitOf } from './visit.ts';

/** What an act needs of its form besides what was typed. */
export interface Sent {
  readonly c: Context;
  readonly unit: LengthUnit;
  readonly formId: string | undefined;
}

export interface FormPost<S extends z.ZodRawShape, R> {
  /** Name of the form on its page. */
  readonly form: (c: Context) => string;
  /** Given the names of what was sent, where a form has as many lines as there are things. */
  readonly shape: (unit: LengthUnit, sent: readonly string[]) => S;
  /** Fields that may come more than once. */
  readonly many?: readonly string[];
  readonly act: (given: z.output<z.ZodObject<S>>, sent: Sent) => Promise<Result<Done<R>>>;
  /** Where to go on to. */
  readonly next: (c: Context, reply: R) => string;
  /** The page again, with what was typed. */
  readonly again: (c: Context, refused: Refused) => Promise<Response>;
  /** Field that names the part of the form sent alone: each part is an act of its own. */
  readonly part?: string;
  /** Field of the act to field of the form, where they differ. */
  readonly fields?: Readonly<Record<string, string>>;
}

/** A handler of the form. The same sending again goes on to the page without a second act. */
export const posted =
  <S extends z.ZodRawShape, R>(house: House, post: FormPost<S, R>) =>
  async (c: Context): Promise<Response> => {
    const typed = await typedIn(c);
    const formId = idOf(typed, post.part);
    const before = formId === undefined ? null : await house.context.store.ask(actOfForm(formId));
    if (before !== null) return c.redirect(post.next(c, before.reply as R), 303);
    const unit = unitOf(await house.context.store.ask(settings));
    const shape = post.shape(unit, Object.keys(typed));
    const { today } = house.context.clock();
    const read = readFields(typed, { shape, many: post.many, today });
    const refuse = (problems: Refused['problems']) =>
      post.again(c, { form: post.form(c), values: valuesOf(typed), problems: told(problems) });
    if (!read.ok) return refuse(read.problems);
    const done = await post.act(read.given, { c, unit, formId });
    if (done.ok) return c.redirect(post.next(c, done.value.reply), 303);
    return refuse(besideField(done.problem, shape, post.fields));
  };

const told = (problems: Refused['problems']): Refused['problems'] =>
  Object.fromEntries(Object.entries(problems).map(([field, sentence]) => [field, daysTold(sentence)]));

function idOf(typed: Typed, partField: string | undefined): string | undefined {
  const id = typed.formId?.at(-1);
  const part = partField === undefined ? undefined : typed[partField]?.at(-1);
  return id === undefined || part === undefined ? id : `${id}:${part}`;
}

/** What was typed into a form, by field. */
export const valuesIn = async (c: Context): Promise<Refused['values']> => valuesOf(await typedIn(c));

/** Every field with every value it came with; files are read elsewhere. */
async function typedIn(c: Context): Promise<Typed> {
  const body = await c.req.parseBody({ all: true });
  const texts = Object.entries(body).map(([name, value]) => [
    name,
    [value].flat().filter((each) => typeof each === 'string'),
  ]);
  return Object.fromEntries(texts);
}

/** A form read without an act, to show what it would do: its values as typed, and what was read or what is wrong. */
export async function readForm<S extends z.ZodRawShape>(
  house: House,
  c: Context,
  form: { readonly shape: S; readonly many?: readonly string[] },
) {
  const typed = await typedIn(c);
  const read = readFields(typed, { ...form, today: house.context.clock().today });
  const values = valuesOf(typed);
  return read.ok
    ? { values, given: read.given, problems: {} }
    : { values, given: null, problems: read.problems };
}
