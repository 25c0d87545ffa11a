/** One random sequence of acts, undos and doings-again on a small room, and what is found wrong with it. */
import { isDeepStrictEqual } from 'node:util';
import * as actions from '../../../src/actions/index.ts';
import { ok, type Result } from '../../../src/husbandry/result.ts';
import { sundayCheck } from '../../../src/husbandry/supply/index.ts';
import {
  animalRecords,
  binEvents,
  inOrder,
  restingUpon,
  rowsOf,
  type Store,
  withResting,
} from '../../../src/store/index.ts';
import { nouns } from '../../../src/store/nouns.ts';
import type { Room } from '../room-clock.ts';
import { animalActs } from './animal-acts.ts';
import { bookActs, herdActs } from './book-acts.ts';
import { type Dice, diceOf } from './draw.ts';
import { larderActs } from './larder-acts.ts';
import { livingActs } from './living-acts.ts';
import { marketActs } from './market-acts.ts';
import { orderActs } from './order-acts.ts';
import { type Present, presentOf } from './present.ts';
import { playInto, rebuilt, type State, stateOf } from './replay.ts';
import { unsound } from './sound.ts';

type Draw = (here: Present) => unknown;
type Doing = (room: Room, input: unknown) => Promise<{ readonly ok: boolean }>;
export const DRAWN: Readonly<Record<string, Draw>> = {
  ...animalActs,
  ...herdActs,
  ...bookActs,
  ...larderActs,
  ...livingActs,
  ...orderActs,
  ...marketActs,
};

/** How often an act is drawn, where not once in a turn: what a room lives on oftener, what empties it seldom. */
const WEIGHTS: Readonly<Record<string, number>> = {
  recordEvening: 6,
  recordMorning: 3,
  bringBack: 6,
  orderCame: 4,
  recountDelivery: 6,
  coldStore: 3,
  move: 3,
  editAnimal: 3,
  addAnimal: 2,
  addBin: 2,
  removeRoom: 2,
  mergeBins: 3,
  emptyDemo: 0.3,
  closeBin: 0.6,
  takeAway: 0.6,
  lend: 1.5,
  cameBack: 2,
  addKind: 2,
  removeKind: 4,
  editRule: 1.5,
  resetRule: 2,
  editNumbers: 3,
  resetNumbers: 5,
  importAnimals: 0.4,
  importStock: 0.4,
};
const SMALLEST = 0.1;
const NAMES = Object.keys(DRAWN).flatMap((name) =>
  Array.from({ length: Math.round((WEIGHTS[name] ?? 1) / SMALLEST) }, () => name),
);
/** In one sequence of so many the Sunday answer is asked for. */
const ONE_ASKS_OF = 50;
/** In one of so many all is done again after all was undone. */
const ONE_IS_REDONE_OF = 3;
/** In one of so many the journal is played into another store. */
const ONE_IS_PLAYED_OF = 5;

export interface Tally {
  /** By action, how often it was done and refused. */
  readonly done: Map<string, number>;
  readonly refused: Map<string, number>;
  steps: number;
  undos: number;
  /** Undos and doings-again of all at the ends. */
  ends: number;
  /** Kept answers compared with answers computed anew. */
  compared: number;
}

export const emptyTally = (): Tally => ({
  done: new Map(),
  refused: new Map(),
  steps: 0,
  undos: 0,
  ends: 0,
  compared: 0,
});
const count = (map: Map<string, number>, name: string) => map.set(name, (map.get(name) ?? 0) + 1);

/** Empties a database. */
async function empty(store: Store): Promise<void> {
  const tables = ['kept', 'entry', 'change', 'act', ...nouns.toReversed(), 'counter'];
  good(
    await store.write(async (tx) => {
      for (const table of tables) await tx.run(`delete from ${table}`);
      return ok(null);
    }),
  );
}

/** A small room, made by acts. */
async function furnish(room: Room): Promise<void> {
  good(await actions.firstRoom(room));
  const spider = { kind: 'brachypelma-hamorii', room: 'R1' };
  good(await actions.addAnimal(room, { ...spider, gaugeMm: 40 }));
  good(await actions.addAnimal(room, { ...spider, gaugeMm: 14, count: 4, demo: true }));
  good(await actions.addAnimal(room, { ...spider, gaugeMm: 60 }));
  good(await actions.lend(room, { animals: ['A3'], to: 'A friend' }));
  good(await actions.editRule(room, { kind: spider.kind, stage: 'adult', retryDays: 23 }));
  const lot = { heads: 200, fromMm: 4, toMm: 6 };
  good(await actions.addBin(room, { species: 'acheta-domesticus', room: 'R1', capacity: 400, lot }));
  good(await actions.addBin(room, { species: 'acheta-domesticus', room: 'R1', demo: true }));
  const larvae = { heads: 300, fromMm: 12, toMm: 20 };
  good(await actions.addBin(room, { species: 'tenebrio-molitor', room: 'R1', lot: larvae }));
  good(await actions.startCup(room, { species: 'drosophila-hydei', room: 'R1' }));
  const dispatchWeekdays = Array<boolean>(7).fill(true);
  good(await actions.addSupplier(room, { name: 'Seller', dispatchWeekdays, demo: true }));
  const prices = [{ fromPacks: 1, pack: 5 }];
  const goods = { supplier: 'S1', species: 'acheta-domesticus', fromMm: 4, toMm: 6, packHeads: 50, prices };
  good(await actions.addOffer(room, goods));
  good(await actions.addRoom(room, { name: 'Cellar', dayTempC: 18, nightTempC: 16 }));
  const plan = { kind: 'sac' as const, animalKind: spider.kind, count: 30, gaugeMm: 4, room: 'R1' };
  good(await actions.planChange(room, { ...plan, from: room.date(20), to: room.date(25) }));
  good(await actions.expectDelivery(room, { ...lot, bin: 'B1', day: room.date(2) }));
  good(
    await actions.placeOrder(room, {
      supplier: 'S1',
      sentDay: room.date(0),
      lines: [{ offer: 'F1', packs: 1, bin: 'B1' }],
    }),
  );
}

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

interface Running {
  readonly room: Room;
  readonly dice: Dice;
  readonly tally: Tally;
}

export interface Rooms {
  readonly room: Room;
  /** Another store, into which the journal is played. */
  readonly mirror: Store;
}

/** Runs the sequence of a seed; sentences say what was wrong, none when all held. */
export async function runSequence(
  { room, mirror }: Rooms,
  seed: number,
  tally: Tally,
): Promise<readonly string[]> {
  const running: Running = { room, dice: diceOf(seed), tally };
  await empty(room.store);
  const first = await stateOf(room.store.ask);
  await furnish(room);
  const withSunday = seed % ONE_ASKS_OF === 0;
  const unsoundBy: string[] = [];
  for (let left = running.dice.whole(3, 18); left > 0; left -= 1)
    unsoundBy.push(...(await step(running, withSunday)));
  const last = await stateOf(room.store.ask);
  tally.compared += Number(withSunday);
  const wrong = [
    ...unsoundBy,
    ...differing('the journal rebuilds the last state', await rebuilt(room.store.ask), last),
    ...(withSunday ? await cacheDiffers(room) : []),
    ...(seed % ONE_IS_PLAYED_OF === 0 ? await mirrorDiffers(room, mirror) : []),
    ...(await undoAll(running, { first, last, again: seed % ONE_IS_REDONE_OF === 0 })),
  ];
  return wrong.map((sentence) => `seed ${seed}: ${sentence}`);
}

/** One act, undo or day; what is not as it must be after it. */
async function step(running: Running, withSunday: boolean): Promise<readonly string[]> {
  const { room, dice, tally } = running;
  tally.steps += 1;
  if (withSunday && dice.often(0.3)) await actions.askSunday(room);
  if (dice.often(0.1)) room.pass(1);
  const here = await presentOf(room, dice);
  const name = dice.often(0.3) ? await turnBack(running, here) : await doOne(running, here);
  return (await room.store.ask(unsound)).map((sentence) => `after ${name}: ${sentence}`);
}

async function doOne({ room, dice, tally }: Running, here: Present): Promise<string> {
  const name = dice.pick(NAMES)!;
  const doing = (actions as unknown as Record<string, Doing>)[name]!;
  const done = await doing(room, DRAWN[name]!(here));
  count(done.ok ? tally.done : tally.refused, name);
  return name;
}

/** Undoes an act, an undo, or an act with all that rests on it. */
async function turnBack({ room, dice, tally }: Running, { acts }: Present): Promise<string> {
  const target = dice.pick(acts);
  if (target === undefined) return 'nothing';
  const together = !target.turn && dice.often(0.5);
  const all = together
    ? [...withResting(await restingUpon(room.store.ask, [target.id]), [target.id])]
    : [target.id];
  const done = await (together
    ? actions.undoMany(room, { acts: all })
    : actions.undo(room, { act: target.id }));
  tally.undos += Number(done.ok);
  const name = together ? 'undoMany' : 'undo';
  count(done.ok ? tally.done : tally.refused, name);
  return `${name} ${all.join(',')}`;
}

const countingActs = async ({ store }: Room): Promise<readonly number[]> => (await stateOf(store.ask)).acts;

interface Ends {
  readonly first: State;
  readonly last: State;
  /** Whether all is done again. */
  readonly again: boolean;
}

/** Undoes all, newest first, and now and then does all of it again. */
async function undoAll(
  { room, tally }: Running,
  { first, last, again: doAgain }: Ends,
): Promise<readonly string[]> {
  const acts = await room.store.ask(inOrder(await countingActs(room)));
  const undone: number[] = [];
  for (const act of acts.toReversed()) {
    const done = await actions.undo(room, { act });
    if (!done.ok) return [`undo-all stops at act ${act}: ${done.problem.sentence}`];
    undone.unshift(done.value.act);
    tally.ends += 1;
  }
  const back = await stateOf(room.store.ask);
  const wrong = differing('undo-all gives the first state', back, first);
  for (const act of doAgain ? undone : []) {
    const done = await actions.undo(room, { act });
    if (!done.ok) return [...wrong, `doing all again stops at act ${act}: ${done.problem.sentence}`];
  }
  if (!doAgain) return wrong;
  const again = await stateOf(room.store.ask);
  return [
    ...wrong,
    ...differing('doing all again gives the last state', again, last),
    ...differing('the journal rebuilds it', await rebuilt(room.store.ask), again),
  ];
}

function differing(promise: string, found: State, wanted: State): readonly string[] {
  const parts = (['rows', 'acts', 'entries'] as const).filter(
    (part) => !isDeepStrictEqual(found[part], wanted[part]),
  );
  return parts.map(
    (part) =>
      `not so that ${promise}: ${part} are ${JSON.stringify(found[part])}, not ${JSON.stringify(wanted[part])}`,
  );
}

/** The kept answer against one computed anew. */
async function cacheDiffers(room: Room): Promise<readonly string[]> {
  const kept = good(await actions.askSunday(room));
  const anew = JSON.parse(JSON.stringify(sundayCheck(await actions.loadSnapshot(room), {})));
  return isDeepStrictEqual(kept, anew) ? [] : ['the kept Sunday answer is not the one computed anew'];
}

/** What the core is told of bins and animals, from this store and from one the journal was played into. */
async function mirrorDiffers({ store, clock, facts }: Room, mirror: Store): Promise<readonly string[]> {
  await empty(mirror);
  await playInto(mirror, store);
  const day = clock().today;
  const told = {
    events: binEvents(day, facts.policy.learnDays.value),
    records: animalRecords(day),
    rows: rowsOf('animal'),
  };
  const same = isDeepStrictEqual(await mirror.askAll(told), await store.askAll(told));
  return same ? [] : ['the journal played into another store tells other bin events or records'];
}
