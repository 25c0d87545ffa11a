/** Bulk order: how many the box should hold; the question is in the address, so that it can be kept. */
import type { Context, Hono } from 'hono';
import { BulkPage } from '../../../views/pages/bulk.tsx';
import { BulkAnswerPart, type BulkShown } from '../../../views/pages/bulk-answer.tsx';
import { paths } from '../../../views/paths.ts';
import { askBulk, keptBulk } from '../../actions/index.ts';
import { rowNamed, settings } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { type AskedBulk, bulkAskedIn, type SettledBulk } from './bulk-asked.ts';
import { shownBulk } from './bulk-told.ts';
import type { House } from './house.ts';
import { queryIn } from './plan-page.ts';
import { marketIn } from './supplier-views.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export function bulkRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.bulk, (c) => showBulk(house, c));
  app.get(paths.bulkAnswer, (c) => showAnswer(house, c));
}

async function showBulk(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { suppliers, offers } = marketIn(here.snapshot);
  const asked = await askedIn(house, c, here);
  const { entry, settled } = asked;
  const answer = settled === null ? null : await shownFor(house, c, here, settled);
  const isRefused = Object.keys(entry.problems).length > 0;
  return page(c, BulkPage({ ...here, entry, suppliers, offers, answer }), statusOf(isRefused));
}

/** What the address asks; an offer that was closed is told from one that never was. */
async function askedIn({ context }: House, c: Context, { snapshot }: Visit): Promise<AskedBulk> {
  const query = queryIn(c);
  const found = await context.store.askAll({ settings, row: rowNamed('offer', query.get('offer') ?? '') });
  const isClosed = found.row !== null;
  return bulkAskedIn(query, { market: marketIn(snapshot), weeksUsual: found.settings.planWeeks, isClosed });
}

/** The answer where it is kept or waited for, else where the page finds it. */
async function shownFor(house: House, c: Context, here: Visit, settled: SettledBulk): Promise<BulkShown> {
  if (queryIn(c).get('wait') === '1') return answerTo(house, here, settled);
  const kept = await keptBulk(house.context, settled.question, here.snapshot);
  if (kept !== null) return shownBulk(kept.found, here, settled);
  const query = new URLSearchParams({
    offer: settled.question.offer,
    weeks: `${settled.question.weeks}`,
  });
  return {
    state: 'working',
    answerAt: `${paths.bulkAnswer}?${query}`,
    waitAt: `${paths.bulk}?${query}&wait=1`,
  };
}

/** The answer alone, for the page that is there already. */
async function showAnswer(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { entry, settled } = await askedIn(house, c, here);
  const sentence = Object.values(entry.problems)[0] ?? 'Choose an offer first.';
  const shown: BulkShown =
    settled === null ? { state: 'none', sentence, again: paths.bulk } : await answerTo(house, here, settled);
  return page(c, String(BulkAnswerPart({ shown })));
}

async function answerTo(
  { context, answering }: House,
  here: Visit,
  settled: SettledBulk,
): Promise<BulkShown> {
  const answer = await askBulk(context, settled.question, { snapshot: here.snapshot, answering });
  if (answer.ok) return shownBulk(answer.value.found, here, settled);
  return { state: 'none', sentence: answer.problem.sentence, again: paths.bulkOf(settled.question) };
}
