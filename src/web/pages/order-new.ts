/** A new order in two steps: from whom, then what. */
import type { Context, Hono } from 'hono';
import type { z } from 'zod';
import { namesOf } from '../../../views/names.ts';
import { NewOrderPage, type NewOrderProps } from '../../../views/pages/order-new.tsx';
import type { PageForms, Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { loadSnapshot, placeOrder } from '../../actions/index.ts';
import { dispatchesOf, type Supplier } from '../../husbandry/orders/index.ts';
import type { Problem } from '../../husbandry/problems.ts';
import { err } from '../../husbandry/result.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { DAYS_PER_WEEK } from '../../husbandry/units.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { orderTotalRoutes } from './order-total.ts';
import { posted, valuesIn } from './posted.ts';
import { binsFilled, intoNamed, intoOptions, intoProposed } from './prey-into.ts';
import { marketIn } from './supplier-views.ts';
import { anyText, needed, typed } from './typed.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function newOrderRoutes(app: Hono<DoorEnv>, house: House): void {
  orderTotalRoutes(app, house);
  app.get(paths.newOrder, (c) => showNewOrder(house, c, c.req.query('supplier') ?? ''));
  app.post(
    paths.newOrder,
    posted(house, {
      form: () => 'order',
      shape: (_, sent) => shapeOf(sent),
      act: async (given, { formId }) => {
        const lines = linesOf(given, await loadSnapshot(house.context));
        const { supplier = '', sentDay = '', placedDay = '' } = given;
        const done = await placeOrder(house.context, { supplier, sentDay, placedDay, lines, formId });
        return done.ok ? done : err(besideOffer(done.problem, lines));
      },
      next: () => paths.orders,
      again: async (c, refused) => showNewOrder(house, c, (await valuesIn(c)).supplier ?? '', refused),
    }),
  );
}

const PACKS = /^packs-(F\d+)$/;

/** As many lines as the form has offers. */
function shapeOf(sent: readonly string[]): Record<string, z.ZodType<string>> {
  const codes = sent.flatMap((name) => PACKS.exec(name)?.[1] ?? []);
  const lines = codes.flatMap((code) => [`packs-${code}`, `into-${code}`].map((name) => [name, anyText]));
  const day = typed(civilDay);
  return {
    ...{ supplier: needed, sentDay: day, placedDay: day },
    ...Object.fromEntries(lines),
  };
}

type Given = Readonly<Record<string, string>>;
const NONE = ['', '0'];

function linesOf(given: Given, snapshot: Snapshot) {
  const { offers } = marketIn(snapshot);
  const names = namesOf(snapshot);
  return Object.entries(given).flatMap(([name, packs]) => {
    const code = PACKS.exec(name)?.[1];
    if (code === undefined || NONE.includes(packs)) return [];
    const offer = offers.find((each) => each.code === code);
    return [{ offer: code, packs, ...intoNamed(given[`into-${code}`] ?? '', names, offer) }];
  });
}

/** A problem of a line beside the field of its offer. */
function besideOffer(problem: Problem, lines: ReturnType<typeof linesOf>): Problem {
  const [, at, field] = /^lines\.(\d+)\.(\w+)$/.exec(problem.field ?? '') ?? [];
  const offer = lines[Number(at)]?.offer;
  if (offer === undefined) return problem;
  return { ...problem, field: `${field === 'packs' ? 'packs' : 'into'}-${offer}` };
}

const OFFER = 'offer.';

/** A parcel that the plan began: the day it is sent, and packs by offer. */
function begunIn(c: Context): NonNullable<PageForms['begun']> | null {
  const { sent, ...others } = c.req.query();
  if (sent === undefined) return null;
  const packs = Object.entries(others)
    .filter(([name]) => name.startsWith(OFFER))
    .map(([name, many]) => [`packs-${name.slice(OFFER.length)}`, many]);
  return { form: 'order', values: { sentDay: sent, ...Object.fromEntries(packs) } };
}

async function showNewOrder(
  house: House,
  c: Context,
  supplier: string,
  refused: Refused | null = null,
): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { suppliers, purse } = marketIn(here.snapshot);
  const forms = { ...here.forms, begun: begunIn(c) };
  const props = {
    ...here,
    forms,
    currency: purse.currency,
    suppliers,
    chosen: await chosenOf(house, here, supplier),
  };
  return page(c, NewOrderPage(props), statusOf(refused !== null));
}

const WEEKS_SHOWN = 6;

const atAnyTime = ({ tooLateOn: _, ...supplier }: Supplier): Supplier => supplier;

/** Orders of the last week can still be written down, and those of earlier today. */
async function chosenOf(house: House, { snapshot }: Visit, code: string): Promise<NewOrderProps['chosen']> {
  const { suppliers, offers, weather } = marketIn(snapshot);
  const supplier = suppliers.find((each) => each.code === code);
  if (supplier === undefined) return null;
  const filled = await binsFilled(house, snapshot);
  const range = { from: snapshot.today - DAYS_PER_WEEK, to: snapshot.today + WEEKS_SHOWN * DAYS_PER_WEEK };
  return {
    supplier,
    offers: offers
      .filter((offer) => offer.supplier === code)
      .map((offer) => ({
        ...offer,
        into: intoOptions(snapshot, offer.species),
        proposed: intoProposed(filled, offer, snapshot),
      })),
    parcels: dispatchesOf(atAnyTime(supplier), range, weather),
  };
}
