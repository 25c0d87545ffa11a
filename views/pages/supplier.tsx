/** One supplier: the next parcels, what is offered at which price, how they send, their holidays. */
import type { Offer, Supplier } from '../../src/husbandry/orders/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { type LengthUnit, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, preyName } from '../names.ts';
import { entryOf, type PageForms, PostForm } from '../partials/form.tsx';
import { Offers } from '../partials/offers.tsx';
import { paths } from '../paths.ts';
import { afterThatWords, type Chances, nextWords } from '../supplier-words.ts';
import { Holidays, How, NextParcels } from './supplier-facts.tsx';

/**
 * Forms: 'holiday' and 'holiday-<from>-<to>' post `from`, `to` to `paths.supplierAct(code, 'holidays' or
 * 'holidays/remove')`; 'close' posts nothing more; 'end-<offer>' posts nothing more to `paths.closeOffer(offer)`.
 */
export interface SupplierProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly unit: LengthUnit;
  readonly names: Names;
  readonly currency: string;
  readonly supplier: Supplier & { readonly claimHours: number | null; readonly notes: string };
  readonly offers: readonly Offer[];
  readonly chances: Chances;
  /** Weekdays on which a parcel can come here, Monday first. */
  readonly deliveryWeekdays: readonly boolean[];
  readonly sizes: ReadonlyMap<string, Pick<PreySpecies, 'sizeClasses'>>;
  /** What matters with the prey on offer, each with the species it is of. */
  readonly cautions: readonly { readonly species: string; readonly text: string }[];
}

export const SupplierPage = (props: SupplierProps) => {
  const { supplier, chances, shell } = props;
  return (
    <Layout shell={shell} title={supplier.name} here="more">
      <header class="page-head">
        <p class="eyebrow">
          <a href={paths.suppliers}>Suppliers</a>
        </p>
        <h1>
          {supplier.name}: {nextWords(supplier, chances, shell.today)}
        </h1>
        <p>{afterThatWords(supplier, chances, shell.today)}</p>
        <p class="acts">
          <a class="button" href={paths.newOffer(supplier.code)}>
            Add an offer
          </a>
          <a class="button quiet" href={paths.editSupplier(supplier.code)}>
            Change {supplier.name}
          </a>
        </p>
        <Cautions {...props} />
      </header>
      <OnOffer {...props} />
      <div class="facts">
        <How {...props} />
        <NextParcels {...props} />
        <Holidays {...props} />
      </div>
      <PostForm
        entry={entryOf(props.forms, 'close')}
        action={paths.supplierAct(supplier.code, 'close')}
        class="form supplier-end"
      >
        <button type="submit" class="quiet">
          No longer buy from {supplier.name}
        </button>
      </PostForm>
    </Layout>
  );
};

const Cautions = ({ cautions, names }: SupplierProps) => (
  <>
    <p class="caution">{STOCK_CAUTION}</p>
    {cautions.map(({ species, text }) => (
      <p class="caution">
        <a href={paths.prey(species)}>{sentenceCase(preyName(names.species, species))}</a>: {text}
      </p>
    ))}
  </>
);

const OnOffer = (props: SupplierProps) => {
  const { offers, forms, names } = props;
  return (
    <section aria-labelledby="offers-head">
      <h2 id="offers-head">{offers.length === 0 ? 'Nothing on offer yet' : 'What they sell'}</h2>
      {offers.length === 0 ? null : (
        <>
          <Offers {...props} />
          <details class="act-form">
            <summary>Something is no longer to be had</summary>
            <ul class="lines">
              {offers.map(({ code, species, size, packHeads }) => {
                const words = `${packHeads.toLocaleString('en-GB')} ${preyName(names.species, species)}${size === '' ? '' : `, ${size}`}`;
                return (
                  <li>
                    {words}
                    <PostForm
                      entry={entryOf(forms, `end-${code}`)}
                      action={paths.closeOffer(code)}
                      class="inline"
                    >
                      <button type="submit" class="quiet small">
                        No longer sold<span class="unseen">: {words}</span>
                      </button>
                    </PostForm>
                  </li>
                );
              })}
            </ul>
          </details>
        </>
      )}
    </section>
  );
};
