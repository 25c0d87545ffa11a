/** One order on its way: what is in it, when it comes and what it costs; and what can be said of it. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { money } from '../format/money.ts';
import { casesIn, lengthRange, longDay, shortDay } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { daysLate } from '../order-words.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { CameForm } from './orders-came.tsx';
import type { ComingLine, ComingOrder, FirstOut, OrdersProps } from './orders-shown.ts';

type OrderProps = OrdersProps & { readonly order: ComingOrder };

export const OnItsWay = (props: OrderProps) => {
  const { order, shell, forms, currency } = props;
  const { code, from, day, lines } = order;
  return (
    <li id={`order-${code}`}>
      <h3>
        {from}, {day < shell.today ? `overdue since ${longDay(day)}` : longDay(day)}
      </h3>
      <p class="note">
        {whenWords(order, shell.today)} {costWords(order, currency)}
      </p>
      <ul>
        {lines.map((line) => (
          <li>{lineWords(line, props)}</li>
        ))}
      </ul>
      {day < shell.today || day > order.dueDay ? <Held {...props} /> : null}
      <CameForm {...props} />
      <ActForm
        entry={entryOf(forms, `late-${code}`)}
        action={paths.orderAct(code, 'late')}
        title="It is late"
        button="Expect it then"
      >
        <Field
          entry={entryOf(forms, `late-${code}`)}
          name="day"
          label="Comes now on"
          type="date"
          start={civilDate(Math.max(day, shell.today) + 1)}
          required
        />
      </ActForm>
      <PostForm
        entry={entryOf(forms, `cancelled-${code}`)}
        action={paths.orderAct(code, 'cancelled')}
        class="inline"
      >
        <button type="submit" class="quiet small">
          It is not coming<span class="unseen">: the order from {from}</span>
        </button>
      </PostForm>
    </li>
  );
};

/** 'Leaves Mon 7 Oct.', 'Sent Mon 7 Oct. It was due on Wed 9 Oct: a day late.' */
function whenWords({ kind, sentDay, dueDay, day }: ComingOrder, today: DayNumber): string {
  const leaves = sentDay < today ? 'Sent' : 'Leaves';
  const sent = `${kind === 'shop' ? 'To be fetched' : leaves} ${shortDay(sentDay)}.`;
  return day > dueDay ? `${sent} It was due on ${shortDay(dueDay)}: ${daysLate(day - dueDay)}.` : sent;
}

function costWords({ lines, postageCents }: ComingOrder, currency: string): string {
  const goods = lines.reduce((sum, { cents }) => sum + (cents ?? 0), 0);
  const postage = postageCents === 0 ? 'no postage' : `${money(postageCents, currency)} of it postage`;
  return `${money(goods + postageCents, currency)}, ${postage}.`;
}

const lineWords = (
  { heads, species, fromMm, toMm, bin, packs, cents }: ComingLine,
  { names, unit, currency }: Pick<OrdersProps, 'names' | 'unit' | 'currency'>,
): string =>
  [
    `${heads.toLocaleString('en-GB')} ${preyName(names.species, species, heads)}`,
    lengthRange(fromMm, toMm, unit),
    `for ${nameOf(names.bins, bin)}`,
    ...(packs === null || cents === null
      ? []
      : [`${packs} ${packs === 1 ? 'pack' : 'packs'}, ${money(cents, currency)}`]),
  ].join(', ');

/** What the delay means: who runs out first, as Sunday's check has it. */
const Held = ({ firstOut, unit, order, shell }: OrderProps) => (
  <p class="look">
    {order.day < shell.today ? 'The check takes it to come any day now. ' : ''}
    {firstOut === null ? 'Nobody runs out before it is here.' : outWords(firstOut, unit)}{' '}
    <a href={paths.sunday}>Sunday’s check</a>
  </p>
);

const outWords = ({ name, fromMm, toMm, day, chance }: FirstOut, unit: OrdersProps['unit']): string =>
  `First to run out are the ${name} that take ${lengthRange(fromMm, toMm, unit)}, about ${shortDay(day)}, in ${casesIn(chance)}.`;
