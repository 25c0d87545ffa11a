/** The demo room's past, lived day by day through the keeper's own actions, from evening to morning. */

import { type Context, loadSnapshot, recordEvening, recordMorning } from '../src/actions/index.ts';
import type { Serving } from '../src/husbandry/appetite/index.ts';
import { civilDate } from '../src/husbandry/calendar.ts';
import { ok, type Result } from '../src/husbandry/result.ts';
import type { Snapshot } from '../src/husbandry/snapshot.ts';
import { eveningOf } from '../src/husbandry/supply/index.ts';
import { asOf } from './as-of.ts';
import { type Codes, codeOf } from './codes.ts';
import { recordLives } from './lives.ts';
import { SHELVES, type ShelfName } from './places.ts';
import { recordSeen } from './seen.ts';

export const DAYS_OF_HISTORY = 28;
/** Every so many-th meal offered is refused, until lately, or eaten in part. */
const REFUSED_EVERY = 23;
const PART_TAKEN_EVERY = 31;
const LATELY_DAYS = 18;
/** Grown females that eat nothing for weeks, as such animals do. */
const FASTING = ['Velvet', 'Ember'];
const ROUND_YESTERDAY: readonly ShelfName[] = [
  'Rack A, upper shelf',
  'Rack A, lower shelf',
  'Rack B, upper shelf',
  'Rack B, lower shelf',
  'Window rack',
];
const TENTHS = 10;

/**
 * Lives the days up to today. Yesterday's round left out the spiderlings and the floor and stays open, so that there
 * is a morning to close and the rest to feed tonight.
 */
export async function liveThrough(context: Context, codes: Codes): Promise<Result<null>> {
  const { today } = context.clock();
  let meals = 0;
  for (let daysAgo = DAYS_OF_HISTORY; daysAgo > 0; daysAgo--) {
    const then = asOf(context, today - daysAgo);
    const seen = await seeDay(then, codes, daysAgo);
    if (!seen.ok) return seen;
    const fed = await feed(then, codes, daysAgo === 1 ? ROUND_YESTERDAY : SHELVES.map(({ shelf }) => shelf));
    if (!fed.ok) return fed;
    if (daysAgo > 1 && fed.value.length > 0) {
      const morning = asOf(context, today - daysAgo + 1);
      const closed = await closeMorning(morning, codes, { servings: fed.value, mealsBefore: meals, daysAgo });
      if (!closed.ok) return closed;
    }
    meals += fed.value.length;
  }
  return seeDay(context, codes, 0);
}

async function seeDay(then: Context, codes: Codes, daysAgo: number): Promise<Result<null>> {
  const larder = await recordSeen(then, codes, daysAgo);
  return larder.ok ? recordLives(then, codes, daysAgo) : larder;
}

/** Feeds whoever is due on these shelves, as Tonight proposes; the servings that were offered. */
async function feed(
  then: Context,
  codes: Codes,
  shelves: readonly string[],
): Promise<Result<readonly Serving[]>> {
  const due = eveningOf(onlyDemo(await loadSnapshot(then), codes)).servings;
  const servings = due.filter(({ shelf }) => shelves.includes(shelf));
  const offered = servings.filter(({ offer }) => offer !== null);
  if (servings.length === 0) return ok([]);
  const done = await recordEvening(then, { rows: servings.map(rowOf) });
  return done.ok ? ok(offered) : done;
}

/** The snapshot without what the keeper has of their own, which the demo room leaves alone. */
function onlyDemo(snapshot: Snapshot, codes: Codes): Snapshot {
  const [animals, bins] = [new Set(codes.animals.values()), new Set(codes.bins.values())];
  const { policy } = snapshot.facts;
  return {
    ...snapshot,
    // Its evenings follow the record as it stands: learning from it anew each night would take seconds.
    facts: { ...snapshot.facts, policy: { ...policy, learnDays: { ...policy.learnDays, value: 0 } } },
    animals: snapshot.animals.filter(({ code }) => animals.has(code)),
    bins: snapshot.bins.filter(({ code }) => bins.has(code)),
  };
}

function rowOf({ animal, offer }: Serving): Parameters<typeof recordEvening>[1]['rows'][number] {
  if (offer === null) return { animal, outcome: 'not offered' };
  const { bin, heads, fromMm, toMm, killFirst: preKilled, portions } = offer;
  return {
    animal,
    outcome: 'offered',
    bin,
    heads,
    fromMm: roundedMm(fromMm),
    toMm: roundedMm(toMm),
    preKilled,
    portions,
  };
}

const roundedMm = (mm: number): number => Math.round(mm * TENTHS) / TENTHS;

interface Evening {
  readonly servings: readonly Serving[];
  readonly mealsBefore: number;
  readonly daysAgo: number;
}

/** Closes the evening before: a few refused or part-eaten, by their number in the room's log, the rest taken. */
function closeMorning(morning: Context, codes: Codes, evening: Evening): Promise<Result<unknown>> {
  const fasting = FASTING.map((name) => codeOf(codes.animals, name));
  const exceptions = evening.servings.flatMap(({ animal }, at) => {
    const number = evening.mealsBefore + at + 1;
    const refused = evening.daysAgo >= LATELY_DAYS && number % REFUSED_EVERY === 0;
    if (refused || fasting.includes(animal)) return { animal, outcome: 'refused' as const };
    return number % PART_TAKEN_EVERY === 0 ? { animal, outcome: 'part-taken' as const } : [];
  });
  return recordMorning(morning, { evening: civilDate(morning.clock().today - 1), exceptions });
}
