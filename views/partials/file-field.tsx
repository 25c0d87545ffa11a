/** A field that takes a file of text: a table saved as CSV. */
import type { FormEntry } from './form.tsx';

export const FileField = ({ entry, label }: { entry: FormEntry; label: string }) => {
  const id = `${entry.name}-file`;
  const wrong = entry.problems.file;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        type="file"
        id={id}
        name="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        {...(wrong === undefined
          ? {}
          : { 'aria-invalid': 'true' as const, 'aria-describedby': `${id}-problem` })}
      />
      {wrong === undefined ? null : (
        <p class="problem" id={`${id}-problem`}>
          {wrong}
        </p>
      )}
    </div>
  );
};
