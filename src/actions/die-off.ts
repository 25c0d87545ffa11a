/** Records a die-off: so many are left alive. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err } from '../husbandry/result.ts';
import { observe } from './bin-fields.ts';
import { civilDay, formId, headsOrNone, someText } from './fields.ts';
import { findBin } from './find.ts';
import { action } from './perform.ts';

export const dieOff = action({
  verb: 'die-off',
  schema: z.strictObject({ bin: someText, left: headsOrNone, day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async (scene, { bin: code, left, day }) => {
    const bin = await findBin(scene.tx, code);
    if (!bin.ok) return bin;
    const { role, name } = bin.value;
    if (role === 'cup')
      return err(problem('is-a-cup', `${name} is a cup: say that it looks crashed.`, 'bin'));
    if (role === 'frozen')
      return err(problem('is-frozen', `What is in ${name} is dead already; count or discard it.`, 'bin'));
    return observe(
      scene,
      { day: day ?? scene.now.today, kind: 'died off', bin: code, heads: left },
      `Die-off in ${code}: ${left} left`,
    );
  },
});
