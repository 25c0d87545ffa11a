/** The animals chosen in the list: those ticked, those on its page, or all it found, as long as it still finds them. */
import { z } from 'zod';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import type { Seen } from './herd.ts';
import { foundIn, leafOf } from './herd-found.ts';
import { queryIn } from './herd-query.ts';
import { countOfMark, markOf } from './herd-seen.ts';
import type { Herd } from './herd-visit.ts';
import { anyText } from './typed.ts';

/** Fields that say who is chosen; a list of thousands travels as what it was asked, not name by name. */
export const choosing = {
  animal: z.array(z.string()).default([]),
  of: z.enum(['ticked', 'page', 'found']).default('ticked'),
  list: anyText,
  seen: anyText,
};
export type Choosing = z.output<z.ZodObject<typeof choosing>>;

export function chosenIn({ herd }: Herd, { animal, of, list, seen }: Choosing): Result<readonly Seen[]> {
  if (of === 'ticked') return ticked(herd, animal);
  const query = queryIn(new URLSearchParams(list));
  const found = foundIn(herd, query);
  if (markOf(found) !== seen) return err(otherList(countOfMark(seen), found.length));
  const chosen = of === 'found' ? found : leafOf(found, query.page).rows;
  return chosen.length === 0 ? err(problem('nobody', 'Nobody is chosen.')) : ok(chosen);
}

function ticked(herd: readonly Seen[], codes: readonly string[]): Result<readonly Seen[]> {
  const wanted = new Set(codes);
  const chosen = herd.filter(({ animal }) => wanted.has(animal.code));
  if (wanted.size === 0)
    return err(problem('nobody', 'Nobody is ticked. Go back and tick those you want to change.'));
  if (chosen.length === wanted.size) return ok(chosen);
  const here = new Set(chosen.map(({ animal }) => animal.code));
  const gone = codes.find((code) => !here.has(code)) ?? '';
  return err(problem('animal-left', `"${gone}" does not live here any more. Look at the list again.`));
}

const otherList = (before: number, now: number) =>
  problem(
    'list-changed',
    before === now
      ? `The list has changed since you looked: it still finds ${now}, but not the same or not in the same order. Look at it again.`
      : `The list has changed since you looked: it found ${before.toLocaleString('en-GB')} and now finds ${now.toLocaleString('en-GB')}. Look at it again.`,
  );
