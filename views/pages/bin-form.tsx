/** Adding a bin, colony or fly cup, and changing what was said of it. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Bin, BinRole, Space } from '../../src/husbandry/larder/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import type { Shell } from '../layout.tsx';
import { RadioButtons, Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type Option, type PageForms, Select } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'bin' posts `name`, `role`, `species`, `room`, `capacity` ('' or heads), `keepAdults` ('on' or absent), `space` ('40 l' or ''), `origin`;
 * a new one also `heads`, `size` (a trade size's value or '') and `day`, to `paths.newBin`; else to
 * `paths.binAct(code, 'edit')`.
 */
export interface BinFormProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** null: a new one. */
  readonly bin: Bin | null;
  readonly species: readonly Option[];
  readonly rooms: readonly Option[];
  /** Species of the cup asked for; a new bin then starts as that. */
  readonly cupOf?: string;
  /** Trade sizes, grouped by species. */
  readonly sizes: readonly Option[];
  /** Revision the page shows, posted as `asOf`. */
  readonly revision?: number;
}

export const BinFormPage = (props: BinFormProps) => {
  const { bin } = props;
  const entry = entryOf(props.forms, 'bin');
  return (
    <RecordForm
      shell={props.shell}
      here="larder"
      title={bin === null ? 'What prey do you keep?' : `Change ${bin.name}`}
      caution={STOCK_CAUTION}
      entry={entry}
      action={bin === null ? paths.newBin : paths.binAct(bin.code, 'edit')}
      revision={props.revision}
      button={bin === null ? 'Add it' : 'Save'}
    >
      <What {...props} entry={entry} />
      {bin === null ? <Inside {...props} entry={entry} /> : null}
    </RecordForm>
  );
};

type PartProps = BinFormProps & { readonly entry: FormEntry };

const ROLES: readonly { value: BinRole; label: string }[] = [
  { value: 'holding', label: 'Bin of bought prey' },
  { value: 'colony', label: 'Breeding colony' },
  { value: 'cup', label: 'Fly cup' },
  { value: 'frozen', label: 'Frozen prey' },
];

const What = ({ entry, bin, species, rooms, cupOf }: PartProps) => (
  <>
    <RadioButtons
      entry={entry}
      name="role"
      legend="It is a"
      options={ROLES}
      start={bin?.role ?? (cupOf === undefined ? 'holding' : 'cup')}
    />
    <Select
      entry={entry}
      name="species"
      label="Prey"
      options={species}
      start={bin?.species ?? cupOf}
      none="Choose the prey"
    />
    <Field entry={entry} name="name" label="Name" start={bin?.name} hint="Such as Cricket box 2." required />
    <Select
      entry={entry}
      name="room"
      label="Stands in"
      options={rooms}
      start={bin?.room}
      hint="Its temperature sets how fast the prey grows."
    />
    <Field
      entry={entry}
      name="capacity"
      label="Heads when full"
      type="number"
      min="1"
      start={bin?.capacity == null ? '' : `${bin.capacity}`}
      hint="Lets you say how full it looks with one tap. A guess will do."
    />
    <Field
      entry={entry}
      name="space"
      label="How large it is"
      start={bin?.space ? spaceText(bin.space) : ''}
      hint="Roaches and crickets: their surface with egg cartons, such as 60 dm2. Worms: litres. Flour beetles: grams of flour."
    />
    <Field
      entry={entry}
      name="origin"
      label="Where it came from"
      start={bin?.origin ?? ''}
      hint="A shop, a friend, another colony: if one crashes, look at the others from there first."
    />
    <div class="field">
      <Toggle
        name="keepAdults"
        value="on"
        label="Keep breeding adults back"
        checked={entry.values.keepAdults === 'on' || bin?.keepAdults === true}
      />
    </div>
  </>
);

/** '40 l', as it is typed. */
export const spaceText = ({ by, units }: Space): string =>
  `${Number(units.toPrecision(4))} ${SPACE_UNITS[by]}`;
const SPACE_UNITS = { area: 'dm2', volume: 'l', medium: 'g' } as const;

const Inside = ({ entry, sizes, shell }: PartProps) => (
  <>
    <Field
      entry={entry}
      name="heads"
      label="How many are in it"
      type="number"
      min="0"
      hint="About is good enough. Leave empty for a cup."
    />
    <Select entry={entry} name="size" label="Size" options={sizes} none="Mixed or not known" />
    <Field entry={entry} name="day" label="Seen or started on" type="date" start={civilDate(shell.today)} />
  </>
);
