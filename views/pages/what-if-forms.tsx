/** Composing what is supposed: a short form for each kind of thing, alone beside the others or together with one of them. */
import type { Child } from 'hono/jsx';
import { Field, type FormEntry, type Option, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { whatIfQuery } from '../plan-address.ts';
import type { WhatIfProps } from './what-if.tsx';

/** What can be supposed, as it is called in an address. */
export const SUPPOSABLE = ['warmer', 'away', 'sac', 'sell', 'stops', 'dies', 'price', 'weather'] as const;
export type Supposable = (typeof SUPPOSABLE)[number];

/** Columns side by side at once. */
export const MOST_IFS = 3;

/** What was typed into one of the forms and refused; null where none was. */
export interface Supposing {
  readonly what: Supposable | null;
  readonly values: FormEntry['values'];
  readonly problems: FormEntry['problems'];
}

const TITLES: Readonly<Record<Supposable, string>> = {
  warmer: 'It is warmer or colder indoors',
  away: 'You go away',
  sac: 'A sac hatches',
  sell: 'You sell some',
  stops: 'A supplier stops',
  dies: 'A bin or colony dies out',
  price: 'A price changes',
  weather: 'A cold or hot spell holds parcels back',
};

/** Each form asks this page by GET, with `add` and the fields of what it supposes. */
export const WhatIfForms = (props: WhatIfProps) => {
  const offered = SUPPOSABLE.filter((what) => hasChoices(what, props));
  return (
    <section class="what-if-forms" aria-labelledby="suppose">
      <h2 id="suppose">{props.shown.asked.ifs.length === 0 ? 'Suppose that …' : 'And if …'}</h2>
      {offered.map((what) => (
        <SupposeForm what={what} {...props} />
      ))}
    </section>
  );
};

/** A supplier can stop only where there is one. */
function hasChoices(what: Supposable, { choices }: WhatIfProps): boolean {
  const needs: Partial<Record<Supposable, readonly Option[]>> = {
    stops: choices.suppliers,
    weather: choices.suppliers,
    dies: choices.bins,
    price: choices.offers,
  };
  return needs[what] === undefined || needs[what].length > 0;
}

type FormProps = WhatIfProps & { readonly what: Supposable };

const SupposeForm = (props: FormProps) => {
  const { what, supposing, shown } = props;
  const typed = supposing.what === what;
  const entry: FormEntry = {
    name: `if-${what}`,
    formId: '',
    values: typed ? supposing.values : {},
    problems: typed ? supposing.problems : {},
  };
  return (
    <details class="act-form" open={typed}>
      <summary>{TITLES[what]}</summary>
      <form method="get" action={paths.whatIf} class="form" id={entry.name}>
        {[...new URLSearchParams(whatIfQuery(shown.asked))].map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        <input type="hidden" name="add" value={what} />
        <SupposeFields entry={entry} {...props} />
        <Beside entry={entry} {...props} />
        <button type="submit">What then?</button>
      </form>
    </details>
  );
};

type FieldsProps = FormProps & { readonly entry: FormEntry };

/** Alone, or together with what is supposed already. */
const Beside = ({ entry, shown }: FieldsProps) => {
  if (shown.besides.length === 0) return null;
  const together = shown.besides.map(({ words }, i) => ({ value: `${i}`, label: `Together with: ${words}` }));
  const isFull = shown.besides.length >= MOST_IFS;
  return (
    <Select
      entry={entry}
      name="with"
      label="Compare it"
      options={together}
      {...(isFull ? {} : { none: 'Alone, beside the others' })}
    />
  );
};

const SupposeFields = (props: FieldsProps): Child => {
  const { entry, choices } = props;
  switch (props.what) {
    case 'warmer':
      return (
        <Field
          entry={entry}
          name="degrees"
          label="Degrees warmer"
          hint="In degrees Celsius, in every room. Below 0 is colder."
          start="2"
          required
        />
      );
    case 'away':
      return <FromTo entry={entry} from="First day away" to="Last day away" />;
    case 'sac':
      return (
        <Young entry={entry} kinds={choices.kinds} name="young" label="Young" day="Day of the first feed" />
      );
    case 'sell':
      return <Young entry={entry} kinds={choices.kinds} name="heads" label="Animals" day="Day they go" />;
    case 'stops':
      return <Select entry={entry} name="supplier" label="Supplier" options={choices.suppliers} />;
    case 'dies':
      return <Select entry={entry} name="bin" label="Bin, colony or cup" options={choices.bins} />;
    case 'price':
      return <PriceFields entry={entry} offers={choices.offers} />;
    case 'weather':
      return (
        <>
          <FromTo entry={entry} from="First day" to="Last day" />
          <Field entry={entry} name="temp" label="Degrees Celsius outside" start="-5" required />
        </>
      );
  }
};

const FromTo = ({ entry, from, to }: { entry: FormEntry; from: string; to: string }) => (
  <>
    <Field entry={entry} name="from" label={from} type="date" required />
    <Field entry={entry} name="to" label={to} type="date" required />
  </>
);

interface YoungProps {
  readonly entry: FormEntry;
  readonly kinds: readonly Option[];
  readonly name: string;
  readonly label: string;
  readonly day: string;
}

const Young = ({ entry, kinds, name, label, day }: YoungProps) => (
  <>
    <Select entry={entry} name="kind" label="Kind" options={kinds} />
    <Field entry={entry} name={name} label={label} type="number" min="1" required />
    <Field entry={entry} name="day" label={day} type="date" required />
  </>
);

const PriceFields = ({ entry, offers }: { entry: FormEntry; offers: readonly Option[] }) => (
  <>
    <Select entry={entry} name="offer" label="Offer" options={offers} />
    <Field entry={entry} name="percent" label="Dearer by, %" hint="Below 0 is cheaper." start="20" required />
  </>
);
