/** Records the dead taken out of a bin. */
import { z } from 'zod';
import { observe } from './bin-fields.ts';
import { civilDay, formId, heads, someText } from './fields.ts';
import { action } from './perform.ts';

export const foundDead = action({
  verb: 'found-dead',
  schema: z.strictObject({ bin: someText, heads, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, heads: many, day }) =>
    observe(
      scene,
      { day: day ?? scene.now.today, kind: 'found dead', bin, heads: many },
      `Took ${many} dead out of ${bin}`,
    ),
});
