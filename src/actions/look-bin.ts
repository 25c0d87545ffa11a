/** Records how full a bin looks. */

import { z } from 'zod';
import type { Level } from '../husbandry/larder/index.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, oneOf, someText } from './fields.ts';
import { action } from './perform.ts';

export const LEVELS = ['none', 'a few', 'a quarter', 'half', 'full'] as const satisfies readonly Level[];

export const lookBin = action({
  verb: 'look-bin',
  schema: z.strictObject({ bin: someText, level: oneOf(LEVELS), day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, level, day }) =>
    observe(
      scene,
      { day: day ?? scene.now.today, kind: 'looked', bin, details: { level } },
      `${bin} looked: ${level}`,
    ),
});
