/** What may be said of an order: it came, it is late, it is not coming; and of its dead, looked at again. */
import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { type OrderAct, paths } from '../../../views/paths.ts';
import { civilDay, headsOrNone } from '../../actions/fields.ts';
import { cancelOrder, loadSnapshot, orderCame, orderLate, recountDelivery } from '../../actions/index.ts';
import { err } from '../../husbandry/result.ts';
import { rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { besideLine, boxGiven, boxShape } from './order-came.ts';
import { showOrders } from './orders.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { typed } from './typed.ts';

export function orderActRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('late'),
    posted(house, {
      ...about(house, 'late'),
      shape: () => ({ day: typed(civilDay) }),
      act: (given, { c, formId }) => orderLate(context, { purchase: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('cancelled'),
    posted(house, {
      ...about(house, 'cancelled'),
      shape: () => ({}),
      act: (_, { c, formId }) => cancelOrder(context, { purchase: codeOf(c), formId }),
    }),
  );
  app.post(
    at('came'),
    posted(house, {
      ...about(house, 'came'),
      shape: (_, sent) => boxShape(sent),
      act: async (given, { c, formId }) => {
        const { facts } = await loadSnapshot(context);
        const ordered = await context.store.ask(
          rowsOf('delivery', { where: 'purchase = ?', args: [codeOf(c)] }),
        );
        const box = boxGiven(given, { facts, ordered });
        if (!box.ok) return box;
        const done = await orderCame(context, { purchase: codeOf(c), ...box.value, formId });
        return done.ok ? done : err(besideLine(done.problem, box.value.lines));
      },
    }),
  );
  app.post(
    route(paths.lookAgain(':code')),
    posted(house, {
      form: (c) => `again-${codeOf(c)}`,
      next: () => paths.orders,
      again: (c, refused) => showOrders(house, c, refused),
      shape: () => ({ dead: typed(headsOrNone) }),
      act: (given, { c, formId }) => recountDelivery(context, { delivery: codeOf(c), ...given, formId }),
    }),
  );
}

const at = (act: OrderAct): string => route(paths.orderAct(':code', act));

/** The form of an act: back to the orders when it is done, the page again when it is refused. */
const about = (house: House, act: OrderAct) => ({
  form: (c: Context) => `${act}-${codeOf(c)}`,
  next: () => paths.orders,
  again: (c: Context, refused: Refused) => showOrders(house, c, refused),
});
