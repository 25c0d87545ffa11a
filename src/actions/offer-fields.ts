/** The fields of an offer as they are entered, and the row they become. */
import { z } from 'zod';
import { offerTrouble } from '../husbandry/orders/index.ts';
import type { Problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import { type OfferRow, settings, type Tx } from '../store/index.ts';
import { flag, heads, headsOrNone, preyMm, someText, text } from './fields.ts';
import { findSpecies } from './find.ts';
import { centsIn, money } from './money-fields.ts';
import { said } from './said.ts';

const MOST_BREAKS = 12;

/** From so many packs on, a pack costs this. */
const priceBreak = z.strictObject({ fromPacks: heads, pack: money });
type GivenBreak = z.output<typeof priceBreak>;

/** Packs to be had at once, or nothing said. */
export const mostPacks = z.union([z.literal('').transform(() => null), z.null(), heads], {
  error: ({ input }) =>
    `"${String(input)}" is not a whole number of packs; leave it empty if there is no end to them.`,
});

const fields = {
  /** Trade name, as the supplier says it. */
  size: text,
  fromMm: preyMm,
  toMm: preyMm,
  packHeads: headsOrNone,
  prices: z.array(priceBreak).max(MOST_BREAKS, { error: `Write at most ${MOST_BREAKS} prices.` }),
  mostPacks,
};

/** What may be said of an offer that is here; what is left unsaid stays. */
export const offerChanges = z.strictObject(fields).partial();

export const newOffer = z.strictObject({
  ...fields,
  supplier: someText,
  species: someText,
  size: text.default(''),
  mostPacks: mostPacks.default(null),
  demo: flag.default(false),
});

interface Asked {
  readonly tx: Tx;
  readonly facts: Facts;
}
type Changes = z.output<typeof offerChanges>;

/** The row with what was said, or a Problem with the first thing wrong. */
export async function offerWith(
  { tx, facts }: Asked,
  was: OfferRow,
  { prices: given, ...plain }: Changes,
): Promise<Result<OfferRow>> {
  const species = findSpecies(facts, was.species);
  if (!species.ok) return species;
  const { currency } = (await tx.ask(settings)).purse;
  const prices = given === undefined ? ok(was.prices) : pricesIn(currency, given);
  if (!prices.ok) return prices;
  const row = { ...was, ...said(plain), prices: prices.value };
  const trouble = offerTrouble(row, species.value);
  return trouble === null ? ok(row) : err(asTyped(trouble));
}

function pricesIn(currency: string, given: readonly GivenBreak[]): Result<OfferRow['prices']> {
  const prices: OfferRow['prices'][number][] = [];
  for (const [at, { fromPacks, pack }] of given.entries()) {
    const cents = centsIn(currency, pack, `prices.${at}.pack`);
    if (!cents.ok) return cents;
    prices.push({ fromPacks, packCents: cents.value });
  }
  return ok(prices);
}

/** Beside the field it was typed in. */
const asTyped = (trouble: Problem): Problem =>
  trouble.field?.endsWith('packCents')
    ? { ...trouble, field: trouble.field.replace('packCents', 'pack') }
    : trouble;
