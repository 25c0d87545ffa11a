/** The five invented rooms: who lives in them, of what size, and which colonies they keep. */
import type { Form, KindName } from './kinds.ts';

export interface Party {
  readonly kind: KindName;
  /** Parts of the room's animals. */
  readonly parts: number;
  /** Gauges, as shares of the grown, spread evenly in the logarithm. */
  readonly from: number;
  readonly to: number;
  /** Sold at this share, and another of the smallest size bought in its place; null: stays. */
  readonly leavesAt: number | null;
}

export interface ColonyPlan {
  readonly form: Form;
  readonly adults: number;
  readonly room: number;
  /** Young a grown head bears in a week, sexes together. */
  readonly youngPerWeek: number;
}

export interface Room {
  readonly name: string;
  readonly heads: number;
  readonly parties: readonly Party[];
  readonly colonies: readonly ColonyPlan[];
}

const small = { from: 0.09, to: 0.19, leavesAt: 0.3 };
const half = { from: 0.22, to: 0.75, leavesAt: 0.85 };
const grown = { from: 0.9, to: 1.05, leavesAt: null };

const PARTIES: readonly Party[] = [
  { kind: 'pulchra', parts: 6, ...small },
  { kind: 'hamorii', parts: 6, ...small },
  { kind: 'albopilosus', parts: 8, ...small },
  { kind: 'geniculata', parts: 6, ...small },
  { kind: 'irminia', parts: 4, ...small },
  { kind: 'pulchra', parts: 6, ...half },
  { kind: 'hamorii', parts: 8, ...half },
  { kind: 'albopilosus', parts: 8, ...half },
  { kind: 'geniculata', parts: 6, ...half },
  { kind: 'irminia', parts: 6, ...half },
  { kind: 'pulchra', parts: 7, ...grown },
  { kind: 'hamorii', parts: 8, ...grown },
  { kind: 'albopilosus', parts: 8, ...grown },
  { kind: 'geniculata', parts: 4, ...grown },
  { kind: 'irminia', parts: 4, ...grown },
  { kind: 'mantid', parts: 3, from: 0.12, to: 0.9, leavesAt: null },
  { kind: 'frog', parts: 2, from: 0.9, to: 1.05, leavesAt: null },
];

const room = (name: string, heads: number, colonies: readonly ColonyPlan[] = []): Room => ({
  name,
  heads,
  parties: PARTIES,
  colonies,
});

/** One brood of 25 every 65 days, half of the grown being females. */
const BORN_PER_WEEK = (0.5 * 25 * 7) / 65;

export const ROOMS: readonly Room[] = [
  room('40', 40),
  room('150', 150),
  room('400', 400),
  room('1500', 1500),
  room('colonies', 150, [
    { form: 'roach', adults: 110, room: 3000, youngPerWeek: BORN_PER_WEEK },
    { form: 'roach', adults: 110, room: 3000, youngPerWeek: BORN_PER_WEEK },
  ]),
];

export function roomNamed(name: string): Room {
  const found = ROOMS.find((each) => each.name === name);
  if (!found) throw new Error(`no room "${name}"; there are ${ROOMS.map((each) => each.name).join(', ')}`);
  return found;
}
