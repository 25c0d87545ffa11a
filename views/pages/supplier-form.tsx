/** Adding a supplier or a shop, and changing what was said of one. */
import type { Supplier } from '../../src/husbandry/orders/index.ts';
import { DAY_OPTIONS } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { CheckButtons, RadioButtons, weekdaysTicked } from '../partials/choices.tsx';
import { FieldGroup } from '../partials/field-group.tsx';
import { entryOf, Field, type FormEntry, type PageForms } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';
import { Arrives, Costs, Weather } from './supplier-form-more.tsx';

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

export type SupplierPartProps = SupplierFormProps & { readonly entry: FormEntry };

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

const KINDS = [
  { value: 'parcel', label: 'Sends parcels' },
  { value: 'shop', label: 'A shop I go to' },
];

const Who = ({ entry, supplier }: SupplierPartProps) => (
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

const When = ({ entry, supplier }: SupplierPartProps) => (
  <FieldGroup legend="When it comes">
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
  </FieldGroup>
);
