/** An animal that was lent is back: on which day, and what it ate meanwhile. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { recordDay } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { entryOf, Field, type PageForms } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/** Form 'came-back' posts `day` and `lastTaken` (dates, the second may be empty). */
export interface CameBackProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly code: string;
  readonly name: string;
  readonly to: string;
  readonly since: DayNumber;
}

export const CameBackPage = ({ shell, forms, code, name, to, since }: CameBackProps) => {
  const entry = entryOf(forms, 'came-back');
  return (
    <RecordForm
      shell={shell}
      here="animals"
      title={`${name} is back`}
      entry={entry}
      action={paths.animalAct(code, 'came-back')}
      revision={undefined}
      button="Write down that it is back"
    >
      <p>
        It was with {to} since {recordDay(since)}. From that day on it is fed here again, on its old shelf,
        with its old record.
      </p>
      <Field entry={entry} name="day" label="Back on" type="date" start={civilDate(shell.today)} required />
      <Field
        entry={entry}
        name="lastTaken"
        label="Last meal taken there"
        type="date"
        hint="Leave empty if nobody knows: it is offered food soon."
      />
    </RecordForm>
  );
};
