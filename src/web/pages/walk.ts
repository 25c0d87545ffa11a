/** The order you walk: the shelves, put in order as often as the keeper likes and kept by one act. */

import type { Context, Hono } from 'hono';
import { z } from 'zod';
import { WalkPage, type WalkShelf } from '../../../views/pages/walk.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { arrangeShelves } from '../../actions/index.ts';
import { byName } from '../../husbandry/walk.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { revision } from './typed.ts';
import { page, statusOf, visit } from './visit.ts';
import { inTypedPlaces } from './walk-moves.ts';
import { fieldValues, sentList, shownOrder } from './walk-sent.ts';
import { shelfOf, shelvesOf } from './walk-shelves.ts';

const texts = z.array(z.string()).default([]);

export function walkRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.walk, (c) => showWalk(house, c));
  app.post(paths.walkMoved, (c) => showWalk(house, c));
  app.post(
    paths.walk,
    posted(house, {
      form: () => 'walk',
      many: ['shelf', 'place'],
      shape: () => ({ shelf: texts, place: texts, asOf: revision }),
      act: async ({ shelf, place, asOf: seen }, { formId }) => {
        const order = inTypedPlaces(shelf, place);
        if (!order.ok) return order;
        return arrangeShelves(house.context, {
          shelves: order.value.map(shelfOf),
          asOf: seen,
          formId,
        });
      },
      next: () => paths.walk,
      again: (c, refused) => showWalk(house, c, refused),
    }),
  );
}

const ORDERING = {
  nameOf: ({ key }: WalkShelf) => key,
  plain: { move: 'by name', compare: byName },
};

async function showWalk(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const sent = await sentList(c, 'shelf');
  const shown = shownOrder(shelvesOf(here), sent, ORDERING);
  const [seen] = await fieldValues(c, 'asOf');
  const wrong = refused ?? refusedFor('walk', shown.wrong?.sentence);
  const props = {
    ...here,
    forms: { ...here.forms, refused: wrong },
    shelves: shown.items,
    changed: shown.changed,
    revision: seen ?? `${here.snapshot.revision}`,
    ...(shown.wrong === null ? {} : { places: sent.places }),
  };
  return page(c, WalkPage(props), statusOf(wrong !== null));
}

/** A form shown again because of one sentence, which stands above it; null when nothing is wrong. */
export const refusedFor = (form: string, sentence: string | undefined): Refused | null =>
  sentence === undefined ? null : { form, values: {}, problems: { '': sentence } };
