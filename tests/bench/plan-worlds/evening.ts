/** One evening's feeding, the same whoever buys: fragile first, narrowest window first, prey nearest to outgrowing first. */
import { type Animals, bodyOf, RANK_COUNT, stageOf } from './animal-places.ts';
import { comesInDanger, isHungry, itemsOf, offer, owe } from './appetite.ts';
import { floorOf } from './floor.ts';
import { noteMeal } from './helpings.ts';
import { FORMS, type Form, KINDS, type Kind, type Stage, URGENCIES } from './kinds.ts';
import { CHAINS, type Larder, lay, type Tub, take } from './larder.ts';
import { BAND_MM, BANDS, bandOf } from './prey.ts';
import type { Room } from './rooms.ts';
import type { Truth } from './truth.ts';

/** Meals by urgency, in the order of URGENCIES. */
export interface Meals {
  readonly due: Float64Array;
  readonly missed: Float64Array;
  readonly unfed: Float64Array;
  readonly late: Float64Array;
  readonly dangers: Float64Array;
  /** One number: the least the meals given could have been bought for (floor.ts). */
  readonly floorCents: Float64Array;
}

export const noMeals = (): Meals => {
  const none = () => new Float64Array(URGENCIES.length);
  return {
    due: none(),
    missed: none(),
    unfed: none(),
    late: none(),
    dangers: none(),
    floorCents: new Float64Array(1),
  };
};

interface Evening {
  readonly room: Room;
  readonly truth: Truth;
  readonly animals: Animals;
  readonly larder: Larder;
  readonly meals: Meals;
  readonly noted: boolean;
  readonly day: number;
}

const SMALLEST_WORTH = 1 / 3;
/** Less than this of an item is not looked for, and less than this share of a meal is not offered. */
const CRUMB = 0.3;
const HALF = 0.5;

/** Feeds all who are hungry, unless nobody feeds tonight, and counts what is owed at its end. */
export function feed(evening: Evening): void {
  const { truth, larder, animals, day } = evening;
  lay(larder, truth, day);
  const hungry = hungryByRank(evening);
  if (!truth.skipped[day]) {
    const fed = new Map<number, Fed>();
    for (const rank of hungry) for (const i of rank) serve(evening, i, fed);
    for (const [at, { heads, fromMm, toMm }] of fed) {
      const it = larder.tubs[Math.floor(at / SIZES)] as Tub;
      it.book = Math.max(0, it.book - heads);
      if (evening.noted) it.events.push({ day, what: 'fed', heads, fromMm, toMm });
    }
  }
  for (let i = 0; i < animals.count; i += 1) if ((animals.due[i] as number) <= day) countOwed(evening, i);
}

function hungryByRank({ room, animals, day }: Evening): number[][] {
  const ranks: number[][] = Array.from({ length: RANK_COUNT }, () => []);
  for (let i = 0; i < animals.count; i += 1)
    if ((animals.due[i] as number) <= day && isHungry(room, { animals, i, day }))
      (ranks[animals.rank[i] as number] as number[]).push(i);
  return ranks;
}

/** Prey given from one tub in an evening is written down by sizes as they are sold: each two fifths longer than the last. */
const SIZES = 10;

/** By tub and size. */
interface Fed {
  heads: number;
  fromMm: number;
  toMm: number;
}

function serve(evening: Evening, i: number, fed: Map<number, Fed>): void {
  const { room, truth, animals, larder, meals, day } = evening;
  const stage = stageOf(room, animals, i);
  const items = itemsOf(room, truth.generosity, { animals, i });
  const bodyMm = bodyOf(room, animals, i);
  if (!isFound(larder, { stage, bodyMm, items })) {
    animals.asked[i] = 1;
    return;
  }
  for (let n = 0; n < hand.heads; n += 1) {
    const chain = hand.chains[n] as number;
    const band = chain % BANDS;
    const size = Math.floor((band * SIZES) / BANDS);
    write(fed, take(larder, chain) * SIZES + size, BAND_MM[band] as number);
  }
  if (evening.noted) noteMeal(animals, i, { day, ...hand });
  const least = Math.min(items, hand.found) * floorOf(stage, bodyMm, room);
  meals.floorCents[0] = (meals.floorCents[0] as number) + least;
  const urgency = URGENCIES.indexOf(stage.urgency);
  meals.due[urgency] = (meals.due[urgency] as number) + 1;
  offer(room, { animals, i, day });
}

function write(fed: Map<number, Fed>, at: number, mm: number): void {
  const so = fed.get(at);
  if (!so) {
    fed.set(at, { heads: 1, fromMm: mm, toMm: mm });
    return;
  }
  so.heads += 1;
  so.fromMm = Math.min(so.fromMm, mm);
  so.toMm = Math.max(so.toMm, mm);
}

interface Wanting {
  readonly stage: Stage;
  readonly bodyMm: number;
  readonly items: number;
}

const LIVE: readonly Form[] = ['cricket', 'roach'];
/** First chain of each form a stage eats: what it is fed usually, and what when nothing else is left. */
const MENUS = new Map(
  Object.values(KINDS)
    .flatMap((kind: Kind) => kind.stages)
    .map((stage) => {
      const chains = (usual: boolean) =>
        stage.eats.filter((form) => LIVE.includes(form) === usual).map((form) => FORMS.indexOf(form) * BANDS);
      return [stage, { usual: chains(true), reserve: chains(false) }] as const;
    }),
);

interface Menu {
  readonly usual: readonly number[];
  readonly reserve: readonly number[];
}

/** The meal being put together: chains a head is taken from, one entry a head, and the items they stand for. */
const hand = { chains: new Int32Array(256), heads: 0, items: 0, found: 0, idealMm: 1 };

/** Heads for a meal: alive, then killed first, then what is fed when nothing else is left; then of what is left alone. */
function isFound(larder: Larder, { stage, bodyMm, items }: Wanting): boolean {
  const [least, ideal, alive, most] = stage.window;
  const low = bandOf(least * bodyMm) + 1;
  const live = bandOf(alive * bodyMm) - 1;
  const killed = bandOf(most * bodyMm) - 1;
  const { usual, reserve } = MENUS.get(stage) as Menu;
  hand.heads = 0;
  hand.found = 0;
  hand.items = items;
  hand.idealMm = ideal * bodyMm;
  for (const aside of [0, CHAINS]) {
    gather(larder, usual, { low, high: live, aside });
    if (killed > live) gather(larder, usual, { low: live + 1, high: killed, aside });
    gather(larder, reserve, { low, high: killed, aside });
    if (hand.found >= HALF * items) return true;
  }
  return false;
}

/** Goes down from the longest that fits until the meal is whole. */
function gather(
  larder: Larder,
  chains: readonly number[],
  { low, high, aside }: { low: number; high: number; aside: number },
): void {
  const { first, next } = larder;
  const enough = hand.items - CRUMB;
  for (let band = high; band >= low && hand.found < enough; band -= 1)
    for (let f = 0; f < chains.length; f += 1) {
      const chain = aside + (chains[f] as number) + band;
      let head = first[chain] as number;
      if (head < 0) continue;
      const share = (BAND_MM[band] as number) / hand.idealMm;
      const worth = Math.min(hand.items, Math.max(SMALLEST_WORTH, share * share * share));
      for (; head >= 0 && hand.found < enough; head = next[head] as number) {
        hand.chains[hand.heads] = chain;
        hand.heads += 1;
        hand.found += worth;
      }
    }
}

function countOwed({ room, animals, meals, day }: Evening, i: number): void {
  const urgency = URGENCIES.indexOf(stageOf(room, animals, i).urgency);
  const owed = owe(room, { animals, i, day });
  if (comesInDanger(room, { animals, i, day }))
    meals.dangers[urgency] = (meals.dangers[urgency] as number) + 1;
  if (owed === 'nothing') return;
  if (owed === 'late') meals.late[urgency] = (meals.late[urgency] as number) + 1;
  else {
    meals[owed][urgency] = (meals[owed][urgency] as number) + 1;
    meals.due[urgency] = (meals.due[urgency] as number) + 1;
  }
}
