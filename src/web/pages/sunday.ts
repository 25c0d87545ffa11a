/** The Sunday check: will the feeders last until the next delivery? */

import type { Context, Hono } from 'hono';
import { SpectrumAhead } from '../../../views/charts/week-slider.tsx';
import { preyName } from '../../../views/names.ts';
import { SundayPage, type SundayProps } from '../../../views/pages/sunday.tsx';
import { ActHere } from '../../../views/pages/sunday-act.tsx';
import { paths } from '../../../views/paths.ts';
import { askCover, askSunday, askWeeks, type Cover } from '../../actions/index.ts';
import { ok, type Result } from '../../husbandry/result.ts';
import type { CoverAnswer } from '../../husbandry/supply/index.ts';
import type { DoorEnv } from '../door.ts';
import { busy } from './busy.ts';
import type { House } from './house.ts';
import { weekPlanned } from './plan-week.ts';
import { weightiest } from './sources.ts';
import { page, type Visit, visit } from './visit.ts';

export function sundayRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.sunday, (c) => showSunday(house, c));
  app.get(paths.act, (c) => showAct(house, c));
  app.get(paths.weeks, (c) => showWeek(house, c));
  app.get(paths.check, async (c) => {
    const answer = await askSunday(house.context, { answering: house.answering });
    return answer.ok ? c.json(answer.value) : c.json(answer.problem, BUSY);
  });
}

const BUSY = 503;

async function showSunday(house: House, c: Context) {
  const here = await visit(house, c);
  const first = await coverFor(house, here, false);
  if (!first.ok) return busy(c, here, first.problem);
  const plan = await weekPlanned(house, here, first.value.answer);
  const isSought = c.req.query('act') !== undefined && plan === null;
  const cover = isSought ? await coverFor(house, here, true) : first;
  if (!cover.ok) return busy(c, here, cover.problem);
  const ahead = await weekAsked(house, here, c);
  if (!ahead.ok) return busy(c, here, ahead.problem);
  const { answer, actSought } = cover.value;
  const { shell, names, unit, snapshot } = here;
  const sources = weightiest(answer, snapshot);
  const delivery = deliveryOf(answer, here);
  const lastWeek = snapshot.facts.policy.weeksAhead.value;
  const seen = { shell, names, unit, answer, plan, actSought };
  return page(c, SundayPage({ ...seen, ahead: ahead.value, lastWeek, delivery, sources }));
}

/** The answer as soon as it can be had, or in full where the keeper waits for the act. */
async function coverFor(
  { context, answering }: House,
  { snapshot }: Visit,
  inFull: boolean,
): Promise<Result<Cover>> {
  if (!inFull) return askCover(context, { snapshot, answering });
  const answer = await askSunday(context, { snapshot, answering });
  return answer.ok ? ok({ answer: answer.value, actSought: true }) : answer;
}

/** The act alone, for the page that is there already. */
async function showAct(house: House, c: Context) {
  const answer = await askSunday(house.context, { answering: house.answering });
  if (!answer.ok) return c.body(null, BUSY);
  const { act, verdict } = answer.value;
  return page(c, String(ActHere({ act, sought: true, settled: verdict === 'lasts' }) ?? ''));
}

/** The coming week asked for; null for today's picture. */
async function weekAsked(
  { context, answering }: House,
  { snapshot }: Visit,
  c: Context,
): Promise<Result<SundayProps['ahead']>> {
  const week = Number(c.req.query('week') ?? 0);
  if (!(week > 0)) return ok(null);
  const answer = await askWeeks(context, { snapshot, answering });
  if (!answer.ok) return answer;
  const { weeks } = answer.value;
  return ok({ weeks, shown: weeks.find((each) => each.week === week) ?? weeks.at(-1)! });
}

/** The picture of a week alone, this week's too: while the slider is moved all weeks share one scale. */
async function showWeek(house: House, c: Context) {
  const here = await visit(house, c);
  const answer = await askWeeks(house.context, { snapshot: here.snapshot, answering: house.answering });
  if (!answer.ok) return c.body(null, BUSY);
  const { weeks } = answer.value;
  const shown = weeks.find(({ week }) => week === Number(c.req.query('week'))) ?? weeks[0]!;
  const { names, unit } = here;
  return page(c, String(SpectrumAhead({ shown, weeks, species: names.species, unit })));
}

function deliveryOf({ untilDelivery }: CoverAnswer, { snapshot, names }: Visit): SundayProps['delivery'] {
  const found = snapshot.deliveries.find(({ code }) => code === untilDelivery);
  if (found === undefined) return null;
  return { label: `the ${preyName(names.species, found.species)} come`, day: found.day };
}
