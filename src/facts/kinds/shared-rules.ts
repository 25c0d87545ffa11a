/** Words and ranges that several groups' rules share. */
import type { MoultCycle } from '../../husbandry/animals/index.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { memory, practice, published } from '../sourced.ts';
import { cycle, type Range } from './rule-draft.ts';

const NEED_UNIT = 'prey mass per own mass and week';

export const careItems = (least: number, most: number): Sourced<Range> =>
  practice([least, most], 'items', undefined, 'carePages');
export const careDays = (least: number, most: number): Sourced<Range> =>
  practice([least, most], 'days', undefined, 'carePages');
export const keptItems = (least: number, most: number): Sourced<Range> => practice([least, most], 'items');
export const keptDays = (least: number, most: number): Sourced<Range> => practice([least, most], 'days');
export const ownItems = (least: number, most: number): Sourced<Range> => memory([least, most], 'items');
export const ownDays = (least: number, most: number): Sourced<Range> => memory([least, most], 'days');
export const ownNeed = (least: number, most: number): Sourced<Range> => memory([least, most], NEED_UNIT);

/** What hunting spiders kill in the wild, all sizes together. */
export const wildSpiderNeed: Sourced<Range> = published(
  [0.31, 0.61],
  NEED_UNIT,
  'framenau2000',
  'derived: wild spiders of all sizes, with half of the killed mass eaten',
);

/** A moult cycle of our own starting length with a published or practised growth factor. */
export const ownCycle = (days: number, factor: Sourced): MoultCycle => cycle(memory(days, 'days'), factor);

/** Przibram: mass doubles at a moult, length grows by the cube root of 2. */
export const przibram: Sourced = published(1.26, '1', 'franckeSissom1984', "Przibram's rule for arthropods");
