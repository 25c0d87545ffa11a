/** Records how many females and males the grown animals of a bin are. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err } from '../husbandry/result.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, headsOrNone, someText } from './fields.ts';
import { action } from './perform.ts';

export const sexAdults = action({
  verb: 'sex-adults',
  schema: z.strictObject({
    bin: someText,
    females: headsOrNone,
    males: headsOrNone,
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin, females, males, day }) =>
    females + males === 0
      ? err(problem('none-told-apart', 'Say how many females and how many males you saw.', 'females'))
      : observe(
          scene,
          { day: day ?? scene.now.today, kind: 'sexed', bin, details: { females, males } },
          `Told ${females} females and ${males} males apart in ${bin}`,
        ),
});
