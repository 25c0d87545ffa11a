/** Planned changes: sacs, arrivals and sales that alter who will eat. */
import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import { counted, dayRange, type LengthUnit, lengthText, percent } from '../format.ts';
import { ActForm } from '../partials/act.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, Field, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'changes' posts `kind` (sac, arrival, sale), `animalKind`, `animal` ('' or a code), `from`, `to`, `chance`
 * (percent), `count`, `gauge` (as typed), `room`.
 */
interface ChangesProps {
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly changes: readonly PlannedChange[];
  readonly kinds: readonly Option[];
  readonly animals: readonly Option[];
  readonly rooms: readonly { readonly code: string; readonly name: string }[];
}

export const Changes = (props: ChangesProps) => (
  <section aria-labelledby="changes-head">
    <h2 id="changes-head">Planned changes</h2>
    {props.changes.length === 0 ? (
      <p>None. A sac, an arrival or a sale changes what you need weeks ahead.</p>
    ) : null}
    <ul class="lines">
      {props.changes.map((change) => (
        <li>
          {sentenceOf(change, props)}
          <PostForm
            entry={entryOf(props.forms, `change-${change.code}`)}
            action={paths.settingsAct('changes/remove')}
            class="inline"
          >
            <input type="hidden" name="change" value={change.code} />
            <button type="submit" class="quiet small">
              Remove<span class="unseen">: {sentenceOf(change, props)}</span>
            </button>
          </PostForm>
        </li>
      ))}
    </ul>
    <NewChange {...props} />
  </section>
);

/** 'Sac: 120 young of 3 mm, first feed Tue 1 Dec to Sun 6 Dec, 70 % likely'. */
function sentenceOf(change: PlannedChange, { unit, kinds }: ChangesProps): string {
  const kind = kinds.find(({ value }) => value === change.animalKind)?.label ?? 'a kind no longer known';
  const when = dayRange(change.from, change.to);
  const size = lengthText(change.gaugeMm, unit);
  const likely = change.chance < 1 ? `, ${percent(change.chance)} likely` : '';
  if (change.kind === 'sac')
    return `Sac of ${kind}: ${change.count} young of ${size}, first feed ${when}${likely}`;
  const heads = `${counted(change.count, 'head')} of ${kind}, ${size}`;
  return change.kind === 'arrival'
    ? `Moves in: ${heads}, ${when}${likely}`
    : `Leaves: ${heads}, ${when}${likely}`;
}

const KINDS = [
  { value: 'sac', label: 'Sac' },
  { value: 'arrival', label: 'Arrival' },
  { value: 'sale', label: 'Sale' },
];

const NewChange = ({ forms, kinds, animals, rooms }: ChangesProps) => {
  const entry = entryOf(forms, 'changes');
  return (
    <ActForm entry={entry} action={paths.settingsAct('changes')} title="Plan a change" button="Plan it">
      <RadioButtons entry={entry} name="kind" legend="What" options={KINDS} start="sac" />
      <Select entry={entry} name="animalKind" label="Kind" options={kinds} none="Choose a kind" />
      <Select entry={entry} name="animal" label="Which animal" options={animals} none="None in particular" />
      <Field entry={entry} name="count" label="How many" type="number" min="1" required />
      <Field entry={entry} name="gauge" label="Size" hint="Of each: 4 mm." required />
      <Field
        entry={entry}
        name="from"
        label="First day"
        type="date"
        hint="For a sac: the first feed."
        required
      />
      <Field entry={entry} name="to" label="Last day" type="date" required />
      <Field entry={entry} name="chance" label="How likely, in percent" type="number" min="1" start="100" />
      <Select
        entry={entry}
        name="room"
        label="Room"
        options={rooms.map(({ code, name }) => ({ value: code, label: name }))}
      />
    </ActForm>
  );
};
