/** Numbers of the Book in groups, each behind a disclosure with its form: for prey species and for the method. */
import { counted } from '../format.ts';
import { AsOf, entryOf, Field, type PageForms, PostForm } from './form.tsx';
import { type NumberLine, OwnNumbers } from './own-numbers.tsx';

export interface NumberGroup {
  /** Fit for an address. */
  readonly code: string;
  /** 'Growth: egg'. */
  readonly about: string;
  readonly lines: readonly NumberLine[];
}

export interface NumberField {
  readonly name: string;
  readonly label: string;
  /** As it stands now. */
  readonly start: string;
}

/** Form 'numbers' posts every figure by its key as typed, `group`, `why` and `asOf` to `action`. */
export interface NumberFormProps {
  readonly forms: PageForms;
  readonly action: string;
  /** Where to go when nothing is to be changed. */
  readonly back: string;
  readonly revision: number;
  readonly group: string;
  readonly about: string;
  readonly numbers: readonly { readonly what: string; readonly fields: readonly NumberField[] }[];
}

interface GroupsProps {
  readonly forms: PageForms;
  readonly revision: number;
  readonly groups: readonly NumberGroup[];
  /** Where a reset posts. */
  readonly reset: string;
  /** Address of the page with the form of a group open. */
  readonly change: (group: string) => string;
}

export const NumberGroups = ({ forms, revision, groups, reset, change }: GroupsProps) =>
  groups.map(({ code, about, lines }) => (
    <div class="number-group">
      <OwnNumbers
        forms={forms}
        action={reset}
        revision={revision}
        stage=""
        caption={`${about}: ${counted(lines.length, 'number')}`}
        lines={lines}
      />
      <a class="button quiet small" href={change(code)}>
        Change<span class="unseen"> the numbers of {about}</span>
      </a>
    </div>
  ));

/** Everything back to the Book, where anything of it is the keeper's. */
export const ResetNumbers = ({ forms, revision, groups, reset }: Omit<GroupsProps, 'change'>) =>
  groups.every(({ lines }) => lines.every(({ own }) => own === null)) ? null : (
    <PostForm entry={entryOf(forms, 'reset-all')} action={reset}>
      <AsOf revision={revision} />
      <button type="submit" class="quiet">
        Reset all of them to the Book
      </button>
    </PostForm>
  );

export const NumberForm = ({ forms, action, back, revision, group, about, numbers }: NumberFormProps) => {
  const entry = entryOf(forms, 'numbers');
  return (
    <section id="change" aria-labelledby="change-head" class="change">
      <h2 id="change-head">Change “{about}”</h2>
      <PostForm entry={entry} action={action} class="form">
        <AsOf revision={revision} />
        <input type="hidden" name="group" value={group} />
        {numbers.map(({ what, fields }) => {
          const all = fields.map((field) => <Field entry={entry} {...field} />);
          if (fields.length === 1) return all;
          return (
            <fieldset>
              <legend>{what}</legend>
              <div class="pairs-of">{all}</div>
            </fieldset>
          );
        })}
        <Field
          entry={entry}
          name="why"
          label="Why (for yourself)"
          hint="Kept beside each number you change."
        />
        <p class="acts">
          <button type="submit" class="act-here">
            Save
          </button>
          <a class="button quiet" href={back}>
            Leave it
          </a>
        </p>
      </PostForm>
    </section>
  );
};
