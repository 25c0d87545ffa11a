/** Adding an animal, or a group alike, and changing what was said of it. */
import type { Animal } from '../../src/husbandry/animals/index.ts';
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { type LengthUnit, lengthText } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { RadioButtons, Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type Option, type PageForms, Select } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'animal' posts `name`, `kind`, `count`, `sex`, `gauge` (as typed), `room`, `shelf`, `lastMoult`,
 * `lastTaken`, `hereSince`, `hatchedDay` (dates or ''), `matured` ('on' or absent) to `paths.newAnimal` or `paths.animalAct(code, 'edit')`.
 */
export interface AnimalFormProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  /** null: a new one. */
  readonly animal: Animal | null;
  /** Since when it lives, and lives here, where known. */
  readonly begun: { readonly hatchedDay: DayNumber | null; readonly hereSince: DayNumber | null };
  /** Kinds by common name, grouped. */
  readonly kinds: readonly Option[];
  readonly rooms: readonly Option[];
  /** Shelves already in use, to choose from while typing. */
  readonly shelves: readonly string[];
  /** Revision the page shows: an edit of an older page is told of newer changes; posted as `asOf`. */
  readonly revision?: number;
}

export const AnimalFormPage = (props: AnimalFormProps) => {
  const { animal } = props;
  const entry = entryOf(props.forms, 'animal');
  return (
    <RecordForm
      shell={props.shell}
      here="animals"
      title={animal === null ? 'Who moves in?' : `Change ${animal.name}`}
      entry={entry}
      action={animal === null ? paths.newAnimal : paths.animalAct(animal.code, 'edit')}
      revision={props.revision}
      button={animal === null ? 'Move it in' : 'Save'}
    >
      <Who {...props} entry={entry} />
      <Where {...props} entry={entry} />
      <Lately {...props} entry={entry} />
    </RecordForm>
  );
};

type PartProps = AnimalFormProps & { readonly entry: FormEntry };

const SEXES = [
  { value: 'unsexed', label: 'Unsexed' },
  { value: 'female', label: 'Female' },
  { value: 'male', label: 'Male' },
];

const Who = ({ entry, animal, kinds, unit }: PartProps) => (
  <>
    <Field entry={entry} name="name" label="Name" start={animal?.name} required />
    <Select
      entry={entry}
      name="kind"
      label="Kind"
      options={kinds}
      start={animal?.kind}
      none="Choose a kind"
      hint="Not listed? Take the general kind of its group."
    />
    <Field
      entry={entry}
      name="gauge"
      label="Size"
      start={animal === null || animal.gaugeAssumed ? '' : lengthText(animal.gaugeMm, unit)}
      hint="Leg span for spiders, body length for others: 45 mm, 1 3/4 in. Empty: taken from its stage."
    />
    <RadioButtons entry={entry} name="sex" legend="Sex" options={SEXES} start={animal?.sex ?? 'unsexed'} />
    <div class="field">
      <Toggle
        name="matured"
        value="on"
        label="Mature male"
        checked={entry.values.matured === 'on' || animal?.matured === true}
      />
    </div>
    <Field
      entry={entry}
      name="count"
      label="How many alike"
      type="number"
      min="1"
      start={`${animal?.count ?? 1}`}
      hint="More than one when they live and are fed together."
    />
  </>
);

const Where = ({ entry, animal, rooms, shelves }: PartProps) => (
  <>
    <Select entry={entry} name="room" label="Room" options={rooms} start={animal?.room} />
    <Field
      entry={entry}
      name="shelf"
      label="Shelf"
      start={animal?.shelf}
      hint={
        shelves.length > 0 ? `In use: ${shelves.join(', ')}.` : 'Such as A1. The round walks in this order.'
      }
    />
  </>
);

const dateOf = (day: DayNumber | null | undefined): string => (day == null ? '' : civilDate(day));

const Lately = ({ entry, animal, begun }: PartProps) => (
  <>
    <Field
      entry={entry}
      name="lastTaken"
      label="Last meal taken"
      type="date"
      start={dateOf(animal?.lastTaken)}
      hint="Leave empty if you do not know."
    />
    <Field
      entry={entry}
      name="lastMoult"
      label="Last moult found"
      type="date"
      start={dateOf(animal?.lastMoult?.found)}
      hint="Leave empty if you do not know."
    />
    <Field
      entry={entry}
      name="hereSince"
      label="Here since"
      type="date"
      start={dateOf(begun.hereSince)}
      hint="Nothing is written down as seen here before this day. May stay empty."
    />
    <Field
      entry={entry}
      name="hatchedDay"
      label="Hatched or born on"
      type="date"
      start={dateOf(begun.hatchedDay)}
      hint="May stay empty."
    />
  </>
);
