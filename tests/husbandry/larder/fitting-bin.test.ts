/** The bin that prey which comes in is proposed for. */
import { expect, test } from 'vitest';
import { type Bin, type Filled, fittingBin } from '../../../src/husbandry/larder/index.ts';
import { binWith, TODAY } from '../../support/room.ts';

const SPECIES = 'acheta-domesticus';
const bin = (code: string, meanMm: number | null, over: Partial<Bin> = {}): Filled => ({
  bin: binWith({ code, species: SPECIES, ...over }),
  meanMm,
});
const LARDER = [bin('Pinheads', 3), bin('Empty', null), bin('Small', 6), bin('Large', 18)];
const into = (fromMm: number, toMm: number, bins: readonly Filled[] = LARDER) =>
  fittingBin(bins, { species: SPECIES, fromMm, toMm }, TODAY)?.code ?? null;

test('it is the one whose prey is nearest in size', () => {
  expect(into(2, 3)).toBe('Pinheads');
  expect(into(6, 9)).toBe('Small');
  expect(into(15, 20)).toBe('Large');
});

test('nearness is a ratio: of 5 and 16 mm, 10 mm prey goes to the longer', () => {
  expect(into(10, 10, [bin('Short', 5), bin('Long', 16)])).toBe('Long');
});

test('prey more than twice as long as what is there goes into an empty bin, else into a new one', () => {
  expect(into(12, 14, [bin('Small', 6), bin('Empty', null)])).toBe('Empty');
  expect(into(12, 14, [bin('Small', 6)])).toBeNull();
  expect(into(12, 12, [bin('Small', 6)])).toBe('Small');
});

test('it is no bin kept apart, left alone, of another use or of another species', () => {
  const shut = [
    bin('Apart', 6, { quarantineUntil: TODAY + 1 }),
    bin('Alone', 6, { restsUntil: TODAY + 1 }),
    bin('Colony', 6, { role: 'colony' }),
    bin('Frozen', 6, { role: 'frozen' }),
    bin('Roaches', 6, { species: 'blaptica-dubia' }),
  ];
  expect(into(6, 6, shut)).toBeNull();
  expect(into(6, 6, [...shut, bin('Was apart', 7, { quarantineUntil: TODAY })])).toBe('Was apart');
});
