/** Cleans a bin out: a share of the eggs goes with the litter; a cup gets new medium. */
import { z } from 'zod';
import { PERCENT } from '../husbandry/units.ts';
import { observe } from './bin-fields.ts';
import { civilDay, figureWithin, formId, someText } from './fields.ts';
import { action } from './perform.ts';

const eggsLost = figureWithin({
  code: 'share-out-of-range',
  least: 0,
  most: PERCENT,
  wanted: 'a share of the eggs from 0 to 100 %, such as 50',
});

export const cleanOut = action({
  verb: 'clean-out',
  schema: z.strictObject({ bin: someText, eggsLost, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, eggsLost: percent, day }) =>
    observe(
      scene,
      {
        day: day ?? scene.now.today,
        kind: 'cleaned out',
        bin,
        details: { eggsLost: percent / PERCENT },
      },
      `Cleaned out ${bin}`,
    ),
});
