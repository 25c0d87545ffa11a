/** The plan's orders of this week, placed by one button. */
import { nextSunday } from '../../src/husbandry/calendar.ts';
import { counted, listed, money } from '../format.ts';
import { entryOf, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { planQuery } from '../plan-address.ts';
import type { PlanTold } from './plan.tsx';
import { headsWords, isOrder, type OrderLine, supplierName, whenWords } from './plan-words.ts';

/** Orders to be placed before the next Sunday, which is planned anew. */
export function ordersThisWeek({ plan, today }: Pick<PlanTold, 'plan' | 'today'>): readonly OrderLine[] {
  const next = nextSunday(today);
  return plan.lines.filter(isOrder).filter(({ actBy }) => actBy >= today && actBy < next);
}

/** What is ordered, in a word: of two plans that order the same it is the same. */
export const ordersSaid = (orders: readonly OrderLine[]): string =>
  orders.map(({ key, packs }) => `${key} x ${packs}`).join(', ');

/** Only of the plan that was asked for: an older one may order what is here already. */
export const ApplyWeek = (told: PlanTold & { isFresh: boolean }) => {
  const orders = ordersThisWeek(told);
  if (!told.isFresh || orders.length === 0) return null;
  const parcels = [...new Set(orders.map(({ parcel }) => parcel))].map((code) =>
    orders.filter(({ parcel }) => parcel === code),
  );
  const goods = orders.reduce((sum, { cents }) => sum + cents, 0);
  return (
    <section class="act plan-apply" aria-labelledby="plan-apply-head">
      <h2 id="plan-apply-head">To be ordered before Sunday</h2>
      <PostForm entry={entryOf(told.forms, 'plan-apply')} action={paths.planApply}>
        <input type="hidden" name="asked" value={planQuery(told.asked)} />
        <input type="hidden" name="orders" value={ordersSaid(orders)} />
        <ul>
          {parcels.map((lines) => (
            <li>{parcelWords(lines, told)}</li>
          ))}
        </ul>
        <button type="submit" class="act-here">
          Apply the plan’s orders of this week
        </button>
        <small class="hint">
          Writes {counted(parcels.length, 'order')} down as placed, {money(goods, told.market.purse.currency)}{' '}
          of goods. You still send them to the supplier; one Undo takes them back.
        </small>
      </PostForm>
    </section>
  );
};

/** '500 small banded crickets and 60 large house crickets from Marrowgate Feeders, by Tuesday' */
function parcelWords(lines: readonly OrderLine[], told: PlanTold): string {
  const [first] = lines;
  if (first === undefined) return '';
  const what = listed(lines.map((line) => headsWords(line, told)));
  return `${what} from ${supplierName(told.market, first.supplier)}, ${whenWords(first, told)}`;
}
