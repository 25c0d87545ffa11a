/** Deliveries on their way: "it came" with what was alive, dead or of another size; and a new one to expect. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Bin, ExpectedDelivery } from '../../src/husbandry/larder/index.ts';
import { STOCK_CAUTION } from '../cautions.ts';
import { type LengthUnit, lengthRange, sentenceCase, shortDay } from '../format.ts';
import type { Shell } from '../layout.tsx';
import { type Names, nameOf, preyName } from '../names.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field, type Option, type PageForms, PostForm, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';

/**
 * Form 'came-<code>' posts `day`, `alive`, `dead`, `size` ('' = as ordered, else a trade size's value) to
 * `paths.arrived(code)`; 'cancel-<code>' posts nothing more to `paths.cancelDelivery(code)`; 'delivery' posts
 * `heads`, `size`, `bin` ('' = the one that fits the size), `day` to `paths.newDelivery`.
 */
interface DeliveriesProps {
  readonly shell: Shell;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly names: Names;
  readonly bins: readonly Bin[];
  readonly deliveries: readonly ExpectedDelivery[];
  readonly sizeClasses: ReadonlyMap<string, readonly Option[]>;
}

export const Deliveries = (props: DeliveriesProps) => (
  <section id="deliveries" aria-labelledby="deliveries-head">
    <h2 id="deliveries-head">{props.deliveries.length === 0 ? 'No delivery is expected' : 'On its way'}</h2>
    <ul class="deliveries">
      {props.deliveries.map((delivery) =>
        delivery.order === undefined ? (
          <OnItsWay {...props} delivery={delivery} />
        ) : (
          <InAnOrder {...props} delivery={delivery} />
        ),
      )}
    </ul>
    <p>
      <a href={paths.orders}>Orders</a>, and{' '}
      <a href={paths.suppliers}>who sends what, and by when to order</a>.
    </p>
    {props.bins.length === 0 ? <p>Add the bin it will go into first.</p> : <NewDelivery {...props} />}
  </section>
);

const OnItsWay = (props: DeliveriesProps & { delivery: ExpectedDelivery }) => {
  const { delivery, names, unit, shell, forms, sizeClasses } = props;
  const { code, lot, day } = delivery;
  const entry = entryOf(forms, `came-${code}`);
  const words = `${lot.heads} ${preyName(names.species, delivery.species)}`;
  return (
    <li>
      <p>
        <strong>{day < shell.today ? `Overdue since ${shortDay(day)}` : shortDay(day)}</strong>: {words},{' '}
        {lengthRange(lot.fromMm, lot.toMm, unit)}, for {nameOf(names.bins, delivery.bin)}
      </p>
      <ActForm
        entry={entry}
        action={paths.arrived(code)}
        title="It came"
        button="Put it in"
        open={day <= shell.today}
        caution={STOCK_CAUTION}
      >
        <Field entry={entry} name="day" label="Came on" type="date" start={civilDate(shell.today)} required />
        <Field
          entry={entry}
          name="alive"
          label="Alive"
          type="number"
          min="0"
          start={`${lot.heads}`}
          required
        />
        <Field entry={entry} name="dead" label="Dead on arrival" type="number" min="0" start="0" />
        <Select
          entry={entry}
          name="size"
          label="Size"
          none="As ordered"
          options={sizeClasses.get(delivery.species) ?? []}
        />
      </ActForm>
      <PostForm entry={entryOf(forms, `cancel-${code}`)} action={paths.cancelDelivery(code)} class="inline">
        <button type="submit" class="quiet small">
          It is not coming<span class="unseen">: {words}</span>
        </button>
      </PostForm>
    </li>
  );
};

/** What is part of an order is seen to with the whole box. */
const InAnOrder = ({ delivery, names, unit, shell }: DeliveriesProps & { delivery: ExpectedDelivery }) => (
  <li>
    <p>
      <strong>
        {delivery.day < shell.today ? `Overdue since ${shortDay(delivery.day)}` : shortDay(delivery.day)}
      </strong>
      : {delivery.lot.heads} {preyName(names.species, delivery.species)},{' '}
      {lengthRange(delivery.lot.fromMm, delivery.lot.toMm, unit)}, for {nameOf(names.bins, delivery.bin)}.{' '}
      <a href={paths.orders}>See to the order</a>
    </p>
  </li>
);

/** Every trade size of the species that have bins here, grouped by species. */
const allSizes = ({ bins, names, sizeClasses }: DeliveriesProps): Option[] =>
  [...new Set(bins.map(({ species }) => species))].flatMap((species) =>
    (sizeClasses.get(species) ?? []).map((option) => ({
      ...option,
      group: sentenceCase(preyName(names.species, species)),
    })),
  );

const NEAREST = 'The bin of prey nearest in size';

const NewDelivery = (props: DeliveriesProps) => {
  const entry = entryOf(props.forms, 'delivery');
  const bins = props.bins.map(({ code, name }) => ({ value: code, label: name }));
  return (
    <ActForm entry={entry} action={paths.newDelivery} title="Expect a delivery" button="Expect it">
      <Field entry={entry} name="heads" label="How many" type="number" min="1" required />
      <Select entry={entry} name="size" label="Size" options={allSizes(props)} />
      <Select entry={entry} name="bin" label="Goes into" none={NEAREST} options={bins} />
      <Field entry={entry} name="day" label="Comes on" type="date" required />
    </ActForm>
  );
};
