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
import { groupOf, noteOverdue, type Served, serve } from './serve.ts';
import { countDue } from './tally.ts';

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
 * The quick way, as the evenings of the meal calendar (meals.ts) but with all that stays the same between two moults
 * in local variables. Offers an animal its meals from day `first` on, up to the first evening on which something else can happen (a moult,
 * a departure, the end), and returns that day; a group alike or a hardening animal is left as it is.
 */
function ordinaryMeals(run: Alone, i: number, first: number): number {
  const { meals, tally, open, feeding } = run;
  const { roster, fedOn, rangeTo, counted } = meals;
  const { rules } = roster;
  const at = i * roster.steps + (meals.step[i] as number);
  const rule = roster.rule[at] as number;
  const moulted = meals.moultedOn[i] as number;
  if ((roster.heads[i] as number) > 1 || first < moulted + (rules.wait[rule] as number)) return first;
  const moults = meals.moultsOn[i] as number;
  const cycle = moults - moulted;
  const end = Math.min(meals.days, meals.gone[i] as number, Math.ceil(moults));
  const animalKey = meals.key[i] as number;
  const appetite = roster.appetite[i] as number;
  const min = roster.intervalMin[at] as number;
  const slack = (roster.intervalMax[at] as number) - min;
  const retry = rules.retry[rule] as number;
  const safeGap = rules.safeGap[rule] as number;
  const group = groupOf(run, i);
  let alarm = Math.max(0, Math.min(rangeTo[i] as number, (fedOn[i] as number) + safeGap));
  let day = first;
  while (day < end) {
    const isOpen = open[day] as number;
    if (day - isOpen >= alarm) noteOverdue(run, i, day - isOpen);
    if (isOpen === 0) {
      day = feeding.next[day + 1] as number;
      continue;
    }
    const key = dayKey(animalKey, day);
    countDue(tally, { group, day, items: itemsOfOne(meals, rule, key) });
    const taken =
      uniform(key, FOR.acceptance) < usualAcceptance(rules, rule, (day - moulted) / cycle) * appetite;
    const from = day + (taken ? min : retry);
    const to = from + slack;
    const drawn = taken ? from + whole(key, FOR.interval, slack + 1) : from;
    fedOn[i] = day;
    rangeTo[i] = to;
    counted[i] = 0;
    alarm = Math.min(to, day + safeGap);
    day = offeredOn(feeding, { from, to, drawn });
  }
  meals.dueOn[i] = day;
  return day;
}
