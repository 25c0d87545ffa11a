/** The page of a group on which some are taken out of it, or its heads are counted anew. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { SplitPage } from '../../../views/pages/split.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { heads } from '../../actions/fields.ts';
import { editAnimal, splitGroup } from '../../actions/index.ts';
import type { DoorEnv } from '../door.ts';
import { roomOptions } from './choices.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf, route } from './route.ts';
import { anyText, maybeLength, needed, revision, typed } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';

const at = (act: 'split' | 'heads'): string => route(paths.animalAct(':code', act));

export function splitRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const about = {
    next: (c: Context) => paths.animal(codeOf(c)),
    again: (c: Context, refused: Refused) => showSplit(house, c, refused),
  };
  app.get(at('split'), (c) => showSplit(house, c));
  app.post(
    at('split'),
    posted(house, {
      ...about,
      form: () => 'split',
      shape: (unit) => ({
        heads: typed(heads),
        into: z.enum(['group', 'singles'], { error: 'Choose what they become.' }),
        name: anyText,
        gauge: maybeLength(unit),
        room: needed,
        shelf: anyText,
        asOf: revision,
      }),
      act: ({ gauge, ...given }, { c, formId }) =>
        splitGroup(context, { animal: codeOf(c), ...given, gaugeMm: gauge, formId }),
      fields: { gaugeMm: 'gauge' },
    }),
  );
  app.post(
    at('heads'),
    posted(house, {
      ...about,
      form: () => 'heads',
      shape: () => ({ heads: typed(heads), asOf: revision }),
      act: ({ heads: count, ...given }, { c, formId }) =>
        editAnimal(context, { animal: codeOf(c), count, ...given, formId }),
      fields: { count: 'heads' },
    }),
  );
}

/** Only of a group that lives here. */
async function showSplit(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { animals, rooms, revision } = here.snapshot;
  const group = animals.find(({ code, count }) => code === codeOf(c) && count > 1);
  if (group === undefined) return c.notFound();
  const named = { ...group, name: group.name === '' ? group.code : group.name };
  return page(
    c,
    SplitPage({ ...here, group: named, rooms: roomOptions(rooms), revision }),
    statusOf(refused !== null),
  );
}
