/** Records the mass of all prey in a bin. */
import { z } from 'zod';
import { MG_PER_GRAM } from '../husbandry/units.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, massMg, someText } from './fields.ts';
import { action } from './perform.ts';

export const weighBin = action({
  verb: 'weigh-bin',
  schema: z.strictObject({ bin: someText, massMg, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: (scene, { bin, massMg: mass, day }) =>
    observe(
      scene,
      { day: day ?? scene.now.today, kind: 'weighed', bin, details: { massMg: mass } },
      `Weighed ${bin}: ${mass / MG_PER_GRAM} g`,
    ),
});
