/** Takes a bin, colony or cup out of use. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { formId, someText } from './fields.ts';
import { findBin } from './find.ts';
import { nothingExpected } from './in-use.ts';
import { action } from './perform.ts';

export const closeBin = action({
  verb: 'close-bin',
  schema: z.strictObject({ bin: someText, formId }),
  body: async ({ tx, facts }, { bin: code }) => {
    const bin = await findBin(tx, code);
    if (!bin.ok) return bin;
    const free = await nothingExpected(tx, facts, bin.value);
    if (!free.ok) return free;
    return ok({
      summary: `Took bin ${bin.value.name} (${code}) out of use`,
      puts: { bin: [{ ...bin.value, closed: true }] },
      reply: { bin: code },
    });
  },
});
