/** Why an offer cannot be as it is said; the first thing wrong is a Problem that says what would be right. */
import type { PreySpecies } from '../prey/index.ts';
import { type Problem, problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import { plural } from '../words.ts';
import type { Offer, PriceBreak } from './market.ts';

type Goods = Pick<Offer, 'fromMm' | 'toMm' | 'packHeads' | 'prices' | 'mostPacks'>;

/** What is wrong with an offer of this species, or null. */
export const offerTrouble = (offer: Goods, species: PreySpecies): Problem | null =>
  wrongPack(offer) ?? wrongPrices(offer) ?? unreachable(offer) ?? wrongLengths(offer, species);

const wrongPack = ({ packHeads }: Goods): Problem | null =>
  packHeads >= 1
    ? null
    : problem('empty-pack', `"${packHeads}" heads are no pack; say how many are in it.`, 'packHeads');

function wrongPrices({ prices }: Goods): Problem | null {
  const [first] = prices;
  if (first === undefined)
    return problem('no-price', 'An offer needs a price: say what a pack costs.', 'prices');
  if (first.fromPacks !== 1)
    return problem(
      'breaks-out-of-order',
      `"${first.fromPacks}" cannot be the first; the first price holds from 1 pack.`,
      'prices.0.fromPacks',
    );
  const free = prices.findIndex(({ packCents }) => packCents < 1);
  if (free >= 0) return problem('no-price', 'A pack costs something: say what.', `prices.${free}.packCents`);
  const flat = prices.findIndex((each, at) => at > 0 && each.fromPacks <= before(prices, at).fromPacks);
  return flat < 0 ? null : notRising(prices, flat);
}

const before = (prices: readonly PriceBreak[], at: number): PriceBreak => prices[at - 1] as PriceBreak;

function notRising(prices: readonly PriceBreak[], at: number): Problem {
  const here = (prices[at] as PriceBreak).fromPacks;
  const last = before(prices, at).fromPacks;
  const sentence =
    here === last
      ? `"${here}" packs have two prices; say from how many packs each holds.`
      : `"${here}" packs stand after ${last}; write the price of fewer packs first.`;
  return problem('breaks-out-of-order', sentence, `prices.${at}.fromPacks`);
}

function unreachable({ prices, mostPacks }: Goods): Problem | null {
  const at = mostPacks === null ? -1 : prices.findIndex(({ fromPacks }) => fromPacks > mostPacks);
  if (at < 0) return null;
  const sentence = `"${prices[at]?.fromPacks}" packs are never reached: there are ${mostPacks} at most.`;
  return problem('break-out-of-reach', sentence, `prices.${at}.fromPacks`);
}

function wrongLengths({ fromMm, toMm }: Goods, species: PreySpecies): Problem | null {
  if (fromMm > toMm)
    return problem(
      'ends-swapped',
      `"${fromMm} to ${toMm}" runs backwards; the lesser comes first.`,
      'fromMm',
    );
  const { least, most } = lengthsOf(species);
  const outside = fromMm < least ? 'fromMm' : toMm > most ? 'toMm' : null;
  if (outside === null) return null;
  const sentence = `"${fromMm} to ${toMm} mm" is no size of ${plural(species.commonName)}; they are ${least} to ${most} mm long.`;
  return problem('size-out-of-range', sentence, outside);
}

/** From the smallest to the longest, larva or grown, as they grow or as the trade sells them. */
function lengthsOf({ lengthByDevelopment, adultLengthMm, sizeClasses }: PreySpecies): {
  readonly least: Mm;
  readonly most: Mm;
} {
  const grown = [...lengthByDevelopment.value.map(([, mm]) => mm), adultLengthMm.value];
  const sold = sizeClasses.value.flatMap(({ fromMm, toMm }) => [fromMm, toMm]);
  const all = [...grown, ...sold];
  return { least: Math.min(...all), most: Math.max(...all) };
}
