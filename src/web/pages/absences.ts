/** Days away in the calendar: added and taken away, always as one act of the settings. */
import { civilDay } from '../../actions/fields.ts';
import { type Done, editSettings } from '../../actions/index.ts';
import type { Result } from '../../husbandry/result.ts';
import type { House } from './house.ts';
import { typed } from './typed.ts';

export const twoDates = () => ({ from: typed(civilDay), to: typed(civilDay) });

interface Dates {
  readonly from: string;
  readonly to: string;
}

/** Adds days away. Replies with the days. */
export async function saveAbsence(
  { context }: House,
  given: Dates,
  formId: string | undefined,
): Promise<Result<Done<Dates>>> {
  const done = await editSettings(context, { away: given, formId });
  return done.ok ? { ok: true, value: { ...done.value, reply: given } } : done;
}

export const removeAbsence = (
  { context }: House,
  given: Dates,
  formId: string | undefined,
): Promise<Result<Done<null>>> => editSettings(context, { notAway: given, formId });
