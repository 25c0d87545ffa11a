/** The animals of a world, each with its own pace, moults and moods; their state lies in arrays. */
import { keyOf, logNormal, uniform } from './dice.ts';
import { KINDS, type Kind, type Stage, URGENCIES } from './kinds.ts';
import type { Party, Room } from './rooms.ts';
import type { Truth } from './truth.ts';

/** No day. */
export const NEVER = -32768;
/** Intervals remembered of each animal. */
export const REMEMBERED = 8;

export interface Animals {
  readonly count: number;
  readonly party: Uint8Array;
  /** How many have lived in this place before. */
  readonly turn: Int32Array;
  readonly key: Uint32Array;
  readonly gauge: Float64Array;
  readonly stage: Uint8Array;
  /** Place among all stages in the order of feeding. */
  readonly rank: Uint8Array;
  readonly moultsOn: Float64Array;
  readonly moultedOn: Float64Array;
  readonly moults: Int32Array;
  readonly goesOn: Int32Array;
  readonly due: Int32Array;
  readonly rangeTo: Int32Array;
  readonly meals: Int32Array;
  readonly asked: Uint8Array;
  readonly late: Uint8Array;
  readonly endangered: Uint8Array;
  /** Counted from for dangers: last fed, or hardened after a moult. */
  readonly fedOn: Int32Array;
  readonly offeredOn: Int32Array;
  readonly takenOn: Int32Array;
  readonly refusals: Int32Array;
  readonly offers: Int32Array;
  readonly takes: Int32Array;
  readonly measuredMm: Float64Array;
  readonly foundOn: Int32Array;
  readonly earliestOn: Int32Array;
  readonly intervals: Int16Array;
  readonly known: Int32Array;
}

/** Purposes of an animal's draws; meals and moults are counted on from theirs. */
export const FOR = {
  gauge: 0,
  phase: 1,
  first: 2,
  pace: 3,
  temper: 4,
  mood: 5,
  meal: 100,
  moult: 100_000,
} as const;

export const kindOf = (room: Room, animals: Animals, i: number): Kind =>
  KINDS[(room.parties[animals.party[i] as number] as Party).kind];

export const stageOf = (room: Room, animals: Animals, i: number): Stage =>
  kindOf(room, animals, i).stages[animals.stage[i] as number] as Stage;

export const bodyOf = (room: Room, animals: Animals, i: number): number =>
  (animals.gauge[i] as number) * kindOf(room, animals, i).bodyPerGauge;

const width = ({ window }: Stage): number => window[3] / window[0];

/** All stages of all kinds in the order of feeding: fragile first, then the narrowest window. */
const ORDER: readonly Stage[] = [...new Set(Object.values(KINDS).flatMap((kind: Kind) => kind.stages))].sort(
  (a, b) =>
    URGENCIES.indexOf(a.urgency) - URGENCIES.indexOf(b.urgency) ||
    width(a) - width(b) ||
    a.window[0] - b.window[0],
);
const RANKS = new Map(ORDER.map((stage, rank) => [stage, rank]));
export const RANK_COUNT = ORDER.length;

export function animalsOf(room: Room, truth: Truth): Animals {
  const count = room.heads;
  const ints = () => new Int32Array(count);
  const days = () => new Int32Array(count).fill(NEVER);
  const animals: Animals = {
    count,
    party: partiesOf(room),
    turn: ints().fill(-1),
    key: new Uint32Array(count),
    gauge: new Float64Array(count),
    stage: new Uint8Array(count),
    rank: new Uint8Array(count),
    moultsOn: new Float64Array(count),
    moultedOn: new Float64Array(count),
    moults: ints(),
    goesOn: ints(),
    due: ints(),
    rangeTo: ints(),
    meals: ints(),
    asked: new Uint8Array(count),
    late: new Uint8Array(count),
    endangered: new Uint8Array(count),
    fedOn: days(),
    offeredOn: days(),
    takenOn: days(),
    refusals: ints(),
    offers: ints(),
    takes: ints(),
    measuredMm: new Float64Array(count),
    foundOn: days(),
    earliestOn: days(),
    intervals: new Int16Array(count * REMEMBERED),
    known: ints(),
  };
  for (let i = 0; i < count; i += 1) settle(room, truth, { animals, i, day: 0 });
  return animals;
}

/** Places dealt out to the parties in proportion, the larger remainders first. */
function partiesOf({ parties, heads }: Room): Uint8Array {
  const parts = parties.reduce((sum, party) => sum + party.parts, 0);
  const wanted = parties.map((party) => (heads * party.parts) / parts);
  const given = wanted.map(Math.floor);
  const byRest = wanted.map((_, p) => p).sort((a, b) => rest(b) - rest(a) || a - b);
  function rest(p: number): number {
    return (wanted[p] as number) - Math.floor(wanted[p] as number);
  }
  for (let left = heads - given.reduce((a, b) => a + b, 0), k = 0; left > 0; left -= 1, k += 1)
    given[byRest[k] as number] = (given[byRest[k] as number] as number) + 1;
  return Uint8Array.from(given.flatMap((n, p) => Array.from({ length: n }, () => p)));
}

export interface Place {
  readonly animals: Animals;
  readonly i: number;
  readonly day: number;
}

/** An animal comes to its place: the first of the world with a size of its party, a later one with the smallest. */
export function settle(room: Room, truth: Truth, { animals, i, day }: Place): void {
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
  for (const field of [animals.refusals, animals.offers, animals.takes, animals.known]) field[i] = 0;
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

export function schedule(animals: Animals, i: number, { due, to }: { due: number; to: number }): void {
  animals.due[i] = due;
  animals.rangeTo[i] = to;
  animals.asked[i] = 0;
  animals.late[i] = 0;
}
