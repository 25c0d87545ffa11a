/** The order of the walk: everybody once, shelves as arranged, newcomers last. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inWalkOrder, shelvesAmong } from '../../src/husbandry/walk.ts';

const shelf = fc.record({
  room: fc.constantFrom('R1', 'R2'),
  shelf: fc.constantFrom('', 'A2', 'A10', 'Top'),
});
const animals = fc
  .array(fc.tuple(shelf, fc.nat({ max: 4 })), { maxLength: 30 })
  .map((places) =>
    places.map(([place, shelfPosition], at) => ({ ...place, shelfPosition, code: `A${at + 1}` })),
  );
const walks = fc.uniqueArray(shelf, { selector: (each) => JSON.stringify(each) });

test('every animal stays exactly once, and shelves hold together in the order arranged', () => {
  fc.assert(
    fc.property(animals, walks, (rows, walk) => {
      const order = inWalkOrder(rows, walk);
      expect(new Set(order)).toEqual(new Set(rows));
      expect(order).toHaveLength(rows.length);
      const runs = order.filter(
        (row, at) => row.shelf !== order[at - 1]?.shelf || row.room !== order[at - 1]?.room,
      );
      expect(runs).toHaveLength(shelvesAmong(rows).length);
      const arranged = walk.filter(({ room, shelf: name }) =>
        rows.some((row) => row.room === room && row.shelf === name),
      );
      expect(shelvesAmong(order).slice(0, arranged.length)).toEqual(arranged);
    }),
  );
});

test('the order does not depend on the order the rows were read in', () => {
  fc.assert(
    fc.property(animals, walks, (rows, walk) => {
      expect(inWalkOrder(rows.toReversed(), walk)).toEqual(inWalkOrder(rows, walk));
    }),
  );
});

test('A2 comes before A10 where nobody has arranged, and who has no place comes after who has', () => {
  const row = (code: string, name: string, shelfPosition = 0) => ({
    code,
    room: 'R1',
    shelf: name,
    shelfPosition,
  });
  const rows = [row('A10', 'A10'), row('A9', 'A2'), row('A1', 'A2'), row('A11', 'A2', 1)];
  expect(inWalkOrder(rows, []).map(({ code }) => code)).toEqual(['A11', 'A1', 'A9', 'A10']);
});
