/** An order made up by hand: whole packs, filled up to a seller's least order or to free postage where that pays. */
import type { Log, Order } from '../plan-worlds/log.ts';
import { OFFERS, type Offer, packCents, SELLERS, type Seller } from '../plan-worlds/sellers.ts';
import type { Size } from './notebook.ts';
import { middleOf } from './notebook.ts';

/** Less than this share of a pack is not bought. */
const WORTH_A_PACK = 0.3;

export const packsFor = (offer: number, heads: number): number => {
  const packs = heads / (OFFERS[offer] as Offer).packHeads;
  return packs < WORTH_A_PACK ? 0 : Math.ceil(packs - WORTH_A_PACK);
};

/** What is wanted of each size, as orders of this Sunday. */
export function cartOf(log: Log, sizes: readonly Size[], packs: readonly number[]): Order[] {
  const filled = [...packs];
  SELLERS.forEach((seller, s) => {
    if (seller.kind === 'parcel') fillUp(seller, sizes, { packs: filled, seller: s });
  });
  return sizes
    .map(({ offer }, k) => ({ day: log.day, offer, packs: filled[k] as number }))
    .filter((order) => order.packs > 0);
}

function fillUp(
  { minimumCents, freeFromCents, postageCents }: Seller,
  sizes: readonly Size[],
  { packs, seller }: { packs: number[]; seller: number },
): void {
  const mine = sizes
    .map((_, k) => k)
    .filter((k) => (OFFERS[(sizes[k] as Size).offer] as Offer).seller === seller);
  const goods = () => mine.reduce((sum, k) => sum + costOf((sizes[k] as Size).offer, packs[k] as number), 0);
  if (goods() === 0) return;
  const [most] = mine.toSorted((a, b) => (sizes[b] as Size).daily - (sizes[a] as Size).daily) as [number];
  const add = () => {
    packs[most] = (packs[most] as number) + 1;
  };
  while (goods() < minimumCents) add();
  const missing = (freeFromCents ?? 0) - goods();
  if (freeFromCents !== null && missing > 0 && missing <= postageCents) while (goods() < freeFromCents) add();
}

const costOf = (offer: number, packs: number): number => packs * packCents(OFFERS[offer] as Offer, packs);

/** What is bought at the shop of the sizes that would run out before a parcel comes. */
export function shopFor(log: Log, sizes: readonly Size[], days: number): Order[] {
  if (days <= 0) return [];
  const shop = OFFERS.map((_, o) => o).filter(
    (o) => (SELLERS[(OFFERS[o] as Offer).seller] as Seller).kind === 'shop',
  );
  return sizes.flatMap((size) => {
    const short = size.daily * days - size.here;
    const [offer] = shop.toSorted((a, b) => away(a, size) - away(b, size));
    const packs = offer === undefined ? 0 : packsFor(offer, short);
    return packs > 0 ? [{ day: log.day + 2, offer: offer as number, packs }] : [];
  });
}

const away = (offer: number, { middleMm }: Size): number => Math.abs(Math.log(middleOf(offer) / middleMm));
