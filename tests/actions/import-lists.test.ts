/** Keepers' lists: seen first, written as one act, and the same list again changes nothing. */
import { expect, test } from 'vitest';
import {
  editAnimal,
  type Imported,
  importAnimals,
  importStock,
  loadSnapshot,
  undo,
} from '../../src/actions/index.ts';
import { latestActs, revision } from '../../src/store/index.ts';
import { facts } from '../support/room.ts';
import { freshContext, good } from '../support/store-at.ts';

const bytes = (...lines: string[]) => new TextEncoder().encode(`${lines.join('\n')}\n`);
const fresh = async () => ({ ...(await freshContext()), facts });

const ANIMALS = bytes(
  'who,kind,size,fed,moulted,count,shelf,room,label,notes',
  'Clove,Brachypelma hamorii,45 mm,2024-09-28,2024-08-01,1,A1,,L1,calm',
  'Row of twelve,Brachypelma hamorii,12 mm,2024-09-30,,12,B2,Attic,,',
);
const STOCK = bytes(
  'bin,prey,size,count,came,room,notes',
  'Cricket box,house cricket,medium,500,2024-10-01,,from the market',
  'Tub,dubia roach,1/2 in,120,,Attic,',
  'Nobody counted,house cricket,small,,2024-10-02,,',
  'None left,house cricket,small,0,,,',
  'Flies,Drosophila hydei,,2,2024-09-29,,',
);

test('a dry run says what would be and writes nothing', async () => {
  const room = await fresh();
  const before = await room.store.ask(revision);
  const seen = good(await importAnimals(room, { bytes: ANIMALS, dryRun: true }));
  expect(seen.done).toBeNull();
  expect(seen.reading.tally).toMatchObject({ new: 2, changed: 0, refused: 0 });
  expect(await room.store.ask(revision)).toBe(before);
});

test('animals come in as one act with their past, and one undo takes them out', async () => {
  const room = await fresh();
  const { done } = good(await importAnimals(room, { bytes: ANIMALS }));
  const { animals } = await loadSnapshot(room);
  expect(animals).toMatchObject([
    { name: 'Clove', gaugeMm: 45, shelf: 'A1', lastTaken: 19_994, lastMoult: { found: 19_936 } },
    { name: 'Row of twelve', count: 12, gaugeMm: 12, lastTaken: 19_996, lastMoult: null },
  ]);
  good(await undo(room, { act: done!.act }));
  expect((await loadSnapshot(room)).animals).toEqual([]);
});

test('a room that is not here is noted, and the row stands in the room there is', async () => {
  const room = await fresh();
  const { reading } = good(await importAnimals(room, { bytes: ANIMALS }));
  expect(reading.rows[1]?.notes.map(({ sentence }) => sentence)).toContain(
    'There is no room "Attic" here: it stands in Room. Add the room in the settings to move it.',
  );
  const { animals, rooms } = await loadSnapshot(room);
  expect(rooms).toMatchObject([{ name: 'Room', dayTempC: 26, nightTempC: 22 }]);
  expect(animals.map((animal) => animal.room)).toEqual(['R1', 'R1']);
});

test.each([
  ['animals', importAnimals, ANIMALS],
  ['stock', importStock, STOCK],
] as const)('the same list of %s twice changes nothing', async (_what, bring, list) => {
  const room = await fresh();
  const read = async () => good<Imported<unknown>>(await bring(room, { bytes: list }));
  const first = await read();
  expect(first.done).not.toBeNull();
  const before = await room.store.ask(revision);
  room.pass(1);
  const again = await read();
  expect(again.reading.tally).toMatchObject({ new: 0, changed: 0, same: first.reading.rows.length });
  expect(again.done).toBeNull();
  expect(await room.store.ask(revision)).toBe(before);
});

test('only what a later list says otherwise is changed', async () => {
  const room = await fresh();
  good(await importAnimals(room, { bytes: ANIMALS }));
  good(await editAnimal(room, { animal: 'A1', shelf: 'C7' }));
  const later = bytes('who,kind,size,fed', 'Clove,Brachypelma hamorii,52 mm,2024-10-03');
  const { reading } = good(await importAnimals(room, { bytes: later }));
  expect(reading.rows[0]?.changes.map(({ field }) => field).sort()).toEqual(['gaugeMm', 'lastFed']);
  expect((await loadSnapshot(room)).animals.find(({ code }) => code === 'A1')).toMatchObject({
    gaugeMm: 52,
    shelf: 'C7',
    lastTaken: 19_999,
  });
});

test('stock comes in: a lot on its day, a count of today, a cup, and bins nobody counted', async () => {
  const room = await fresh();
  good(await importStock(room, { bytes: STOCK }));
  const { bins } = await loadSnapshot(room);
  const events = Object.fromEntries(bins.map(({ name, events: seen }) => [name, seen]));
  expect(events['Cricket box']).toMatchObject([{ kind: 'delivered', day: 19_997, lot: { heads: 500 } }]);
  expect(events.Tub).toMatchObject([{ kind: 'counted', day: 20_000, heads: 120 }]);
  expect(events['Nobody counted']).toEqual([]);
  expect(events['None left']).toMatchObject([{ kind: 'counted', heads: 0 }]);
  expect(events.Flies).toMatchObject([{ kind: 'cup looked', look: 'started', day: 19_995 }]);
});

test('a later lot is added to its bin; another number for the same lot is a count of today', async () => {
  const room = await fresh();
  good(await importStock(room, { bytes: STOCK }));
  const later = bytes(
    'bin,prey,size,count,came',
    'Cricket box,house cricket,small,200,2024-10-03',
    'Tub,dubia roach,1/2 in,90,',
  );
  good(await importStock(room, { bytes: later }));
  const { bins } = await loadSnapshot(room);
  expect(bins.find(({ name }) => name === 'Cricket box')?.events).toMatchObject([
    { kind: 'delivered', lot: { heads: 500 } },
    { kind: 'delivered', lot: { heads: 200 }, day: 19_999 },
  ]);
  expect(bins.find(({ name }) => name === 'Tub')?.events.at(-1)).toMatchObject({
    kind: 'counted',
    heads: 90,
  });
});

test('the same form twice, even at once, is one import', async () => {
  const room = await fresh();
  const given = { bytes: ANIMALS, formId: 'once' };
  await Promise.all(
    [importAnimals(room, given), importAnimals(room, given)].map(async (each) => good(await each)),
  );
  expect((await loadSnapshot(room)).animals).toHaveLength(2);
  const verbs = (await room.store.ask(latestActs(9))).map(({ verb }) => verb);
  expect(verbs).toEqual(['import-rows', 'first-room']);
});

test('a list with an open question writes nothing at all', async () => {
  const room = await fresh();
  const list = bytes('who,kind,size', 'Clove,Brachypelma hamorii,45 mm', 'Who,Qwxyz zzyx,4 mm');
  const { reading, done } = good(await importAnimals(room, { bytes: list }));
  expect(reading.asks).toHaveLength(1);
  expect(done).toBeNull();
  expect((await loadSnapshot(room)).animals).toEqual([]);
});
