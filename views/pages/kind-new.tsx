/** Making a kind of one's own: another's numbers under a new name. */
import type { Shell } from '../layout.tsx';
import { entryOf, Field, type Option, type PageForms, Select } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/** Form 'new-kind' posts `from`, `name`, `commonName`, `why` to `paths.newKind`. */
export interface NewKindProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly kinds: readonly Option[];
  /** The kind to begin with, by code. */
  readonly from: string;
}

export const NewKindPage = ({ shell, forms, kinds, from }: NewKindProps) => {
  const entry = entryOf(forms, 'new-kind');
  return (
    <RecordForm
      shell={shell}
      here="more"
      title="A kind of your own"
      entry={entry}
      action={paths.newKind}
      revision={undefined}
      button="Make it"
    >
      <p>It begins with all the numbers of the kind you choose. Then change what you know better.</p>
      <Select
        entry={entry}
        name="from"
        label="Most like"
        options={kinds}
        start={from}
        none="Choose a kind"
        hint="The nearest relative of the same build and pace; else the general kind of its group."
      />
      <Field
        entry={entry}
        name="name"
        label="Scientific name"
        hint="As your lists write it, such as Genus species."
        required
      />
      <Field entry={entry} name="commonName" label="Common name" required />
      <Field entry={entry} name="why" label="A note (for yourself)" />
    </RecordForm>
  );
};
