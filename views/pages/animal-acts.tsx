/** What may be written down about an animal: moulted, measured, premoult, matured, died; one tap means today. */
import type { Child } from 'hono/jsx';
import type { Animal } from '../../src/husbandry/animals/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { type LengthUnit, sentenceCase } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons, Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type PageForms, PostForm } from '../partials/form.tsx';
import { type AnimalAct, paths } from '../paths.ts';

/**
 * Forms, each posting to `paths.animalAct(code, …)` with dates as YYYY-MM-DD: moulted (`found`, `earliest`, `gauge`,
 * `smaller`), measured (`gauge`, `day`, `smaller`), premoult (`day`), matured (`day`), died (`day`, `heads`).
 */
interface AnimalActsProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly animal: Animal;
  readonly gaugeWord: string;
  /** Whether its kind moults at all. */
  readonly moults: boolean;
}

export const AnimalActs = (props: AnimalActsProps) => (
  <section class="acts-list" aria-labelledby="write-down">
    <h2 id="write-down">Write down</h2>
    <p class="note">One tap writes it down for today; it can be undone.</p>
    {props.moults ? <Moulted {...props} /> : null}
    <Measured {...props} />
    {props.moults ? <OnOneDay {...props} act="premoult" button="In premoult" /> : null}
    {props.animal.matured ? null : <OnOneDay {...props} act="matured" button="Matured (male)" />}
    <Died {...props} />
    <Left {...props} />
  </section>
);

interface OneTapProps {
  readonly entry: FormEntry;
  readonly animal: Animal;
  readonly act: AnimalAct;
  readonly button: string;
  /** What lies behind the disclosure. */
  readonly more: string;
  readonly lead?: Child;
  readonly children?: Child;
}

/** A button that is enough, and behind a disclosure what may be said besides. */
const OneTap = ({ entry, animal, act, button, more, lead, children }: OneTapProps) => (
  <PostForm
    entry={entry}
    action={paths.animalAct(animal.code, act)}
    class="one-act"
    keep={`${animal.name}: ${button.toLowerCase()}`}
  >
    {lead}
    <button type="submit">{button}</button>
    <details open={Object.keys(entry.problems).length > 0}>
      <summary>{more}</summary>
      <div class="form">
        {children}
        <button type="submit">
          {button}
          <span class="unseen"> on that day</span>
        </button>
      </div>
    </details>
  </PostForm>
);

const gaugeHint = (unit: LengthUnit): string =>
  unit === 'mm' ? 'Such as 45 mm or 1 3/4 in.' : 'Such as 1 3/4 in or 45 mm.';

const Moulted = ({ forms, animal, shell, unit, gaugeWord }: AnimalActsProps) => {
  const entry = entryOf(forms, 'moulted');
  return (
    <OneTap
      entry={entry}
      animal={animal}
      act="moulted"
      button="Moult found"
      more="Another day, or its new size"
    >
      <p class="caution">Take all live prey out.</p>
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
      <KeptAsWritten entry={entry} />
    </OneTap>
  );
};

/** Asked only when a size is smaller than the one before the moult. */
const KeptAsWritten = ({ entry }: { entry: FormEntry }) => {
  const asked = entry.problems.smaller;
  if (asked === undefined && entry.values.smaller === undefined) return null;
  return (
    <div class="field">
      {asked === undefined ? null : <p class="problem">{asked}</p>}
      <Toggle name="smaller" value="on" label="Keep it as written" checked={asked === undefined} />
    </div>
  );
};

const Measured = ({ forms, animal, shell, unit, gaugeWord }: AnimalActsProps) => {
  const entry = entryOf(forms, 'measured');
  return (
    <OneTap
      entry={entry}
      animal={animal}
      act="measured"
      button="Measured"
      more="Another day"
      lead={
        <Field entry={entry} name="gauge" label={sentenceCase(gaugeWord)} hint={gaugeHint(unit)} required />
      }
    >
      <Field entry={entry} name="day" label="On" type="date" start={civilDate(shell.today)} required />
      <KeptAsWritten entry={entry} />
    </OneTap>
  );
};

interface OnOneDayProps extends AnimalActsProps {
  readonly act: 'premoult' | 'matured';
  readonly button: string;
}

const OnOneDay = ({ forms, animal, shell, act, button }: OnOneDayProps) => {
  const entry = entryOf(forms, act);
  return (
    <OneTap entry={entry} animal={animal} act={act} button={button} more="Another day">
      <Field entry={entry} name="day" label="Seen on" type="date" start={civilDate(shell.today)} required />
    </OneTap>
  );
};

const Died = ({ forms, animal, shell }: AnimalActsProps) => {
  const entry = entryOf(forms, 'died');
  const group = animal.count > 1;
  return (
    <OneTap
      entry={entry}
      animal={animal}
      act="died"
      button={group ? 'One died' : 'Died'}
      more={group ? 'More than one, or another day' : 'Another day'}
    >
      {group ? (
        <Field entry={entry} name="heads" label="How many" type="number" min="1" start="1" required />
      ) : (
        <input type="hidden" name="heads" value="1" />
      )}
      <Field entry={entry} name="day" label="Found on" type="date" start={civilDate(shell.today)} required />
    </OneTap>
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
