/** Three ways to buy by rule: a standing order, reordering at a cover, a weekly base stock. */
import type { Buyer, Log, Order } from '../plan-worlds/log.ts';
import { cartOf, packsFor, shopFor } from './cart.ts';
import { type Size, sizesOf } from './notebook.ts';

/** Offers a keeper buys by, one for each size. */
export type Menu = readonly number[];

interface Common {
  readonly menu: Menu;
  /** Days that must be here until a parcel comes, or the shop is gone to; 0: never. */
  readonly shopDays: number;
}

/** The same packs every so many weeks, worked out anew each quarter. */
export interface Standing extends Common {
  readonly rule: 'standing';
  readonly everyWeeks: number;
  readonly times: number;
}

/** When the cover of a size falls below so many days, order up to so many. */
export interface Reorder extends Common {
  readonly rule: 'reorder';
  readonly belowDays: number;
  readonly upToDays: number;
  /** Fill up the other sizes of the same parcel too. */
  readonly together: boolean;
}

/** Every Sunday order up to so many times the mean of lead time and week; more for the fragile. */
export interface BaseStock extends Common {
  readonly rule: 'base stock';
  readonly times: number;
  readonly fragileTimes: number;
}

export type Rule = Standing | Reorder | BaseStock;

const REVISED_WEEKS = 13;
const LEAD_DAYS = 4;
const WEEK = 7;

export function buyerBy(rule: Rule): Buyer {
  const packs =
    rule.rule === 'standing' ? standing(rule) : rule.rule === 'reorder' ? reorder(rule) : baseStock(rule);
  return (log) => {
    const sizes = sizesOf(log, rule.menu);
    const orders: Order[] = [...cartOf(log, sizes, packs(log, sizes)), ...shopFor(log, sizes, rule.shopDays)];
    return { orders, harvests: [], rests: [] };
  };
}

type Packs = (log: Log, sizes: readonly Size[]) => number[];

const weekOf = ({ day }: Log): number => Math.round(day / WEEK);

function standing({ everyWeeks, times }: Standing): Packs {
  let fixed: number[] = [];
  return (log, sizes) => {
    const week = weekOf(log);
    if (fixed.length === 0 || week % REVISED_WEEKS === 0)
      fixed = sizes.map(({ offer, daily }) => packsFor(offer, times * everyWeeks * WEEK * daily));
    return week % everyWeeks === 0 ? fixed : sizes.map(() => 0);
  };
}

const coverOf = ({ here, coming, daily }: Size): number =>
  daily > 0 ? (here + coming) / daily : Number.POSITIVE_INFINITY;

function reorder({ belowDays, upToDays, together }: Reorder): Packs {
  return (_, sizes) => {
    const low = sizes.map((size) => coverOf(size) < belowDays);
    const any = low.includes(true);
    return sizes.map((size, k) =>
      any && (low[k] || together)
        ? packsFor(size.offer, Math.max(0, upToDays * size.daily - size.here - size.coming))
        : 0,
    );
  };
}

function baseStock({ times, fragileTimes }: BaseStock): Packs {
  return (_, sizes) =>
    sizes.map(({ offer, daily, fragile, here, coming }) => {
      const more = 1 + (fragileTimes - 1) * fragile;
      return packsFor(offer, Math.max(0, times * more * daily * (LEAD_DAYS + WEEK) - here - coming));
    });
}
