/** The fields of an animal as they are entered, for adding, editing and importing. */

import { z } from 'zod';
import { type LifeStage, tooLarge } from '../husbandry/animals/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import type { Problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { type AnimalRow, nextCodes } from '../store/index.ts';
import { civilDay, flag, gaugeMm, heads, longText, oneOf, position, someText, text } from './fields.ts';
import { findKind, findRoom } from './find.ts';
import type { Scene } from './perform.ts';
import { said } from './said.ts';

const STAGES = [
  'young',
  'juvenile',
  'subadult',
  'adult',
  'mature male',
] as const satisfies readonly LifeStage[];
export const sex = oneOf(['male', 'female', 'unsexed']);
const stageOverride = z.union([oneOf(STAGES), z.literal('').transform(() => null), z.null()], {
  error: ({ input }) => `"${String(input)}" is not one of: ${STAGES.join(', ')}.`,
});

/** What must or may be said of a new animal. */
export const newAnimal = z.strictObject({
  name: text.default(''),
  kind: someText,
  count: heads.default(1),
  sex: sex.default('unsexed'),
  matured: flag.default(false),
  gaugeMm,
  gaugeDay: civilDay.optional(),
  gaugeAssumed: flag.default(false),
  room: someText,
  shelf: text.default(''),
  shelfPosition: position.default(0),
  stageOverride: stageOverride.default(null),
  label: text.default(''),
  notes: longText.default(''),
  demo: flag.default(false),
  hatchedDay: civilDay.optional(),
  hereSince: civilDay.optional(),
});

/** A day, or null for one that is no longer thought known. */
const knownDay = z.union([civilDay, z.null()]).optional();

/** What may be changed of an animal; what is not named stays. */
export const animalChanges = z.strictObject({
  name: text.optional(),
  kind: someText.optional(),
  count: heads.optional(),
  sex: sex.optional(),
  matured: flag.optional(),
  gaugeMm: gaugeMm.optional(),
  gaugeAssumed: flag.optional(),
  room: someText.optional(),
  shelf: text.optional(),
  shelfPosition: position.optional(),
  stageOverride: stageOverride.optional(),
  label: text.optional(),
  notes: longText.optional(),
  hatchedDay: knownDay,
  hereSince: knownDay,
  leftReason: oneOf(['sold', 'given away', 'lost']).optional(),
});
export type AnimalChanges = z.output<typeof animalChanges>;

const NEWLY_HERE = { leftReason: null, leftDay: null, cameFrom: null, lentTo: null, backDay: null } as const;

/** Rows of new animals, with codes of their own. */
export async function newAnimalRows(
  scene: Scene,
  given: readonly z.output<typeof newAnimal>[],
): Promise<Result<readonly AnimalRow[]>> {
  const places = await placesOf(scene, given);
  if (!places.ok) return places;
  const large = given.map((each) => beyondKind(scene, each)).find((found) => found !== null);
  if (large !== undefined) return err(large);
  const codes = await nextCodes(scene.tx, 'A', given.length);
  const rows = given.map(({ gaugeDay, room, hatchedDay, hereSince, ...animal }, at) => ({
    ...animal,
    code: codes[at]!,
    gaugeDay: gaugeDay ?? scene.now.today,
    room: places.value.get(room)!,
    hatchedDay: hatchedDay ?? null,
    hereSince: hereSince ?? null,
    ...NEWLY_HERE,
  }));
  return ok(rows);
}

interface Placed {
  readonly kind?: string | undefined;
  readonly room?: string | undefined;
}

/** Codes of the rooms named, by the word used; a Problem for a room or kind that is not known. */
async function placesOf(
  { tx, facts }: Scene,
  given: readonly Placed[],
): Promise<Result<Map<string, string>>> {
  for (const kind of new Set(given.flatMap((each) => each.kind ?? []))) {
    const known = findKind(facts, kind);
    if (!known.ok) return known;
  }
  const rooms = new Map<string, string>();
  for (const word of new Set(given.flatMap((each) => each.room ?? []))) {
    const room = await findRoom(tx, word);
    if (!room.ok) return room;
    rooms.set(word, room.value.code);
  }
  return ok(rooms);
}

/** Rows with changes made to them. */
export async function changedAnimalRows(
  scene: Scene,
  changes: readonly { readonly row: AnimalRow; readonly fields: AnimalChanges }[],
): Promise<Result<readonly AnimalRow[]>> {
  const places = await placesOf(
    scene,
    changes.map(({ fields }) => fields),
  );
  if (!places.ok) return places;
  const rows = changes.map(({ row, fields }) =>
    changedRow(row, fields, { rooms: places.value, today: scene.now.today }),
  );
  const large = rows
    .map((row, at) => beyondAnew(scene, row, changes[at]!.row))
    .find((found) => found !== null);
  return large === undefined ? ok(rows) : err(large);
}

/** A size or a kind that was not written down before. */
const beyondAnew = (scene: Scene, row: AnimalRow, before: AnimalRow): Problem | null =>
  row.gaugeMm === before.gaugeMm && row.kind === before.kind ? null : beyondKind(scene, row);

/** What is wrong with a size no animal of the kind can have; null where it can be. */
export function beyondKind({ facts }: Scene, { kind: code, gaugeMm: size }: Sized): Problem | null {
  const kind = facts.kinds.get(code);
  return kind === undefined ? null : tooLarge(kind, size);
}
type Sized = Pick<AnimalRow, 'kind' | 'gaugeMm'>;

interface Setting {
  readonly rooms: ReadonlyMap<string, string>;
  readonly today: DayNumber;
}

/** A gauge that differs was measured today; who moves to another shelf has no place there yet; who leaves leaves today. */
function changedRow(row: AnimalRow, fields: AnimalChanges, { rooms, today }: Setting): AnimalRow {
  const { room, ...others } = fields;
  const measured = fields.gaugeMm !== undefined && fields.gaugeMm !== row.gaugeMm;
  return {
    ...row,
    ...(measured ? { gaugeDay: today, gaugeAssumed: false } : {}),
    ...(moves(row, fields, rooms) ? { shelfPosition: 0 } : {}),
    ...said(others),
    ...(room === undefined ? {} : { room: rooms.get(room)! }),
    ...(fields.leftReason === undefined ? {} : { leftDay: today }),
  };
}

const moves = (row: AnimalRow, { room, shelf }: AnimalChanges, rooms: Setting['rooms']): boolean =>
  (shelf !== undefined && shelf !== row.shelf) || (room !== undefined && rooms.get(room) !== row.room);
