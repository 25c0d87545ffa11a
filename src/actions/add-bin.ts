/** Adds a bin, with what is in it now if that is known. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import type { EntryInput } from '../store/index.ts';
import { newBin, newBinRow } from './bin-fields.ts';
import { civilDay, formId, headsOrNone } from './fields.ts';
import { inOrder, lot } from './lot-fields.ts';
import { action } from './perform.ts';

/** Of the adults in it, where they were told apart. */
const sexes = z.strictObject({ females: headsOrNone, males: headsOrNone });

export const addBin = action({
  verb: 'add-bin',
  schema: newBin.extend({ lot: lot.optional(), sexes: sexes.optional(), day: civilDay.optional(), formId }),
  pastDays: ['day'],
  body: async (scene, { formId: _, lot: found, sexes: told, day: seen, ...given }) => {
    const bin = await newBinRow(scene, given);
    if (!bin.ok) return bin;
    const content = found === undefined ? null : inOrder(found);
    if (content !== null && !content.ok) return content;
    const { code, name } = bin.value;
    const day = seen ?? scene.now.today;
    const entries: readonly EntryInput[] = [
      ...(content === null ? [] : [{ day, kind: 'counted', bin: code, ...content.value } as const]),
      ...(told === undefined ? [] : [{ day, kind: 'sexed', bin: code, details: told } as const]),
    ];
    return ok({
      summary: `Added bin ${name} (${code})`,
      puts: { bin: [bin.value] },
      entries,
      reply: { bin: code },
    });
  },
});
