/** The settings each rule is tuned over. */
import { OFFERS } from '../plan-worlds/sellers.ts';
import type { Menu, Rule } from './rules.ts';

const offersOf = (...codes: readonly string[]): Menu =>
  codes.map((code) => OFFERS.findIndex((offer) => offer.code === code));

/** What a keeper may buy by, from near and far, quick prey and slow. */
const MENUS: readonly Menu[] = [
  offersOf('barn cricket pinhead', 'barn cricket 1/4 in', 'barn cricket 1/2 in', 'barn roach medium'),
  offersOf('barn cricket pinhead', 'barn cricket 1/4 in', 'barn cricket 1/2 in', 'mill cricket 3/4 in'),
  offersOf('barn cricket pinhead', 'barn cricket 1/4 in', 'barn roach medium', 'mill cricket 3/4 in'),
  offersOf('mill cricket 1/8 in', 'barn cricket 1/4 in', 'barn cricket 1/2 in', 'mill cricket 3/4 in'),
  offersOf('mill cricket 1/8 in', 'barn cricket 1/4 in', 'barn roach medium', 'mill roach large'),
  offersOf('mill cricket 1/8 in', 'mill cricket 3/4 in', 'mill roach large'),
];
const TIMES = [0.55, 0.7, 0.85, 1, 1.2, 1.5, 2, 2.6, 3.5, 5];
const SHOP_DAYS = [0, 3];

const standing = MENUS.flatMap((menu) =>
  [1, 2, 3].flatMap((everyWeeks) =>
    TIMES.map((times): Rule => ({ rule: 'standing', menu, everyWeeks, times, shopDays: 0 })),
  ),
);

const COVERS: readonly (readonly [number, number])[] = [
  [4, 17],
  [7, 14],
  [7, 21],
  [7, 28],
  [7, 35],
  [11, 18],
  [11, 25],
  [11, 35],
  [16, 24],
  [16, 35],
  [16, 50],
  [24, 45],
  [24, 60],
  [35, 60],
];

const reorder = MENUS.flatMap((menu) =>
  COVERS.flatMap(([belowDays, upToDays]) =>
    [true, false].flatMap((together) =>
      SHOP_DAYS.map((shopDays): Rule => ({ rule: 'reorder', menu, belowDays, upToDays, together, shopDays })),
    ),
  ),
);

const baseStock = MENUS.flatMap((menu) =>
  TIMES.flatMap((times) =>
    [1, 1.7].flatMap((fragileTimes) =>
      SHOP_DAYS.map((shopDays): Rule => ({ rule: 'base stock', menu, times, fragileTimes, shopDays })),
    ),
  ),
);

export const GRID: readonly Rule[] = [...standing, ...reorder, ...baseStock];

/** A rule in a few words. */
export function told(rule: Rule): string {
  const menu = rule.menu.map((offer) => OFFERS[offer]?.code).join(', ');
  const shop = rule.shopDays > 0 ? `, shop below ${rule.shopDays} days` : '';
  if (rule.rule === 'standing') return `standing, every ${rule.everyWeeks} weeks x ${rule.times} (${menu})`;
  if (rule.rule === 'base stock')
    return `base stock x ${rule.times}, fragile x ${rule.fragileTimes}${shop} (${menu})`;
  return `reorder below ${rule.belowDays} days up to ${rule.upToDays}${rule.together ? ' together' : ''}${shop} (${menu})`;
}
