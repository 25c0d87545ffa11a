/** A group: some of it get a record of their own, or the heads are counted anew. */
import type { Animal } from '../../src/husbandry/animals/index.ts';
import { counted, type LengthUnit, lengthText } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { AsOf, entryOf, Field, type Option, type PageForms, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';

/**
 * Forms: 'split' posts `heads`, `into` ('singles' or 'group'), `name`, `gauge`, `room`, `shelf` and `asOf`; 'heads'
 * posts `heads` and `asOf`.
 */
export interface SplitProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly group: Animal;
  readonly rooms: readonly Option[];
  readonly revision: number;
}

export const SplitPage = (props: SplitProps) => {
  const { shell, group } = props;
  return (
    <Layout shell={shell} title={`Split ${group.name}`} here="animals">
      <header class="page-head">
        <p class="eyebrow">
          <a href={paths.animal(group.code)}>{group.name}</a>
        </p>
        <h1>
          {group.name}: {counted(group.count, 'head', 'heads')} together
        </h1>
        <p class="lede">
          Take some out when they outgrow the others or get cups of their own. The record stays with the
          group; the new ones say where they came from.
        </p>
      </header>
      <section class="acts-list" aria-label="What may be done">
        <Split {...props} />
        <Counted {...props} />
      </section>
    </Layout>
  );
};

const INTO = [
  { value: 'singles', label: 'Single animals' },
  { value: 'group', label: 'One new group' },
];

const Split = ({ forms, group, unit, rooms, revision }: SplitProps) => {
  const entry = entryOf(forms, 'split');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(group.code, 'split')}
      title="Take some out"
      button="Take them out"
      open
    >
      <AsOf revision={revision} />
      <Field
        entry={entry}
        name="heads"
        label="How many"
        type="number"
        min="1"
        hint={`At most ${group.count - 1}: the last one keeps this record.`}
        required
      />
      <RadioButtons entry={entry} name="into" legend="They become" options={INTO} start="singles" />
      <Field
        entry={entry}
        name="name"
        label="Name"
        start={group.name}
        hint="Single animals are numbered: Name 1, Name 2 …"
      />
      <Field
        entry={entry}
        name="gauge"
        label="Size"
        hint={`Empty: as in the group, ${lengthText(group.gaugeMm, unit)}.`}
      />
      <Select entry={entry} name="room" label="Room" options={rooms} start={group.room} />
      <Field entry={entry} name="shelf" label="Shelf" start={group.shelf} />
    </ActForm>
  );
};

const Counted = ({ forms, group, revision }: SplitProps) => {
  const entry = entryOf(forms, 'heads');
  return (
    <ActForm
      entry={entry}
      action={paths.animalAct(group.code, 'heads')}
      title="Counted anew"
      button="Write down the count"
    >
      <AsOf revision={revision} />
      <Field
        entry={entry}
        name="heads"
        label="Heads in it now"
        type="number"
        min="1"
        start={`${group.count}`}
        hint="A count puts right what was miscounted. Those that died are written down in its record."
        required
      />
    </ActForm>
  );
};
