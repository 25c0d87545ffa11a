/** Orders that came, the latest first, and how. */
import { lengthRange, recordDay } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { daysLate } from '../order-words.ts';
import type { CameLineShown, CameOrder, OrdersProps } from './orders-shown.ts';

const SHOWN = 5;

export const CameOrders = (props: OrdersProps) => {
  const { came } = props;
  if (came.length === 0) return null;
  return (
    <section aria-labelledby="came">
      <h2 id="came">How they came</h2>
      <ul class="deliveries">
        {came.slice(0, SHOWN).map((order) => (
          <Came {...props} order={order} />
        ))}
      </ul>
      {came.length <= SHOWN ? null : (
        <details class="folded">
          <summary>{came.length - SHOWN} before</summary>
          <ul class="deliveries">
            {came.slice(SHOWN).map((order) => (
              <Came {...props} order={order} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
};

const Came = (props: OrdersProps & { order: CameOrder }) => {
  const { from, came, due, lines } = props.order;
  return (
    <li>
      <strong>{from}</strong>, {recordDay(came)}
      {came > due ? `, ${daysLate(came - due)}` : ''}
      <ul>
        {lines.map((line) => (
          <li>{cameWords(line, props)}</li>
        ))}
      </ul>
    </li>
  );
};

const HOW = {
  whole: '',
  part: ', counted in part',
  sample: ', by a sample',
  weighed: ', by weight',
  label: ', by the label',
} as const;

/** '412 house crickets alive of 500 ordered, by a sample, give or take 18; 20 dead; 8-10 mm, not 4-6 mm; into Small'. */
function cameWords(line: CameLineShown, { names, unit }: Pick<OrdersProps, 'names' | 'unit'>): string {
  const { species, ordered, fromMm, toMm, came } = line;
  const give = came.give === null || came.give === 0 ? '' : `, give or take ${came.give}`;
  const prey = preyName(names.species, came.species, came.alive);
  const other = came.species === species ? '' : `, not ${preyName(names.species, species)}`;
  const size = lengthRange(came.fromMm, came.toMm, unit);
  const sized = came.fromMm === fromMm && came.toMm === toMm;
  return [
    `${came.alive} ${prey} alive ${ordered === 0 ? 'that nobody had ordered' : `of ${ordered} ordered`}${other}${HOW[came.counted]}${give}`,
    ...(came.dead === 0 ? [] : [`${came.dead} dead`]),
    sized || ordered === 0 ? size : `${size}, not ${lengthRange(fromMm, toMm, unit)}`,
    `into ${nameOf(names.bins, came.bin)}`,
  ].join('; ');
}
