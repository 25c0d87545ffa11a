/** The form for a sac that was laid or found. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { ActForm } from '../partials/act.tsx';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, Select } from '../partials/form.tsx';
import { COMES_OFF, PercentField } from '../partials/plan-fields.tsx';
import { paths } from '../paths.ts';

interface NewSacProps {
  readonly forms: PageForms;
  readonly shell: { readonly today: DayNumber };
  readonly mothers: readonly Option[];
  readonly usualChance: number;
  readonly open: readonly unknown[];
}

/** Posts to `paths.sacs`: `animal`, `laidFrom`, `laidTo`, `count`, `chance` and `shareKept` in percent, `motherFasts`. */
export const NewSac = (props: NewSacProps) => {
  const entry = entryOf(props.forms, 'sac');
  return (
    <ActForm
      entry={entry}
      action={paths.sacs}
      title="A sac was laid or found"
      button="Write it down"
      open={props.open.length === 0}
    >
      <Select entry={entry} name="animal" label="Mother" options={props.mothers} none="Choose the mother" />
      <Field
        entry={entry}
        name="laidFrom"
        label="Laid on, or not before"
        type="date"
        start={civilDate(props.shell.today)}
        required
      />
      <Field
        entry={entry}
        name="laidTo"
        label="Not after"
        type="date"
        hint="Leave empty when you know the day."
      />
      <Field
        entry={entry}
        name="count"
        label="Young you expect"
        type="number"
        min="1"
        hint="About is good enough."
        required
      />
      <PercentField entry={entry} name="chance" label={COMES_OFF} least={1} share={props.usualChance} />
      <PercentField
        entry={entry}
        name="shareKept"
        label="Share you will keep, in percent"
        least={0}
        share={1}
      />
      <Toggle
        name="motherFasts"
        value="on"
        label="The mother takes no food meanwhile"
        checked={entry.values.motherFasts === 'on'}
      />
    </ActForm>
  );
};
