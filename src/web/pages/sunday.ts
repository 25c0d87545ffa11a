/** The Sunday check: will the feeders last until the next delivery? */

import type { Context, Hono } from 'hono';
import { preyName } from '../../../views/names.ts';
import { SundayPage, type SundayProps } from '../../../views/pages/sunday.tsx';
import { paths } from '../../../views/paths.ts';
import { askSunday } from '../../actions/index.ts';
import type { CoverAnswer } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import { busy } from './busy.ts';
import type { House } from './house.ts';
import { weightiest } from './sources.ts';
import { page, type Visit, visit } from './visit.ts';

export function sundayRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.sunday, (c) => showSunday(house, c));
  app.get(paths.check, async (c) => {
    const answer = await askSunday(house.context, { answering: house.answering });
    return answer.ok ? c.json(answer.value) : c.json(answer.problem, BUSY);
  });
}

const BUSY = 503;

async function showSunday(house: House, c: Context) {
  const here = await visit(house, c);
  const answer = await askSunday(house.context, { snapshot: here.snapshot, answering: house.answering });
  if (!answer.ok) return busy(c, here, answer.problem);
  const { shell, names, unit, snapshot } = here;
  const sources = weightiest(answer.value, snapshot);
  const delivery = deliveryOf(answer.value, here);
  return page(c, SundayPage({ shell, names, unit, answer: answer.value, delivery, sources }));
}

function deliveryOf({ untilDelivery }: CoverAnswer, { snapshot, names }: Visit): SundayProps['delivery'] {
  const found = snapshot.deliveries.find(({ code }) => code === untilDelivery);
  if (found === undefined) return null;
  return { label: `the ${preyName(names.species, found.species)} come`, day: found.day };
}
