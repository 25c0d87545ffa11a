/** How the animals of a world come, grow, moult and go, each at its own pace. */
import {
  type Animals,
  emptyPlaces,
  FOR,
  kindOf,
  NEVER,
  type Place,
  RANKS,
  schedule,
  stageOf,
} from './animal-places.ts';
import { keyOf, logNormal, uniform } from './dice.ts';
import { KINDS, type Stage } from './kinds.ts';
import type { Party, Room } from './rooms.ts';
import type { Truth } from './truth.ts';

export function animalsOf(room: Room, truth: Truth): Animals {
  const animals = emptyPlaces(room);
  for (let i = 0; i < animals.count; i += 1) settle(room, truth, { animals, i, day: 0 });
  return animals;
}

/** An animal comes to its place: the first of the world with a size of its party, a later one with the smallest. */
function settle(room: Room, truth: Truth, { animals, i, day }: Place): void {
  const party = room.parties[animals.party[i] as number] as Party;
  const turn = (animals.turn[i] as number) + 1;
  animals.turn[i] = turn;
  const key = keyOf(keyOf(truth.key, 1_000_000 + i), turn);
  animals.key[i] = key;
  const share = turn === 0 ? party.from * (party.to / party.from) ** uniform(key, FOR.gauge) : party.from;
  animals.gauge[i] = share * KINDS[party.kind].grownMm;
  animals.moults[i] = 0;
  animals.goesOn[i] = 1_000_000;
  for (const field of [animals.takenOn, animals.offeredOn, animals.foundOn, animals.earliestOn])
    field[i] = NEVER;
  for (const field of [animals.refusals, animals.offers, animals.takes, animals.known, animals.gave])
    field[i] = 0;
  grow(room, animals, i);
  measure(animals, i);
  const cycle = cycleOf(room, truth, { animals, i });
  animals.moultedOn[i] = day - (turn === 0 ? uniform(key, FOR.phase) : 0.2) * cycle;
  animals.moultsOn[i] = (animals.moultedOn[i] as number) + cycle;
  const { interval } = stageOf(room, animals, i);
  const ago = turn === 0 ? Math.floor(uniform(key, FOR.first) * interval[1]) : interval[0];
  animals.fedOn[i] = day - ago;
  animals.offeredOn[i] = day - ago;
  animals.takenOn[i] = day - ago;
  schedule(animals, i, {
    due: Math.max(day, day - ago + interval[0]),
    to: Math.max(day, day - ago) + interval[1],
  });
}

/** Stage and place in the order of feeding, by the gauge. */
function grow(room: Room, animals: Animals, i: number): void {
  const { stages, grownMm } = kindOf(room, animals, i);
  const share = (animals.gauge[i] as number) / grownMm;
  let stage = 0;
  while (stage + 1 < stages.length && (stages[stage + 1] as Stage).from <= share) stage += 1;
  animals.stage[i] = stage;
  animals.rank[i] = RANKS.get(stages[stage] as Stage) as number;
}

function measure(animals: Animals, i: number): void {
  const key = animals.key[i] as number;
  animals.measuredMm[i] =
    (animals.gauge[i] as number) * logNormal(key, FOR.moult + 4 * (animals.moults[i] as number) + 2, 0.04);
}

/** Days from this moult to the next; endless for those that moult no more. */
function cycleOf(room: Room, truth: Truth, { animals, i }: Omit<Place, 'day'>): number {
  const { moult } = stageOf(room, animals, i);
  if (!moult) return Number.POSITIVE_INFINITY;
  const { kind } = room.parties[animals.party[i] as number] as Party;
  const key = animals.key[i] as number;
  const n = FOR.moult + 4 * (animals.moults[i] as number);
  return moult[0] * truth.moultPace[kind] * logNormal(key, FOR.pace, 0.15) * logNormal(key, n, 0.25);
}

/** Whether a new day brings it a moult or a departure. */
export const stirs = (animals: Animals, i: number, day: number): boolean =>
  day >= (animals.moultsOn[i] as number) || day >= (animals.goesOn[i] as number);

/** What a new day brings: a moult, a departure; somebody else may be in the place afterwards. */
export function wake(room: Room, truth: Truth, { animals, i, day }: Place): void {
  if (day >= (animals.moultsOn[i] as number)) moultOn(room, truth, { animals, i, day });
  if (day >= (animals.goesOn[i] as number)) settle(room, truth, { animals, i, day });
}

function moultOn(room: Room, truth: Truth, { animals, i, day }: Place): void {
  const key = animals.key[i] as number;
  const n = FOR.moult + 4 * (animals.moults[i] as number);
  const [, factor] = stageOf(room, animals, i).moult as readonly [number, number];
  animals.gauge[i] = (animals.gauge[i] as number) * (1 + (factor - 1) * logNormal(key, n + 1, 0.2));
  animals.moultedOn[i] = animals.moultsOn[i] as number;
  animals.moults[i] = (animals.moults[i] as number) + 1;
  animals.foundOn[i] = day;
  animals.gave[i] = 0;
  animals.earliestOn[i] = day - 1 - Math.floor(3 * uniform(key, n + 3));
  animals.refusals[i] = 0;
  grow(room, animals, i);
  measure(animals, i);
  const { grownMm, grownDays } = kindOf(room, animals, i);
  const { leavesAt } = room.parties[animals.party[i] as number] as Party;
  animals.moultsOn[i] = (animals.moultedOn[i] as number) + cycleOf(room, truth, { animals, i });
  if (leavesAt !== null && (animals.gauge[i] as number) >= leavesAt * grownMm) animals.goesOn[i] = day + 1;
  if (grownDays !== null && animals.moultsOn[i] === Number.POSITIVE_INFINITY)
    animals.goesOn[i] = day + Math.round(grownDays * logNormal(key, FOR.mood, 0.25));
}
