/**
 * The meal calendar of the whole collection in one replicate: who comes due on which day, wants how much, and what
 * follows from being fed. The state of all animals lies in arrays; draws are keyed by animal, day and purpose.
 */
import { evenVariance } from '../../maths/even.ts';
import { normalQuantile } from '../../maths/normal.ts';
import { dayKey, uniform, whole } from '../../maths/random.ts';
import { FOR, type Meals, schedule } from './meal-state.ts';
import type { RuleTable } from './rule-table.ts';

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
