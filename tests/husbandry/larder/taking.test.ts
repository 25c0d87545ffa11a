/** Prey taken out of a bin goes as lots that keep the number and the lengths. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { chainOf, type Lot, lotsTaken, spreadLot } from '../../../src/husbandry/larder/index.ts';
import { headsWithin, totalHeads } from '../../../src/husbandry/larder/lot.ts';
import { everySize, withoutAdults } from '../../../src/husbandry/larder/taking.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import { facts } from '../../support/room.ts';

const dubia = chainOf(facts.species.get('blaptica-dubia') as PreySpecies);
const adultMm = dubia.species.adultLengthMm.value;
const parts = facts.policy.lotParts.value;
const heads = (lots: readonly Lot[]) => lots.reduce((sum, lot) => sum + lot.heads, 0);
const laidOut = (lots: readonly Lot[]) =>
  lots
    .map((lot) => spreadLot(dubia, lot))
    .reduce((sum, lot) => sum.map((n, j) => n + (lot[j] as number)), new Float64Array(dubia.size));
/** A colony of many young and some grown. */
const colony = laidOut([
  { heads: 300, fromMm: 4, toMm: 12 },
  { heads: 90, fromMm: 12, toMm: 30 },
  { heads: 60, fromMm: adultMm, toMm: adultMm },
]);

it('whole heads of the number asked for, within the lengths asked for', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 449 }),
      fc.double({ min: 4, max: 15, noNaN: true }),
      fc.double({ min: 16, max: 60, noNaN: true }),
      (many, fromMm, toMm) => {
        const lots = lotsTaken(dubia, colony, { taking: { heads: many, fromMm, toMm }, parts });
        expect(heads(lots)).toBe(many);
        for (const lot of lots) {
          expect(Number.isInteger(lot.heads) && lot.heads > 0).toBe(true);
          expect(lot.fromMm).toBeGreaterThanOrEqual(fromMm);
          expect(lot.toMm).toBeLessThanOrEqual(toMm * (1 + 1e-7));
          expect(lot.fromMm).toBeLessThanOrEqual(lot.toMm);
        }
      },
    ),
  );
});

it("half of a colony has the colony's own lengths: no length differs by more than half a lot", () => {
  const lots = lotsTaken(dubia, colony, { taking: { heads: 225, ...everySize(dubia) }, parts });
  const half = laidOut(lots);
  expect(totalHeads(half)).toBeCloseTo(225, 9);
  for (const toMm of [6, 8, 10, 12, 16, 20, 30, adultMm - 0.1]) {
    const below = (all: Float64Array) => headsWithin(dubia, all, { fromMm: 0, toMm });
    expect(Math.abs(below(half) - below(colony) / 2)).toBeLessThan(195 / parts / 2);
  }
  expect(headsWithin(dubia, half, { fromMm: adultMm, toMm: adultMm })).toBeCloseTo(30, 6);
});

it('a range without the adults holds none of them, whatever its end', () => {
  const range = withoutAdults(dubia, { fromMm: 10, toMm: 500 });
  const grown = laidOut([{ heads: 60, fromMm: adultMm, toMm: adultMm }]);
  expect(headsWithin(dubia, grown, range)).toBe(0);
  expect(headsWithin(dubia, colony, range)).toBeCloseTo(
    headsWithin(dubia, colony, { fromMm: 10, toMm: 500 }) - 60,
    3,
  );
});

it('where nothing is known of, one lot of what was asked for', () => {
  const taking = { heads: 5, fromMm: 8, toMm: 10 };
  expect(lotsTaken(dubia, new Float64Array(dubia.size), { taking, parts })).toEqual([taking]);
  expect(lotsTaken(dubia, colony, { taking: { ...taking, heads: 0 }, parts })).toEqual([]);
});
