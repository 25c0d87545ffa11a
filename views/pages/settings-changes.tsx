/** Planned changes: sacs, arrivals and sales that alter who will eat. */

import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import { counted, dayRange, type LengthUnit, lengthText, percent } from '../format.ts';
import { kindNameOf } from '../names.ts';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { PercentField, PlanFields } from '../partials/plan-fields.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'changes' posts `kind` (arrival, sale), `animalKind`, `animal` ('' or a code), `from`, `to`, `chance`
 * (percent), `count`, `gauge` (as typed), `room`.
 */
interface ChangesProps {
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly changes: readonly PlannedChange[];
  readonly kinds: readonly Option[];
  /** Common names by code, as they stand within a sentence. */
  readonly kindNames: ReadonlyMap<string, { readonly commonName: string }>;
  readonly animals: readonly Option[];
  readonly rooms: readonly { readonly code: string; readonly name: string }[];
}

export const Changes = (props: ChangesProps) => (
  <section aria-labelledby="changes-head">
    <h2 id="changes-head">Planned changes</h2>
    {props.changes.length === 0 ? (
      <p>None. Who moves in or leaves changes what you need weeks ahead.</p>
    ) : (
      <ul class="changes">
        {props.changes.map((change) => (
          <li>
            <Planned {...props} change={change} />
          </li>
        ))}
      </ul>
    )}
    <p>
      <a href={paths.sacs}>Sacs</a> have a page of their own: when the young will eat, and which cup to start.
    </p>
    <NewChange {...props} />
  </section>
);

type PlannedProps = ChangesProps & { readonly change: PlannedChange };

const Planned = (props: PlannedProps) => {
  const { change, forms } = props;
  const sentence = sentenceOf(change, props);
  if (change.kind === 'sac')
    return (
      <>
        {sentence}. <a href={paths.sacs}>Its page</a>.
      </>
    );
  return (
    <>
      <PostForm
        entry={entryOf(forms, `change-${change.code}`)}
        action={paths.settingsAct('changes/remove')}
        class="inline"
      >
        <input type="hidden" name="change" value={change.code} />
        {sentence}{' '}
        <button type="submit" class="quiet small">
          Remove<span class="unseen">: {sentence}</span>
        </button>
      </PostForm>
      <EditChange {...props} />
    </>
  );
};

const LIKELY = 'How likely, in percent';
const EDITED = { from: 'First day', to: 'Last day', count: 'How many', gauge: 'Size', chance: LIKELY };

/** Posts to `changes/edit`: `change`, `from`, `to`, `count`, `gauge`, `chance` in percent. */
const EditChange = ({ change, forms, unit }: PlannedProps) => {
  const entry = entryOf(forms, `edit-${change.code}`);
  return (
    <ActForm
      entry={entry}
      action={paths.settingsAct('changes/edit')}
      title="Change its days or numbers"
      button="Save"
    >
      <input type="hidden" name="change" value={change.code} />
      <PlanFields entry={entry} change={change} unit={unit} words={EDITED} />
    </ActForm>
  );
};

/** 'Sac: 120 young of curly hair tarantula, 3 mm, first feed Tue 1 Dec to Sun 6 Dec, 70 % likely'. */
function sentenceOf(change: PlannedChange, { unit, kindNames }: ChangesProps): string {
  const kind = kindNameOf(kindNames, change.animalKind);
  const when = dayRange(change.from, change.to);
  const size = lengthText(change.gaugeMm, unit);
  const likely = change.chance < 1 ? `, ${percent(change.chance)} likely` : '';
  if (change.kind === 'sac')
    return `Sac: ${change.count} young of ${kind}, ${size}, first feed ${when}${likely}`;
  const heads = `${counted(change.count, 'head')} of ${kind}, ${size}`;
  return change.kind === 'arrival'
    ? `Moves in: ${heads}, ${when}${likely}`
    : `Leaves: ${heads}, ${when}${likely}`;
}

const KINDS = [
  { value: 'arrival', label: 'Arrival' },
  { value: 'sale', label: 'Sale' },
];

const NewChange = ({ forms, kinds, animals, rooms }: ChangesProps) => {
  const entry = entryOf(forms, 'changes');
  return (
    <ActForm entry={entry} action={paths.settingsAct('changes')} title="Plan a change" button="Plan it">
      <RadioButtons entry={entry} name="kind" legend="What" options={KINDS} start="arrival" />
      <Select entry={entry} name="animalKind" label="Kind" options={kinds} none="Choose a kind" />
      <Select entry={entry} name="animal" label="Which animal" options={animals} none="None in particular" />
      <Field entry={entry} name="count" label="How many" type="number" min="1" required />
      <Field entry={entry} name="gauge" label="Size" hint="Of each: 4 mm." required />
      <Field entry={entry} name="from" label="First day" type="date" required />
      <Field entry={entry} name="to" label="Last day" type="date" required />
      <PercentField entry={entry} name="chance" label={LIKELY} least={1} share={1} />
      <Select
        entry={entry}
        name="room"
        label="Room"
        options={rooms.map(({ code, name }) => ({ value: code, label: name }))}
      />
    </ActForm>
  );
};
