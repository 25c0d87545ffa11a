/** The end of a form of the Book: why, and save, show the effect, or leave it. */
import { Field, type FormEntry } from '../partials/form.tsx';
import { paths } from '../paths.ts';

interface FootProps {
  readonly entry: FormEntry;
  /** Code of the kind. */
  readonly code: string;
  /** Where the form is posted for a look. */
  readonly look: string;
}

export const KindFormFoot = ({ entry, code, look }: FootProps) => (
  <>
    <Field entry={entry} name="why" label="Why (for yourself)" hint="Kept beside each number you change." />
    <p class="acts">
      <button type="submit" class="act-here">
        Save
      </button>
      <button type="submit" class="quiet" formaction={look}>
        Show the effect
      </button>
      <a class="button quiet" href={paths.kind(code)}>
        Leave it
      </a>
    </p>
  </>
);
