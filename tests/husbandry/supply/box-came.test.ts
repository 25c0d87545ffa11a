/** After a box: only those whom it leaves shorter than it was to cannot wait. */
import { expect, test } from 'vitest';
import { afterBox, type BoxLine } from '../../../src/husbandry/supply/index.ts';
import {
  animalWith,
  binWith,
  certainPolicy,
  countedBin,
  facts,
  snapshotWith,
  TODAY,
} from '../../support/room.ts';

const spiderlings = Array.from({ length: 20 }, (_, i) =>
  animalWith({ code: `S${i}`, kind: 'brachypelma-hamorii', gaugeMm: 12, lastTaken: TODAY - (i % 6) }),
);
const adults = Array.from({ length: 5 }, (_, i) =>
  animalWith({ code: `T${i}`, kind: 'brachypelma-hamorii', gaugeMm: 140, lastTaken: TODAY - 2 * i }),
);
const ordered: BoxLine['ordered'] = { bin: 'B1', lot: { heads: 300, fromMm: 2, toMm: 3 } };
const larger = countedBin('B2', 'acheta-domesticus', { heads: 400, fromMm: 17, toMm: 20 });

const roomAfter = ({ bin, day, lot, dead }: BoxLine['came']) =>
  snapshotWith({
    animals: [...spiderlings, ...adults],
    bins: [
      binWith({
        code: 'B1',
        species: 'acheta-domesticus',
        events: bin === 'B1' ? [{ kind: 'delivered', day, lot, dead }] : [],
      }),
      larger,
    ],
    facts: { ...facts, policy: certainPolicy },
  });
const told = (came: BoxLine['came']) => afterBox(roomAfter(came), [{ ordered, came }]);
const asOrdered = { bin: 'B1', day: TODAY, lot: ordered.lot, dead: 0 };

test('a box as it was ordered leaves nobody shorter', () => {
  expect(told(asOrdered).short).toEqual([]);
});

test('a box that died leaves those short that were to live off it', () => {
  const { short } = told({ ...asOrdered, lot: { ...ordered.lot, heads: 4 }, dead: 296 });
  expect(short.length).toBeGreaterThan(0);
  for (const group of short) {
    expect(group.animals.every((code) => code.startsWith('S'))).toBe(true);
    expect(group.chance).toBeGreaterThan(group.chanceBefore);
    expect(group.from).toBeGreaterThanOrEqual(TODAY);
  }
});

test('a box of another size does as much', () => {
  const { short } = told({ ...asOrdered, lot: { heads: 300, fromMm: 12, toMm: 14 } });
  expect(short.length).toBeGreaterThan(0);
});

test('a line that never came is missed in the bin it was for', () => {
  const { short } = afterBox(roomAfter({ ...asOrdered, bin: 'B9' }), [
    { ordered, came: { ...asOrdered, bin: 'B9', lot: { ...ordered.lot, heads: 0 } } },
  ]);
  expect(short.length).toBeGreaterThan(0);
});
