/** One evening's feeding: each group in turn draws on the larder; where prey is short, those go first who would miss first. */
import { missedAfter, putOnDay } from '../appetite/index.ts';
import { pick } from './allocate.ts';
import { settle } from './picks.ts';
import { serve } from './serve.ts';
import { countEaten, countInVain } from './tally.ts';
import type { Working } from './working.ts';

/** Feeds every group that waits, in the order of the menu. */
export function serveAll(run: Working, day: number): void {
  for (let k = 0; k < run.menu.order.length; k++) {
    const group = run.menu.order[k] as number;
    if ((run.waiting[group] as number) >= 0) serveGroup(run, group, day);
  }
}

/** Items short of this share of what is wanted are rounding. */
const ROUNDING = Math.sqrt(Number.EPSILON);

/** Serves a group from the larder: all of it, or as far as the prey goes in the order in which meals would be missed. */
function serveGroup(run: Working, group: number, day: number): void {
  const { larder, picks, menu, tally } = run;
  if (!larder || !picks) return;
  const { items, meals } = wantedBy(run, group);
  pick(larder, menu, { group, day, items, meals }, picks);
  const enough = picks.total >= items - ROUNDING * (1 + items);
  const used = enough ? items : serveInOrder(run, { group, day, meals, found: picks.total });
  settle(larder, picks, used, (lengthMm, heads) => countEaten(tally, day, { lengthMm, heads }));
  if (enough) serveWhole(run, group, day);
}

function wantedBy(run: Working, group: number): { items: number; meals: number } {
  let items = 0;
  let meals = 0;
  for (let i = run.waiting[group] as number; i >= 0; i = run.nextWaiting[i] as number) {
    items += run.meals.wants[i] as number;
    meals++;
  }
  return { items, meals };
}

function serveWhole(run: Working, group: number, day: number): void {
  let i = run.waiting[group] as number;
  run.waiting[group] = -1;
  while (i >= 0) {
    const next = run.nextWaiting[i] as number;
    serve(run, i, day);
    putOnDay(run.meals, i, run.meals.dueOn[i] as number);
    i = next;
  }
}

interface Shortage {
  readonly group: number;
  readonly day: number;
  readonly meals: number;
  readonly found: number;
}

/** Serves those whose meal would be missed first, as long as the prey found covers the next; returns items used. */
function serveInOrder(run: Working, { group, day, meals: count, found }: Shortage): number {
  const { meals, tally } = run;
  const queue = queueOf(run, group, count);
  run.waiting[group] = -1;
  let used = 0;
  for (const i of queue) {
    const wants = meals.wants[i] as number;
    if (used + wants <= found + ROUNDING * (1 + found)) {
      used += wants;
      serve(run, i, day);
      putOnDay(meals, i, meals.dueOn[i] as number);
    } else {
      const part = partFor(run, i, found - used);
      used += part;
      meals.wants[i] = wants - part;
      run.nextWaiting[i] = run.waiting[group] as number;
      run.waiting[group] = i;
      countInVain(tally, { group, day, animal: i, items: wants - part });
    }
  }
  return used;
}

/** Of a group alike some are fed with what there is; one animal waits for its whole meal. */
const partFor = (run: Working, i: number, found: number): number =>
  (run.roster.heads[i] as number) > 1 ? Math.max(0, Math.floor(found)) : 0;

/** The group's waiting animals, those whose meal would be missed first in front. */
function queueOf(run: Working, group: number, count: number): Int32Array {
  const queue = new Int32Array(count);
  let n = 0;
  for (let i = run.waiting[group] as number; i >= 0; i = run.nextWaiting[i] as number) queue[n++] = i;
  return queue.sort((a, b) => missedAfter(run.meals, a) - missedAfter(run.meals, b) || a - b);
}
