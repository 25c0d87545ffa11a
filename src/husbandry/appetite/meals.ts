/**
 * The meal calendar of the whole collection in one replicate: who comes due on which day, wants how much, and what
 * follows from being fed. The state of all animals lies in arrays; draws are keyed by animal, day and purpose.
 */
import { evenVariance } from '../../maths/even.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { dayKey, joinKeys, purposes, uniform, whole } from '../../maths/random.ts';
import { NEVER } from '../calendar.ts';
import { type FeedingDays, offeredOn } from './feeding-days.ts';
import type { Roster } from './roster.ts';
import type { RuleTable } from './rule-table.ts';

/** What a draw of a meal is for; part of its key. */
export const FOR = purposes(
  'interval',
  'items',
  'acceptance',
  'cycle',
  'phase',
  'presence',
  'rounding',
  'firstInterval',
);

/** Bits: a meal is counted once for each. */
export const COUNTED = { late: 1, missed: 1 << 1, danger: 1 << 2 } as const;

export interface Meals {
  readonly roster: Roster;
  readonly feeding: FeedingDays;
  /** Days of the horizon. */
  readonly days: number;
  /** First animal of each day's list and the next animal after each; -1 ends a list. */
  readonly dayFirst: Int32Array;
  readonly nextOfDay: Int32Array;
  /** Per animal: key in this replicate, moult step, day of the last and next moult. */
  readonly key: Int32Array;
  readonly step: Int32Array;
  readonly moultedOn: Float64Array;
  readonly moultsOn: Float64Array;
  /** Per animal: last day prey was offered (or it was hardening), last day of the range of the meal now due. */
  readonly fedOn: Int32Array;
  readonly rangeTo: Int32Array;
  /** What the meal now due has been counted for, bits of COUNTED. */
  readonly counted: Int32Array;
  /** Day on which the next meal is offered, the horizon's end or later when it lies beyond. */
  readonly dueOn: Int32Array;
  /** Items wanted by the meal now due, at the ideal size. */
  readonly wants: Int32Array;
  readonly present: Int32Array;
  readonly gone: Int32Array;
  /** Generosity of the keeper in this replicate. */
  generosity: number;
}

/** Room for one replicate's calendar; the same arrays serve all replicates. */
export function mealsFor(roster: Roster, feeding: FeedingDays, days: number): Meals {
  const ints = () => new Int32Array(roster.animals);
  return {
    roster,
    feeding,
    days,
    dayFirst: new Int32Array(days),
    nextOfDay: ints(),
    key: ints(),
    step: ints(),
    moultedOn: new Float64Array(roster.animals),
    moultsOn: new Float64Array(roster.animals),
    fedOn: ints(),
    rangeTo: ints(),
    counted: ints(),
    dueOn: ints(),
    wants: ints(),
    present: ints(),
    gone: ints(),
    generosity: 1,
  };
}

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
const LAST_SHARE = 1 - Math.sqrt(Number.EPSILON);

/** Premoult seen: that day lies in the last phase in which acceptance is low, anywhere in it. */
function startInPremoult(meals: Meals, i: number, { cycle, seen }: { cycle: number; seen: number }): void {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps] as number;
  const from = roster.rules.premoultFrom[rule] as number;
  const phase = from + (1 - from) * uniform(meals.key[i] as number, FOR.phase);
  meals.moultedOn[i] = seen - phase * cycle;
  meals.moultsOn[i] = Math.max(seen + (1 - phase) * cycle, 1 / 2);
}

/** The first meal: from the last taken, not before a retry; an arrival eats on its first day; unknown: anywhere. */
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
  if (missedAfter(meals, i) < 0) meals.counted[i] = COUNTED.late | COUNTED.missed;
}

function fedBefore(meals: Meals, i: number, { interval, min }: { interval: number; min: number }): number {
  const present = meals.present[i] as number;
  if (present > 0) return present - min;
  const last = meals.roster.lastTaken[i] as number;
  return last === NEVER ? -1 - Math.floor(uniform(meals.key[i] as number, FOR.interval) * interval) : last;
}

interface MealRange {
  readonly from: number;
  readonly to: number;
  readonly drawn: number;
}

/** Sets the day on which an animal's next meal is offered. */
function schedule(meals: Meals, i: number, range: MealRange): void {
  meals.dueOn[i] = offeredOn(meals.feeding, range);
  meals.rangeTo[i] = Math.max(range.to, range.drawn);
  meals.counted[i] = 0;
}

/** Puts an animal on a day's list; beyond the horizon nothing is listed. */
export function putOnDay(meals: Meals, i: number, day: number): void {
  if (day >= meals.days) return;
  meals.nextOfDay[i] = meals.dayFirst[day] as number;
  meals.dayFirst[day] = i;
}

/** Moves an animal's moult cycle on to a day. */
function moultUpTo(meals: Meals, i: number, day: number): void {
  const { roster } = meals;
  while ((meals.moultsOn[i] as number) <= day) {
    const moult = meals.moultsOn[i] as number;
    const step = Math.min((meals.step[i] as number) + 1, roster.steps - 1);
    meals.step[i] = step;
    meals.moultedOn[i] = moult;
    const mean = roster.cycleLogMean[i * roster.steps + step] as number;
    const sd = roster.rules.cycleLogSd[roster.rule[i * roster.steps + step] as number] as number;
    const u = uniform(dayKey(meals.key[i] as number, Math.floor(moult)), FOR.cycle);
    meals.moultsOn[i] = Number.isNaN(mean)
      ? Number.POSITIVE_INFINITY
      : moult + Math.exp(mean + sd * normalQuantile(u));
  }
}

/**
 * Whether the animal on today's list wants a meal: sets its items and returns true; else its next meal is set for a
 * later day (hardening after a moult), or beyond the horizon when it has gone.
 */
export function comesDue(meals: Meals, i: number, day: number): boolean {
  const { roster } = meals;
  if (day >= (meals.gone[i] as number)) {
    meals.dueOn[i] = meals.days;
    return false;
  }
  moultUpTo(meals, i, day);
  const at = i * roster.steps + (meals.step[i] as number);
  const rule = roster.rule[at] as number;
  const hardUntil = Math.ceil((meals.moultedOn[i] as number) + (roster.rules.wait[rule] as number));
  if (day < hardUntil && (roster.heads[i] as number) === 1 && Number.isFinite(meals.moultsOn[i] as number)) {
    const slack = (roster.intervalMax[at] as number) - (roster.intervalMin[at] as number);
    meals.fedOn[i] = hardUntil;
    schedule(meals, i, { from: hardUntil, to: hardUntil + slack, drawn: hardUntil });
    return false;
  }
  meals.wants[i] = itemsOf(meals, i, { day, rule });
  return true;
}

/** Items of the ideal size: each head's draw from the rule's range, times the keeper's generosity, to whole items. */
function itemsOf(meals: Meals, i: number, { day, rule }: { day: number; rule: number }): number {
  const { rules, heads } = meals.roster;
  const key = dayKey(meals.key[i] as number, day);
  const n = heads[i] as number;
  if (n === 1) return itemsOfOne(meals, rule, key);
  const min = rules.itemsMin[rule] as number;
  const max = rules.itemsMax[rule] as number;
  const sum = sumOfHeads({ n, min, max, u: uniform(key, FOR.items) });
  return Math.max(Math.min(min, 1), served(meals, sum, key));
}

/** Items of a single animal on an evening, by the key of that evening. */
export function itemsOfOne(meals: Meals, rule: number, key: number): number {
  const { itemsMin, itemsMax } = meals.roster.rules;
  const min = itemsMin[rule] as number;
  const sum = min + whole(key, FOR.items, (itemsMax[rule] as number) - min + 1);
  return Math.max(Math.min(min, 1), served(meals, sum, key));
}

/** As many as the keeper takes for so many, in whole items: floor(n G + u). */
const served = (meals: Meals, items: number, key: number): number =>
  (items * meals.generosity + uniform(key, FOR.rounding)) | 0;

/** Sum of n heads' whole draws from [min, max], by its normal approximation within its bounds. */
function sumOfHeads({ n, min, max, u }: { n: number; min: number; max: number; u: number }): number {
  const width = max - min + 1;
  const sum = (n * (min + max)) / 2 + Math.sqrt(n * evenVariance(width)) * normalQuantile(u);
  return Math.min(n * max, Math.max(n * min, Math.round(sum)));
}

/** The meal has left the bin: taken or refused, and the next one scheduled. */
export function offered(meals: Meals, i: number, day: number): void {
  const { roster } = meals;
  const at = i * roster.steps + (meals.step[i] as number);
  const rule = roster.rule[at] as number;
  const min = roster.intervalMin[at] as number;
  const max = roster.intervalMax[at] as number;
  const key = dayKey(meals.key[i] as number, day);
  const accepted = uniform(key, FOR.acceptance) < acceptanceOn(meals, i, { day, rule });
  meals.fedOn[i] = day;
  if (accepted) {
    const drawn = min + Math.floor(uniform(key, FOR.interval) * (max - min + 1));
    schedule(meals, i, { from: day + min, to: day + max, drawn: day + drawn });
  } else {
    const again = day + (roster.rules.retry[rule] as number);
    schedule(meals, i, { from: again, to: again + max - min, drawn: again });
  }
}

/** Chance that the meal is taken; groups are fed on, since their members are not in step. Above 1 is certain. */
function acceptanceOn(meals: Meals, i: number, { day, rule }: { day: number; rule: number }): number {
  const { rules, heads, appetite } = meals.roster;
  if ((heads[i] as number) > 1) return 1;
  const moulted = meals.moultedOn[i] as number;
  const cycle = (meals.moultsOn[i] as number) - moulted;
  return usualAcceptance(rules, rule, (day - moulted) / cycle) * (appetite[i] as number);
}

/** Acceptance when this share of the moult cycle is over; the best of the cycle where none of it ever is. */
export function usualAcceptance(rules: RuleTable, rule: number, over: number): number {
  if (over === 0) return rules.acceptanceBest[rule] as number;
  const phase = Math.max(0, Math.min(rules.phases - 1, (over * rules.phases) | 0));
  return rules.acceptance[rule * rules.phases + phase] as number;
}

/** Last day on which an offer still keeps the meal from being missed. */
export const missedAfter = (meals: Meals, i: number): number => {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps + (meals.step[i] as number)] as number;
  return (meals.rangeTo[i] as number) + (roster.rules.grace[rule] as number);
};

/** Last day within the animal's safe gap. */
export const dangerAfter = (meals: Meals, i: number): number => {
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps + (meals.step[i] as number)] as number;
  return (meals.fedOn[i] as number) + (roster.rules.safeGap[rule] as number);
};
