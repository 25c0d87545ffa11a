/** What is refused, and how the sentence reads. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  addRoom,
  countBin,
  deliveryCame,
  editAnimal,
  expectDelivery,
  importRows,
  move,
  recordDied,
  recordEvening,
  recordMatured,
  recordMeasure,
  recordMorning,
  recordMoult,
  seeCup,
  splitGroup,
} from '../../src/actions/index.ts';
import type { Result } from '../../src/husbandry/result.ts';
import { revision } from '../../src/store/index.ts';
import { furnished, offering } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

const spider = { kind: 'test-spider', room: 'R1', gaugeMm: 40 };
type Case = readonly [
  string,
  (room: Room) => Promise<Result<unknown>>,
  { code: string; field?: string; sentence?: string },
];

const cases: readonly Case[] = [
  [
    'an import of a meal in 2062',
    (room) => importRows(room, { animals: { new: [{ ...spider, lastFed: '2062-01-01' }], changed: [] } }),
    { code: 'after-today', field: 'animals.new.0.lastFed' },
  ],
  [
    'an import of a lot without a bin',
    (room) => importRows(room, { lots: [{ lot: { heads: 5, fromMm: 4, toMm: 5 } }] }),
    { code: 'which-bin' },
  ],
  [
    'a size of nothing',
    (room) => addAnimal(room, { ...spider, gaugeMm: '0' }),
    {
      code: 'size-out-of-range',
      field: 'gaugeMm',
      sentence: '"0" is not a size from 0.5 to 600 mm; write it in millimetres, such as 12.',
    },
  ],
  [
    'a size below nothing',
    (room) => addAnimal(room, { ...spider, gaugeMm: -3 }),
    { code: 'size-out-of-range' },
  ],
  [
    'a size of 4 metres',
    (room) => addAnimal(room, { ...spider, gaugeMm: 4000 }),
    { code: 'size-out-of-range' },
  ],
  [
    'a size far beyond the kind',
    (room) => addAnimal(room, { ...spider, gaugeMm: 400 }),
    {
      code: 'size-beyond-kind',
      field: 'gaugeMm',
      sentence:
        '"400 mm" is far more than any Test spider grows to: write its diagonal leg span, of a grown one 90 to 110 mm.',
    },
  ],
  [
    'a size far beyond the kind, written later',
    (room) => editAnimal(room, { animal: 'A1', gaugeMm: 400 }),
    { code: 'size-beyond-kind', field: 'gaugeMm' },
  ],
  [
    'a size far beyond the kind, measured',
    (room) => recordMeasure(room, { animal: 'A1', gaugeMm: 221 }),
    { code: 'size-beyond-kind', field: 'gaugeMm' },
  ],
  [
    'a size far beyond the kind after a moult',
    (room) => recordMoult(room, { animal: 'A1', found: room.date(0), gaugeMm: 221 }),
    { code: 'size-beyond-kind', field: 'gaugeMm' },
  ],
  [
    'a size far beyond the kind of those taken out of a group',
    (room) => splitGroup(room, { animal: 'A3', into: 'singles', heads: 1, gaugeMm: 221 }),
    { code: 'size-beyond-kind', field: 'gaugeMm' },
  ],
  [
    'a size left empty',
    (room) => addAnimal(room, { ...spider, gaugeMm: ' ' }),
    { code: 'size-out-of-range' },
  ],
  [
    'a kind nobody knows',
    (room) => addAnimal(room, { ...spider, kind: 'unicorn' }),
    { code: 'unknown-kind', field: 'kind' },
  ],
  [
    'a room that is not here',
    (room) => addAnimal(room, { ...spider, room: 'Attic' }),
    { code: 'unknown-room', field: 'room', sentence: 'There is no room "Attic" here.' },
  ],
  [
    'a moult of tomorrow, as the calendar has it after midnight',
    (room) => recordMoult(room, { animal: 'A1', found: room.date(1) }),
    {
      code: 'after-today',
      field: 'found',
      sentence: '"2024-10-05" is after today (2024-10-04). Until 04:00 it is still the evening before.',
    },
  ],
  [
    'a moult in 2062',
    (room) => recordMoult(room, { animal: 'A1', found: '2062-03-01' }),
    { code: 'after-today', field: 'found', sentence: '"2062-03-01" is after today (2024-10-04).' },
  ],
  [
    'a day that is not in the calendar',
    (room) => recordMoult(room, { animal: 'A1', found: '2024-02-30' }),
    { code: 'no-such-day' },
  ],
  [
    'a moult found before the animal was last seen unmoulted',
    (room) => recordMoult(room, { animal: 'A1', found: '2024-10-01', earliest: '2024-10-02' }),
    { code: 'ends-swapped', field: 'earliest' },
  ],
  [
    'a count below nothing',
    (room) => countBin(room, { bin: 'B1', heads: -1 }),
    { code: 'number-out-of-range', field: 'heads' },
  ],
  ['half a head', (room) => countBin(room, { bin: 'B1', heads: '2.5' }), { code: 'number-out-of-range' }],
  [
    'lengths that run backwards',
    (room) => countBin(room, { bin: 'B1', heads: 5, fromMm: 9, toMm: 4 }),
    { code: 'ends-swapped' },
  ],
  [
    'a bin that is not here',
    (room) => countBin(room, { bin: 'B9', heads: 5 }),
    { code: 'unknown-bin', field: 'bin' },
  ],
  ['a cup look at a box', (room) => seeCup(room, { bin: 'B1', look: 'producing' }), { code: 'not-a-cup' }],
  [
    'more deaths than heads',
    (room) => recordDied(room, { animal: 'A3', heads: 6 }),
    { code: 'too-many', field: 'heads' },
  ],
  [
    'a delivery in the past',
    (room) => expectDelivery(room, { bin: 'B1', heads: 5, fromMm: 4, toMm: 5, day: '2024-09-01' }),
    { code: 'before-today' },
  ],
  [
    'a delivery nobody ordered',
    (room) => deliveryCame(room, { delivery: 'D7', alive: 5 }),
    { code: 'unknown-delivery' },
  ],
  [
    'a move into itself',
    (room) => move(room, { from: 'B1', to: 'B1', heads: 5, fromMm: 4, toMm: 5 }),
    { code: 'same-bin' },
  ],
  [
    'a field nobody knows',
    (room) => addRoom(room, { name: 'x', dayTempC: 20, nightTempC: 20, colour: 'red' } as never),
    { code: 'unknown-field', field: 'colour' },
  ],
  [
    'a room at 90 degrees',
    (room) => addRoom(room, { name: 'x', dayTempC: 90, nightTempC: 20 }),
    { code: 'temperature-out-of-range' },
  ],
  [
    'an evening with a stranger',
    (room) => recordEvening(room, { rows: [offering('A1'), offering('A9')] }),
    { code: 'unknown-animal' },
  ],
  [
    'an evening of an unknown outcome',
    (room) => recordEvening(room, { rows: [{ animal: 'A1', outcome: 'sang' } as never] }),
    { code: 'invalid', field: 'rows.0.outcome' },
  ],
  ['a morning before any evening', (room) => recordMorning(room, {}), { code: 'nothing-offered' }],
  [
    'an import with one bad row',
    (room) =>
      importRows(room, {
        animals: {
          new: [spider, { ...spider, gaugeMm: 0 }],
          changed: [{ code: 'A1', fields: { shelf: 'top' } }],
        },
      }),
    { code: 'size-out-of-range', field: 'animals.new.1.gaugeMm' },
  ],
  [
    'an import that names an animal twice',
    (room) =>
      importRows(room, { animals: { new: [], changed: ['A1', 'A1'].map((code) => ({ code, fields: {} })) } }),
    { code: 'named-twice' },
  ],
];

test.each(cases)('%s is refused and changes nothing', async (_name, act, problem) => {
  const room = await furnished();
  const before = await room.store.ask(revision);
  expect(await act(room)).toMatchObject({ ok: false, problem });
  expect(await room.store.ask(revision)).toBe(before);
});

test('a female does not mature as a male does', async () => {
  const room = await furnished();
  const { reply } = good(await addAnimal(room, { ...spider, sex: 'female' }));
  expect(await recordMatured(room, { animal: reply.animal })).toMatchObject({
    problem: { code: 'is-female' },
  });
});

test('a group loses heads and ends with its last', async () => {
  const room = await furnished();
  expect(good(await recordDied(room, { animal: 'A3', heads: 4 })).reply).toEqual({ left: 1 });
  expect(good(await recordDied(room, { animal: 'A3' })).reply).toEqual({ left: 0 });
  expect(await recordDied(room, { animal: 'A3' })).toMatchObject({
    problem: { code: 'animal-left', sentence: 'A3 no longer lives here (died on 2024-10-04).' },
  });
});
