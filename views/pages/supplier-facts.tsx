/** How a supplier sends: in words, the next parcels by day, and the days on which nothing leaves. */
import type { Dispatch } from '../../src/husbandry/orders/index.ts';
import { dayRange, shortDay } from '../format.ts';
import { ActForm } from '../partials/act.tsx';
import { DayList } from '../partials/day-list.tsx';
import { entryOf, Field } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import {
  arrivesWords,
  heldWords,
  postageWords,
  sendsWords,
  weatherWords,
  wrongDayWords,
} from '../supplier-words.ts';
import type { SupplierProps } from './supplier.tsx';

export const How = ({ supplier, currency, chances, deliveryWeekdays }: SupplierProps) => {
  const said = [
    sendsWords(supplier),
    postageWords(supplier, currency),
    weatherWords(supplier),
    heldWords(chances),
    arrivesWords(supplier),
    wrongDayWords(supplier, chances, deliveryWeekdays),
    supplier.notes,
  ].filter((words) => words !== '');
  return (
    <section aria-labelledby="how-head">
      <h2 id="how-head">How they send</h2>
      {said.map((words) => (
        <p>{words}</p>
      ))}
    </section>
  );
};

const ROWS = 6;

export const NextParcels = ({ supplier, chances }: SupplierProps) => {
  if (chances.next.length === 0 || supplier.kind === 'shop') return null;
  const cells = ({ orderBy, sent, comes }: Dispatch) => [orderBy, sent, comes].map(shortDay);
  return (
    <section aria-labelledby="next-head">
      <h2 id="next-head">The next parcels</h2>
      <table class="compact">
        <thead>
          <tr>
            {['Order by', 'Leaves', 'Comes'].map((head) => (
              <th scope="col">{head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chances.next.slice(0, ROWS).map((dispatch) => (
            <tr>
              {cells(dispatch).map((day) => (
                <td>{day}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

export const Holidays = ({ supplier, forms, shell }: SupplierProps) => {
  const { code, kind } = supplier;
  const holidays = supplier.holidays.filter(({ to }) => to >= shell.today);
  const entry = entryOf(forms, 'holiday');
  return (
    <section aria-labelledby="holidays-head">
      <h2 id="holidays-head">{kind === 'shop' ? 'Closed' : 'Days without sending'}</h2>
      {holidays.length === 0 ? <p>None known.</p> : null}
      <DayList
        forms={forms}
        form="holiday"
        action={paths.supplierAct(code, 'holidays/remove')}
        days={holidays}
      >
        {({ from, to }) => dayRange(from, to)}
      </DayList>
      <ActForm
        entry={entry}
        action={paths.supplierAct(code, 'holidays')}
        title={kind === 'shop' ? 'Add days it is closed' : 'Add holidays of theirs'}
        button="Add them"
      >
        <Field entry={entry} name="from" label="First day" type="date" required />
        <Field entry={entry} name="to" label="Last day" type="date" required />
      </ActForm>
    </section>
  );
};
