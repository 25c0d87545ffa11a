/** Arranging the walk: one act each, undone as a whole, and everything that lists animals follows. */
import { expect, test } from 'vitest';
import {
  addAnimal,
  arrangeShelf,
  arrangeShelves,
  editAnimal,
  loadSnapshot,
  undo,
} from '../../src/actions/index.ts';
import { furnished } from '../support/furnished.ts';
import { good, type Room } from '../support/store-at.ts';

/** 'A2: A4 A5' for each shelf, in order. */
async function walked(room: Room): Promise<string[]> {
  const shelves = new Map<string, string[]>();
  for (const { shelf, code } of (await loadSnapshot(room)).animals)
    shelves.set(shelf, [...(shelves.get(shelf) ?? []), code]);
  return [...shelves].map(([shelf, codes]) => `${shelf}: ${codes.join(' ')}`);
}

/** A1 to A3 on no shelf, A4 and A5 on A2, A6 on A10. */
async function threeShelves(): Promise<Room> {
  const room = await furnished();
  const animal = { kind: 'test-spider', room: 'R1', gaugeMm: 40 };
  for (const shelf of ['A2', 'A2', 'A10']) good(await addAnimal(room, { ...animal, shelf }));
  return room;
}

const AS_NAMED = [': A1 A2 A3', 'A2: A4 A5', 'A10: A6'];
const shelves = (...names: string[]) => names.map((shelf) => ({ room: 'R1', shelf }));

test('shelves are walked as arranged; one undo returns the order', async () => {
  const room = await threeShelves();
  expect(await walked(room)).toEqual(AS_NAMED);
  const { act } = good(await arrangeShelves(room, { shelves: shelves('A10', '', 'A2') }));
  expect(await walked(room)).toEqual(['A10: A6', ': A1 A2 A3', 'A2: A4 A5']);
  good(await undo(room, { act }));
  expect(await walked(room)).toEqual(AS_NAMED);
});

test('a shelf that is new comes after those arranged, and among those in the order of their names where it belongs', async () => {
  const room = await threeShelves();
  const newcomer = { kind: 'test-spider', room: 'R1', gaugeMm: 40, shelf: 'A3' };
  good(await arrangeShelves(room, { shelves: shelves('A10', '', 'A2') }));
  good(await addAnimal(room, newcomer));
  expect((await walked(room)).at(-1)).toBe('A3: A7');
  good(await arrangeShelves(room, { shelves: shelves('', 'A2', 'A3', 'A10') }));
  good(await addAnimal(room, { ...newcomer, shelf: 'A4' }));
  expect(await walked(room)).toEqual([': A1 A2 A3', 'A2: A4 A5', 'A3: A7', 'A4: A8', 'A10: A6']);
});

test('a shelf that is empty for a while keeps its place', async () => {
  const room = await threeShelves();
  good(await arrangeShelves(room, { shelves: shelves('A10', 'A2', '') }));
  good(await editAnimal(room, { animal: 'A6', shelf: 'A2' }));
  good(await arrangeShelves(room, { shelves: shelves('', 'A2') }));
  good(await editAnimal(room, { animal: 'A6', shelf: 'A10' }));
  expect(await walked(room)).toEqual([': A1 A2 A3', 'A2: A4 A5', 'A10: A6']);
});

test('whoever arranges the shelves on an old page is told', async () => {
  const room = await threeShelves();
  const { revision } = await loadSnapshot(room);
  good(await arrangeShelves(room, { shelves: shelves('A10', '', 'A2'), asOf: revision }));
  expect(await arrangeShelves(room, { shelves: shelves('A2', '', 'A10'), asOf: revision })).toMatchObject({
    ok: false,
    problem: { code: 'changed-meanwhile' },
  });
  expect((await walked(room))[0]).toBe('A10: A6');
});

test('animals stand on their shelf as placed, newcomers last; one undo returns the order', async () => {
  const room = await threeShelves();
  const at = { room: 'R1', shelf: '' };
  const { act } = good(await arrangeShelf(room, { at, animals: ['A3', 'A1', 'A2'] }));
  good(await editAnimal(room, { animal: 'A6', shelf: '' }));
  expect((await walked(room))[0]).toBe(': A3 A1 A2 A6');
  good(await editAnimal(room, { animal: 'A6', shelf: 'A10' }));
  good(await undo(room, { act }));
  expect(await walked(room)).toEqual(AS_NAMED);
});

test('animals move to another shelf in one act, and nobody is lost or doubled', async () => {
  const room = await threeShelves();
  const { act, summary } = good(
    await arrangeShelf(room, {
      at: { room: 'R1', shelf: '' },
      animals: ['A3', 'A2', 'A1'],
      moving: { animals: ['A2', 'A3'], to: { room: 'R1', shelf: 'A2' } },
    }),
  );
  expect(summary).toBe('Moved 2 animals from no shelf to “A2”');
  expect(await walked(room)).toEqual([': A1', 'A2: A2 A3 A4 A5', 'A10: A6']);
  good(await undo(room, { act }));
  expect(await walked(room)).toEqual(AS_NAMED);
});

test('an animal that has moved meanwhile is left where it is', async () => {
  const room = await threeShelves();
  good(await editAnimal(room, { animal: 'A2', shelf: 'A10' }));
  good(await arrangeShelf(room, { at: { room: 'R1', shelf: '' }, animals: ['A3', 'A2', 'A1'] }));
  expect(await walked(room)).toEqual([': A3 A1', 'A2: A4 A5', 'A10: A2 A6']);
});

test.each([
  ['a shelf nobody lives on', { at: { room: 'R1', shelf: 'Z' }, animals: [] }, 'empty-shelf'],
  [
    'the shelf they stand on',
    {
      at: { room: 'R1', shelf: 'A2' },
      animals: [],
      moving: { animals: ['A4'], to: { room: 'R1', shelf: 'A2' } },
    },
    'same-shelf',
  ],
  [
    'a room that is not there',
    {
      at: { room: 'R1', shelf: 'A2' },
      animals: [],
      moving: { animals: ['A4'], to: { room: 'R9', shelf: 'A2' } },
    },
    'unknown-room',
  ],
])('%s is said in a sentence', async (_, given, code) => {
  const room = await threeShelves();
  expect(await arrangeShelf(room, given)).toMatchObject({ ok: false, problem: { code } });
  expect(await walked(room)).toEqual(AS_NAMED);
});
