/** Records that the first grown animals were seen in a bin. */
import { z } from 'zod';
import { observe } from './bin-fields.ts';
import { civilDay, formId, someText } from './fields.ts';
import { action } from './perform.ts';

export const seeAdults = action({
  verb: 'see-adults',
  schema: z.strictObject({ bin: someText, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, day }) =>
    observe(scene, { day: day ?? scene.now.today, kind: 'first adults', bin }, `First adults in ${bin}`),
});
