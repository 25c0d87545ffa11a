/** A year of orders as a table of packs, with what is left alone, in which a search can change one thing. */
import type { Harvest, Order, Rest, Steps } from '../plan-worlds/log.ts';
import { OFFERS } from '../plan-worlds/sellers.ts';

/** Packs by week and offer, each ordered on one weekday as it was first. */
export interface Packs {
  readonly weeks: number;
  readonly packs: Uint16Array;
  /** Day within the week on which an offer is ordered. */
  readonly dayOf: Uint8Array;
  readonly harvests: readonly (readonly Harvest[])[];
  readonly rests: readonly (readonly Rest[])[];
}

export const placeOf = (week: number, offer: number): number => week * OFFERS.length + offer;

export function packsOf(steps: readonly Steps[]): Packs {
  const weeks = steps.length;
  const packs = new Uint16Array(weeks * OFFERS.length);
  const dayOf = new Uint8Array(weeks * OFFERS.length);
  OFFERS.forEach(({ seller }, offer) => {
    for (let week = 0; week < weeks; week += 1) dayOf[placeOf(week, offer)] = seller === SHOP ? SHOP_DAY : 0;
  });
  steps.forEach(({ orders }, week) => {
    for (const { day, offer, packs: n } of orders) {
      const at = placeOf(week, offer);
      packs[at] = (packs[at] as number) + n;
      dayOf[at] = day - week * WEEK;
    }
  });
  return {
    weeks,
    packs,
    dayOf,
    harvests: steps.map(({ harvests }) => harvests),
    rests: steps.map(({ rests }) => rests),
  };
}

const WEEK = 7;
const SHOP = 2;
const SHOP_DAY = 2;
/** What the table says of one week. */
export function stepsOf({ packs, dayOf, harvests, rests }: Packs, week: number): Steps {
  const orders: Order[] = [];
  for (let offer = 0; offer < OFFERS.length; offer += 1) {
    const at = placeOf(week, offer);
    const n = packs[at] as number;
    if (n > 0) orders.push({ day: week * WEEK + (dayOf[at] as number), offer, packs: n });
  }
  return { orders, harvests: harvests[week] ?? [], rests: rests[week] ?? [] };
}
