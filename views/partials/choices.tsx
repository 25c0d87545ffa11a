/** Things to tap: radios, checkboxes and one-tap submit buttons drawn as big quiet buttons. */
import type { FormEntry, Option } from './form.tsx';

interface ChoiceProps {
  readonly entry: FormEntry;
  readonly name: string;
  readonly legend: string;
  readonly options: readonly Option[];
  readonly start?: string;
}

/** One of a few, each a button. */
export const RadioButtons = ({ entry, name, legend, options, start }: ChoiceProps) => {
  const id = `${entry.name}-${name}`;
  const wrong = entry.problems[name];
  const chosen = entry.values[name] ?? start;
  return (
    <fieldset class="choices" {...(wrong === undefined ? {} : { 'aria-describedby': `${id}-problem` })}>
      <legend>{legend}</legend>
      <div class="choice-row">
        {options.map((option) => (
          <label class="tap">
            <input type="radio" name={name} value={option.value} checked={option.value === chosen} />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      {wrong === undefined ? null : (
        <p class="problem" id={`${id}-problem`}>
          {wrong}
        </p>
      )}
    </fieldset>
  );
};

interface CheckButtonsProps extends Omit<ChoiceProps, 'start'> {
  readonly checked: readonly string[];
}

/** Any of a few, each a button; all post the same name. */
export const CheckButtons = ({ name, legend, options, checked, entry }: CheckButtonsProps) => {
  const id = `${entry.name}-${name}`;
  const wrong = entry.problems[name];
  return (
    <fieldset class="choices" {...(wrong === undefined ? {} : { 'aria-describedby': `${id}-problem` })}>
      <legend>{legend}</legend>
      <div class="choice-row">
        {options.map((option) => (
          <Toggle
            name={name}
            value={option.value}
            label={option.label}
            checked={checked.includes(option.value)}
          />
        ))}
      </div>
      {wrong === undefined ? null : (
        <p class="problem" id={`${id}-problem`}>
          {wrong}
        </p>
      )}
    </fieldset>
  );
};

/** The weekdays ticked, as `CheckButtons` of days has them: as typed when the form was refused. */
export const weekdaysTicked = (typed: string | undefined, stored: readonly boolean[]): string[] =>
  typed === undefined ? stored.flatMap((on, at) => (on ? [`${at}`] : [])) : typed.split(',');

interface ToggleProps {
  readonly name: string;
  readonly value: string;
  readonly label: string;
  readonly checked?: boolean;
  /** Said by a screen reader after the label, such as the animal's name. */
  readonly of?: string;
  readonly class?: string;
}

/** One checkbox as a button. */
export const Toggle = ({ name, value, label, checked, of, class: look = 'tap' }: ToggleProps) => (
  <label class={look}>
    <input type="checkbox" name={name} value={value} checked={checked === true} />
    <span>
      {label}
      {of === undefined ? null : <span class="unseen"> ({of})</span>}
    </span>
  </label>
);

/** One tap answers: each option submits the form with its value. */
export const SubmitButtons = ({ name, options }: { name: string; options: readonly Option[] }) => (
  <div class="choice-row">
    {options.map((option) => (
      <button type="submit" class="tap-button" name={name} value={option.value}>
        {option.label}
      </button>
    ))}
  </div>
);
