/** The fields of a bin as they are entered, and the line of the journal an observation of one becomes. */

import { z } from 'zod';
import type { BinRole, Space } from '../husbandry/larder/index.ts';
import type { PreySpecies } from '../husbandry/prey/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { plural, sentenceCase } from '../husbandry/words.ts';
import { type BinRow, type EntryInput, nextCodes } from '../store/index.ts';
import { flag, heads, longText, oneOf, someText, text } from './fields.ts';
import { findBin, findRoom, findSpecies } from './find.ts';
import type { Body, Scene } from './perform.ts';

const ROLES = ['holding', 'colony', 'cup', 'frozen'] as const satisfies readonly BinRole[];
export const role = oneOf(ROLES);
/** Heads when full, or nothing said. */
export const capacity = z.union([z.literal('').transform(() => null), z.null(), heads], {
  error: ({ input }) =>
    `"${String(input)}" is not a whole number of heads; leave it empty if you do not know.`,
});

/** How large a bin is, or nothing said. */
export const space = z.union([
  z.null(),
  z.strictObject({ by: oneOf(['area', 'volume', 'medium']), units: z.number().positive() }),
]);

const MEASURES: Readonly<Record<Space['by'], string>> = {
  area: 'their surface, egg cartons included: say it in dm2',
  volume: 'the volume of the bin: say it in litres',
  medium: 'their medium: say it in grams',
};

/** A size in the measure the prey is crowded by, or none; else a Problem that says which would be right. */
export function fittingSpace(species: PreySpecies, said: Space | null): Result<Space | null> {
  const { crowding, commonName } = species;
  if (said === null || crowding?.by === said.by) return ok(said);
  const prey = sentenceCase(plural(commonName));
  const sentence = crowding
    ? `${prey} are crowded by ${MEASURES[crowding.by]}.`
    : `It is not known how much room ${plural(commonName)} need: say how many heads fill the bin instead.`;
  return err(problem('other-space', sentence, 'space'));
}

export const newBin = z.strictObject({
  name: text.default(''),
  species: someText,
  role: role.default('holding'),
  room: someText,
  capacity: capacity.default(null),
  keepAdults: flag.default(false),
  space: space.default(null),
  origin: text.default(''),
  notes: longText.default(''),
  demo: flag.default(false),
});

/** The row of a new bin, with a code of its own; a bin without a name is called by its prey. */
export async function newBinRow(scene: Scene, given: z.output<typeof newBin>): Promise<Result<BinRow>> {
  const species = findSpecies(scene.facts, given.species);
  if (!species.ok) return species;
  const fits = fittingSpace(species.value, given.space);
  if (!fits.ok) return fits;
  const room = await findRoom(scene.tx, given.room);
  if (!room.ok) return room;
  const [code] = await nextCodes(scene.tx, 'B', 1);
  const name = given.name === '' ? species.value.commonName : given.name;
  return ok({
    ...given,
    name,
    room: room.value.code,
    code: code!,
    closed: false,
    ownC: null,
    quarantineUntil: null,
    restsUntil: null,
  });
}

/** Writes one observation of a bin in use. */
export async function observe(
  scene: Scene,
  entry: EntryInput & { bin: string },
  summary: string,
): Promise<Result<Body<null>>> {
  const bin = await findBin(scene.tx, entry.bin);
  return bin.ok ? ok({ summary, entries: [entry], reply: null }) : bin;
}
