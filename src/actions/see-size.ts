/** Records which size the prey in a bin looks to be. */
import { z } from 'zod';
import { err } from '../husbandry/result.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, preyMm, someText } from './fields.ts';
import { swapped } from './parse.ts';
import { action } from './perform.ts';

export const seeSize = action({
  verb: 'see-size',
  schema: z.strictObject({ bin: someText, fromMm: preyMm, toMm: preyMm, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async (scene, { bin, fromMm, toMm, day }) => {
    const backwards = swapped(fromMm, toMm, 'fromMm');
    if (backwards !== null) return err(backwards);
    const entry = { day: day ?? scene.now.today, kind: 'size seen', bin, fromMm, toMm } as const;
    return observe(scene, entry, `${bin} looks ${fromMm} to ${toMm} mm`);
  },
});
