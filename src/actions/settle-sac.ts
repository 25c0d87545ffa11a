/** First feed: those of a sac's young that stay become a group of animals, and the sac is done. */
import { z } from 'zod';
import { ok } from '../husbandry/result.ts';
import { newAnimalRows } from './animal-fields.ts';
import { civilDay, formId, heads, someText, text } from './fields.ts';
import { action } from './perform.ts';
import { fastEnded, findOpenSac, notBeforeLaid } from './sac-dates.ts';

export const settleSac = action({
  verb: 'settle-sac',
  schema: z.strictObject({
    change: someText,
    day: civilDay,
    /** Young that stay here. */
    count: heads,
    name: text.default(''),
    shelf: text.default(''),
    formId,
  }),
  pastDays: ['day'],
  body: async (scene, { change, day, count, name, shelf }) => {
    const found = await findOpenSac(scene.tx, change);
    if (!found.ok) return found;
    const { row, sac, words } = found.value;
    const after = notBeforeLaid(sac, day);
    if (!after.ok) return after;
    const young = await newAnimalRows(scene, [youngOf({ ...row, count, name, shelf })]);
    if (!young.ok) return young;
    const { code } = young.value[0]!;
    const done = { ...sac, settled: day, counted: true, motherFasts: fastEnded(sac.motherFasts, day) };
    return ok({
      summary: `The young of the ${words} eat: ${count} kept as ${name === '' ? 'a group' : name} (${code})`,
      puts: { animal: young.value, planned_change: [{ ...row, sac: done }] },
      reply: { animal: code },
    });
  },
});

interface Young {
  readonly animalKind: string;
  readonly count: number;
  readonly gaugeMm: number;
  readonly room: string;
  readonly name: string;
  readonly shelf: string;
  readonly demo: boolean;
}

const youngOf = ({ animalKind, count, gaugeMm, room, name, shelf, demo }: Young) => ({
  name,
  kind: animalKind,
  count,
  sex: 'unsexed' as const,
  matured: false,
  gaugeMm,
  gaugeAssumed: true,
  room,
  shelf,
  shelfPosition: 0,
  stageOverride: null,
  label: '',
  notes: '',
  demo,
});
