/** The sum of an order as it is typed: a part of its page, asked for anew with every input. */
import type { Context, Hono } from 'hono';
import { TotalWords } from '../../../views/pages/order-total.tsx';
import { paths } from '../../../views/paths.ts';
import { loadSnapshot } from '../../actions/index.ts';
import { orderTotal } from '../../husbandry/orders/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { marketIn } from './supplier-views.ts';
import { page } from './visit.ts';

export function orderTotalRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.newOrderTotal, (c) => showTotal(house, c));
}

async function showTotal({ context }: House, c: Context): Promise<Response> {
  const snapshot = await loadSnapshot(context);
  const { suppliers, purse } = marketIn(snapshot);
  const typed = c.req.query();
  const supplier = suppliers.find(({ code }) => code === typed.supplier);
  if (supplier === undefined) return page(c, '');
  const perCubicMm = (species: string) => snapshot.facts.species.get(species)?.massPerCubicMm.value ?? 0;
  const total = orderTotal(supplier, packedIn(typed, supplier.code, snapshot), perCubicMm);
  return page(c, total.goodsCents === 0 ? '' : String(TotalWords({ total, currency: purse.currency })));
}

/** The lines that can be read so far; what is wrong with others is said when the order is sent. */
function packedIn(typed: Readonly<Record<string, string>>, supplier: string, snapshot: Snapshot) {
  return marketIn(snapshot)
    .offers.filter((offer) => offer.supplier === supplier)
    .map((offer) => ({ offer, packs: Number(typed[`packs-${offer.code}`] ?? '') }))
    .filter(({ packs }) => Number.isInteger(packs) && packs > 0);
}
