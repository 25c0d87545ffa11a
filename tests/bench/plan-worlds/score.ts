/**
 * What a year came to: money, meals, waste; with what is left at its end taken off and what colonies have lost put on, so
 * that nobody gains by running them down.
 */

import type { House } from './house.ts';
import { longestEaten } from './household.ts';
import { FORMS, type Form } from './kinds.ts';
import { lengthOf } from './larder.ts';
import { BAND_MM, bandOf } from './prey.ts';
import { OFFERS, packCents } from './sellers.ts';

export interface Score {
  readonly weeks: number;
  /** Cents in all, less what is left, with what colonies have lost. */
  readonly cents: number;
  readonly goods: number;
  readonly postage: number;
  readonly shop: number;
  readonly left: number;
  /** What colonies are worth less than on the first day. */
  readonly lost: number;
  readonly parcels: number;
  /** By urgency: fragile, ordinary, robust. */
  readonly due: readonly number[];
  readonly missed: readonly number[];
  readonly dangers: readonly number[];
  /** Heads that came or were born, and that were eaten. */
  readonly heads: number;
  readonly eaten: number;
  /** The least its meals could have been bought for; loose. */
  readonly floorCents: number;
}

export function scoreOf(house: House): Score {
  const { purse, sent } = house.post;
  const { came, born, eaten } = house.larder.heads;
  const left = leftCents(house);
  const lost = Math.max(0, house.coloniesCents - coloniesCents(house));
  return {
    weeks: house.day / 7,
    cents: Math.round(purse.goods + purse.postage + purse.shop - left + lost),
    ...purse,
    left,
    lost,
    parcels: sent,
    due: [...house.meals.due],
    missed: [...house.meals.missed],
    dangers: [...house.meals.dangers],
    heads: came + born,
    eaten,
    floorCents: Math.round(house.meals.floorCents[0] as number),
  };
}

/** Most that counts as left, in weeks of what was eaten. */
const LEFT_WEEKS = 2;

/** Prey somebody can eat, at the cheapest price it can be had for; two weeks' worth at most. */
function leftCents(house: House): number {
  const { larder, truth, day, post } = house;
  const longest = longestEaten(house);
  let [heads, cents] = [0, 0];
  for (let h = 0; h < larder.count; h += 1) {
    const tub = larder.tubs[larder.tub[h] as number];
    const mm = lengthOf(larder, truth, h, day);
    if (!tub || tub.colonyRoom !== null || (larder.dies[h] as number) <= day || mm > longest) continue;
    heads += 1;
    cents += headCents(tub.form, mm);
  }
  for (const { packs, sent } of post.parcels)
    if (sent < day)
      for (const [offer, n] of packs) {
        const { form, fromMm, packHeads } = OFFERS[offer] as (typeof OFFERS)[number];
        heads += n * packHeads;
        cents += n * packHeads * headCents(form, fromMm);
      }
  const most = (LEFT_WEEKS * larder.heads.eaten) / (day / 7);
  return Math.round(cents * Math.min(1, heads > 0 ? most / heads : 0));
}

/** Every head of the colonies, at the cheapest price one so long can be had for. */
export function coloniesCents({ larder, truth, day }: Pick<House, 'larder' | 'truth' | 'day'>): number {
  let cents = 0;
  for (let h = 0; h < larder.count; h += 1) {
    const tub = larder.tubs[larder.tub[h] as number];
    if (!tub || tub.colonyRoom === null || (larder.dies[h] as number) <= day) continue;
    cents += headCents(tub.form, lengthOf(larder, truth, h, day));
  }
  return Math.round(cents);
}

const FEW_PACKS = 5;

/** Cheapest price of one head of a length, bought no longer than it is, at the first break. */
function cheapest(form: Form, mm: number): number {
  const sold = OFFERS.filter((offer) => offer.form === form);
  const longEnough = sold.filter(({ fromMm }) => fromMm <= mm);
  const prices = (longEnough.length > 0 ? longEnough : sold).map(
    (offer) => packCents(offer, FEW_PACKS) / offer.packHeads,
  );
  return Math.min(...prices);
}

const BY_BAND = new Map(FORMS.map((form) => [form, Array.from(BAND_MM, (mm) => cheapest(form, mm))]));

const headCents = (form: Form, mm: number): number => (BY_BAND.get(form) as number[])[bandOf(mm)] as number;
