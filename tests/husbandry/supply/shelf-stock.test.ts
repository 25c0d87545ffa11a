/** What stands on the shelves tonight, worked out here or told by somebody else. */
import { expect, it } from 'vitest';
import { shelvesOf, standingTonight } from '../../../src/husbandry/supply/shelf-stock.ts';
import { mixedBins, snapshotWith } from '../../support/room.ts';

const room = snapshotWith({ bins: mixedBins(5) });

it('is the same when it was sent as plain data, and taking from it takes nothing from the next', () => {
  const told = structuredClone(standingTonight(room));
  const shelves = shelvesOf(room, told);
  expect(shelves).toEqual(shelvesOf(room));
  for (const { slices } of shelves) for (const slice of slices) slice.heads = 0;
  expect(shelvesOf(room, told)).toEqual(shelvesOf(room));
});

it('leaves out a bin that is not here any more', () => {
  const [, ...left] = room.bins;
  const codes = shelvesOf({ ...room, bins: left }, standingTonight(room)).map(({ bin }) => bin.code);
  expect(new Set(codes)).toEqual(new Set(left.map(({ code }) => code)));
});
