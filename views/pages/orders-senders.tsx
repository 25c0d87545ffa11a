/** What each supplier's boxes have taught, beside what is believed of a supplier nobody knows. */
import type { LearnedShare } from '../../src/husbandry/orders/index.ts';
import { counted, percent } from '../format.ts';
import { paths } from '../paths.ts';
import type { OrdersProps, SenderShown } from './orders-shown.ts';

export const SenderRecords = ({ senders }: OrdersProps) =>
  senders.length === 0 ? null : (
    <section aria-labelledby="senders">
      <h2 id="senders">What their boxes say</h2>
      <table class="stacks">
        <thead>
          <tr>
            <th scope="col">Supplier</th>
            <th scope="col">Dead on arrival</th>
            <th scope="col">Counted over</th>
            <th scope="col">Chance of a day more</th>
          </tr>
        </thead>
        <tbody>
          {senders.map((sender) => (
            <SenderRow {...sender} />
          ))}
        </tbody>
      </table>
      <p class="note">
        In brackets where the truth lies in nine cases of ten. A few boxes weigh little beside what is usual;{' '}
        <a href={paths.methodOn('senders')}>how that is worked out</a>. What you wrote of a supplier yourself
        stands before it.
      </p>
    </section>
  );

const SenderRow = ({ code, name, record, own, usual }: SenderShown) => (
  <tr>
    <th scope="row">
      <a href={paths.supplier(code)}>{name}</a>
      <small>{counted(record.late.boxes, 'box', 'boxes')}</small>
    </th>
    <td data-label="Dead on arrival">{shareWords(record.loss, usual.loss, own.lossShare)}</td>
    <td data-label="Counted over">{shareWords(record.overCount, usual.overCount, own.overCountShare)}</td>
    <td data-label="Chance of a day more">{shareWords(record.late, usual.late, null)}</td>
  </tr>
);

/** '3 % (1 to 8 %; usual 1 %)', 'yours: 2 %; its 4 boxes say 3 %'. */
function shareWords(
  { mean, low, high, boxes }: LearnedShare,
  usual: LearnedShare,
  own: number | null,
): string {
  const learned = `${percent(mean)} (${percent(low)} to ${percent(high)}; usual ${percent(usual.mean)})`;
  if (own !== null) return `yours: ${percent(own)}; its boxes say ${learned}`;
  return boxes === 0 ? `${percent(usual.mean)}, as is usual` : learned;
}
