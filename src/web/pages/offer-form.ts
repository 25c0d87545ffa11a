/** The form of an offer: a new one of a supplier, or what was said of one is changed. */
import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { OfferFormPage } from '../../../views/pages/offer-form.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { heads, headsOrNone } from '../../actions/fields.ts';
import { addOffer, type Done, editOffer, factsNow } from '../../actions/index.ts';
import { money } from '../../actions/money-fields.ts';
import { mostPacks } from '../../actions/offer-fields.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, type Result } from '../../husbandry/result.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { allSizeOptions, sizeOptions, speciesOptions } from './choices.ts';
import type { House } from './house.ts';
import { besideRow, MORE_ROWS, pricesTyped, sizeChosen, sizeTyped } from './offer-typed.ts';
import { posted, type Sent } from './posted.ts';
import { codeOf, route } from './route.ts';
import { marketIn } from './supplier-views.ts';
import { anyText, maybeLengthText, revision, typed, typedOrEmpty } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

const rows = Object.fromEntries(
  MORE_ROWS.flatMap((row) => [
    [`from${row}`, typedOrEmpty(heads)],
    [`price${row}`, typedOrEmpty(money)],
  ]),
);
type Unit = Parameters<typeof maybeLengthText>[0];
const shape = (unit: Unit) => ({
  ...rows,
  size: anyText,
  called: anyText,
  from: maybeLengthText(unit),
  to: maybeLengthText(unit),
  packHeads: typed(headsOrNone),
  price: typedOrEmpty(money),
  mostPacks: typedOrEmpty(mostPacks),
  asOf: revision,
});
const newShape = (unit: Unit) => ({
  ...shape(unit),
  species: z.string().min(1, { error: 'Choose the prey from the list.' }),
});
type Given = z.output<z.ZodObject<ReturnType<typeof shape>>>;
type Offered = Promise<Result<Done<{ supplier: string }>>>;

export function offerFormRoutes(app: Hono<DoorEnv>, house: House): void {
  const form = {
    form: () => 'offer',
    next: (_: Context, { supplier }: { supplier: string }) => paths.supplier(supplier),
  };
  const fresh = route(paths.newOffer(':code'));
  app.get(fresh, (c) => showNew(house, c));
  app.post(
    fresh,
    posted(house, {
      ...form,
      shape: newShape,
      again: (c, refused) => showNew(house, c, refused),
      act: ({ species, ...given }, sent) => save(house, given, { sent, species }),
    }),
  );
  const known = route(paths.editOffer(':code'));
  app.get(known, (c) => showKnown(house, c));
  app.post(
    known,
    posted(house, {
      ...form,
      shape,
      again: (c, refused) => showKnown(house, c, refused),
      act: (given, sent) => save(house, given, { sent, species: null }),
    }),
  );
}

/** Adds an offer of this species, or changes the one the address names. */
async function save(
  { context }: House,
  { asOf, packHeads, mostPacks: most, size, called, from, to, ...priced }: Given,
  { sent, species: code }: { readonly sent: Sent; readonly species: string | null },
): Offered {
  const { c, unit, formId } = sent;
  const was = code === null ? await context.store.ask(rowNamed('offer', codeOf(c))) : null;
  const species = (await factsNow(context)).species.get(code ?? was?.species ?? '');
  if (species === undefined)
    return err(problem('unknown-species', 'Choose the prey from the list.', 'species'));
  const lengths = sizeTyped({ size, called, from, to }, { species, unit, was });
  if (!lengths.ok) return lengths;
  const prices = pricesTyped(priced as Readonly<Record<string, string>>);
  if (!prices.ok) return prices;
  const fields = {
    ...lengths.value,
    packHeads,
    mostPacks: most,
    prices: prices.value.map(({ fromPacks, pack }) => ({ fromPacks, pack })),
    formId,
  };
  const done = await (code === null
    ? editOffer(context, { offer: codeOf(c), ...fields, asOf })
    : addOffer(context, { supplier: codeOf(c), species: code, ...fields }));
  return done.ok ? done : err(besideRow(done.problem, prices.value));
}

async function showNew(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const market = marketIn(here.snapshot);
  const supplier = market.suppliers.find(({ code }) => code === codeOf(c));
  if (supplier === undefined) return c.notFound();
  const { facts, revision: asOf } = here.snapshot;
  const props = {
    ...here,
    supplier,
    offer: null,
    currency: market.purse.currency,
    species: speciesOptions(facts),
    sizes: allSizeOptions(facts),
    size: '',
    revision: asOf,
  };
  return page(c, OfferFormPage(props), statusOf(refused !== null));
}

async function showKnown(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const market = marketIn(here.snapshot);
  const offer = market.offers.find(({ code }) => code === codeOf(c));
  const supplier = market.suppliers.find(({ code }) => code === offer?.supplier);
  const { facts, revision: asOf } = here.snapshot;
  const species = facts.species.get(offer?.species ?? '');
  if (offer === undefined || supplier === undefined || species === undefined) return c.notFound();
  const props = {
    ...here,
    supplier,
    offer,
    currency: market.purse.currency,
    species: speciesOptions(facts),
    sizes: sizeOptions(species),
    size: sizeChosen(offer, species),
    revision: asOf,
  };
  return page(c, OfferFormPage(props), statusOf(refused !== null));
}
