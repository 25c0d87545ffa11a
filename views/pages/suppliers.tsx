/** Suppliers: who can send what, and by when to order for the next parcel. */
import type { Offer, Supplier } from '../../src/husbandry/orders/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { type LengthUnit, listed, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, preyName } from '../names.ts';
import { Offers } from '../partials/offers.tsx';
import { paths } from '../paths.ts';
import { afterThatWords, type Chances, heldWords, nextWords, sendsWords } from '../supplier-words.ts';

export interface SupplierView {
  readonly supplier: Supplier;
  readonly offers: readonly Offer[];
  readonly chances: Chances;
}

export interface SuppliersProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly names: Names;
  readonly currency: string;
  readonly suppliers: readonly SupplierView[];
  /** The sizes the trade sells, by species. */
  readonly sizes: ReadonlyMap<string, Pick<PreySpecies, 'sizeClasses'>>;
}

export const SuppliersPage = (props: SuppliersProps) => (
  <Layout shell={props.shell} title="Suppliers" here="more">
    <header class="page-head">
      <h1>{headline(props)}</h1>
      {props.suppliers.length === 0 ? (
        <p class="lede">
          Write down who you buy prey from, when they send, and what a pack costs. Orders and the plan then
          know by when to order, when it comes and what one head costs you.
        </p>
      ) : null}
      <p class="acts">
        <a class="button" href={paths.newSupplier}>
          Add a supplier or a shop
        </a>
        <a class="button quiet" href={`${paths.larder}#deliveries`}>
          Deliveries
        </a>
        {props.suppliers.some(({ offers }) => offers.length > 0) ? (
          <a class="button quiet" href={paths.bulk}>
            How many to order
          </a>
        ) : null}
      </p>
      <p class="caution">{STOCK_CAUTION}</p>
    </header>
    {props.suppliers.map((view) => (
      <OneSupplier {...props} view={view} />
    ))}
  </Layout>
);

/** By the parcel that comes first of those who have something to sell; else by the shop that is open first. */
function headline({ suppliers, shell: { today } }: SuppliersProps): string {
  if (suppliers.length === 0) return 'Nobody sells you prey yet';
  const soonest = (kind: Supplier['kind'], sells: boolean) =>
    suppliers
      .filter(({ supplier, offers }) => supplier.kind === kind && offers.length > 0 === sells)
      .filter(({ chances }) => chances.next.length > 0)
      .toSorted((a, b) => a.chances.next[0]!.comes - b.chances.next[0]!.comes)[0];
  const first =
    soonest('parcel', true) ?? soonest('parcel', false) ?? soonest('shop', true) ?? soonest('shop', false);
  if (first === undefined) return 'Nobody sends anything in the coming weeks';
  const { supplier, chances } = first;
  const words = nextWords(supplier, chances, today);
  return supplier.kind === 'shop'
    ? `${supplier.name}: ${words}`
    : sentenceCase(words.replace('order ', `order from ${supplier.name} `));
}

const OneSupplier = (props: SuppliersProps & { view: SupplierView }) => {
  const { view, shell, unit, names, currency, sizes } = props;
  const { supplier, chances, offers } = view;
  const id = `supplier-${supplier.code}`;
  const prey = [...new Set(offers.map(({ species }) => species))];
  const sold = listed(prey.map((code) => preyName(names.species, code)));
  return (
    <section aria-labelledby={id} class="supplier">
      <h2 id={id}>
        <a href={paths.supplier(supplier.code)}>{supplier.name}</a>
      </h2>
      <p>
        <strong>
          {sentenceCase(nextWords(supplier, chances, shell.today))}
          {sold === '' ? '' : `: ${sold}`}.
        </strong>{' '}
        {afterThatWords(supplier, chances, shell.today)} {heldWords(chances)}
      </p>
      <p class="note">{sendsWords(supplier)}</p>
      {offers.length === 0 ? (
        <p>
          Nothing on offer is written down. <a href={paths.newOffer(supplier.code)}>Add what they sell</a>.
        </p>
      ) : (
        <Offers offers={offers} unit={unit} names={names} currency={currency} sizes={sizes} />
      )}
    </section>
  );
};
