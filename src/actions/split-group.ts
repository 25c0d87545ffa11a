/** Takes some heads out of a group, into one new record or into single animals; the record stays with the group. */
import { z } from 'zod';
import { type Problem, problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { sameShelf } from '../husbandry/walk.ts';
import { type AnimalRow, lastMealTaken, nextCodes, rowsOf } from '../store/index.ts';
import { beyondKind } from './animal-fields.ts';
import { asOf, formId, gaugeMm, heads, oneOf, someText, text } from './fields.ts';
import { findAnimal, findRoom } from './find.ts';
import { historyOf } from './import-history.ts';
import { action, type Scene } from './perform.ts';
import { unlessChanged } from './unless-changed.ts';

const schema = z.strictObject({
  animal: someText,
  heads,
  into: oneOf(['group', 'singles']),
  /** Name of the new record, or the word the single names are numbered from; by default the group's. */
  name: text.default(''),
  /** Measured today; by default the group's size. */
  gaugeMm: gaugeMm.optional(),
  room: someText.optional(),
  shelf: text.optional(),
  asOf,
  formId,
});
type Given = z.output<typeof schema>;

export const splitGroup = action({
  verb: 'split-group',
  schema,
  body: async (scene, given) => {
    const group = await findAnimal(scene.tx, given.animal);
    if (!group.ok) return group;
    const { kind } = group.value;
    const { gaugeMm: size } = given;
    const wrong =
      tooMany(group.value, given) ?? (size === undefined ? null : beyondKind(scene, { kind, gaugeMm: size }));
    if (wrong !== null) return err(wrong);
    const free = await unlessChanged(scene.tx, { noun: 'animal', code: given.animal, asOf: given.asOf });
    if (!free.ok) return free;
    const taken = await takenOut(scene, group.value, given);
    if (!taken.ok) return taken;
    const fed = await scene.tx.ask(lastMealTaken(given.animal, scene.now.today));
    return ok({
      summary: `Took ${given.heads} out of ${given.animal}`,
      puts: { animal: [{ ...group.value, count: group.value.count - given.heads }, ...taken.value] },
      entries: taken.value.flatMap(({ code }) => historyOf(code, { lastFed: fed })),
      reply: { animals: taken.value.map(({ code }) => code) },
    });
  },
});

/** A record of its own for each of so many at most. */
const MOST_SINGLES = 1000;

function tooMany({ code, count }: AnimalRow, { heads: wanted, into }: Given): Problem | null {
  if (count === 1) return problem('not-a-group', `${code} is one animal, not a group.`, 'heads');
  if (into === 'singles' && wanted > MOST_SINGLES)
    return problem(
      'too-many',
      `"${wanted}" are too many to be kept singly: take out ${MOST_SINGLES} at a time.`,
      'heads',
    );
  return wanted < count
    ? null
    : problem(
        'too-many',
        `"${wanted}" leaves nobody of the ${count}: take out at most ${count - 1}. The last one keeps this record.`,
        'heads',
      );
}

/** The new rows: the group's own facts, at a size and a place of their own where they are said. */
async function takenOut(scene: Scene, group: AnimalRow, given: Given): Promise<Result<readonly AnimalRow[]>> {
  const room = await findRoom(scene.tx, given.room ?? group.room);
  if (!room.ok) return room;
  const records = given.into === 'group' ? 1 : given.heads;
  const codes = await nextCodes(scene.tx, 'A', records);
  const names = await namesFor(scene, group, { ...given, records });
  const size = given.gaugeMm === undefined ? {} : measured(given.gaugeMm, scene);
  const place = { room: room.value.code, shelf: given.shelf ?? group.shelf };
  return ok(
    codes.map((code, at) => ({
      ...group,
      ...size,
      code,
      name: names[at]!,
      count: given.heads / records,
      ...place,
      shelfPosition: sameShelf(place, group) ? group.shelfPosition : 0,
      label: '',
      notes: '',
      cameFrom: group.code,
    })),
  );
}

const measured = (mm: number, { now }: Scene) => ({
  gaugeMm: mm,
  gaugeDay: now.today,
  gaugeAssumed: false,
});

const NUMBER = /^\d{1,9}$/;

/** One new group may have a name of its own; singles are numbered, past the numbers in use. */
async function namesFor(
  { tx }: Scene,
  group: AnimalRow,
  { into, name, records }: Given & { readonly records: number },
): Promise<readonly string[]> {
  if (into === 'group' && name !== '') return [name];
  const stem = name === '' ? group.name || group.code : name;
  const named = await tx.ask(
    rowsOf('animal', { where: 'substr(name, 1, ?) = ?', args: [stem.length + 1, `${stem} `] }),
  );
  const last = named
    .map((row) => row.name.slice(stem.length + 1))
    .filter((number) => NUMBER.test(number))
    .reduce((most, number) => Math.max(most, Number(number)), into === 'group' ? 1 : 0);
  return Array.from({ length: records }, (_, at) => `${stem} ${last + 1 + at}`);
}
