/** Orders: what is on its way, what a box that fell short means, how orders came, and what suppliers' boxes say. */
import type { Context, Hono } from 'hono';
import { OrdersPage } from '../../../views/pages/orders.tsx';
import { BoxPart } from '../../../views/pages/orders-box.tsx';
import type { OrdersProps } from '../../../views/pages/orders-shown.ts';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { askCover } from '../../actions/index.ts';
import type { CoverAnswer } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import { allSizeOptions } from './choices.ts';
import type { House } from './house.ts';
import { boxesShown } from './order-box.ts';
import { cameOrders, comingOrders, type OrderRows, orderRows } from './order-rows.ts';
import { sendersShown } from './order-senders.ts';
import { intoOptions } from './prey-into.ts';
import { codeOf, route } from './route.ts';
import { marketIn } from './supplier-views.ts';
import { page, statusOf, type Visit, visit, withWords } from './visit.ts';

export function orderRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.orders, (c) => showOrders(house, c));
  app.get(route(paths.boxAnswer(':code')), (c) => showBox(house, c));
}

export async function showOrders(
  house: House,
  c: Context,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { snapshot } = here;
  const rows = await orderRows(house.context.store);
  const market = marketIn(snapshot);
  const coming = comingOrders(rows);
  const boxes = await boxesShown(house, here, { rows, waits: c.req.query('wait') !== undefined });
  const props: OrdersProps = {
    ...here,
    shell: withLeftOver(here, formsOn(coming, boxes), refused),
    currency: market.purse.currency,
    coming,
    singles: snapshot.deliveries.filter(({ order }) => order === undefined).toSorted((a, b) => a.day - b.day),
    firstOut: await firstOutOf(house, here, coming),
    boxes,
    came: cameOrders(rows),
    senders: sendersShown(snapshot),
    sellers: market.suppliers.length > 0,
    sizes: allSizeOptions(snapshot.facts),
    into: intoOptions(snapshot),
    apartDays: snapshot.facts.policy.quarantineDays.value,
  };
  return page(c, OrdersPage(props), statusOf(refused !== null));
}

/** Names of the forms on the page. */
const formsOn = (coming: OrdersProps['coming'], boxes: OrdersProps['boxes']): readonly string[] => [
  ...coming.flatMap(({ code }) => ['came', 'late', 'cancelled'].map((act) => `${act}-${code}`)),
  ...boxes.flatMap(({ dead }) => dead.map(({ delivery }) => `again-${delivery}`)),
];

/** What was wrong with a form whose order has meanwhile gone from the page. */
const withLeftOver = ({ shell }: Visit, forms: readonly string[], refused: Refused | null): Visit['shell'] =>
  refused === null || forms.includes(refused.form)
    ? shell
    : withWords(shell, Object.values(refused.problems));

/** The part about one box alone, worked out; nothing where there is nothing to tell of it any more. */
async function showBox(house: House, c: Context) {
  const here = await visit(house, c);
  const rows: OrderRows = await orderRows(house.context.store);
  const [box] = await boxesShown(house, here, { rows, order: codeOf(c), waits: true });
  return page(c, box === undefined ? '' : String(BoxPart({ ...here, box })));
}

/** Who runs out first, where an order is late: Sunday's answer, which reckons with the day it is expected now. */
async function firstOutOf(
  { context, answering }: House,
  { snapshot }: Visit,
  coming: OrdersProps['coming'],
): Promise<OrdersProps['firstOut']> {
  if (!coming.some(({ day, dueDay }) => day < snapshot.today || day > dueDay)) return null;
  const cover = await askCover(context, { snapshot, answering });
  return cover.ok ? firstOutIn(cover.value.answer) : null;
}

function firstOutIn({ groups, day: today }: CoverAnswer): OrdersProps['firstOut'] {
  const out = groups
    .flatMap(({ name, window, verdict, runOut: { day, chance } }) =>
      day === null || verdict === 'lasts'
        ? []
        : [{ name, fromMm: window.minMm, toMm: window.maxMm, chance, day: Math.round(today + day.mid) }],
    )
    .toSorted((a, b) => a.day - b.day || b.chance - a.chance);
  return out[0] ?? null;
}
