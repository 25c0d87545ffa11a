/** The prey of a world, head by head: where each is, how fast it grows, when it dies. State lies in arrays. */
import { FORMS, type Form } from './kinds.ts';
import { type Lot, livesOf } from './lives.ts';
import type { TubEvent } from './log.ts';
import { BAND_MM, BANDS, BREEDS, bandsOf, STEPS } from './prey.ts';
import type { Truth } from './truth.ts';

export interface Tub {
  readonly code: string;
  readonly form: Form;
  readonly colonyRoom: number | null;
  readonly key: number;
  alive: number;
  /** Heads by the keeper's notes. */
  book: number;
  looksMm: number;
  /** Day before which it feeds only who finds nothing else. */
  restsUntil?: number;
  readonly events: TubEvent[];
}

/** Where every head went, for the sums that must come out. */
export interface Heads {
  came: number;
  born: number;
  eaten: number;
  died: number;
  thrownOut: number;
}

export interface Larder {
  count: number;
  /** Index of its tub, place of its breed, share of the way to grown when it came, and growth a usual day. */
  tub: Int32Array;
  breed: Uint8Array;
  came: Float32Array;
  pace: Float32Array;
  /** Growth of the room by the day it came. */
  since: Float32Array;
  dies: Float32Array;
  /** Heads of each breed and band, as chains through `next`, those left alone after all others; -1 ends one. */
  readonly first: Int32Array;
  next: Int32Array;
  tubs: (Tub | null)[];
  readonly heads: Heads;
}

/** Chains of all that is fed first; as many follow for what is left alone. */
export const CHAINS = FORMS.length * BANDS;

/** The day of death of a head that was fed. */
const EATEN = -1;
const STEP_BANDS = FORMS.map((form) => bandsOf(BREEDS[form]));

export const emptyLarder = (): Larder => ({
  count: 0,
  tub: new Int32Array(256),
  breed: new Uint8Array(256),
  came: new Float32Array(256),
  pace: new Float32Array(256),
  since: new Float32Array(256),
  dies: new Float32Array(256),
  first: new Int32Array(2 * CHAINS).fill(-1),
  next: new Int32Array(256),
  tubs: [],
  heads: { came: 0, born: 0, eaten: 0, died: 0, thrownOut: 0 },
});

function makeRoom(larder: Larder, heads: number): void {
  if (larder.count + heads <= larder.tub.length) return;
  const size = 2 * (larder.count + heads);
  const wider = <A extends Int32Array | Uint8Array | Float32Array>(old: A, made: A): A => {
    made.set(old);
    return made;
  };
  larder.tub = wider(larder.tub, new Int32Array(size));
  larder.breed = wider(larder.breed, new Uint8Array(size));
  larder.came = wider(larder.came, new Float32Array(size));
  larder.pace = wider(larder.pace, new Float32Array(size));
  larder.since = wider(larder.since, new Float32Array(size));
  larder.dies = wider(larder.dies, new Float32Array(size));
  larder.next = new Int32Array(size);
}

/** Heads come into a tub; each grows by its own pace within that of the lot. */
export function putIn(larder: Larder, truth: Truth, { tub, lot }: { tub: number; lot: Lot }): void {
  const into = larder.tubs[tub] as Tub;
  const breed = FORMS.indexOf(into.form);
  const since = truth.breeds[into.form].grownBy[lot.day] as number;
  const { share, pace, dies } = livesOf(truth, into.form, lot);
  makeRoom(larder, lot.heads);
  for (let n = 0; n < lot.heads; n += 1) {
    const h = larder.count;
    larder.tub[h] = tub;
    larder.breed[h] = breed;
    larder.came[h] = share[n] as number;
    larder.pace[h] = pace[n] as number;
    larder.since[h] = since;
    larder.dies[h] = dies[n] as number;
    larder.count = h + 1;
  }
  into.alive += lot.heads;
}

export function remove(larder: Larder, h: number): void {
  const last = larder.count - 1;
  larder.tub[h] = larder.tub[last] as number;
  larder.breed[h] = larder.breed[last] as number;
  larder.came[h] = larder.came[last] as number;
  larder.pace[h] = larder.pace[last] as number;
  larder.since[h] = larder.since[last] as number;
  larder.dies[h] = larder.dies[last] as number;
  larder.count = last;
}

/** Share of the way to grown, in steps; the last for the grown. */
export function stepOf(larder: Larder, truth: Truth, h: number, day: number): number {
  const form = FORMS[larder.breed[h] as number] as Form;
  const grown = (truth.breeds[form].grownBy[day] as number) - (larder.since[h] as number);
  const share = (larder.came[h] as number) + (larder.pace[h] as number) * grown;
  // Rounded to floats, one born today may be a hair short of the way it has come.
  return share >= 1 ? STEPS : Math.max(0, Math.floor(share * STEPS));
}

/** Growth of each breed up to a day. */
const grownBy = (truth: Truth, day: number): readonly number[] =>
  FORMS.map((form) => truth.breeds[form].grownBy[day] as number);

/** Before an evening: the dead and the eaten are gone, all others lie by breed and length, a colony's grown apart. */
export function lay(larder: Larder, truth: Truth, day: number): void {
  const { first, next, tubs, tub, breed, came, pace, since, dies } = larder;
  const grown = grownBy(truth, day);
  const rests = Uint8Array.from(tubs, (each) => Number(each !== null && (each.restsUntil ?? 0) > day));
  const colony = Uint8Array.from(tubs, (each) => Number(each !== null && each.colonyRoom !== null));
  first.fill(-1);
  let h = -1;
  while (++h < larder.count) {
    if ((dies[h] as number) <= day) {
      bury(larder, h);
      h -= 1;
      continue;
    }
    const kind = breed[h] as number;
    const share =
      (came[h] as number) + (pace[h] as number) * ((grown[kind] as number) - (since[h] as number));
    if (share >= 1 && colony[tub[h] as number] === 1) continue;
    const step = share >= 1 ? STEPS : (share * STEPS) | 0;
    const aside = (rests[tub[h] as number] as number) * CHAINS;
    const chain = aside + kind * BANDS + ((STEP_BANDS[kind] as Uint8Array)[step] as number);
    next[h] = first[chain] as number;
    first[chain] = h;
  }
}

/** A head that was eaten or has died is taken away; the last of all takes its place. */
function bury(larder: Larder, h: number): void {
  if (larder.dies[h] !== EATEN) {
    larder.heads.died += 1;
    (larder.tubs[larder.tub[h] as number] as Tub).alive -= 1;
  }
  remove(larder, h);
}

/** The first head of a chain is fed. */
export function take(larder: Larder, chain: number): number {
  const h = larder.first[chain] as number;
  larder.first[chain] = larder.next[h] as number;
  larder.dies[h] = EATEN;
  larder.heads.eaten += 1;
  const tub = larder.tubs[larder.tub[h] as number] as Tub;
  tub.alive -= 1;
  return larder.tub[h] as number;
}

/** Heads alive in each tub, by band. */
export function bandsByTub(larder: Larder, truth: Truth, day: number): Int32Array {
  const found = new Int32Array(larder.tubs.length * BANDS);
  for (let h = 0; h < larder.count; h += 1) {
    if ((larder.dies[h] as number) <= day) continue;
    const band = (STEP_BANDS[larder.breed[h] as number] as Uint8Array)[
      stepOf(larder, truth, h, day)
    ] as number;
    const at = (larder.tub[h] as number) * BANDS + band;
    found[at] = (found[at] as number) + 1;
  }
  return found;
}

export const lengthOf = (larder: Larder, truth: Truth, h: number, day: number): number =>
  BAND_MM[
    (STEP_BANDS[larder.breed[h] as number] as Uint8Array)[stepOf(larder, truth, h, day)] as number
  ] as number;

export function newTub(larder: Larder, tub: Omit<Tub, 'alive' | 'events'>): number {
  larder.tubs.push({ ...tub, alive: 0, events: [] });
  return larder.tubs.length - 1;
}
