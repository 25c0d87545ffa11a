/** The page on which an animal that was lent comes back. */

import type { Context, Hono } from 'hono';
import { CameBackPage } from '../../../views/pages/came-back.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay } from '../../actions/fields.ts';
import { cameBack } from '../../actions/index.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { maybe, typed } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

const PATH = route(paths.animalAct(':code', 'came-back'));
export function cameBackRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(PATH, (c) => showCameBack(house, c));
  app.post(
    PATH,
    posted(house, {
      form: () => 'came-back',
      shape: () => ({ day: typed(civilDay), lastTaken: maybe(civilDay) }),
      act: (given, { c, formId }) => cameBack(house.context, { animal: codeOf(c), ...given, formId }),
      next: (c) => paths.animal(codeOf(c)),
      again: (c, refused) => showCameBack(house, c, refused),
    }),
  );
}

/** Whoever is not lent has no such page. */
async function showCameBack(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const row = await house.context.store.ask(rowNamed('animal', codeOf(c)));
  if (row === null || row.leftReason !== 'lent' || row.leftDay === null) return c.notFound();
  const here = await visit(house, c, { refused });
  const props = {
    ...here,
    code: row.code,
    name: row.name === '' ? row.code : row.name,
    to: row.lentTo ?? 'somebody',
    since: row.leftDay,
  };
  return page(c, CameBackPage(props), statusOf(refused !== null));
}
