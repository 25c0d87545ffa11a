/** A box that was not as ordered: who cannot wait, what they take instead, whether to order again today; and its dead looked at again. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Again } from '../../src/husbandry/orders/index.ts';
import type { BoxAnswer, ShortGroup } from '../../src/husbandry/supply/index.ts';
import { HOURS_PER_DAY } from '../../src/husbandry/units.ts';
import { casesIn, counted, lengthRange, longDay, sentenceCase, shortDay } from '../format.ts';
import { nameOf } from '../names.ts';
import { ActForm } from '../partials/act.tsx';
import { entryOf, Field } from '../partials/form.tsx';
import { insteadWords } from '../partials/instead-words.ts';
import { paths } from '../paths.ts';
import type { BoxShown, DeadLine, OrdersProps } from './orders-shown.ts';

type BoxProps = Pick<OrdersProps, 'forms' | 'names' | 'unit' | 'shell'> & { readonly box: BoxShown };

export const BoxPart = (props: BoxProps) => {
  const { box, shell } = props;
  return (
    <section
      class="after-crash"
      id={`box-${box.order}`}
      aria-labelledby={`box-${box.order}-head`}
      aria-live="polite"
      {...soon(box)}
    >
      <h2 id={`box-${box.order}-head`}>{findingOf(box)}</h2>
      {box.claim === null ? null : <p class="look">{claimWords(box.claim, box.from, shell.today)}</p>}
      {box.dead.map((line) => (
        <LookAgain {...props} line={line} />
      ))}
      {box.answer === null ? (
        <a class="button quiet" href={paths.ordersWhole(box.order)}>
          Wait for it
        </a>
      ) : (
        <CannotWait {...props} answer={box.answer} />
      )}
    </section>
  );
};

/** What is not worked out yet is asked for once the page is there. */
const soon = ({ order, answer }: BoxShown) =>
  answer === null
    ? { 'data-hx-get': paths.boxAnswer(order), 'data-hx-trigger': 'load', 'data-hx-swap': 'outerHTML' }
    : {};

function findingOf({ from, came, answer }: BoxShown): string {
  const box = `The box from ${from} on ${shortDay(came)}`;
  if (answer === null) return `${box} was not as ordered: who cannot wait is being worked out …`;
  const [first] = answer.short;
  return first === undefined
    ? `${box} was not as ordered, but everybody can wait`
    : `${box} fell short: the ${first.name} cannot wait`;
}

type Claim = NonNullable<BoxShown['claim']>;

const claimWords = (claim: Claim, from: string, today: DayNumber): string =>
  `${from} wants to hear of the dead ${untilWords(claim, today)}. Take a picture of them.`;

/** 'by 14:30 today', 'within 24 hours: by the hour at which the box came, today'. */
function untilWords({ day, time, hours }: Claim, today: DayNumber): string {
  const when = day === today ? 'today' : `on ${longDay(day)}`;
  if (time !== null) return `by ${time} ${when}`;
  const within = `within ${counted(hours, 'hour')}`;
  return hours % HOURS_PER_DAY === 0
    ? `${within}: ${when}, by the hour of the day at which the box came`
    : `${within} of the box coming, which may end ${when}`;
}

const LookAgain = ({ line, forms, names }: BoxProps & { line: DeadLine }) => {
  const entry = entryOf(forms, `again-${line.delivery}`);
  const bin = nameOf(names.bins, line.bin);
  return (
    <ActForm
      entry={entry}
      action={paths.lookAgain(line.delivery)}
      title={`${sentenceCase(counted(line.dead, 'seemed', 'seemed'))} dead for ${bin}: look again`}
      button="That many are dead"
      open={line.cold}
      caution="Chilled insects look dead. An hour in the warm shows who lives; take out at once who does not."
    >
      <Field entry={entry} name="dead" label="Dead after all" type="number" min="0" required />
    </ActForm>
  );
};

const CannotWait = (props: BoxProps & { answer: BoxAnswer }) => {
  const { answer, box } = props;
  if (answer.short.length === 0)
    return <p>Nobody runs out for it within {counted(answer.days, 'day')}: order when you usually do.</p>;
  return (
    <>
      {answer.short.map((short) => (
        <Short {...props} short={short} />
      ))}
      <h3>Order again today?</h3>
      {box.again.length === 0 ? <p>Nobody written down here sends anything in the next weeks.</p> : null}
      <ul class="starts">
        {box.again.map((again) => (
          <li>
            {againWords(again)} <a href={paths.newOrderFrom(again.supplier.code)}>Write that order down</a>
          </li>
        ))}
      </ul>
      <p class="look">
        {box.act === null ? null : <>{box.act} </>}
        <a href={`${paths.sunday}?act=1`}>What helps most</a>
      </p>
    </>
  );
};

const Short = ({ short, names, unit }: BoxProps & { short: ShortGroup }) => (
  <>
    <h3>
      {sentenceCase(short.name)} that take {lengthRange(short.window.minMm, short.window.maxMm, unit)}
    </h3>
    <p>
      From about {shortDay(short.from)} an evening finds too little for them in {casesIn(short.chance)}. Had
      the box come as ordered: {casesIn(short.chanceBefore)}.
    </p>
    <p>Tonight: {insteadWords(short, names)}</p>
  </>
);

/** 'Yes: Hill Farm, ordered by Thu 10 Oct, is here on Mon 14 Oct, before anybody runs out.' */
function againWords({ supplier, next, inTime }: Again): string {
  const { name, kind, cutOffTime } = supplier;
  const verdict = inTime ? 'before anybody runs out' : 'after the first run out';
  if (kind === 'shop')
    return `${inTime ? 'Yes: ' : ''}${name} is open on ${shortDay(next.comes)}, ${verdict}.`;
  const by = `${shortDay(next.orderBy)}${cutOffTime === null ? '' : `, ${cutOffTime}`}`;
  return `${inTime ? 'Yes: ' : ''}${name}, ordered by ${by}, is here on ${shortDay(next.comes)}, ${verdict}.`;
}
