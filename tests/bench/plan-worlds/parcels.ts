/** Orders of a world on their way: when they are sent and come, what they cost and what is alive in them. */
import { keyOf, logNormal, normal, uniform } from './dice.ts';
import { type Larder, newTub, putIn, type Tub } from './larder.ts';
import type { ArrivalNote, Order } from './log.ts';
import { OFFERS, type Offer, packCents, SELLERS, type Seller, sentOn } from './sellers.ts';
import type { Truth } from './truth.ts';

/** What one seller sends on one day. */
export interface Parcel {
  readonly seller: number;
  readonly sent: number;
  readonly due: number;
  readonly comes: number;
  /** Packs of each offer. */
  readonly packs: Map<number, number>;
}

export interface Purse {
  goods: number;
  postage: number;
  shop: number;
}

export interface Post {
  parcels: Parcel[];
  readonly arrivals: ArrivalNote[];
  readonly purse: Purse;
  /** Parcels ordered so far, and packs. */
  sent: number;
  packs: number;
}

export const emptyPost = (): Post => ({
  parcels: [],
  arrivals: [],
  purse: { goods: 0, postage: 0, shop: 0 },
  sent: 0,
  packs: 0,
});

const BAD_PARCEL = 0.03;
/** Parts of a world's key. */
const FOR = { post: 3_000_000, lot: 4_000_000 } as const;

/** An order is put into the parcel the seller sends next. */
export function place(post: Post, truth: Truth, { day, offer, packs }: Order): void {
  if (packs <= 0) return;
  const { seller } = OFFERS[offer] as Offer;
  const sender = SELLERS[seller] as Seller;
  const sent = sentOn(sender, day);
  let parcel = post.parcels.find((each) => each.seller === seller && each.sent === sent);
  if (!parcel) {
    parcel = {
      seller,
      sent,
      due: sent + sender.transitDays,
      comes: comesOn(truth, seller, sent),
      packs: new Map(),
    };
    post.parcels.push(parcel);
  }
  parcel.packs.set(offer, (parcel.packs.get(offer) ?? 0) + packs);
}

function comesOn(truth: Truth, seller: number, sent: number): number {
  const { transitDays, lateChance } = SELLERS[seller] as Seller;
  const key = keyOf(keyOf(truth.key, FOR.post + seller), sent);
  let late = 0;
  while (late < 7 && uniform(key, late) < lateChance) late += 1;
  return sent + transitDays + late;
}

/** A parcel that leaves is paid; at least the seller's least goods value is. */
function pay(post: Post, parcel: Parcel): void {
  const { kind, minimumCents, postageCents, freeFromCents } = SELLERS[parcel.seller] as Seller;
  let goods = 0;
  for (const [offer, packs] of parcel.packs) {
    goods += packs * packCents(OFFERS[offer] as Offer, packs);
    post.packs += packs;
  }
  const paid = Math.max(goods, minimumCents);
  if (kind === 'shop') post.purse.shop += paid;
  else post.purse.goods += paid;
  if (kind === 'parcel') post.sent += 1;
  if (freeFromCents === null || goods < freeFromCents) post.purse.postage += postageCents;
}

/** What a morning brings: parcels leave and are paid, parcels come and are put into tubs of their own. */
export function morning(
  post: Post,
  { larder, truth, day }: { larder: Larder; truth: Truth; day: number },
): void {
  for (const parcel of post.parcels) if (parcel.sent === day) pay(post, parcel);
  for (const parcel of post.parcels)
    if (parcel.comes === day)
      for (const [offer, packs] of parcel.packs) unpack(post, { larder, truth, parcel, offer, packs });
  post.parcels = post.parcels.filter(({ comes }) => comes > day);
}

interface Unpacking {
  readonly larder: Larder;
  readonly truth: Truth;
  readonly parcel: Parcel;
  readonly offer: number;
  readonly packs: number;
}

function unpack(post: Post, { larder, truth, parcel, offer, packs }: Unpacking): void {
  const { code, form, fromMm, toMm, packHeads } = OFFERS[offer] as Offer;
  const { seller, sent, due, comes } = parcel;
  const key = keyOf(keyOf(truth.key, FOR.lot + offer), sent);
  const ordered = packs * packHeads;
  const came = Math.round(ordered * overOf(seller, key));
  const alive = Math.round(came * (1 - lossOf(seller, key)));
  const tub = newTub(larder, {
    code: `${code} ${sent}`,
    form,
    colonyRoom: null,
    key,
    book: ordered - (came - alive),
    looksMm: (fromMm + toMm) / 2,
  });
  putIn(larder, truth, { tub, lot: { heads: alive, fromMm, toMm, day: comes, key } });
  larder.heads.came += alive;
  const it = larder.tubs[tub] as Tub;
  it.events.push({ day: comes, what: 'came', heads: ordered, dead: came - alive, fromMm, toMm });
  post.arrivals.push({ seller, ordered, alive, dead: came - alive, due, came: comes });
}

const overOf = (seller: number, key: number): number =>
  Math.max(0.8, 1 + (SELLERS[seller] as Seller).overShare + 0.05 * normal(key, 11));

function lossOf(seller: number, key: number): number {
  if (uniform(key, 12) < BAD_PARCEL) return 0.3 + 0.7 * uniform(key, 13);
  return Math.min(0.3, (SELLERS[seller] as Seller).lossShare * logNormal(key, 14, 0.5));
}
