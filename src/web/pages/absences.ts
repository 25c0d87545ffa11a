/** Days away in the calendar: read, added and taken away, always as one act of the settings. */
import { civilDay } from '../../actions/fields.ts';
import { type Done, editSettings } from '../../actions/index.ts';
import { civilDate } from '../../husbandry/calendar.ts';
import type { Result } from '../../husbandry/result.ts';
import { settings } from '../../store/index.ts';
import type { House } from './house.ts';
import { typed } from './typed.ts';

export const twoDates = () => ({ from: typed(civilDay), to: typed(civilDay) });

interface Dates {
  readonly from: string;
  readonly to: string;
}

/** Days away as dates, the earliest first. */
async function absences({ context }: House): Promise<readonly Dates[]> {
  const found = await context.store.ask(settings);
  return found.absences.map(({ from, to }) => ({ from: civilDate(from), to: civilDate(to) }));
}

/** Adds days away; the same days again stay once. Replies with the days. */
export async function saveAbsence(
  house: House,
  given: Dates,
  formId: string | undefined,
): Promise<Result<Done<Dates>>> {
  const all = [...(await absences(house)).filter(isOther(given)), given];
  const ordered = all.toSorted((a, b) => a.from.localeCompare(b.from));
  const done = await editSettings(house.context, { absences: ordered, formId });
  return done.ok ? { ok: true, value: { ...done.value, reply: given } } : done;
}

export const removeAbsence = async (
  house: House,
  given: Dates,
  formId: string | undefined,
): Promise<Result<Done<null>>> =>
  editSettings(house.context, { absences: (await absences(house)).filter(isOther(given)), formId });

const isOther =
  (given: Dates) =>
  ({ from, to }: Dates): boolean =>
    from !== given.from || to !== given.to;
