/** Bringing in a list: paste or upload, see line by line what would happen, then say yes. */
import { Layout, type Shell } from '../layout.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { FileField } from '../partials/file-field.tsx';
import { entryOf, type FormEntry, type Option, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { type Draft, DryRun } from './import-check.tsx';

/** Form 'import' posts `what` (animals or stock), `file` (multipart) or `text` to `paths.import`. */
export interface ImportProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** What was read and not yet written; null before anything was sent. */
  readonly draft: Draft | null;
}

export const ImportPage = ({ shell, forms, draft }: ImportProps) => (
  <Layout shell={shell} title="Bring in a list" here="settings">
    {draft === null ? <Send forms={forms} /> : <DryRun forms={forms} draft={draft} />}
  </Layout>
);

const WHAT: readonly Option[] = [
  { value: 'animals', label: 'Animals' },
  { value: 'stock', label: 'Prey in the larder' },
];

const Send = ({ forms }: { forms: PageForms }) => {
  const entry = entryOf(forms, 'import');
  return (
    <>
      <header class="page-head">
        <h1>Bring in a list</h1>
        <p class="lede">From any spreadsheet. Nothing is written until you have seen every line.</p>
      </header>
      <PostForm entry={entry} action={paths.import} class="form sheet" multipart>
        <RadioButtons entry={entry} name="what" legend="The list is of" options={WHAT} start="animals" />
        <FileField entry={entry} label="A file saved as CSV" />
        <PasteField entry={entry} />
        <button type="submit" class="act-here">
          Read it
        </button>
      </PostForm>
    </>
  );
};

const PasteField = ({ entry }: { entry: FormEntry }) => (
  <div class="field">
    <label for="import-text">or paste the cells here</label>
    <textarea
      id="import-text"
      name="text"
      rows={8}
      spellcheck={false}
      aria-describedby={entry.problems.text === undefined ? 'import-text-hint' : 'import-text-problem'}
      {...(entry.problems.text === undefined ? {} : { 'aria-invalid': 'true' as const })}
    >
      {entry.values.text ?? ''}
    </textarea>
    <small class="hint" id="import-text-hint">
      With the headings in the first row: name, species, size, shelf, last fed. Ours or yours.
    </small>
    {entry.problems.text === undefined ? null : (
      <p class="problem" id="import-text-problem">
        {entry.problems.text}
      </p>
    )}
  </div>
);
