/** Demand alone: whatever is wanted is there, so that each animal is followed by itself through all days. */

import { dayKey, uniform, whole } from '../../maths/random.ts';
import {
  comesDue,
  type FeedingDays,
  FOR,
  itemsOfOne,
  offeredOn,
  startAnimal,
  usualAcceptance,
} from '../appetite/index.ts';
import { alarmOf, groupOf, noteOverdue, type Served, serve } from './serve.ts';
import { countDue, countMany } from './tally.ts';

export interface Alone extends Served {
  readonly feeding: FeedingDays;
  /** 1 on the evenings on which animals are fed. */
  readonly open: Uint8Array;
}

/** Plays one replicate, given its key. */
export function playAlone(run: Alone, key: number): void {
  const { meals } = run;
  for (let i = 0; i < meals.roster.animals; i++) {
    startAnimal(meals, i, key);
    let day = meals.dueOn[i] as number;
    while (day < meals.days) {
      day = ordinaryMeals(run, i, day);
      if (day < meals.days) day = anyEvening(run, i, day);
    }
  }
}

/** The animal's evening, whatever happens on it; returns the day of its next. */
function anyEvening(run: Alone, i: number, day: number): number {
  const { meals, tally } = run;
  if (!run.open[day]) {
    noteOverdue(run, i, day);
    return run.feeding.next[day + 1] as number;
  }
  if (comesDue(meals, i, day)) {
    countDue(tally, { group: groupOf(run, i), day, items: meals.wants[i] as number });
    serve(run, i, day);
  }
  return meals.dueOn[i] as number;
}

/**
 * The quick way: offers an animal its meals from day `first` on, up to the first evening on which something else can
 * happen (a moult, a departure, the end), and returns that day; a group alike or a hardening animal is left as it is.
 */
function ordinaryMeals(run: Alone, i: number, first: number): number {
  const { meals, open } = run;
  const { roster } = meals;
  const rule = roster.rule[i * roster.steps + (meals.step[i] as number)] as number;
  const hardOn = (meals.moultedOn[i] as number) + (roster.rules.wait[rule] as number);
  if ((roster.heads[i] as number) > 1 || first < hardOn) return first;
  const end = Math.min(meals.days, meals.gone[i] as number, Math.ceil(meals.moultsOn[i] as number));
  let day = first;
  while (day < end) {
    day = mealsInTime(run, i, { first: day, end });
    if (day < end) noteOverdue(run, i, day - (open[day] as number));
  }
  return day;
}

/**
 * The same evenings as the meal calendar's (meals.ts), with all that stays the same between two moults in local
 * variables; stops where a meal is overdue. What is called here is small enough to be compiled into the loop.
 */
function mealsInTime(run: Alone, i: number, { first, end }: { first: number; end: number }): number {
  const { meals, tally, open, feeding } = run;
  const { roster, fedOn, rangeTo, counted } = meals;
  const { rules } = roster;
  const at = i * roster.steps + (meals.step[i] as number);
  const rule = roster.rule[at] as number;
  const moulted = meals.moultedOn[i] as number;
  const cycle = (meals.moultsOn[i] as number) - moulted;
  const animalKey = meals.key[i] as number;
  const appetite = roster.appetite[i] as number;
  const min = roster.intervalMin[at] as number;
  const slack = (roster.intervalMax[at] as number) - min;
  const retry = rules.retry[rule] as number;
  const safeGap = rules.safeGap[rule] as number;
  const group = roster.group[at] as number;
  const { wanted, itemsByDay } = tally;
  const row = group * tally.days;
  const kept = tally.now.replicate * tally.groups * tally.days + row;
  let alarm = alarmOf(meals, i);
  let count = 0;
  let sum = 0;
  let day = first;
  while (day < end) {
    const isOpen = open[day] as number;
    if (day - isOpen >= alarm) break;
    if (isOpen === 0) {
      day = feeding.next[day + 1] as number;
      continue;
    }
    const key = dayKey(animalKey, day);
    const items = itemsOfOne(meals, rule, key);
    wanted[row + day] = (wanted[row + day] as number) + items;
    if (itemsByDay) itemsByDay[kept + day] = (itemsByDay[kept + day] as number) + items;
    count++;
    sum += items;
    const usual = usualAcceptance(rules, rule, (day - moulted) / cycle);
    const taken = uniform(key, FOR.acceptance) < usual * appetite;
    const from = day + (taken ? min : retry);
    const to = from + slack;
    const drawn = taken ? from + whole(key, FOR.interval, slack + 1) : from;
    fedOn[i] = day;
    rangeTo[i] = to;
    counted[i] = 0;
    alarm = Math.min(to, day + safeGap);
    day = offeredOn(feeding, { from, to, drawn });
  }
  countMany(tally, group, { meals: count, items: sum });
  meals.dueOn[i] = day;
  return day;
}
