/** Whatever a keeper did in it, the demo room can be cleared, leaves nothing of itself, and comes back to the byte. */
import { expect, test } from 'vitest';
import * as actions from '../../src/actions/index.ts';
import { demoIsHere, NAMING, nouns, type Tx } from '../../src/store/index.ts';
import { facts } from '../support/room.ts';
import { diceOf } from '../support/sequences/draw.ts';
import { presentOf } from '../support/sequences/present.ts';
import { type State, stateOf } from '../support/sequences/replay.ts';
import { DRAWN } from '../support/sequences/run.ts';
import { freshContext, good, quickStore, type Room } from '../support/store-at.ts';

const SPECIES = 'acheta-domesticus';
const SPIDER = { kind: 'brachypelma-hamorii', room: 'R1', demo: true };

/** A demo room with something of everything in it. */
async function demoRoom(): Promise<Room> {
  const room = { ...(await freshContext(await quickStore())), facts };
  const demo = true;
  good(await actions.addRoom(room, { name: 'Demo', dayTempC: 26, nightTempC: 22, demo }));
  for (const gaugeMm of [40, 60, 120]) good(await actions.addAnimal(room, { ...SPIDER, gaugeMm }));
  good(await actions.addAnimal(room, { ...SPIDER, gaugeMm: 14, count: 4 }));
  const lot = { heads: 200, fromMm: 4, toMm: 6 };
  for (const name of ['One', 'Two'])
    good(await actions.addBin(room, { species: SPECIES, room: 'R1', name, lot, demo }));
  const larvae = { heads: 300, fromMm: 12, toMm: 20 };
  good(await actions.addBin(room, { species: 'tenebrio-molitor', room: 'R1', lot: larvae, demo }));
  good(await actions.startCup(room, { species: 'drosophila-hydei', room: 'R1', demo }));
  const dispatchWeekdays = Array<boolean>(7).fill(true);
  good(await actions.addSupplier(room, { name: 'Seller', dispatchWeekdays, demo }));
  const prices = [{ fromPacks: 1, pack: 5 }];
  const goods = { species: SPECIES, fromMm: 4, toMm: 6, packHeads: 50, prices };
  good(await actions.addOffer(room, { supplier: 'S1', ...goods, demo }));
  const line = { offer: 'F1', packs: 1, bin: 'B1' };
  for (const days of [1, 2])
    good(await actions.placeOrder(room, { supplier: 'S1', sentDay: room.date(days), lines: [line], demo }));
  good(await actions.expectDelivery(room, { ...lot, bin: 'B2', day: room.date(2), demo }));
  good(await noteSac(room, 'A3', demo));
  return room;
}

const noteSac = (room: Room, animal: string, demo = false) =>
  actions.noteSac(room, { animal, laidFrom: room.date(-40), count: 30, demo });

const TRIES = 25;
/** Rooms in which an act is tried that cannot always be done. */
const ROOMS = 16;
/** Acts before the one tried, so that there is something gone, lent or come to try it on. */
const BEFORE = 12;

type Doing = (room: Room, input: unknown) => Promise<{ readonly ok: boolean }>;
const doings = actions as unknown as Readonly<Record<string, Doing>>;
const NAMES = Object.keys(DRAWN).filter((name) => name !== 'emptyDemo');

/** Whether it was done, once other things had happened. */
async function tryOut(room: Room, name: string, seed: number): Promise<boolean> {
  const dice = diceOf(seed);
  const draw = async (wanted: string) => {
    const input = DRAWN[wanted]?.(await presentOf(room, dice));
    return (await doings[wanted]!(room, input)).ok;
  };
  for (let left = BEFORE; left > 0; left -= 1) await draw(dice.pick(NAMES)!);
  for (let left = TRIES; left > 0; left -= 1) {
    if (await draw(name)) return true;
    await draw(dice.pick(NAMES)!);
    if (dice.often(0.1)) room.pass(1);
  }
  return false;
}

/** A room in which it was done; null where it could not be. */
async function roomAfter(name: string): Promise<Room | null> {
  for (let seed = 1; seed <= ROOMS; seed += 1) {
    const room = await demoRoom();
    if (await tryOut(room, name, seed)) return room;
  }
  return null;
}

const flagged = ({ rows }: State, demo: boolean): readonly string[] =>
  Object.entries(rows).flatMap(([noun, named]) =>
    Object.entries(named)
      .filter(([, row]) => (row as { demo?: boolean }).demo === demo)
      .map(([name]) => `${noun} ${name}`),
  );

/** Clears the demo room and brings it back; what was wrong, as sentences. */
async function clearedBy(room: Room): Promise<readonly string[]> {
  const { ask } = room.store;
  const before = await stateOf(ask);
  const emptied = await actions.emptyDemo(room, {});
  if (!emptied.ok) return [emptied.problem.sentence];
  const after = await stateOf(ask);
  const left = flagged(after, true).map((name) => `${name} is left`);
  const lost = flagged(before, false).filter((name) => !flagged(after, false).includes(name));
  good(await actions.undo(room, { act: emptied.value.act }));
  const back = JSON.stringify((await stateOf(ask)).rows) === JSON.stringify(before.rows);
  return [...left, ...lost.map((name) => `${name} is lost`), ...(back ? [] : ['it did not come back'])];
}

test('after any act the demo room is cleared, nothing of the keeper’s is lost, and Undo brings all back', async () => {
  const wrong: string[] = [];
  for (const name of NAMES) {
    const room = await roomAfter(name);
    const found = room === null ? ['was never done'] : await clearedBy(room);
    wrong.push(...found.map((sentence) => `${name}: ${sentence}`));
  }
  expect(wrong).toEqual([]);
}, 240_000);

const LINE = { offer: 'F1', packs: 1 };

test('the keeper’s orders to its suppliers go with it, with the bins made for them; its sacs and deliveries too', async () => {
  const room = await demoRoom();
  const into = [
    { ...LINE, bin: 'B1' },
    { ...LINE, room: 'R1', name: 'For the order' },
  ];
  good(await actions.placeOrder(room, { supplier: 'S1', sentDay: room.date(1), lines: into }));
  good(await actions.expectDelivery(room, { heads: 9, fromMm: 4, toMm: 6, bin: 'B1', day: room.date(1) }));
  good(await noteSac(room, 'A1'));
  expect(flagged(await stateOf(room.store.ask), false)).toEqual([]);
  good(await actions.emptyDemo(room, {}));
  expect(flagged(await stateOf(room.store.ask), true)).toEqual([]);
  expect(await room.store.ask(demoIsHere)).toBe(false);
});

test('an order of an offer the keeper wrote down stays, and so does what it names, as the keeper’s own', async () => {
  const room = await demoRoom();
  const prices = [{ fromPacks: 1, pack: 7 }];
  const own = { supplier: 'S1', species: SPECIES, fromMm: 4, toMm: 6, packHeads: 50, prices };
  good(await actions.addOffer(room, own));
  const lines = [{ ...LINE, offer: 'F2', bin: 'B1' }];
  const { purchase } = good(
    await actions.placeOrder(room, { supplier: 'S1', sentDay: room.date(1), lines }),
  ).reply;
  good(await actions.emptyDemo(room, {}));
  const after = await stateOf(room.store.ask);
  expect(flagged(after, true)).toEqual([]);
  expect(flagged(after, false)).toEqual(
    expect.arrayContaining(['room R1', 'bin B1', 'supplier S1', 'offer F2', `purchase ${purchase}`]),
  );
  expect(flagged(after, false)).not.toContain('bin B2');
});

test('every reference the tables know is known when the demo room is cleared', async () => {
  const { store } = await freshContext(await quickStore());
  const found = await Promise.all(nouns.map((noun) => foreignKeys(store.ask, noun)));
  const known = NAMING.filter(([, , named]) => named !== 'kind').map((names) => names.join(' '));
  expect(found.flat().sort()).toEqual([...known].sort());
});

const foreignKeys = (ask: Tx['ask'], noun: string) =>
  ask({
    sql: `select "from" as field, "table" as named from pragma_foreign_key_list(?)`,
    args: [noun],
    decode: (rows) => rows.map(({ field, named }) => `${noun} ${field} ${named}`),
  });
