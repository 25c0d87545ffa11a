/** Culls prey for want of room: into the frozen stock, to be fed later, or humanely and thrown away. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { plural, sentenceCase } from '../husbandry/words.ts';
import type { BinRow } from '../store/index.ts';
import { civilDay, flag, formId, heads, oneOf, preyMm, someText, text } from './fields.ts';
import { findBin, findSpecies } from './find.ts';
import { frozenStock, movedIn, placeFor } from './going-in.ts';
import { inOrder } from './lot-fields.ts';
import { action, type Scene } from './perform.ts';
import { takeOut } from './taking-out.ts';

export const HOW_CULLED = ['frozen', 'humanely'] as const;

export const cull = action({
  verb: 'cull',
  schema: z.strictObject({
    bin: someText,
    heads,
    /** Both, or neither for prey of all sizes. */
    fromMm: preyMm.optional(),
    toMm: preyMm.optional(),
    how: oneOf(HOW_CULLED),
    /** The frozen stock it goes into; '' for the species' own. */
    to: text.default(''),
    day: civilDay.optional(),
    sure: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin: code, heads: many, fromMm, toMm, how, to, day: on, sure }) => {
    const from = await findBin(scene.tx, code);
    if (!from.ok) return from;
    if (from.value.role === 'frozen')
      return err(problem('is-frozen', `What is in ${from.value.name} is dead already; throw it out.`, 'bin'));
    const sized = fromMm === undefined || toMm === undefined ? null : { fromMm, toMm };
    const size = sized === null ? ok(null) : inOrder({ heads: many, ...sized });
    if (!size.ok) return size;
    const day = on ?? scene.now.today;
    const out = { bin: from.value, day, heads: many, lengths: () => sized, sure } as const;
    const taken = await takeOut(scene, { ...out, kind: 'culled' });
    if (!taken.ok) return taken;
    if (how === 'humanely')
      return ok({ summary: `Culled ${many} of ${code}`, entries: taken.value.entries, reply: { bin: code } });
    const into = await freezer(scene, from.value, to);
    if (!into.ok) return into;
    const { bin, made } = into.value;
    return ok({
      summary: `Froze ${many} of ${code} into ${bin.code}`,
      puts: { bin: made },
      entries: [...taken.value.entries, ...movedIn(bin.code, day, taken.value.lots)],
      reply: { bin: bin.code },
    });
  },
});

/** The frozen stock named, that of the species, or a new one. */
async function freezer(scene: Scene, from: BinRow, to: string) {
  const species = findSpecies(scene.facts, from.species);
  if (!species.ok) return species;
  const name = `Frozen ${plural(species.value.commonName)}`;
  const code = to === '' ? await frozenStock(scene, from) : to;
  return placeFor(scene, {
    from: { ...from, role: 'frozen' },
    to: code,
    role: 'frozen',
    name: sentenceCase(name),
  });
}
