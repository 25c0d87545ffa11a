/** Bulk order: how many the box should hold; the question is a form of its own address, the answer stands above it. */
import type { Offer, Supplier } from '../../src/husbandry/orders/index.ts';
import { type LengthUnit, lengthRange, sentenceCase } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { Names } from '../names.ts';
import { Field, type FormEntry, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { BulkAnswerPart, type BulkShown } from './bulk-answer.tsx';
import { offerWords } from './bulk-words.ts';

export interface BulkProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly names: Names;
  /** What was asked, as typed: `offer` and `weeks`, sent by GET. */
  readonly entry: FormEntry;
  readonly suppliers: readonly Supplier[];
  readonly offers: readonly Offer[];
  /** Null until an offer is asked about. */
  readonly answer: BulkShown | null;
}

export const BulkPage = (props: BulkProps) => (
  <Layout shell={props.shell} title="Bulk order" here="more">
    <p class="eyebrow">
      <a href={paths.suppliers}>Suppliers</a> · Bulk order
    </p>
    {props.answer === null ? <Asking {...props} /> : <BulkAnswerPart shown={props.answer} />}
    {props.offers.length === 0 ? null : <Question {...props} />}
  </Layout>
);

const Asking = ({ entry, offers }: BulkProps) => (
  <header class="page-head">
    <h1>How many should the box hold?</h1>
    {Object.keys(entry.problems).length > 0 ? (
      <p class="problem" role="alert">
        Nothing is worked out yet. Put right what is marked below.
      </p>
    ) : (
      <p class="lede">
        More packs share the postage and reach the better price; but prey grows, outgrows and dies while it
        waits. This page finds the count at which each one that is really eaten costs least.
      </p>
    )}
    {offers.length > 0 ? null : (
      <p class="acts">
        Nothing on offer is written down yet.{' '}
        <a class="button" href={paths.suppliers}>
          Write down what they sell
        </a>
      </p>
    )}
  </header>
);

const Question = ({ entry, offers, suppliers, names, unit, answer }: BulkProps) => {
  const options = suppliers.flatMap(({ code, name }) =>
    offers
      .filter(({ supplier }) => supplier === code)
      .map((offer) => ({
        value: offer.code,
        label: `${sentenceCase(offerWords(offer, names))}, ${lengthRange(offer.fromMm, offer.toMm, unit)}: packs of ${offer.packHeads.toLocaleString('en-GB')}`,
        group: name,
      })),
  );
  return (
    <section class="bulk-question" aria-labelledby="bulk-question">
      <h2 id="bulk-question">{answer === null ? 'Of what?' : 'Ask it otherwise'}</h2>
      <form method="get" action={paths.bulk} class="form" id={entry.name}>
        <Select entry={entry} name="offer" label="Offer" options={options} />
        <Field
          entry={entry}
          name="weeks"
          label="Weeks looked ahead"
          hint="4 to 26: what is eaten within them counts."
        />
        <button type="submit">Work it out</button>
      </form>
      {answer === null ? null : (
        <p class="note">The question is in this page’s address: keep it, and it can be asked again.</p>
      )}
    </section>
  );
};
