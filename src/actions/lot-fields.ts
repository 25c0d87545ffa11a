/** A lot of prey as it is entered: heads, and the least and greatest length. */

import { z } from 'zod';
import type { Lot } from '../husbandry/larder/index.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { heads, preyMm } from './fields.ts';
import { swapped } from './parse.ts';

export const lot = z.strictObject({ heads, fromMm: preyMm, toMm: preyMm });

/** The lot, or a Problem when its lengths run backwards. */
export function inOrder({ heads: many, fromMm, toMm }: Lot): Result<Lot> {
  const backwards = swapped(fromMm, toMm, 'fromMm');
  return backwards === null ? ok({ heads: many, fromMm, toMm }) : err(backwards);
}
