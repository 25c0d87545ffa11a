/** A kind of the keeper's own: the form, and its making. */

import type { Context, Hono } from 'hono';
import { NewKindPage } from '../../../views/pages/kind-new.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { addKind } from '../../actions/index.ts';
import type { DoorEnv } from '../door.ts';
import { kindOptions } from './choices.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { anyText, needed } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

export function newKindRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.newKind, (c) => showForm(house, c));
  app.post(
    paths.newKind,
    posted(house, {
      form: () => 'new-kind',
      shape: () => ({ from: needed, name: needed, commonName: needed, why: anyText }),
      act: (given, { formId }) => addKind(house.context, { ...given, formId }),
      next: (_, { kind }) => paths.kind(kind),
      again: (c, refused) => showForm(house, c, refused),
    }),
  );
}

async function showForm(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { facts } = here.snapshot;
  const from = c.req.query('from') ?? '';
  return page(c, NewKindPage({ ...here, kinds: kindOptions(facts), from }), statusOf(refused !== null));
}
