/** Applying a plan: its orders of this week are placed, in one step. */
import { ordersSaid, ordersThisWeek } from '../../../views/pages/plan-apply.tsx';
import type { OrderLine } from '../../../views/pages/plan-words.ts';
import { type Done, keptPlan, placeOrders } from '../../actions/index.ts';
import { civilDate } from '../../husbandry/calendar.ts';
import { grouped } from '../../husbandry/grouped.ts';
import type { Filled } from '../../husbandry/larder/index.ts';
import type { PlanQuestion } from '../../husbandry/plan/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import type { House } from './house.ts';
import { binsFilled, intoNamed, intoProposed } from './prey-into.ts';
import { marketIn } from './supplier-views.ts';
import type { Visit } from './visit.ts';

type Placed = { readonly purchases: readonly string[] };

const NOT_THAT_PLAN = problem(
  'plan-changed',
  'Something has changed since this plan was made, so nothing was ordered. Look at the new plan first.',
);

interface Applying {
  readonly question: PlanQuestion | null;
  /** The orders the page showed, as its form says them. */
  readonly seen: string;
  readonly formId: string | undefined;
}

/** Places them if they are what the page showed: a plan made anew meanwhile may order something else. */
export async function applyPlan(
  house: House,
  here: Visit,
  { question, seen, formId }: Applying,
): Promise<Result<Done<Placed>>> {
  const { context } = house;
  const plan = question === null ? null : await keptPlan(context, question, here.snapshot);
  if (plan === null) return err(NOT_THAT_PLAN);
  const orders = ordersThisWeek({ plan, today: here.snapshot.today });
  if (ordersSaid(orders) !== seen) return err(NOT_THAT_PLAN);
  const filled = await binsFilled(house, here.snapshot);
  const parcels = [...grouped(orders, ({ parcel }) => parcel).values()];
  const placing = parcels.map((lines) => ({
    supplier: lines[0]?.supplier ?? '',
    sentDay: civilDate(lines[0]?.sent ?? here.snapshot.today),
    lines: lines.map((line) => lineOf(line, filled, here)),
  }));
  return placeOrders(context, { orders: placing, formId });
}

/** Into the bin that an order form would propose. */
function lineOf({ offer, packs, species, fromMm, toMm }: OrderLine, filled: readonly Filled[], here: Visit) {
  const { snapshot, names } = here;
  const chosen = intoProposed(filled, { species, fromMm, toMm }, snapshot);
  const sold = marketIn(snapshot).offers.find(({ code }) => code === offer);
  return { offer, packs, ...intoNamed(chosen, names, sold) };
}
