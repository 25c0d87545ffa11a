/** Undo: of anything, as one step, and back again. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addBin,
  addKind,
  cameBack,
  countBin,
  deliveryCame,
  editAnimal,
  editAnimals,
  editChange,
  editRule,
  editSettings,
  emptyDemo,
  expectDelivery,
  hatchSac,
  importRows,
  lend,
  loadSnapshot,
  noteSac,
  recordDied,
  recordEvening,
  recordMatured,
  recordMorning,
  recordMoult,
  removeKind,
  resetRule,
  settleSac,
  splitGroup,
  takeIn,
  undo,
} from '../../src/actions/index.ts';
import { latestActs, rowsOf } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

const state = async (room: Room) => {
  const { revision: _, ...rest } = await loadSnapshot(room);
  return {
    rest,
    animals: await room.store.ask(rowsOf('animal')),
    deliveries: await room.store.ask(rowsOf('delivery')),
  };
};

const verbs: readonly ((room: Room) => Promise<unknown>)[] = [
  (room) =>
    recordEvening(room, { rows: [offering('A1'), offering('A2'), { animal: 'A3', outcome: 'premoult' }] }),
  (room) => recordMorning(room, { exceptions: [] }),
  (room) => recordMoult(room, { animal: 'A1' }),
  (room) => recordMatured(room, { animal: 'A2' }),
  (room) => recordDied(room, { animal: 'A3' }),
  (room) => editAnimal(room, { animal: 'A1', shelf: 'top', shelfPosition: 3 }),
  (room) => editAnimals(room, { animals: ['A1', 'A2'], shelf: 'bottom' }),
  (room) => splitGroup(room, { animal: 'A3', heads: 2, into: 'singles', shelf: 'cups' }),
  (room) => lend(room, { animals: ['A1', 'A2'], to: 'Jo' }),
  (room) => cameBack(room, { animal: 'A2', lastTaken: room.date(0) }),
  (room) => countBin(room, { bin: 'B1', heads: 150, fromMm: 5, toMm: 8 }),
  (room) => takeIn(room, { bin: 'B2', heads: 100, fromMm: 10, toMm: 12 }),
  (room) => expectDelivery(room, { bin: 'B2', heads: 500, fromMm: 6, toMm: 9, day: room.date(3) }),
  (room) => deliveryCame(room, { delivery: 'D1', alive: 480, dead: 20 }),
  (room) => noteSac(room, { animal: 'A1', laidFrom: room.date(-9), count: 50, motherFasts: true }),
  (room) => hatchSac(room, { change: 'P1', day: room.date(0), count: 40 }),
  (room) => editChange(room, { change: 'P1', count: 30, shareKept: 0.5 }),
  (room) => settleSac(room, { change: 'P1', day: room.date(0), count: 20 }),
  (room) => editSettings(room, { leadTimeDays: 5 }),
  (room) => editRule(room, { kind: 'test-spider', stage: 'young', graceDays: 4, why: 'slow' }),
  (room) => resetRule(room, { kind: 'test-spider' }),
  (room) => addKind(room, { from: 'test-spider', name: 'Aranea altera', commonName: 'Other spider' }),
  (room) => editAnimal(room, { animal: 'A2', kind: 'K1' }),
  (room) => removeKind(room, { kind: 'K1' }),
  (room) =>
    importRows(room, {
      animals: { new: [{ kind: 'test-spider', room: 'Warm room', gaugeMm: 20 }], changed: [] },
    }),
  async (room) => room.pass(1),
];

test('undoing everything, newest first, gives the state there was; doing it all again gives the state there came', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.nat(verbs.length - 1), { minLength: 1, maxLength: 14 }), async (chosen) => {
      const room = await furnished();
      const before = await state(room);
      const since = (await room.store.ask(latestActs(1)))[0]!.id;
      for (const at of chosen) await verbs[at]!(room);
      const passed = (await loadSnapshot(room)).today - before.rest.today;
      const after = await state(room);
      room.pass(-passed);
      const acts = (await room.store.ask(latestActs(100))).filter(({ id }) => id > since);
      const undone: number[] = [];
      for (const { id } of acts) undone.unshift(good(await undo(room, { act: id })).act);
      expect(await state(room)).toEqual(before);
      for (const act of undone) good(await undo(room, { act }));
      room.pass(passed);
      expect(await state(room)).toEqual(after);
    }),
    { numRuns: 25 },
  );
});

test('an undo says which newer act stands in the way', async () => {
  const room = await furnished();
  const { act } = good(await recordMoult(room, { animal: 'A1' }));
  good(await editAnimal(room, { animal: 'A1', label: 'blue dot' }));
  expect(await undo(room, { act })).toMatchObject({
    ok: false,
    problem: {
      code: 'newer-stands',
      sentence:
        '"A1 moulted" cannot be undone yet: "Changed A1" came later and rests on it. Undo that first.',
    },
  });
});

test('an evening cannot be undone from under its morning, nor a bin from under its offers', async () => {
  const room = await furnished();
  const bin = good(await addBin(room, { species: 'test-cricket', room: 'R1', name: 'New' }));
  const evening = good(await recordEvening(room, { rows: [{ ...offering('A1'), bin: bin.reply.bin }] }));
  good(await recordMorning(room, {}));
  expect(await undo(room, { act: evening.act })).toMatchObject({ problem: { code: 'newer-stands' } });
  expect(await undo(room, { act: bin.act })).toMatchObject({ problem: { code: 'newer-stands' } });
});

test('what was undone in another order does not come back wrongly', async () => {
  const room = await furnished();
  const first = good(await editAnimal(room, { animal: 'A1', shelf: 'one' }));
  const second = good(await editAnimal(room, { animal: 'A1', shelf: 'two' }));
  const undoneSecond = good(await undo(room, { act: second.act }));
  good(await undo(room, { act: first.act }));
  expect(await undo(room, { act: undoneSecond.act })).toMatchObject({ problem: { code: 'changed-since' } });
  expect(await undo(room, { act: first.act })).toMatchObject({ problem: { code: 'already-undone' } });
});

test('codes are not handed out again after an undo', async () => {
  const room = await furnished();
  const input = { species: 'test-cricket', room: 'R1' };
  const { act, reply } = good(await addBin(room, input));
  good(await undo(room, { act }));
  expect(reply.bin).toBe('B3');
  expect(good(await addBin(room, input)).reply.bin).toBe('B4');
});

test('the demo room is emptied in one act, which undo brings back; what the keeper added stays', async () => {
  const room = await furnished();
  const { act: animals } = good(
    await importRows(room, {
      animals: { new: [{ kind: 'test-spider', room: 'R1', gaugeMm: 20, demo: true }], changed: [] },
      lots: [
        {
          newBin: { species: 'test-cricket', room: 'R1', demo: true },
          lot: { heads: 9, fromMm: 3, toMm: 4 },
        },
      ],
    }),
  );
  const before = await state(room);
  const emptied = good(await emptyDemo(room, {}));
  expect(emptied.reply).toEqual({ animals: 1 });
  expect((await loadSnapshot(room)).animals.map(({ code }) => code)).toEqual(['A1', 'A2', 'A3']);
  expect(await undo(room, { act: animals })).toMatchObject({ ok: false });
  good(await undo(room, { act: emptied.act }));
  expect(await state(room)).toEqual(before);
});
