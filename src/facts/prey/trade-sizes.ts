/** Size classes the trade sells crickets by; gaps between the trade's bands are closed half way by us. */
import type { SizeClass } from '../../husbandry/prey/index.ts';

/** Crickets too small for the adult class of the larger species. */
const upToHalfInch: readonly SizeClass[] = [
  { name: 'pinhead', fromMm: 2, toMm: 3 },
  { name: '1/8 in', aliases: ['micro', 'extra small'], fromMm: 3, toMm: 4.5 },
  { name: '1/4 in', aliases: ['small'], fromMm: 4.5, toMm: 7.5 },
  { name: '3/8 in', fromMm: 7.5, toMm: 10.5 },
  { name: '1/2 in', aliases: ['medium'], fromMm: 10.5, toMm: 15 },
];

export const cricketClasses: readonly SizeClass[] = [
  ...upToHalfInch,
  { name: '3/4 in', aliases: ['large'], fromMm: 15, toMm: 20 },
  { name: 'adult', fromMm: 20, toMm: 25 },
];

/** Banded crickets are full grown at 13 to 18 mm. */
export const bandedCricketClasses: readonly SizeClass[] = [
  ...upToHalfInch,
  { name: 'adult', aliases: ['large'], fromMm: 15, toMm: 18 },
];

export const TRADE_GAPS = 'nominal body lengths; gaps between the bands closed half way by us';
