/** What may be written down about an animal: moulted, measured, premoult, matured, died. */
import type { Animal } from '../../src/husbandry/animals/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { type LengthUnit, sentenceCase } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, Field, type PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';

/**
 * Forms, each posting to `paths.animalAct(code, …)` with dates as YYYY-MM-DD: moulted (`found`,
 * `earliest`, `gauge`), measured (`gauge`, `day`), premoult (`day`), matured (`day`), died (`day`,
 * `heads`).
 */
interface AnimalActsProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly animal: Animal;
  readonly gaugeWord: string;
}

export const AnimalActs = (props: AnimalActsProps) => (
  <section class="acts-list" aria-labelledby="write-down">
    <h2 id="write-down">Write down</h2>
    <Moulted {...props} />
    <Measured {...props} />
    <OnOneDay {...props} act="premoult" title="In premoult" button="Write down premoult" />
    {props.animal.matured ? null : (
      <OnOneDay {...props} act="matured" title="Matured (male)" button="Write down maturity" />
    )}
    <Died {...props} />
    <Left {...props} />
  </section>
);

const gaugeHint = (unit: LengthUnit): string =>
  unit === 'mm' ? 'Such as 45 mm or 1 3/4 in.' : 'Such as 1 3/4 in or 45 mm.';

const Moulted = ({ forms, animal, shell, unit, gaugeWord }: AnimalActsProps) => {
  const entry = entryOf(forms, 'moulted');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(animal.code, 'moulted')}
      title="Moult found"
      button="Write down the moult"
      caution="Take all live prey out."
    >
      <Field
        entry={entry}
        name="found"
        label="Found on"
        type="date"
        start={civilDate(shell.today)}
        required
      />
      <Field
        entry={entry}
        name="earliest"
        label="Last seen unmoulted"
        type="date"
        hint="Leave empty if you do not know."
      />
      <Field
        entry={entry}
        name="gauge"
        label={`New ${gaugeWord}`}
        hint={`${gaugeHint(unit)} Leave empty until measured.`}
      />
    </ActForm>
  );
};

const Measured = ({ forms, animal, shell, unit, gaugeWord }: AnimalActsProps) => {
  const entry = entryOf(forms, 'measured');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(animal.code, 'measured')}
      title="Measured"
      button="Write down the size"
    >
      <Field entry={entry} name="gauge" label={sentenceCase(gaugeWord)} hint={gaugeHint(unit)} required />
      <Field entry={entry} name="day" label="On" type="date" start={civilDate(shell.today)} required />
    </ActForm>
  );
};

interface OnOneDayProps extends AnimalActsProps {
  readonly act: 'premoult' | 'matured';
  readonly title: string;
  readonly button: string;
}

const OnOneDay = ({ forms, animal, shell, act, title, button }: OnOneDayProps) => {
  const entry = entryOf(forms, act);
  return (
    <ActForm entry={entry} action={paths.animalAct(animal.code, act)} title={title} button={button}>
      <Field entry={entry} name="day" label="Seen on" type="date" start={civilDate(shell.today)} required />
    </ActForm>
  );
};

const Died = ({ forms, animal, shell }: AnimalActsProps) => {
  const entry = entryOf(forms, 'died');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(animal.code, 'died')}
      title="Died"
      button="Write down the death"
    >
      {animal.count > 1 ? (
        <Field entry={entry} name="heads" label="How many" type="number" min="1" start="1" required />
      ) : (
        <input type="hidden" name="heads" value="1" />
      )}
      <Field entry={entry} name="day" label="Found on" type="date" start={civilDate(shell.today)} required />
    </ActForm>
  );
};

const WAYS_TO_LEAVE = ['sold', 'given away', 'lost', 'entered by mistake'].map((value) => ({
  value,
  label: sentenceCase(value),
}));

/** Form 'left' posts `reason` and `day`. */
const Left = ({ forms, animal, shell }: AnimalActsProps) => {
  const entry = entryOf(forms, 'left');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(animal.code, 'left')}
      title="No longer here"
      button="Take off the list"
    >
      <RadioButtons entry={entry} name="reason" legend="Why" options={WAYS_TO_LEAVE} start="" />
      <Field entry={entry} name="day" label="Since" type="date" start={civilDate(shell.today)} required />
      <p class="note">Its record is kept, and it can come back. A mistake does not count as a death.</p>
    </ActForm>
  );
};
