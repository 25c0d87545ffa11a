/** What a supplier's parcels cost, what weather holds them back, and what arrives of them: the later part of their form. */
import { inPercent } from '../../src/husbandry/units.ts';
import { moneyTyped } from '../format/money.ts';
import { FieldGroup } from '../partials/field-group.tsx';
import { Field } from '../partials/form.tsx';
import type { SupplierPartProps } from './supplier-form.tsx';

const sum = (cents: number | null | undefined): string =>
  cents == null || cents === 0 ? '' : moneyTyped(cents);

export const Costs = ({ entry, supplier, currency }: SupplierPartProps) => (
  <FieldGroup legend={`What a parcel costs, in ${currency}`}>
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
  </FieldGroup>
);

const outside = (tempC: number | null | undefined): string =>
  tempC == null ? '' : `${Math.round(tempC * TENTHS) / TENTHS} C`;
const TENTHS = 10;

export const Weather = ({ entry, supplier }: SupplierPartProps) => (
  <FieldGroup legend="Weather that holds parcels back">
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
  </FieldGroup>
);

const share = (of: number | null | undefined): string => (of == null ? '' : `${inPercent(of)}`);

export const Arrives = ({ entry, supplier }: SupplierPartProps) => (
  <FieldGroup legend="What arrives">
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
  </FieldGroup>
);
