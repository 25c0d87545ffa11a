/**
 * The daily engine: meals and prey life together, day by day, replicate by replicate. The sole judge of whether the
 * larder lasts; without a larder it forecasts demand alone.
 */

import { normalQuantile } from '../../maths/normal.ts';
import { dayKey, joinKeys, mix32, purposes, uniform } from '../../maths/random.ts';
import {
  comesDue,
  dangerAfter,
  type FeedingDays,
  logSd,
  type Meals,
  mealsFor,
  missedAfter,
  putOnDay,
  type Roster,
  startMeals,
} from '../appetite/index.ts';
import type { Policy } from '../policy.ts';
import { pick } from './allocate.ts';
import { playAlone } from './alone.ts';
import { startLarder } from './draws.ts';
import { closeLarder, type Larder, larderOnDay } from './larder.ts';
import type { Menu } from './menu.ts';
import { edibleHeads, type Picks, picksFor, settle } from './picks.ts';
import { groupOf, noteOverdue, serve } from './serve.ts';
import { closeReplicate, countDue, countEaten, countInVain, openReplicate, type Tally } from './tally.ts';

const FOR = purposes('generosity', 'warmth', 'skipped');

export interface Run {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  readonly policy: Policy;
  readonly menu: Menu;
  /** null: whatever is wanted is there. */
  readonly larder: Larder | null;
  readonly days: number;
  readonly seed: number;
}

interface Working extends Run {
  readonly meals: Meals;
  readonly picks: Picks | null;
  readonly tally: Tally;
  /** First animal waiting in each group, and the next after each; -1 ends a list. */
  readonly waiting: Int32Array;
  readonly nextWaiting: Int32Array;
  /** 1 on the evenings of the replicate on which animals are fed. */
  readonly open: Uint8Array;
}

/** Runs replicates `from` up to but not including `to` and adds them to the tally. */
export function runReplicates(run: Run, tally: Tally, { from, to }: { from: number; to: number }): void {
  const working: Working = {
    ...run,
    tally,
    meals: mealsFor(run.roster, run.feeding, run.days),
    picks: run.larder ? picksFor(run.larder, run.menu) : null,
    waiting: new Int32Array(run.menu.groups.length),
    nextWaiting: new Int32Array(run.roster.animals),
    open: new Uint8Array(run.days),
  };
  for (let r = from; r < to; r++) runOne(working, r);
}

function runOne(run: Working, replicate: number): void {
  const key = joinKeys(mix32(run.seed), replicate);
  openReplicate(run.tally, replicate);
  run.meals.generosity = generosityOf(run.policy, key);
  openEvenings(run, key);
  if (run.larder) playTogether(run, run.larder, { key, replicate });
  else playAlone(run, key);
  noteUnlisted(run, run.days - 1);
  closeReplicate(run.tally);
}

function generosityOf({ generosityCv }: Policy, key: number): number {
  const sd = logSd(generosityCv.value);
  return sd > 0 ? Math.exp(sd * normalQuantile(uniform(key, FOR.generosity)) - (sd * sd) / 2) : 1;
}

/** Feeding days on which the evening is not skipped. */
function openEvenings({ open, days, feeding, policy }: Working, key: number): void {
  for (let day = 0; day < days; day++) {
    const skipped = uniform(dayKey(key, day), FOR.skipped) < policy.eveningSkippedChance.value;
    open[day] = Number(!skipped && feeding.next[day] === day);
  }
}

/** All animals, day by day, as they share one larder. */
function playTogether(
  run: Working,
  larder: Larder,
  { key, replicate }: { key: number; replicate: number },
): void {
  const warmth = run.policy.roomTempSdC.value * normalQuantile(uniform(key, FOR.warmth));
  startMeals(run.meals, key);
  startLarder(larder, key, warmth);
  run.waiting.fill(-1);
  for (let day = 0; day < run.days; day++) {
    larderOnDay(larder, day);
    gather(run, day);
    if (replicate < run.tally.stockReplicates) noteStock(run, day, replicate);
    if (run.open[day]) serveAll(run, day);
    countWaiting(run, day);
  }
  closeLarder(larder, run.menu.longestMm);
}

/** Animals on the day's list join their group's queue, or on an evening without feeding go to the next. */
function gather(run: Working, day: number): void {
  const { meals, tally } = run;
  let i = meals.dayFirst[day] as number;
  while (i >= 0) {
    const next = meals.nextOfDay[i] as number;
    if (!run.open[day]) {
      noteOverdue(run, i, day);
      putOnDay(meals, i, run.feeding.next[day + 1] as number);
    } else if (comesDue(meals, i, day)) {
      const group = groupOf(run, i);
      run.nextWaiting[i] = run.waiting[group] as number;
      run.waiting[group] = i;
      countDue(tally, { group, day, items: meals.wants[i] as number });
    } else {
      putOnDay(meals, i, meals.dueOn[i] as number);
    }
    i = next;
  }
}

function serveAll(run: Working, day: number): void {
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
  settle(larder, picks, used, (lengthMm, heads) => countEaten(tally, lengthMm, heads));
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

/** Every meal still waiting at the end of a day. */
function countWaiting(run: Working, day: number): void {
  for (let group = 0; group < run.waiting.length; group++) {
    for (let i = run.waiting[group] as number; i >= 0; i = run.nextWaiting[i] as number)
      noteOverdue(run, i, day);
  }
}

/** Meals whose next feeding evening lies beyond the horizon are overdue all the same, unless the animal has gone or is hardening. */
function noteUnlisted(run: Working, last: number): void {
  const { meals } = run;
  for (let i = 0; i < run.roster.animals; i++) {
    const overdue = last >= (meals.rangeTo[i] as number) || last >= dangerAfter(meals, i);
    if (overdue && comesDue(meals, i, last)) noteOverdue(run, i, last);
  }
}

/** Notes how many heads each group could eat today, before anybody is fed. */
function noteStock(run: Working, day: number, replicate: number): void {
  const { larder, picks, tally } = run;
  if (!larder || !picks) return;
  for (let group = 0; group < tally.groups; group++) {
    const row = replicate * tally.groups + group;
    tally.stockOf[row * tally.days + day] = edibleHeads(larder, picks, { group, day });
  }
}
