/** Records prey taken out of a bin and not fed: dead, culled or given away. */
import { z } from 'zod';
import { observe } from './bin-fields.ts';
import { civilDay, formId, heads, someText } from './fields.ts';
import { action } from './perform.ts';

export const discard = action({
  verb: 'discard',
  schema: z.strictObject({ bin: someText, heads, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, heads: many, day }) =>
    observe(
      scene,
      { day: day ?? scene.now.today, kind: 'discarded', bin, heads: many },
      `Discarded ${many} from ${bin}`,
    ),
});
