/** The form of a supplier: a new one, or what was said of one is changed. */
import type { Context, Hono } from 'hono';
import type { z } from 'zod';
import { SupplierFormPage } from '../../../views/pages/supplier-form.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { longText, oneOf, timeOfDay } from '../../actions/fields.ts';
import { addSupplier, editSupplier } from '../../actions/index.ts';
import { money } from '../../actions/money-fields.ts';
import { claimHours, cutOffDays, holdDays, transitDays } from '../../actions/supplier-fields.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { marketIn } from './supplier-views.ts';
import { maybeOutside, needed, percent, revision, typed, typedOrEmpty, weekdays } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

type Unit = Parameters<typeof maybeOutside>[0];
const shape = (unit: Unit) => ({
  name: needed,
  kind: oneOf(['parcel', 'shop']),
  weekday: weekdays,
  transitDays: typed(transitDays),
  cutOffDays: typed(cutOffDays),
  cutOffTime: typedOrEmpty(timeOfDay),
  postageFlat: typedOrEmpty(money),
  postagePerKg: typedOrEmpty(money),
  postageFreeFrom: typedOrEmpty(money),
  minimum: typedOrEmpty(money),
  cold: maybeOutside(unit),
  heat: maybeOutside(unit),
  holdDays: typedOrEmpty(holdDays),
  loss: percent,
  over: percent,
  claimHours: typedOrEmpty(claimHours),
  notes: typedOrEmpty(longText),
  asOf: revision,
});
type Given = z.output<z.ZodObject<ReturnType<typeof shape>>>;

/** The act's own fields beside those of the form they were typed in. */
const FIELDS = {
  dispatchWeekdays: 'weekday',
  coldBelowC: 'cold',
  heatAboveC: 'heat',
  lossShare: 'loss',
  overCountShare: 'over',
};

export function supplierFormRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const form = {
    form: () => 'supplier',
    many: ['weekday'],
    shape,
    fields: FIELDS,
    next: (_: Context, { supplier }: { supplier: string }) => paths.supplier(supplier),
    again: (c: Context, refused: Refused) => showForm(house, c, refused),
  };
  app.get(paths.newSupplier, (c) => showForm(house, c));
  app.get(route(paths.editSupplier(':code')), (c) => showForm(house, c));
  app.post(
    paths.newSupplier,
    posted(house, {
      ...form,
      act: ({ asOf: _, ...given }, { formId }) => addSupplier(context, { ...saidOf(given), formId }),
    }),
  );
  app.post(
    route(paths.editSupplier(':code')),
    posted(house, {
      ...form,
      act: ({ asOf, ...given }, { c, formId }) =>
        editSupplier(context, { supplier: codeOf(c), ...saidOf(given), asOf, formId }),
    }),
  );
}

/** What the act is told: a sum left empty is none. */
const saidOf = ({ weekday, cold, heat, loss, over, ...given }: Omit<Given, 'asOf'>) => ({
  ...given,
  dispatchWeekdays: weekday,
  postageFlat: given.postageFlat === '' ? 0 : given.postageFlat,
  postagePerKg: given.postagePerKg === '' ? 0 : given.postagePerKg,
  minimum: given.minimum === '' ? 0 : given.minimum,
  coldBelowC: cold ?? null,
  heatAboveC: heat ?? null,
  lossShare: loss ?? null,
  overCountShare: over ?? null,
});

async function showForm(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const code = c.req.param('code');
  const row = code === undefined ? null : await house.context.store.ask(rowNamed('supplier', code));
  if (code !== undefined && (row === null || row.closed)) return c.notFound();
  const { revision: asOf } = here.snapshot;
  const props = {
    ...here,
    supplier: row,
    currency: marketIn(here.snapshot).purse.currency,
    revision: asOf,
  };
  return page(c, SupplierFormPage(props), statusOf(refused !== null));
}
