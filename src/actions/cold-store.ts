/** Puts a bin into the cold its species keeps in, where it grows no further. */
import { z } from 'zod';
import { coldUntil } from '../husbandry/larder/index.ts';
import type { PreySpecies } from '../husbandry/prey/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok } from '../husbandry/result.ts';
import { spokenDay } from '../husbandry/supply/index.ts';
import type { TempC } from '../husbandry/units.ts';
import { plural, sentenceCase } from '../husbandry/words.ts';
import { civilDay, formId, someText, tempC } from './fields.ts';
import { findBin, findSpecies } from './find.ts';
import { action } from './perform.ts';
import { placedAt } from './placing.ts';

export const coldStore = action({
  verb: 'cold-store',
  schema: z.strictObject({
    bin: someText,
    /** Of the fridge; left out: the middle of the range its species keeps in. */
    tempC: tempC.optional(),
    day: civilDay.optional(),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { bin: code, tempC: wanted, day = scene.now.today }) => {
    const bin = await findBin(scene.tx, code);
    if (!bin.ok) return bin;
    const species = findSpecies(scene.facts, bin.value.species);
    if (!species.ok) return species;
    const store = species.value.coldStore;
    if (store === undefined) return err(keepsNot(species.value));
    const cold = wanted ?? (store.fromC.value + store.toC.value) / 2;
    if (cold < store.fromC.value || cold > store.toC.value) return err(wrongCold(species.value, cold));
    const after = { room: bin.value.room, ownC: { dayC: cold, nightC: cold } };
    const placed = await placedAt(scene, bin.value, { after, day });
    if (!placed.ok) return placed;
    return ok({
      summary: `Put ${code} in the cold at ${cold} °C; it keeps to ${spokenDay(coldUntil(day, store))}`,
      puts: { bin: [placed.value.row] },
      entries: placed.value.entries,
      reply: { bin: code },
    });
  },
});

/** Why a species is not put in the cold. */
function keepsNot({ commonName, spans }: PreySpecies): Problem {
  const least = Math.max(...spans.map(({ lowerThresholdC }) => lowerThresholdC.value));
  const sentence = `${sentenceCase(plural(commonName))} are not known to keep in the cold: below ${least} °C nothing develops, and nobody has said how long they live there.`;
  return problem('keeps-not', sentence, 'bin');
}

function wrongCold({ commonName, coldStore: store }: PreySpecies, cold: TempC): Problem {
  const [from, to] = [store?.fromC.value, store?.toC.value];
  const sentence = `"${cold}" °C is not a cold ${plural(commonName)} keep in; give a temperature from ${from} to ${to} °C.`;
  return problem('cold-out-of-range', sentence, 'tempC');
}
