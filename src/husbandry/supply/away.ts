/** While the keeper is away: who can wait, who is fed before, and on which evenings somebody must come for whom. */
import type { Animal, Urgency } from '../animals/index.ts';
import type { DayNumber, DayRange } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { type Absence, absenceOf, withoutDays } from './absence.ts';
import { latestDay, type Visit, visitsFor, type Waiting } from './away-visits.ts';
import { type Interval, intervalOf, type MealAhead, mealAfter, mealAtLeaving } from './meal-ahead.ts';
import { nextMealOf, reasonToWait } from './next-meal.ts';

/**
 * From the least care to the most: shut up in its moult; no meal missed until the first feeding day; none missed if fed
 * on the day of return; a meal missed but the safe gap not passed; somebody must come.
 */
export type Standing = 'leave alone' | 'waits' | 'first when back' | 'misses a meal' | 'needs a sitter';

export interface AwayAnimal {
  readonly animal: string;
  readonly urgency: Urgency;
  readonly standing: Standing;
  /** Fed on the evening before leaving, early in its range, so that it can wait. */
  readonly fedBefore: boolean;
  /** Passes its safe gap before it is fed again, if nobody comes. */
  readonly danger: boolean;
  readonly meal: MealAhead;
  /** Why it must be left alone; null when it need not. */
  readonly reason: string | null;
  /** Last evening on which a sitter is in time for its first meal; null when none is needed. */
  readonly latest: DayNumber | null;
}

export interface AwayPlan {
  readonly absence: Absence;
  /** Fragile first, then the soonest in danger. */
  readonly animals: readonly AwayAnimal[];
  /** Evenings somebody must come, and whom to feed. */
  readonly visits: readonly Visit[];
  /** Of each visit, whom to feed besides, since they would else miss a meal. */
  readonly besides: readonly Visit[];
}

interface Asking {
  readonly snapshot: Snapshot;
  readonly absence: Absence;
  /** Days kept between the day it is fed again and the end of its safe gap. */
  readonly marginDays: number;
}

/** The plan of an absence; the evenings before it are taken as usual, and every meal offered in time as taken. */
export function awayPlan(given: Snapshot, away: DayRange): AwayPlan {
  const absence = absenceOf(given, away);
  const snapshot = { ...given, calendar: withoutDays(given.calendar, absence) };
  const asking = { snapshot, absence, marginDays: given.facts.policy.awayMarginDays.value };
  const found = snapshot.animals.map((animal) => ({ animal, said: standingOf(asking, animal) }));
  const waiting = (standing: Standing) =>
    found
      .filter(({ said }) => said.standing === standing)
      .map(({ animal, said }) => waitingOf(asking, animal, said));
  const visits = visitsFor(waiting('needs a sitter'), absence);
  return {
    absence,
    animals: found.map(({ said }) => said).sort(byNeed),
    visits,
    besides: besidesOf(visits, waiting('misses a meal')),
  };
}

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;
const byNeed = (a: AwayAnimal, b: AwayAnimal): number =>
  RANK[a.urgency] - RANK[b.urgency] ||
  a.meal.dangerAfter - b.meal.dangerAfter ||
  (a.animal < b.animal ? -1 : 1);

const ORDER: readonly Standing[] = [
  'leave alone',
  'waits',
  'first when back',
  'misses a meal',
  'needs a sitter',
];

/** How one animal stands: as it is, or fed on the eve if that helps it. */
function standingOf(asking: Asking, animal: Animal): AwayAnimal {
  const { snapshot, absence } = asking;
  const interval = intervalOf(animal, snapshot.facts);
  const usual = mealAtLeaving(snapshot, animal, absence.from);
  const alone = reasonToWait(nextMealOf(snapshot, animal), absence.to);
  const early = absence.eve !== null && usual.open <= absence.eve ? mealAfter(absence.eve, interval) : null;
  const asItIs = alone === null ? waitOf(asking, usual, interval) : 'leave alone';
  const ifFed = alone === null && early !== null ? waitOf(asking, early, interval) : asItIs;
  const fedBefore = early !== null && ORDER.indexOf(ifFed) < ORDER.indexOf(asItIs);
  const meal = fedBefore ? early : usual;
  const standing = fedBefore ? ifFed : asItIs;
  return {
    animal: animal.code,
    urgency: interval.rule.urgency,
    standing,
    fedBefore,
    danger: alone === null && meal.dangerAfter < absence.fedAgain,
    meal,
    reason: alone,
    latest: standing === 'needs a sitter' ? latestDay(meal, absence) : null,
  };
}

/** Whether a meal may wait for the first feeding day after the return, for the return itself, or not. */
function waitOf({ absence, marginDays }: Asking, meal: MealAhead, { rule }: Interval): Standing {
  const safe = (day: DayNumber) => day + marginDays <= meal.dangerAfter;
  const inTime = (day: DayNumber) => safe(day) && day <= meal.missedAfter;
  if (inTime(absence.fedAgain)) return 'waits';
  if (inTime(absence.home)) return 'first when back';
  if (rule.urgency === 'fragile') return 'needs a sitter';
  if (safe(absence.fedAgain)) return 'misses a meal';
  return safe(absence.home) ? 'first when back' : 'needs a sitter';
}

function waitingOf(asking: Asking, animal: Animal, { meal }: AwayAnimal): Waiting {
  const interval = intervalOf(animal, asking.snapshot.facts);
  return {
    animal: animal.code,
    meal,
    fedOn: (day) => mealAfter(day, interval),
    cannotWait: (next) => waitOf(asking, next, interval) === 'needs a sitter',
  };
}

/** Each of these at the first visit for which its meal has opened. */
function besidesOf(visits: readonly Visit[], waiting: readonly Waiting[]): readonly Visit[] {
  const first = ({ meal }: Waiting) => visits.find(({ day }) => meal.open <= day)?.day;
  return visits.map(({ day }) => ({
    day,
    animals: waiting.filter((each) => first(each) === day).map(({ animal }) => animal),
  }));
}
