/** An act of an animal's page that was refused: the page again as typed, or a sentence where the animal has left. */

import type { Context } from 'hono';
import { AnimalGoneActPage } from '../../../views/pages/animal-gone-act.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { rowNamed } from '../../store/index.ts';
import { showAnimal } from './animal.ts';
import type { House } from './house.ts';
import { inNames } from './names.ts';
import { codeOf } from './route.ts';
import { page, visit } from './visit.ts';

export async function showRefused(house: House, c: Context, refused: Refused): Promise<Response> {
  const row = await house.context.store.ask(rowNamed('animal', codeOf(c)));
  const here = await visit(house, c);
  if (row === null || row.leftDay === null || row.leftReason === null)
    return showAnimal(house, c, named(refused, here.names));
  const gone = { name: row.name || row.code, reason: row.leftReason, leftDay: row.leftDay };
  return page(c, AnimalGoneActPage({ shell: here.shell, ...gone, refused }), 422);
}

/** Sentences with the animal's name in place of its code. */
const named = (refused: Refused, names: Parameters<typeof inNames>[1]): Refused => ({
  ...refused,
  problems: Object.fromEntries(
    Object.entries(refused.problems).map(([field, sentence]) => [field, inNames(sentence, names)]),
  ),
});
