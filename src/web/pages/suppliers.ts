/** Suppliers: the list, one supplier, and what is done there. */
import type { Context, Hono } from 'hono';
import { SupplierPage } from '../../../views/pages/supplier.tsx';
import { SuppliersPage } from '../../../views/pages/suppliers.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { closeOffer, closeSupplier, editSupplier } from '../../actions/index.ts';
import type { Offer } from '../../husbandry/orders/index.ts';
import type { Facts } from '../../husbandry/snapshot.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { twoDates } from './absences.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { chancesOf, marketIn } from './supplier-views.ts';
import { page, statusOf, visit } from './visit.ts';

export function supplierRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.get(paths.suppliers, (c) => showSuppliers(house, c));
  app.get(route(paths.supplier(':code')), (c) => showSupplier(house, c));
  holidayRoutes(app, house);
  app.post(
    route(paths.supplierAct(':code', 'close')),
    posted(house, {
      ...onSupplier(house, () => 'close'),
      next: () => paths.suppliers,
      shape: () => ({}),
      act: (_, { c, formId }) => closeSupplier(context, { supplier: codeOf(c), formId }),
    }),
  );
  app.post(
    route(paths.closeOffer(':code')),
    posted(house, {
      form: (c) => `end-${codeOf(c)}`,
      next: (_, { supplier }: { supplier: string }) => paths.supplier(supplier),
      again: (c, refused) => showSupplierOf(house, c, refused),
      shape: () => ({}),
      act: (_, { c, formId }) => closeOffer(context, { offer: codeOf(c), formId }),
    }),
  );
}

/** What a form of a supplier's page shares with the others. */
const onSupplier = (house: House, form: (c: Context) => string) => ({
  form,
  next: (c: Context) => paths.supplier(codeOf(c)),
  again: (c: Context, refused: Refused) => showSupplier(house, c, { refused }),
});

function holidayRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const form = { ...onSupplier(house, () => 'holiday'), shape: twoDates, fields: { holidays: 'to' } };
  app.post(
    route(paths.supplierAct(':code', 'holidays')),
    posted(house, {
      ...form,
      act: (days, { c, formId }) => editSupplier(context, { supplier: codeOf(c), addHoliday: days, formId }),
    }),
  );
  app.post(
    route(paths.supplierAct(':code', 'holidays/remove')),
    posted(house, {
      ...form,
      act: (days, { c, formId }) => editSupplier(context, { supplier: codeOf(c), dropHoliday: days, formId }),
    }),
  );
}

async function showSuppliers(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { suppliers, offers, purse } = marketIn(here.snapshot);
  const props = {
    ...here,
    currency: purse.currency,
    sizes: here.snapshot.facts.species,
    suppliers: suppliers.map((supplier) => ({
      supplier,
      offers: offers.filter((offer) => offer.supplier === supplier.code),
      chances: chancesOf(supplier, here.snapshot),
    })),
  };
  return page(c, SuppliersPage(props));
}

async function showSupplier(
  house: House,
  c: Context,
  { refused = null, code = codeOf(c) }: { refused?: Refused | null; code?: string } = {},
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { suppliers, offers, purse } = marketIn(here.snapshot);
  const supplier = suppliers.find((each) => each.code === code);
  const row = await house.context.store.ask(rowNamed('supplier', code));
  if (supplier === undefined || row === null) return c.notFound();
  const own = offers.filter((offer) => offer.supplier === code);
  const props = {
    ...here,
    supplier: row,
    offers: own,
    currency: purse.currency,
    sizes: here.snapshot.facts.species,
    chances: chancesOf(supplier, here.snapshot),
    deliveryWeekdays: here.snapshot.deliveryWeekdays,
    cautions: cautionsOf(own, here.snapshot.facts),
  };
  return page(c, SupplierPage(props), statusOf(refused !== null));
}

/** The page of the supplier whose offer the address names. */
async function showSupplierOf(house: House, c: Context, refused: Refused): Promise<Response> {
  const offer = await house.context.store.ask(rowNamed('offer', codeOf(c)));
  return showSupplier(house, c, { refused, code: offer?.supplier ?? '' });
}

const AT_THE_DOOR: readonly string[] = ['virus', 'regulated'];

/** What to mind before prey is bought in, each thing once. */
function cautionsOf(offers: readonly Offer[], { species }: Facts) {
  const all = [...new Set(offers.map((offer) => offer.species))].flatMap((code) =>
    (species.get(code)?.cautions ?? [])
      .filter(({ about }) => AT_THE_DOOR.includes(about))
      .map(({ text }) => ({ species: code, text: text.value })),
  );
  return all.filter(({ text }, at) => all.findIndex((each) => each.text === text) === at);
}
