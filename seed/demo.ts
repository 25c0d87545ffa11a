/** The demo room: an invented keeper's collection and larder with some weeks of history, made through the keeper's own actions. */
import { type Context, noteSac } from '../src/actions/index.ts';
import { civilDate } from '../src/husbandry/calendar.ts';
import { problem } from '../src/husbandry/problems.ts';
import { err, ok, type Result } from '../src/husbandry/result.ts';
import { rowsOf } from '../src/store/index.ts';
import { asOf } from './as-of.ts';
import { type Codes, codeOf } from './codes.ts';
import { furnish, settle } from './furnish.ts';
import { DAYS_OF_HISTORY, liveThrough } from './history.ts';
import { addSellers } from './market.ts';
import { orderAhead } from './orders.ts';

const ORDERED_DAYS_AGO = 3;
const LAID_DAYS_AGO = 30;

export interface DemoRoom {
  readonly animals: number;
  readonly bins: number;
}

/** Fills the store with the demo room as of the clock's today; all of it is marked, so that `emptyDemo` takes it away. */
export async function seedDemo(context: Context): Promise<Result<DemoRoom>> {
  const { today } = context.clock();
  const rooms = await context.store.ask(rowsOf('room'));
  if (rooms.some(({ demo }) => demo)) return err(problem('demo-here', 'The demo room is already here.'));
  const settled = await settle(context);
  if (!settled.ok) return settled;
  const sold = await addSellers(asOf(context, today - DAYS_OF_HISTORY), today);
  if (!sold.ok) return sold;
  const codes = await furnish(context, today - DAYS_OF_HISTORY);
  if (!codes.ok) return codes;
  const lived = await liveThrough(context, codes.value);
  if (!lived.ok) return lived;
  const ahead = await lookAhead(context, codes.value);
  if (!ahead.ok) return ahead;
  return ok({ animals: codes.value.animals.size, bins: codes.value.bins.size });
}

/** What is to come: an order in four days, and the young of a sac in some weeks. */
async function lookAhead(context: Context, codes: Codes): Promise<Result<unknown>> {
  const { today } = context.clock();
  const then = asOf(context, today - ORDERED_DAYS_AGO);
  const ordered = await orderAhead(then, codes, today);
  if (!ordered.ok) return ordered;
  return noteSac(then, {
    animal: codeOf(codes.animals, 'Woolly'),
    laidFrom: civilDate(today - LAID_DAYS_AGO),
    from: civilDate(today + 35),
    to: civilDate(today + 49),
    chance: 0.7,
    count: 60,
    gaugeMm: 6,
    demo: true,
  });
}
