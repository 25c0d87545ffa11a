/** The lines of an order: packs of offers, what they cost, and where each goes. */
import { z } from 'zod';
import { type Cents, liveGrams, packCents, postageCents } from '../husbandry/orders/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { OfferRow, SupplierRow } from '../store/index.ts';
import { type BinFound, binFor, into, type Made } from './bin-for.ts';
import { figureWithin, someText } from './fields.ts';
import { findOffer } from './find.ts';
import type { Scene } from './perform.ts';

const MOST_PACKS = 1000;
const packs = figureWithin({
  code: 'packs-out-of-range',
  least: 1,
  most: MOST_PACKS,
  wanted: `a whole number of packs from 1 to ${MOST_PACKS.toLocaleString('en-GB')}`,
  whole: true,
});

export const orderLine = z.strictObject({ offer: someText, packs, ...into });
export type LineGiven = z.output<typeof orderLine>;

export interface OrderLine extends BinFound {
  readonly offer: OfferRow;
  readonly packs: number;
  readonly cents: Cents;
}

interface Asked {
  readonly supplier: SupplierRow;
  readonly lines: readonly LineGiven[];
  readonly demo: boolean;
  /** Bins that other orders of the same act have made. */
  readonly made: Made;
}

/** The lines in the order given; a price break counts the packs of an offer over all of them. */
export async function orderLines(scene: Scene, asked: Asked): Promise<Result<readonly OrderLine[]>> {
  const { supplier, lines, demo, made } = asked;
  const found: OrderLine[] = [];
  for (const [i, line] of lines.entries()) {
    const at = `lines.${i}.`;
    const offer = await offerOf(scene, supplier, { code: line.offer, at });
    if (!offer.ok) return offer;
    const all = lines.filter((each) => each.offer === line.offer).reduce((sum, each) => sum + each.packs, 0);
    const { mostPacks, species, size } = offer.value;
    if (mostPacks !== null && all > mostPacks)
      return err(
        problem(
          'too-many-packs',
          `"${all}" is more than the ${mostPacks} packs of ${size} there are.`,
          `${at}packs`,
        ),
      );
    const { bin, room, name } = line;
    const goes = await binFor(scene, { bin, room, name, species, origin: supplier.name, demo, at }, made);
    if (!goes.ok) return goes;
    found.push({
      ...goes.value,
      offer: offer.value,
      packs: line.packs,
      cents: line.packs * packCents(offer.value, all),
    });
  }
  return ok(found);
}

async function offerOf(
  { tx }: Scene,
  supplier: SupplierRow,
  { code, at }: { readonly code: string; readonly at: string },
): Promise<Result<OfferRow>> {
  const offer = await findOffer(tx, code);
  if (!offer.ok) return err({ ...offer.problem, field: `${at}offer` });
  if (offer.value.supplier === supplier.code) return offer;
  return err(problem('other-supplier', `“${supplier.name}” does not offer "${code}".`, `${at}offer`));
}

export const goodsCents = (lines: readonly OrderLine[]): Cents =>
  lines.reduce((sum, { cents }) => sum + cents, 0);

/** Postage by the value and the live mass of all lines. */
export function postageOf({ facts }: Scene, { postage }: SupplierRow, lines: readonly OrderLine[]): Cents {
  const grams = liveGrams(lines, (species) => facts.species.get(species)?.massPerCubicMm.value ?? 0);
  return postageCents(postage, { goodsCents: goodsCents(lines), grams });
}
