/** Days away: nobody is fed from the first to the last of them. */
import { civilDate, type FeedingCalendar } from '../../src/husbandry/calendar.ts';
import { dayRange } from '../format.ts';
import { ActForm } from '../partials/act.tsx';
import { DayList } from '../partials/day-list.tsx';
import { entryOf, Field, type PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface AbsencesProps {
  readonly forms: PageForms;
  readonly calendar: FeedingCalendar;
}

export const Absences = ({ forms, calendar }: AbsencesProps) => {
  const entry = entryOf(forms, 'absences');
  return (
    <section aria-labelledby="away-head">
      <h2 id="away-head">Days away</h2>
      {calendar.absences.length === 0 ? <p>None planned.</p> : null}
      <DayList
        forms={forms}
        form="away"
        action={paths.settingsAct('absences/remove')}
        days={calendar.absences}
      >
        {({ from, to }) => (
          <a href={paths.awayOn({ from: civilDate(from), to: civilDate(to) })}>{dayRange(from, to)}</a>
        )}
      </DayList>
      <p>
        <a href={paths.away}>Who can wait while you are away</a>, and a sheet for a sitter.
      </p>
      <ActForm entry={entry} action={paths.settingsAct('absences')} title="Add days away" button="Add them">
        <Field entry={entry} name="from" label="First day away" type="date" required />
        <Field entry={entry} name="to" label="Last day away" type="date" required />
      </ActForm>
    </section>
  );
};
