/** The animals of a world as they stand: their state in arrays, and what follows from it at once. */
import { KINDS, type Kind, type Stage, URGENCIES } from './kinds.ts';
import type { Party, Room } from './rooms.ts';

/** No day. */
export const NEVER = -32768;
/** Intervals, and helpings, remembered of each animal. */
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
  /** Helpings given since the last moult was found: day, form, heads and lengths of each; and how many. */
  readonly gaveOn: Int32Array;
  readonly gaveForm: Uint8Array;
  readonly gaveHeads: Uint8Array;
  readonly gaveFromMm: Float32Array;
  readonly gaveToMm: Float32Array;
  readonly gave: Int32Array;
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
export const RANKS = new Map(ORDER.map((stage, rank) => [stage, rank]));
export const RANK_COUNT = ORDER.length;

/** Places for all animals of a room, with nobody in them yet. */
export function emptyPlaces(room: Room): Animals {
  const count = room.heads;
  const ints = () => new Int32Array(count);
  const days = () => new Int32Array(count).fill(NEVER);
  return {
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
    gaveOn: new Int32Array(count * REMEMBERED),
    gaveForm: new Uint8Array(count * REMEMBERED),
    gaveHeads: new Uint8Array(count * REMEMBERED),
    gaveFromMm: new Float32Array(count * REMEMBERED),
    gaveToMm: new Float32Array(count * REMEMBERED),
    gave: ints(),
  };
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

export function schedule(animals: Animals, i: number, { due, to }: { due: number; to: number }): void {
  animals.due[i] = due;
  animals.rangeTo[i] = to;
  animals.asked[i] = 0;
  animals.late[i] = 0;
}
