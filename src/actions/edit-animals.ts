/** Changes what is written of many animals as one act: where they live, their rule, their kind, or that they left. */
import type { z } from 'zod';
import type { DayNumber } from '../husbandry/calendar.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { AnimalRow, EntryInput } from '../store/index.ts';
import { animalChanges, changedAnimalRows } from './animal-fields.ts';
import { animalCodes, chosenAnimals } from './chosen-animals.ts';
import { editedWords } from './edited-words.ts';
import { asOf, civilDay, formId, oneOf } from './fields.ts';
import { action, type Scene } from './perform.ts';

const schema = animalChanges.pick({ kind: true, room: true, shelf: true, stageOverride: true }).extend({
  animals: animalCodes,
  leftReason: oneOf(['died', 'sold', 'given away', 'lost']).optional(),
  /** Day they left; by default today. */
  day: civilDay.optional(),
  asOf,
  formId,
});
export type Together = Omit<z.output<typeof schema>, 'animals' | 'asOf' | 'formId'>;

export const editAnimals = action({
  verb: 'edit-animals',
  schema,
  pastDays: ['day'],
  body: async (scene, { formId: _, animals, asOf: seen, ...given }) => {
    const rows = await chosenAnimals(scene, { animals, asOf: seen });
    if (!rows.ok) return rows;
    const written = await writtenTo(scene, rows.value, given);
    if (!written.ok) return written;
    const moved = written.value.filter((row, at) => JSON.stringify(row) !== JSON.stringify(rows.value[at]));
    if (moved.length === 0) return err(problem('nothing-changes', 'That is how it is already.'));
    const day = given.day ?? scene.now.today;
    return ok({
      summary: editedWords(moved, given, scene.facts),
      puts: { animal: moved },
      entries: given.leftReason === 'died' ? moved.map((row) => deathOf(row, day)) : [],
      reply: { changed: moved.length },
    });
  },
});

async function writtenTo(
  scene: Scene,
  rows: readonly AnimalRow[],
  { leftReason, day = scene.now.today, ...fields }: Together,
): Promise<Result<readonly AnimalRow[]>> {
  const changed = await changedAnimalRows(
    scene,
    rows.map((row) => ({ row, fields })),
  );
  if (!changed.ok || leftReason === undefined) return changed;
  return ok(changed.value.map((row) => ({ ...row, leftReason, leftDay: day })));
}

const deathOf = ({ code, count }: AnimalRow, day: DayNumber): EntryInput => ({
  day,
  kind: 'died',
  animal: code,
  heads: count,
});
