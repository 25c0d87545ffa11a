/**
 * The quick way through the meals of one animal that finds all it wants: what the meal calendar (meals.ts) does evening
 * by evening, with all that stays the same between two moults held in local variables.
 */
import { dayKey, uniform, whole } from '../../maths/random.ts';
import { type FeedingDays, offeredOn } from '../appetite/feeding-days.ts';
import { FOR, itemsOfOne, usualAcceptance } from '../appetite/meals.ts';
import { groupOf, noteOverdue, type Served } from './overdue.ts';
import { countDue } from './tally.ts';

export interface Alone extends Served {
  readonly feeding: FeedingDays;
  /** 1 on the evenings on which animals are fed. */
  readonly open: Uint8Array;
}

/**
 * Offers an animal its meals from day `first` on, up to the first evening on which something else can happen (a moult,
 * a departure, the end), and returns that day; a group alike or a hardening animal is left as it is.
 */
export function ordinaryMeals(run: Alone, i: number, first: number): number {
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
