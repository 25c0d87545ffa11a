/** What a form sent, read field by field: values, or a sentence beside each field that is wrong. */
import { z } from 'zod';
import type { Refused } from '../../../views/partials/form.tsx';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { daysSaid } from './typed.ts';

/** Every field with every value it came with. */
export type Typed = Readonly<Record<string, readonly string[]>>;

interface Reading<S extends z.ZodRawShape> {
  readonly shape: S;
  /** Fields that may come more than once. */
  readonly many?: readonly string[] | undefined;
  readonly today: DayNumber;
}

type Read<T> =
  | { readonly ok: true; readonly given: T }
  | { readonly ok: false; readonly problems: Refused['problems'] };

export function readFields<S extends z.ZodRawShape>(
  typed: Typed,
  { shape, many = [], today }: Reading<S>,
): Read<z.output<z.ZodObject<S>>> {
  const read = z.strictObject(shape).safeParse(daysSaid(flat(typed, many), shape, today));
  return read.success
    ? { ok: true, given: read.data as z.output<z.ZodObject<S>> }
    : { ok: false, problems: problemsOf(read.error.issues) };
}

/** One value a field, all values of those that come more than once, without the form's own id. */
function flat(typed: Typed, many: readonly string[]): Readonly<Record<string, unknown>> {
  const { formId: _, ...fields } = typed;
  const one = Object.entries(fields).map(([name, values]) => [
    name,
    many.includes(name) ? values : values.at(-1),
  ]);
  return Object.fromEntries(one);
}

/** As it was typed, to show it again. */
export const valuesOf = (typed: Typed): Refused['values'] =>
  Object.fromEntries(Object.entries(typed).map(([name, values]) => [name, values.join(',')]));

/** The first sentence for each field; what no field is named for stands above the form. */
function problemsOf(issues: readonly z.core.$ZodIssue[]): Refused['problems'] {
  const said = issues.map((issue): [string, string] =>
    issue.code === 'unrecognized_keys'
      ? ['', `"${issue.keys[0]}" is not a field known here.`]
      : [String(issue.path[0] ?? ''), issue.message],
  );
  return Object.fromEntries(said.reverse());
}

/** A problem of the act, beside the field it speaks of. */
export function besideField(
  { field = '', sentence }: Problem,
  shape: z.ZodRawShape,
  fields: Readonly<Record<string, string>> = {},
): Refused['problems'] {
  const name = fields[field] ?? field;
  return { [name in shape ? name : '']: sentence };
}
