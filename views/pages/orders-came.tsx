/** The form by which a whole box is taken in: each line as it came, and what nobody had ordered. */
import { civilDate } from '../../src/husbandry/calendar.ts';
import { QUARANTINE_CAUTION, STOCK_CAUTION } from '../cautions.ts';
import { counted, lengthRange } from '../format.ts';
import { preyName } from '../names.ts';
import { ActForm } from '../partials/act.tsx';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, Select } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import type { ComingLine, ComingOrder, OrdersProps } from './orders-shown.ts';

type CameProps = OrdersProps & { readonly order: ComingOrder };

const CHILLED_CAUTION =
  'Chilled insects look dead: leave the box in the warm for an hour before you count them. Take the dead out at once.';

/**
 * Form 'came-<order>' posts `day`, `at`, `warmed`, `apart`; for each line `alive-<code>` ('' = as on the label), `dead-`, `size-`,
 * `into-` ('' = as ordered, a bin's code, or 'new:' and a room's), `part-`, `share-`, `sampleHeads-`, `sampleMass-`,
 * `allMass-`; and `extraSize`, `extraAlive`, `extraDead`, `extraInto`.
 */
export const CameForm = (props: CameProps) => {
  const { order, shell, forms } = props;
  const entry = entryOf(forms, `came-${order.code}`);
  return (
    <ActForm
      entry={entry}
      action={paths.orderAct(order.code, 'came')}
      title="It came"
      button="Take it all in"
      open={order.day === shell.today}
      caution={cautionOf(props)}
    >
      <Field entry={entry} name="day" label="Came on" type="date" start={civilDate(shell.today)} required />
      <Field entry={entry} name="at" label="At" hint="Such as 14:30, to know until when you can claim." />
      {order.lines.map((line) => (
        <Line {...props} entry={entry} line={line} />
      ))}
      <Extra {...props} entry={entry} />
      <Ticks {...props} entry={entry} />
    </ActForm>
  );
};

/** New crickets above all may carry a virus. */
function cautionOf({ order, names }: CameProps): string {
  const crickets = order.lines.some(({ species }) => names.species.get(species)?.form === 'cricket');
  return [CHILLED_CAUTION, STOCK_CAUTION, ...(crickets ? [QUARANTINE_CAUTION] : [])].join(' ');
}

interface LineProps extends CameProps {
  readonly entry: FormEntry;
  readonly line: ComingLine;
}

const Line = ({ entry, line, names, unit, sizes, into }: LineProps) => {
  const { code, heads, species, fromMm, toMm } = line;
  return (
    <fieldset class="field-group order-line">
      <legend>
        {heads.toLocaleString('en-GB')} {preyName(names.species, species, heads)},{' '}
        {lengthRange(fromMm, toMm, unit)}
      </legend>
      <Field
        entry={entry}
        name={`alive-${code}`}
        label="Alive"
        type="number"
        min="0"
        hint="Counted. Empty: as on the label, with what this seller usually adds. 0: none came."
      />
      <Field entry={entry} name={`dead-${code}`} label="Dead" type="number" min="0" start="0" />
      <Estimated entry={entry} code={code} />
      <Select entry={entry} name={`size-${code}`} label="What came" none="As ordered" options={sizes} />
      <Select
        entry={entry}
        name={`into-${code}`}
        label="Goes into"
        none="The bin it was for"
        options={into}
      />
    </fieldset>
  );
};

/** For boxes nobody counts whole: a part of it, or the scales. */
const Estimated = ({ entry, code }: Pick<LineProps, 'entry'> & { readonly code: string }) => {
  const names = ['part', 'share', 'sampleHeads', 'sampleMass', 'allMass'].map((name) => `${name}-${code}`);
  const [part, share, sampleHeads, sampleMass, allMass] = names as [string, string, string, string, string];
  const used = names.some((name) => (entry.values[name] ?? '') !== '' || entry.problems[name] !== undefined);
  return (
    <details class="folded" open={used}>
      <summary>Counted in part, or weighed</summary>
      <Field entry={entry} name={part} label="Counted in a part" type="number" min="1" />
      <Field entry={entry} name={share} label="That part of the box, %" hint="Such as 25 for a quarter." />
      <Field entry={entry} name={sampleHeads} label="Heads of a sample" type="number" min="1" />
      <Field entry={entry} name={sampleMass} label="The sample weighs" hint="Such as 2.4 g." />
      <Field
        entry={entry}
        name={allMass}
        label="All weigh"
        hint="Without the box and the dead. Without a sample the Book’s weight of one head is taken."
      />
    </details>
  );
};

const Extra = ({ entry, sizes, into }: CameProps & { entry: FormEntry }) => {
  const used = ['extraSize', 'extraAlive'].some((name) => (entry.values[name] ?? '') !== '');
  const wrong = Object.keys(entry.problems).some((name) => name.startsWith('extra'));
  return (
    <details class="folded" open={used || wrong}>
      <summary>Something nobody had ordered was in it</summary>
      <Select entry={entry} name="extraSize" label="What" none="Nothing" options={sizes} />
      <Field entry={entry} name="extraAlive" label="Alive" type="number" min="0" />
      <Field entry={entry} name="extraDead" label="Dead" type="number" min="0" />
      <Select entry={entry} name="extraInto" label="Goes into" none="Choose" options={into} />
    </details>
  );
};

const Ticks = ({ entry, apartDays }: CameProps & { entry: FormEntry }) => (
  <p class="acts">
    <Toggle
      name="warmed"
      value="on"
      label="It had stood warm for an hour or more"
      checked={entry.values.warmed === 'on'}
    />
    <Toggle
      name="apart"
      value="on"
      label={`Keep its bins apart for ${counted(apartDays, 'day')}`}
      checked={entry.values.apart === 'on'}
    />
  </p>
);
