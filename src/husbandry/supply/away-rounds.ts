/** What a sitter feeds, evening by evening: each bin followed to that evening, what is eaten before taken out of it. */
import type { Animal } from '../animals/index.ts';
import type { Serving } from '../appetite/index.ts';
import { type DayNumber, isFeedingDay } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { withoutDays } from './absence.ts';
import type { AwayPlan } from './away.ts';
import type { Visit } from './away-visits.ts';
import { eveningOf, servingsOf } from './evening.ts';
import { larderAhead, shelvesOn, takenFrom } from './larder-ahead.ts';
import { afterMeal } from './meal-ahead.ts';
import { nextMealOf } from './next-meal.ts';

export interface AwayRound {
  readonly day: DayNumber;
  readonly servings: readonly Serving[];
}

export interface PreyWanted {
  readonly bin: string;
  readonly species: string;
  readonly heads: number;
  /** Of these, to be killed or cut first. */
  readonly killed: number;
}

export interface AwayRounds {
  /** Those fed on the evening before leaving only because of the absence; null when nobody is. */
  readonly before: AwayRound | null;
  readonly visits: readonly AwayRound[];
  /** What the visits take, by bin. */
  readonly prey: readonly PreyWanted[];
}

/**
 * The rounds of a plan, with each bin at its likeliest growth and count; null when the absence begins so far ahead that
 * the larder would be a guess. Parcels due before leaving are taken as come; later ones as not unpacked.
 */
export function awayRounds(given: Snapshot, plan: AwayPlan, alsoBesides: boolean): AwayRounds | null {
  const { from, to, eve } = plan.absence;
  const { today } = given;
  if (from - today > given.facts.policy.awayFollowedDays.value) return null;
  const deliveries = given.deliveries.filter(({ day }) => day < from);
  const larder = larderAhead({ ...given, deliveries }, to - today + 1);
  const fedEarly = plan.animals.filter(({ fedBefore }) => fedBefore).map(({ animal }) => animal);
  const planned: readonly Visit[] = [
    ...(eve === null ? [] : [{ day: eve, animals: fedEarly }]),
    ...plan.visits,
    ...(alsoBesides ? plan.besides : []),
  ];
  const rounds: AwayRound[] = [];
  let now: Snapshot = { ...given, calendar: withoutDays(given.calendar, plan.absence) };
  for (let day = today; day <= to; day++) {
    const due = planned.filter((visit) => visit.day === day).flatMap(({ animals }) => animals);
    const usual = isFeedingDay(now.calendar, day);
    if (due.length === 0 && !usual) continue;
    now = { ...now, today: day };
    const shelves = shelvesOn(larder, day - today);
    if (usual) now = after(now, eveningOf(now, { shelves }).servings);
    const extra = servingsOf(
      now,
      due.map((code) => nextMealOf(now, named(now, code))),
      { shelves },
    );
    if (extra.length > 0) rounds.push({ day, servings: extra });
    now = after(now, extra);
    takenFrom(larder, day - today, shelves);
  }
  const visits = rounds.filter(({ day }) => day >= from);
  return { before: rounds.find(({ day }) => day === eve) ?? null, visits, prey: preyOf(visits) };
}

function named({ animals }: Snapshot, code: string): Animal {
  const animal = animals.find((each) => each.code === code);
  if (!animal) throw new Error(`there is no animal ${code}`);
  return animal;
}

/** The room after a round: its animals fed. */
function after(now: Snapshot, servings: readonly Serving[]): Snapshot {
  const fed = new Set(servings.filter(({ offer }) => offer !== null).map(({ animal }) => animal));
  if (fed.size === 0) return now;
  return {
    ...now,
    animals: now.animals.map((each) => (fed.has(each.code) ? afterMeal(each, now.today) : each)),
  };
}

function preyOf(rounds: readonly AwayRound[]): readonly PreyWanted[] {
  const sums = new Map<string, PreyWanted>();
  for (const { offer } of rounds.flatMap(({ servings }) => servings)) {
    if (offer === null) continue;
    const { bin, species, heads, killFirst } = offer;
    const before = sums.get(bin) ?? { bin, species, heads: 0, killed: 0 };
    const killed = before.killed + (killFirst ? heads : 0);
    sums.set(bin, { bin, species, heads: before.heads + heads, killed });
  }
  return [...sums.values()].sort((a, b) => (a.bin < b.bin ? -1 : 1));
}
