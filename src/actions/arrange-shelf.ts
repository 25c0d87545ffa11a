/** Arranges the animals on one shelf, and moves some of them to another. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { byCode, inWalkOrder, type ShelfPlace, sameShelf } from '../husbandry/walk.ts';
import { type AnimalRow, rowsOf } from '../store/index.ts';
import { formId, someText, text } from './fields.ts';
import { findRoom } from './find.ts';
import { action, type Scene } from './perform.ts';

const place = z.strictObject({ room: someText, shelf: text });
const moving = z.strictObject({ animals: z.array(someText).min(1), to: place });

export const arrangeShelf = action({
  verb: 'arrange-shelf',
  schema: z.strictObject({
    at: place,
    /** Codes in their new order; those not named come after. */
    animals: z.array(someText),
    moving: moving.optional(),
    formId,
  }),
  body: async (scene, { at, animals, moving: leaving }) => {
    const here = await animalsOn(scene, at);
    if (here.length === 0)
      return err(problem('empty-shelf', `Nobody lives on ${shelfWord(at)} any more.`, 'at'));
    const staying = here.filter(({ code }) => leaving?.animals.includes(code) !== true);
    const gone = await movedTo(scene, here, leaving);
    if (!gone.ok) return gone;
    const placed = numbered(inGivenOrder(staying, animals));
    return ok({
      summary: summaryOf(at, gone.value),
      puts: { animal: [...placed, ...gone.value] },
      reply: null,
    });
  },
});

/** In the keeper's own quotes: a shelf may look like a code. */
const shelfWord = ({ shelf }: ShelfPlace): string => (shelf === '' ? 'no shelf' : `“${shelf}”`);

function summaryOf(at: ShelfPlace, moved: readonly AnimalRow[]): string {
  const [first] = moved;
  if (first === undefined) return `Changed the order on ${shelfWord(at)}`;
  const who = moved.length === 1 ? first.code : `${moved.length} animals`;
  return `Moved ${who} from ${shelfWord(at)} to ${shelfWord(first)}`;
}

/** Who lives on a shelf now, in the order of the walk. */
async function animalsOn({ tx }: Scene, { room, shelf }: ShelfPlace): Promise<readonly AnimalRow[]> {
  const where = 'left_day is null and room = ? and shelf = ?';
  return inWalkOrder(await tx.ask(rowsOf('animal', { where, args: [room, shelf] })), []);
}

function inGivenOrder(rows: readonly AnimalRow[], codes: readonly string[]): readonly AnimalRow[] {
  const places = new Map(codes.map((code, at) => [code, at]));
  const placeOf = ({ code }: AnimalRow) => places.get(code) ?? codes.length;
  return rows.toSorted((a, b) => placeOf(a) - placeOf(b));
}

/** Positions from 1 on; in the order of their codes nobody is placed, so that newcomers fall in line. */
function numbered(rows: readonly AnimalRow[]): readonly AnimalRow[] {
  const byTheirCodes = rows.every(({ code }, at) => at === 0 || byCode(rows[at - 1]!.code, code) < 0);
  return rows.map((row, at) => ({ ...row, shelfPosition: byTheirCodes ? 0 : at + 1 }));
}

/** Those that move stand last on their new shelf until somebody places them. */
async function movedTo(
  { tx }: Scene,
  here: readonly AnimalRow[],
  leaving: z.output<typeof moving> | undefined,
): Promise<Result<readonly AnimalRow[]>> {
  if (leaving === undefined) return ok([]);
  const room = await findRoom(tx, leaving.to.room);
  if (!room.ok) return room;
  const to = { room: room.value.code, shelf: leaving.to.shelf };
  const rows = here.filter(({ code }) => leaving.animals.includes(code));
  if (rows.some((row) => sameShelf(row, to)))
    return err(problem('same-shelf', `"${to.shelf}" is the shelf they stand on.`, 'to'));
  return ok(rows.map((row) => ({ ...row, ...to, shelfPosition: 0 })));
}
