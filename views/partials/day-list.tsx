/** Stretches of days in a list, each with a button that takes it away. */
import type { Child } from 'hono/jsx';
import { civilDate, type DayRange } from '../../src/husbandry/calendar.ts';
import { dayRange } from '../format.ts';
import { entryOf, type PageForms, PostForm } from './form.tsx';

interface DayListProps<T extends DayRange> {
  readonly forms: PageForms;
  /** Each form is called '<form>-<from>-<to>' and posts `from`, `to`. */
  readonly form: string;
  readonly action: string;
  readonly days: readonly T[];
  readonly children: (days: T) => Child;
}

export const DayList = <T extends DayRange>({ forms, form, action, days, children }: DayListProps<T>) => (
  <ul class="lines">
    {days.map((each) => (
      <li>
        {children(each)}
        <PostForm entry={entryOf(forms, `${form}-${each.from}-${each.to}`)} action={action} class="inline">
          <input type="hidden" name="from" value={civilDate(each.from)} />
          <input type="hidden" name="to" value={civilDate(each.to)} />
          <button type="submit" class="quiet small">
            Remove<span class="unseen"> {dayRange(each.from, each.to)}</span>
          </button>
        </PostForm>
      </li>
    ))}
  </ul>
);
