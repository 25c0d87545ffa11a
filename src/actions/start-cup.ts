/** Starts a fly cup: a new bin, begun on a day. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { newBinRow } from './bin-fields.ts';
import { civilDay, flag, formId, someText, text } from './fields.ts';
import { findSpecies } from './find.ts';
import { action } from './perform.ts';

export const startCup = action({
  verb: 'start-cup',
  schema: z.strictObject({
    species: someText,
    room: someText,
    name: text.default(''),
    day: civilDay.optional(),
    demo: flag.default(false),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { formId: _, day, ...given }) => {
    const species = findSpecies(scene.facts, given.species);
    if (!species.ok) return species;
    if (species.value.cup === null)
      return err(problem('not-for-cups', `"${given.species}" is not raised in cups.`, 'species'));
    const cup = await newBinRow(scene, {
      ...given,
      role: 'cup',
      capacity: null,
      keepAdults: false,
      notes: '',
      space: null,
      origin: '',
    });
    if (!cup.ok) return cup;
    const { code, name } = cup.value;
    const started = {
      day: day ?? scene.now.today,
      kind: 'cup looked',
      bin: code,
      details: { look: 'started' },
    } as const;
    return ok({
      summary: `Started cup ${name} (${code})`,
      puts: { bin: [cup.value] },
      entries: [started],
      reply: { bin: code },
    });
  },
});
