/** Adding a supplier or a shop, and changing what was said of one. */
import type { Child } from 'hono/jsx';
import type { Supplier } from '../../src/husbandry/orders/index.ts';
import { inPercent } from '../../src/husbandry/units.ts';
import { moneyTyped } from '../format/money.ts';
import { DAY_OPTIONS } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { CheckButtons, RadioButtons, weekdaysTicked } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type PageForms } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'supplier' posts `name`, `kind`, `weekday` (repeated, '0' Monday), `transitDays`, `cutOffDays`, `cutOffTime`,
 * `postageFlat`, `postagePerKg`, `postageFreeFrom`, `minimum`, `cold`, `heat`, `holdDays`, `loss` and `over` (percent),
 * `claimHours`, `notes` to `paths.newSupplier` or `paths.editSupplier(code)`.
 */
export interface SupplierFormProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** null: a new one. */
  readonly supplier: (Supplier & { readonly claimHours: number | null; readonly notes: string }) | null;
  readonly currency: string;
  /** Revision the page shows, posted as `asOf`. */
  readonly revision: number;
}

type PartProps = SupplierFormProps & { readonly entry: FormEntry };

export const SupplierFormPage = (props: SupplierFormProps) => {
  const { supplier } = props;
  const entry = entryOf(props.forms, 'supplier');
  return (
    <RecordForm
      shell={props.shell}
      here="more"
      title={supplier === null ? 'Who do you buy from?' : `Change ${supplier.name}`}
      entry={entry}
      action={supplier === null ? paths.newSupplier : paths.editSupplier(supplier.code)}
      revision={props.revision}
      button={supplier === null ? 'Add them' : 'Save'}
    >
      <Who {...props} entry={entry} />
      <When {...props} entry={entry} />
      <Costs {...props} entry={entry} />
      <Weather {...props} entry={entry} />
      <Arrives {...props} entry={entry} />
      <Field entry={entry} name="notes" label="Notes" start={supplier?.notes} />
    </RecordForm>
  );
};

const Group = ({ legend, children }: { legend: string; children?: Child }) => (
  <fieldset class="field-group">
    <legend>{legend}</legend>
    {children}
  </fieldset>
);

const KINDS = [
  { value: 'parcel', label: 'Sends parcels' },
  { value: 'shop', label: 'A shop I go to' },
];

const Who = ({ entry, supplier }: PartProps) => (
  <>
    <Field entry={entry} name="name" label="Name" start={supplier?.name} required />
    <RadioButtons
      entry={entry}
      name="kind"
      legend="It is"
      options={KINDS}
      start={supplier?.kind ?? 'parcel'}
    />
    <p class="note">
      Of a shop say the days it is open; it is dear, and at once: 0 days on the way, no postage, no day
      before.
    </p>
  </>
);

const When = ({ entry, supplier }: PartProps) => (
  <Group legend="When it comes">
    <CheckButtons
      entry={entry}
      name="weekday"
      legend="Parcels leave, or the shop is open, on"
      options={DAY_OPTIONS}
      checked={weekdaysTicked(entry.values.weekday, supplier?.dispatchWeekdays ?? [])}
    />
    <Field
      entry={entry}
      name="transitDays"
      label="Days on the way"
      start={`${supplier?.transitDays ?? 1}`}
      hint="From the day it leaves to your door; a shop: 0."
      required
    />
    <Field
      entry={entry}
      name="cutOffDays"
      label="Order how many days before it leaves"
      start={`${supplier?.cutOffDays ?? 0}`}
      hint="0: on the day itself; 1: the day before."
      required
    />
    <Field
      entry={entry}
      name="cutOffTime"
      label="By what hour"
      start={supplier?.cutOffTime ?? ''}
      hint="Such as 12:00; empty: at any hour of that day."
    />
  </Group>
);

const sum = (cents: number | null | undefined): string =>
  cents == null || cents === 0 ? '' : moneyTyped(cents);

const Costs = ({ entry, supplier, currency }: PartProps) => (
  <Group legend={`What a parcel costs, in ${currency}`}>
    <Field
      entry={entry}
      name="postageFlat"
      label="Postage"
      start={sum(supplier?.postage.flatCents)}
      hint="Whatever is in it, such as 4.90; empty: none."
    />
    <Field
      entry={entry}
      name="postagePerKg"
      label="And for each kilogram"
      start={sum(supplier?.postage.perKgCents)}
      hint="Of live prey; empty: nothing."
    />
    <Field
      entry={entry}
      name="postageFreeFrom"
      label="Free from a sum of"
      start={supplier?.postage.freeFromCents == null ? '' : moneyTyped(supplier.postage.freeFromCents)}
      hint="Empty: never free."
    />
    <Field
      entry={entry}
      name="minimum"
      label="Least order"
      start={sum(supplier?.minimumCents)}
      hint="Goods without postage; empty: any."
    />
  </Group>
);

const outside = (tempC: number | null | undefined): string =>
  tempC == null ? '' : `${Math.round(tempC * TENTHS) / TENTHS} C`;
const TENTHS = 10;

const Weather = ({ entry, supplier }: PartProps) => (
  <Group legend="Weather that holds parcels back">
    <Field
      entry={entry}
      name="cold"
      label="Colder than"
      start={outside(supplier?.coldBelowC)}
      hint="Outside, such as -2 C or 28 F; empty: they send in any cold."
    />
    <Field
      entry={entry}
      name="heat"
      label="Hotter than"
      start={outside(supplier?.heatAboveC)}
      hint="Such as 32 C; empty: they send in any heat."
    />
    <Field
      entry={entry}
      name="holdDays"
      label="Held for how many days at most"
      start={`${supplier?.holdDays ?? ''}`}
      hint="Then the order lapses; empty: held until the weather lets it go."
    />
  </Group>
);

const share = (of: number | null | undefined): string => (of == null ? '' : `${inPercent(of)}`);

const Arrives = ({ entry, supplier }: PartProps) => (
  <Group legend="What arrives">
    <Field
      entry={entry}
      name="loss"
      label="Lost on the way, in percent"
      start={share(supplier?.lossShare)}
      hint="Empty: as the method has it, and as their parcels teach."
    />
    <Field
      entry={entry}
      name="over"
      label="Sent over, in percent"
      start={share(supplier?.overCountShare)}
      hint="More heads in a pack than it says; empty: as the method has it."
    />
    <Field
      entry={entry}
      name="claimHours"
      label="Hours in which dead prey must be claimed"
      start={`${supplier?.claimHours ?? ''}`}
      hint="Empty: not known."
    />
  </Group>
);
