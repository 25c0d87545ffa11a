/** What goes along with a question to a thread: a room once, the Book once for all rooms. */
import { expect, test } from 'vitest';
import type { Question } from '../../src/actions/index.ts';
import { packed, unpacked } from '../../src/workers/sent.ts';
import { mixedAnimals, mixedBins, snapshotWith } from '../support/room.ts';

const asked = (snapshot: Question['snapshot']): Question<'shelves'> => ({
  subject: 'shelves',
  name: 'shelves',
  snapshot,
  options: null,
});
const room = snapshotWith({ animals: mixedAnimals(3), bins: mixedBins(3) });

test('the first question brings room and Book, and comes out as it went in', () => {
  const sent = structuredClone(packed(asked(room), null));
  expect(unpacked(sent, null)).toEqual(asked(room));
});

test('asked again of the same room nothing of it is sent, and it is the very one of before', () => {
  const sent = packed(asked(room), room);
  expect([sent.room, sent.facts]).toEqual([null, null]);
  expect(unpacked(sent, room).snapshot).toBe(room);
});

test('a changed room is sent without its Book', () => {
  const changed = { ...room, revision: room.revision + 1, bins: [] };
  const sent = packed(asked(changed), room);
  expect(sent.facts).toBeNull();
  expect(JSON.stringify(sent).length).toBeLessThan(JSON.stringify(packed(asked(room), null)).length / 2);
  const { snapshot } = unpacked(sent, room);
  expect(snapshot).toEqual(changed);
  expect(snapshot.facts).toBe(room.facts);
});

test('a changed Book is sent with its room', () => {
  const changed = { ...room, facts: { ...room.facts, kinds: new Map() } };
  expect(unpacked(packed(asked(changed), room), room)).toEqual(asked(changed));
});

test('a question without its room is refused', () => {
  expect(() => unpacked(packed(asked(room), room), null)).toThrow('without its room');
});
