/** Arranges the order in which the shelves are walked; the order of their names is no arrangement at all. */
import { z } from 'zod';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import { byName, type ShelfPlace, sameShelf, shelvesAmong } from '../husbandry/walk.ts';
import { changedSince, settings } from '../store/index.ts';
import { asOf, formId, someText, text } from './fields.ts';
import { action, type Scene } from './perform.ts';

export const arrangeShelves = action({
  verb: 'arrange-shelves',
  schema: z.strictObject({
    /** Every shelf, in the order it is walked. */
    shelves: z.array(z.strictObject({ room: someText, shelf: text })),
    asOf,
    formId,
  }),
  body: async (scene, given) => {
    const shelves = shelvesAmong(given.shelves);
    const free = await unlessArranged(scene, given.asOf);
    if (!free.ok) return free;
    const { walk } = await scene.tx.ask(settings);
    const byTheirNames = isByName(shelves);
    const value = byTheirNames ? [] : [...shelves, ...emptyNow(walk, shelves)];
    return ok({
      summary: byTheirNames ? 'Put the shelves in alphabetical order' : 'Changed the order you walk',
      puts: { setting: [{ key: 'walk', value }] },
      reply: null,
    });
  },
});

const isByName = (shelves: readonly ShelfPlace[]): boolean =>
  shelves.every((shelf, at) => at === 0 || byName(shelves[at - 1]!, shelf) <= 0);

/** Shelves arranged earlier that hold nobody now: they keep a place for whoever comes back. */
const emptyNow = (walk: readonly ShelfPlace[], shelves: readonly ShelfPlace[]): readonly ShelfPlace[] =>
  walk.filter((old) => !shelves.some((shelf) => sameShelf(old, shelf)));

/** Two people may arrange the walk: the second is told, and nothing is overwritten unseen. */
async function unlessArranged({ tx }: Scene, seen: number | undefined): Promise<Result<null>> {
  const newer = seen === undefined ? null : await tx.ask(changedSince('setting', 'walk', seen));
  if (newer === null) return ok(null);
  const sentence =
    'Somebody else has changed the order of the shelves since you opened this page. Yours is kept below; open the page afresh to see theirs.';
  return err(problem('changed-meanwhile', sentence));
}
