/** Forms that work without script: a post with its own id, fields that keep what was typed, problems beside them. */
import type { Child } from 'hono/jsx';

/** What a page needs for all its forms: one fresh id a page, and the form that was refused, if one was. */
export interface PageForms {
  /** Fresh for every rendering; each form posts it with its own name added as `formId`. */
  readonly formId: string;
  readonly refused: Refused | null;
  /** A form that another page began: shown open, with these values. */
  readonly begun?: Pick<Refused, 'form' | 'values'> | null;
}

export interface Refused {
  /** Name of the form, as passed to `entryOf`. */
  readonly form: string;
  /** What was typed, by field. */
  readonly values: Readonly<Record<string, string>>;
  /** A sentence for each field that is wrong; under '' what belongs to no field. */
  readonly problems: Readonly<Record<string, string>>;
}

/** One form's own part of a page's forms. */
export interface FormEntry {
  readonly name: string;
  readonly formId: string;
  readonly values: Readonly<Record<string, string>>;
  readonly problems: Readonly<Record<string, string>>;
  /** Another page began it. */
  readonly begun?: boolean;
}

export function entryOf(forms: PageForms, name: string): FormEntry {
  const refused = forms.refused?.form === name ? forms.refused : null;
  const begun = forms.begun?.form === name ? forms.begun : null;
  return {
    name,
    formId: `${forms.formId}.${name}`,
    values: refused?.values ?? begun?.values ?? {},
    problems: refused?.problems ?? {},
    begun: begun !== null,
  };
}

interface PostFormProps {
  readonly entry: FormEntry;
  readonly action: string;
  readonly class?: string;
  /** For files. */
  readonly multipart?: boolean;
  /** What is sent, in words: with script it is kept on the device until the server has it. */
  readonly keep?: string | undefined;
  readonly children?: Child;
}

export const PostForm = ({
  entry,
  action,
  class: look = 'form',
  multipart,
  keep,
  children,
}: PostFormProps) => (
  <form
    method="post"
    action={action}
    class={look}
    id={entry.name}
    {...(multipart ? { enctype: 'multipart/form-data' } : {})}
    {...(keep === undefined ? {} : { 'data-keep': keep })}
  >
    <input type="hidden" name="formId" value={entry.formId} />
    <ProblemSummary problems={entry.problems} />
    {children}
  </form>
);

/** Tells which state of the record was on the page. */
export const AsOf = ({ revision }: { revision: number | undefined }) =>
  revision === undefined ? null : <input type="hidden" name="asOf" value={`${revision}`} />;

const ProblemSummary = ({ problems }: Pick<FormEntry, 'problems'>) => {
  const count = Object.keys(problems).length;
  if (count === 0) return null;
  return (
    <p class="problem" role="alert">
      {problems[''] ?? 'Not saved yet. Put right what is marked below; what you typed is kept.'}
    </p>
  );
};

interface FieldFrameProps {
  readonly entry: FormEntry;
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly children?: Child;
}

/** Label, hint, control and problem of one field. */
const FieldFrame = ({ entry, name, label, hint, children }: FieldFrameProps) => {
  const id = `${entry.name}-${name}`;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {children}
      {hint === undefined ? null : (
        <small class="hint" id={`${id}-hint`}>
          {hint}
        </small>
      )}
      {entry.problems[name] === undefined ? null : (
        <p class="problem" id={`${id}-problem`}>
          {entry.problems[name]}
        </p>
      )}
    </div>
  );
};

/** Attributes that tie a control to its label, hint and problem. */
function tied(entry: FormEntry, name: string, hint: string | undefined) {
  const id = `${entry.name}-${name}`;
  const wrong = entry.problems[name] !== undefined;
  const described = [...(wrong ? [`${id}-problem`] : []), ...(hint === undefined ? [] : [`${id}-hint`])];
  return {
    id,
    name,
    ...(wrong ? { 'aria-invalid': 'true' as const } : {}),
    ...(described.length > 0 ? { 'aria-describedby': described.join(' ') } : {}),
  };
}

interface FieldProps extends Omit<FieldFrameProps, 'children'> {
  readonly type?: 'text' | 'number' | 'date' | 'password' | 'search';
  /** Shown until the keeper types something else. */
  readonly start?: string | undefined;
  readonly required?: boolean;
  readonly placeholder?: string;
  readonly autocomplete?: string;
  readonly min?: string;
}

export const Field = ({ entry, name, label, hint, type = 'text', start = '', ...more }: FieldProps) => (
  <FieldFrame entry={entry} name={name} label={label} hint={hint}>
    <input
      {...tied(entry, name, hint)}
      type={type}
      value={entry.values[name] ?? start}
      {...more}
      {...(type === 'number' ? { inputmode: 'numeric' as const } : {})}
    />
  </FieldFrame>
);

export interface Option {
  readonly value: string;
  readonly label: string;
  readonly group?: string;
}

interface SelectProps extends Omit<FieldFrameProps, 'children'> {
  readonly options: readonly Option[];
  readonly start?: string | undefined;
  /** Words for choosing nothing; without them the first option stands. */
  readonly none?: string;
}

export const Select = ({ entry, name, label, hint, options, start = '', none }: SelectProps) => {
  const chosen = entry.values[name] ?? start;
  const groups = [...new Set(options.map((option) => option.group))];
  const line = (option: Option) => (
    <option value={option.value} selected={option.value === chosen}>
      {option.label}
    </option>
  );
  return (
    <FieldFrame entry={entry} name={name} label={label} hint={hint}>
      <select {...tied(entry, name, hint)}>
        {none === undefined ? null : <option value="">{none}</option>}
        {groups.map((group) => {
          const lines = options.filter((option) => option.group === group).map(line);
          return group === undefined ? lines : <optgroup label={group}>{lines}</optgroup>;
        })}
      </select>
    </FieldFrame>
  );
};
