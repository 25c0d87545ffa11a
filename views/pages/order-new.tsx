/** A new order: from whom, which parcel, how many packs of what, and where each goes. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { type Dispatch, type Offer, packCents, type Supplier } from '../../src/husbandry/orders/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { money } from '../format/money.ts';
import { type LengthUnit, lengthRange, sentenceCase, shortDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, preyName } from '../names.ts';
import {
  entryOf,
  Field,
  type FormEntry,
  type Option,
  type PageForms,
  PostForm,
  Select,
} from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { postageWords } from '../supplier-words.ts';
import { OrderTotalPart } from './order-total.tsx';

/** An offer, with the bins of its species and the rooms of a new one. */
export interface OfferShown extends Offer {
  readonly into: readonly Option[];
  /** Which of them the form proposes. */
  readonly proposed: string;
}

/**
 * Form 'order' posts `supplier`, `sentDay`, `placedDay`, and for each offer `packs-<code>` ('' = none) and `into-<code>`
 * (a bin's code, or 'new:' and a room's) to `paths.newOrder`.
 */
export interface NewOrderProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly names: Names;
  readonly currency: string;
  readonly suppliers: readonly Supplier[];
  /** Who it is ordered from; null until one is chosen. */
  readonly chosen: {
    readonly supplier: Supplier;
    readonly offers: readonly OfferShown[];
    /** Parcels that can be had, those of the last days among them for orders written down later. */
    readonly parcels: readonly Dispatch[];
  } | null;
}

export const NewOrderPage = (props: NewOrderProps) => (
  <Layout shell={props.shell} title="New order" here="more">
    <header class="page-head">
      <p class="eyebrow">
        <a href={paths.orders}>Orders</a>
      </p>
      <h1>
        {props.chosen === null ? 'Whom do you order from?' : `Order from ${props.chosen.supplier.name}`}
      </h1>
    </header>
    {props.chosen === null ? <Choice {...props} /> : <OrderForm {...props} chosen={props.chosen} />}
  </Layout>
);

const Choice = ({ suppliers }: NewOrderProps) => (
  <>
    {suppliers.length === 0 ? (
      <p class="lede">
        Nobody sells you prey yet. <a href={paths.newSupplier}>Add who you buy from</a> first.
      </p>
    ) : null}
    <ul class="doors">
      {suppliers.map(({ code, name, kind }) => (
        <li>
          <a href={paths.newOrderFrom(code)}>{name}</a>
          <small>{kind === 'shop' ? 'A shop you go to.' : 'Sends parcels.'}</small>
        </li>
      ))}
    </ul>
  </>
);

type Chosen = NonNullable<NewOrderProps['chosen']>;

const OrderForm = (props: NewOrderProps & { chosen: Chosen }) => {
  const { chosen, forms, shell } = props;
  const { supplier, offers, parcels } = chosen;
  const entry = entryOf(forms, 'order');
  if (offers.length === 0)
    return (
      <p class="lede">
        Nothing {supplier.name} offers is written down. <a href={paths.newOffer(supplier.code)}>Add it</a>{' '}
        first.
      </p>
    );
  return (
    <PostForm entry={entry} action={paths.newOrder}>
      <p class="caution">{STOCK_CAUTION}</p>
      <p>{postageWords(supplier, props.currency)}</p>
      <input type="hidden" name="supplier" value={supplier.code} />
      <Field
        entry={entry}
        name="placedDay"
        label="Ordered on"
        type="date"
        start={civilDate(shell.today)}
        required
      />
      <Select
        entry={entry}
        name="sentDay"
        label={supplier.kind === 'shop' ? 'Fetched on' : 'Parcel'}
        options={parcels.map((parcel) => parcelOption(supplier, parcel))}
        start={nextOf(parcels, supplier, shell.today)}
      />
      {offers.map((offer) => (
        <OfferLine {...props} entry={entry} offer={offer} />
      ))}
      <OrderTotalPart begun={Object.keys(entry.values).length > 0} />
      <button type="submit">Write it down</button>
    </PostForm>
  );
};

/** The first that can still be ordered. */
const nextOf = (
  parcels: readonly Dispatch[],
  { tooLateOn }: Supplier,
  today: DayNumber,
): string | undefined => {
  const next = parcels.find(({ orderBy }) => orderBy >= today && orderBy !== tooLateOn);
  return next === undefined ? undefined : civilDate(next.sent);
};

/** 'Here on Wed 9 Oct: order by Sun 6 Oct, 12:00'. */
function parcelOption({ kind, cutOffTime }: Supplier, { sent, comes, orderBy }: Dispatch): Option {
  const value = civilDate(sent);
  if (kind === 'shop') return { value, label: shortDay(sent) };
  const by = `${shortDay(orderBy)}${cutOffTime === null ? '' : `, ${cutOffTime}`}`;
  return { value, label: `Here on ${shortDay(comes)}: order by ${by}` };
}

interface OfferProps extends NewOrderProps {
  readonly entry: FormEntry;
  readonly offer: OfferShown;
}

const OfferLine = ({ entry, offer, names, unit, currency }: OfferProps) => {
  const { code, species, size, fromMm, toMm, packHeads, mostPacks } = offer;
  const most = mostPacks === null ? '' : ` At most ${mostPacks}.`;
  return (
    <fieldset class="field-group order-line">
      <legend>
        {sentenceCase(preyName(names.species, species))}
        {size === '' ? '' : `, ${size}`}, {lengthRange(fromMm, toMm, unit)}
      </legend>
      <Field
        entry={entry}
        name={`packs-${code}`}
        label={`Packs of ${packHeads.toLocaleString('en-GB')}`}
        type="number"
        min="0"
        hint={`${priceWords(offer, currency)}.${most}`}
      />
      <Select
        entry={entry}
        name={`into-${code}`}
        label="Goes into"
        options={offer.into}
        start={offer.proposed}
      />
    </fieldset>
  );
};

/** '€6.00 a pack, €5.00 from 3'. */
function priceWords(offer: Offer, currency: string): string {
  const [first, ...breaks] = offer.prices;
  const cents = packCents(offer, first?.fromPacks ?? 1);
  const then = breaks.map(({ fromPacks, packCents: each }) => `${money(each, currency)} from ${fromPacks}`);
  return [`${money(cents, currency)} a pack`, ...then].join(', ');
}
