/** Adding what a supplier sells, and changing an offer: prey, size, pack, and the price of a pack with its breaks. */
import type { Offer } from '../../src/husbandry/orders/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { moneyTyped } from '../format/money.ts';
import { type LengthUnit, lengthText } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { FieldGroup } from '../partials/field-group.tsx';
import { entryOf, Field, type FormEntry, type Option, type PageForms, Select } from '../partials/form.tsx';
import { RecordForm } from '../partials/record-form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'offer' posts `species` (a new one), `size` (a trade size's value or ''), `called`, `from`, `to` (lengths as
 * typed), `packHeads`, `price`, `from2`, `price2` and so on, `mostPacks` to `paths.newOffer(supplier)` or
 * `paths.editOffer(code)`.
 */
export interface OfferFormProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly currency: string;
  readonly supplier: { readonly code: string; readonly name: string };
  /** null: a new one. */
  readonly offer: Offer | null;
  readonly species: readonly Option[];
  /** Trade sizes, grouped by species; of an offer that is here those of its species. */
  readonly sizes: readonly Option[];
  /** The trade size the offer is by its own words, as an option. */
  readonly size: string;
  readonly revision: number;
}

type PartProps = OfferFormProps & { readonly entry: FormEntry };

export const OfferFormPage = (props: OfferFormProps) => {
  const { offer, supplier, species } = props;
  const entry = entryOf(props.forms, 'offer');
  const prey = species.find(({ value }) => value === offer?.species)?.label ?? '';
  return (
    <RecordForm
      shell={props.shell}
      here="more"
      title={offer === null ? `What does ${supplier.name} sell?` : `${prey} from ${supplier.name}`}
      caution={STOCK_CAUTION}
      entry={entry}
      action={offer === null ? paths.newOffer(supplier.code) : paths.editOffer(offer.code)}
      revision={props.revision}
      button={offer === null ? 'Add it' : 'Save'}
    >
      <Size {...props} entry={entry} />
      <Pack {...props} entry={entry} />
    </RecordForm>
  );
};

/** A length shown only where it is not the chosen size's own. */
const Size = ({ entry, offer, species, sizes, size, unit }: PartProps) => {
  const lengthOf = (mm: number | undefined) => (mm === undefined ? '' : lengthText(mm, unit));
  return (
    <>
      {offer === null ? (
        <Select entry={entry} name="species" label="Prey" options={species} none="Choose the prey" />
      ) : null}
      <Select
        entry={entry}
        name="size"
        label="Size"
        options={sizes}
        start={size}
        none="Another: say its lengths below"
        hint="As the trade calls it; its lengths are taken from there."
      />
      <Field
        entry={entry}
        name="called"
        label="They call it"
        start={offer?.size}
        hint="Empty: as the size above."
      />
      <div class="pairs-of">
        <Field
          entry={entry}
          name="from"
          label="Shortest"
          start={size === '' ? lengthOf(offer?.fromMm) : ''}
        />
        <Field entry={entry} name="to" label="Longest" start={size === '' ? lengthOf(offer?.toMm) : ''} />
      </div>
      <p class="note">
        Body lengths, such as 9 mm or 3/8 in; only where they are not those of the size above.
      </p>
    </>
  );
};

const ROWS = 4;

const Pack = ({ entry, offer, currency }: PartProps) => {
  const prices = offer?.prices ?? [];
  const more = Array.from({ length: Math.max(ROWS, prices.length) - 1 }, (_, at) => at + 2);
  return (
    <>
      <Field
        entry={entry}
        name="packHeads"
        label="Heads in a pack"
        type="number"
        start={`${offer?.packHeads ?? ''}`}
        required
      />
      <Field
        entry={entry}
        name="price"
        label={`A pack costs, in ${currency}`}
        start={prices[0] === undefined ? '' : moneyTyped(prices[0].packCents)}
        hint="Such as 6 or 6.50."
      />
      <FieldGroup legend="Cheaper by the number">
        <p class="note">
          From so many packs on, every pack of the order costs this. Leave empty what there is not.
        </p>
        {more.map((row) => (
          <Break entry={entry} row={row} price={prices[row - 1]} />
        ))}
      </FieldGroup>
      <Field
        entry={entry}
        name="mostPacks"
        label="Packs to be had at once"
        start={`${offer?.mostPacks ?? ''}`}
        hint="Empty: as many as you like."
      />
    </>
  );
};

interface BreakProps {
  readonly entry: FormEntry;
  readonly row: number;
  readonly price: Offer['prices'][number] | undefined;
}

const Break = ({ entry, row, price }: BreakProps) => (
  <div class="pairs-of">
    <Field
      entry={entry}
      name={`from${row}`}
      label={`Price ${row}: from packs`}
      start={price === undefined ? '' : `${price.fromPacks}`}
    />
    <Field
      entry={entry}
      name={`price${row}`}
      label={`Price ${row}: a pack`}
      start={price === undefined ? '' : moneyTyped(price.packCents)}
    />
  </div>
);
