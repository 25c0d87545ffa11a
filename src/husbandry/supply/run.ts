/**
 * The daily engine: meals and prey life together, day by day, replicate by replicate. The sole judge of whether the
 * larder lasts; without a larder it forecasts demand alone.
 */

import { logMoments } from '../../maths/log-normal.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { dayKey, joinKeys, mix32, purposes, uniform } from '../../maths/random.ts';
import { comesDue, dangerAfter, mealsFor, putOnDay, type Roster, startMeals } from '../appetite/index.ts';
import type { Policy } from '../policy.ts';
import { playAlone } from './alone.ts';
import { startLarder } from './draws.ts';
import { serveAll } from './feed-groups.ts';
import { closeLarder, type Larder, larderOnDay } from './larder.ts';
import { edibleHeads, picksFor } from './picks.ts';
import { groupOf, noteOverdue } from './serve.ts';
import { closeReplicate, countDue, openReplicate, type Tally } from './tally.ts';
import { noteAlive } from './week-tally.ts';
import type { Run, Working } from './working.ts';

const FOR = purposes('generosity', 'warmth', 'skipped');

/** Runs replicates `from` up to but not including `to` and adds them to the tally. */
export function runReplicates(run: Run, tally: Tally, { from, to }: { from: number; to: number }): void {
  const { roster, feeding, policy, menu, larder, days, seed } = run;
  // Each field by name: a spread gives every run a shape of its own, and the compiled loops are thrown away.
  const working: Working = {
    roster,
    feeding,
    policy,
    menu,
    larder,
    days,
    seed,
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
  run.meals.generosity = drawnGenerosity(run.roster, key);
  openEvenings(run, key);
  if (run.larder) playTogether(run, run.larder, { key, replicate });
  else playAlone(run, key);
  noteUnlisted(run, run.days - 1);
  closeReplicate(run.tally);
}

function drawnGenerosity({ generosity }: Roster, key: number): number {
  const { mean, variance } = logMoments(generosity);
  return Math.exp(mean + Math.sqrt(variance) * normalQuantile(uniform(key, FOR.generosity)));
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
  startMeals(run.meals, key);
  openLarder(larder, run.policy, key);
  run.waiting.fill(-1);
  for (let day = 0; day < run.days; day++) {
    larderOnDay(larder, day);
    gather(run, day);
    if (replicate < run.tally.stockReplicates) noteStock(run, day, replicate);
    if (run.tally.weekly) noteAlive(run.tally.weekly, larder, { day, edgesMm: run.tally.edgesMm });
    if (run.open[day]) serveAll(run, day);
    countWaiting(run, day);
  }
  closeLarder(larder, run.menu.longestMm);
}

/** Draws what is not known of the larder in the replicate of a key. */
function openLarder(larder: Larder, policy: Policy, key: number): void {
  startLarder(larder, key, policy.roomTempSdC.value * normalQuantile(uniform(key, FOR.warmth)));
}

/** The larder of one replicate lived through as if nobody ate; what is there is shown every day. */
export function larderThrough(
  larder: Larder,
  { seed, replicate, days }: { seed: number; replicate: number; days: number },
  onDay: (day: number) => void,
): void {
  openLarder(larder, larder.policy, joinKeys(mix32(seed), replicate));
  for (let day = 0; day < days; day++) {
    larderOnDay(larder, day);
    onDay(day);
  }
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
