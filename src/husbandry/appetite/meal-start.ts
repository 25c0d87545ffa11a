/** How a replicate of the meal calendar begins: who is here, where in the moult cycle, and when first due. */
import { normalQuantile } from '../../maths/normal.ts';
import { joinKeys, uniform } from '../../maths/random.ts';
import { NEVER } from '../calendar.ts';
import { dangerAfter, FOR, type Meals, putOnDay, schedule } from './meal-state.ts';

/** Starts a replicate: every animal, listed on the day its first meal falls due. */
export function startMeals(meals: Meals, replicateKey: number): void {
  meals.dayFirst.fill(-1);
  for (let i = 0; i < meals.roster.animals; i++) {
    startAnimal(meals, i, replicateKey);
    putOnDay(meals, i, meals.dueOn[i] as number);
  }
}

/** Starts an animal: the day its first meal falls due and, if that can matter, where it is in its moult cycle. */
export function startAnimal(meals: Meals, i: number, replicateKey: number): void {
  meals.key[i] = joinKeys(replicateKey, meals.roster.key[i] as number);
  meals.step[i] = 0;
  startPresence(meals, i);
  startInterval(meals, i);
  const matters = Math.min(meals.dueOn[i] as number, meals.rangeTo[i] as number, dangerAfter(meals, i));
  if (matters < meals.days) startCycle(meals, i);
}

function startPresence(meals: Meals, i: number): void {
  const { roster } = meals;
  const stays = roster.arrivesFrom[i] === NEVER;
  meals.present[i] = stays ? 0 : arrivalOf(meals, i);
  meals.gone[i] = roster.leavesChance[i] === 0 ? meals.days : departureOf(meals, i);
}

function arrivalOf({ roster, key, days }: Meals, i: number): number {
  const comes = uniform(key[i] as number, FOR.presence) < (roster.arrivesChance[i] as number);
  const from = roster.arrivesFrom[i] as number;
  const span = (roster.arrivesTo[i] as number) - from + 1;
  const day = from + Math.floor(uniform(key[i] as number, FOR.phase) * span);
  return comes ? Math.max(0, day) : days;
}

function departureOf({ roster, key, days }: Meals, i: number): number {
  const leaves = (roster.leavesChance[i] as number) > uniform(key[i] as number, FOR.rounding);
  const from = roster.leavesFrom[i] as number;
  const span = (roster.leavesTo[i] as number) - from + 1;
  return leaves ? from + Math.floor(uniform(key[i] as number, FOR.phase) * span) : days;
}

/** Draws the day of the next moult: given the last, longer than the time since; else anywhere in a cycle. */
function startCycle(meals: Meals, i: number): void {
  const { roster } = meals;
  const at = i * roster.steps;
  const mean = roster.cycleLogMean[at] as number;
  meals.moultsOn[i] = Number.POSITIVE_INFINITY;
  if (Number.isNaN(mean) || (roster.heads[i] as number) > 1) return;
  const sd = roster.rules.cycleLogSd[roster.rule[at] as number] as number;
  const key = meals.key[i] as number;
  const passed = roster.lastMoult[i] === NEVER ? 0 : (roster.cyclePassed[i] as number);
  const share = Math.min(LAST_SHARE, passed + uniform(key, FOR.cycle) * (1 - passed));
  const cycle = Math.exp(mean + sd * normalQuantile(share));
  const known = roster.lastMoult[i] as number;
  const premoult = roster.premoult[i] as number;
  if (premoult !== NEVER) {
    startInPremoult(meals, i, { cycle, seen: premoult });
    return;
  }
  meals.moultedOn[i] = known === NEVER ? -uniform(key, FOR.phase) * cycle : known;
  meals.moultsOn[i] = Math.max((meals.moultedOn[i] as number) + cycle, 1 / 2);
}

/** Keeps the quantile finite. */
export const LAST_SHARE = 1 - Math.sqrt(Number.EPSILON);

/** Premoult seen: that day lies in the last phase in which acceptance is low, anywhere in it. */
function startInPremoult(meals: Meals, i: number, { cycle, seen }: { cycle: number; seen: number }): void {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps] as number;
  const from = roster.rules.premoultFrom[rule] as number;
  const phase = from + (1 - from) * uniform(meals.key[i] as number, FOR.phase);
  meals.moultedOn[i] = seen - phase * cycle;
  meals.moultsOn[i] = Math.max(seen + (1 - phase) * cycle, 1 / 2);
}

/**
 * The first meal: from the last taken, not before a retry; an arrival eats on its first day; unknown: anywhere. A meal
 * overdue before today has its range anew from today: what was missed before is not missed again.
 */
function startInterval(meals: Meals, i: number): void {
  const { roster } = meals;
  const at = i * roster.steps;
  const min = roster.intervalMin[at] as number;
  const max = roster.intervalMax[at] as number;
  const key = meals.key[i] as number;
  const interval = min + Math.floor(uniform(key, FOR.firstInterval) * (max - min + 1));
  const fed = fedBefore(meals, i, { interval, min });
  const hold = Math.max(roster.notBefore[i] as number, meals.present[i] as number);
  const to = hold > fed + max ? hold + max - min : fed + max;
  meals.fedOn[i] = Math.max(fed, roster.lastTended[i] as number);
  schedule(meals, i, { from: Math.max(fed + min, hold), to, drawn: Math.max(fed + interval, hold) });
}

function fedBefore(meals: Meals, i: number, { interval, min }: { interval: number; min: number }): number {
  const present = meals.present[i] as number;
  if (present > 0) return present - min;
  const last = meals.roster.lastTaken[i] as number;
  return last === NEVER ? -1 - Math.floor(uniform(meals.key[i] as number, FOR.interval) * interval) : last;
}
