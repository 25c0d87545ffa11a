/** Packs bought smaller and earlier: which of them will have grown into a pack by the time it comes. */
import { describe, expect, it } from 'vitest';
import { growsInto } from '../../../src/husbandry/plan/grows-into.ts';
import type { PlanPack, PlanParcel, PlanPlace } from '../../../src/husbandry/plan/problem.ts';

const PERIODS = 6;
/** Three sizes; in a period all of one size grow into the next. */
const GROWS = [Float64Array.of(0, 0, 0), Float64Array.of(1, 0, 0), Float64Array.of(0, 1, 1)];

const place: PlanPlace = {
  key: 'prey',
  nodes: 3,
  passes: Array.from({ length: PERIODS - 1 }, () => GROWS),
  comes: Array.from({ length: PERIODS }, () => new Float64Array(3)),
  keepCents: 0,
  room: null,
  floor: null,
};
const SIZES = ['small', 'medium', 'large'];

const packOf = (size: string, period: number, at = 0): PlanPack => ({
  key: `${size}@${period}`,
  place: at,
  breaks: [{ fromPacks: 1, cents: 100 }],
  least: 0,
  most: 9,
  lineCents: 0,
  weightCents: 0,
  brings: Float64Array.from(SIZES, (each) => (each === size ? 50 : 0)),
});
const parcelAt = (period: number, packs: PlanPack[]): PlanParcel => ({
  key: `seller@${period}`,
  period,
  paid: period,
  postageCents: 0,
  labourCents: 0,
  minimumCents: 0,
  freeFromCents: null,
  packs,
});
const parcels = Array.from({ length: PERIODS }, (_, t) =>
  parcelAt(
    t,
    SIZES.map((size) => packOf(size, t)),
  ),
);

describe('what grows into a pack', () => {
  const into = (period: number, size: string) =>
    growsInto({ parcels, places: [place] }, { parcel: period, pack: SIZES.indexOf(size) }).map(
      ({ parcel, pack }) => parcels[parcel]!.packs[pack]!.key,
    );

  it('is of each smaller size what comes as long before as it takes to grow', () => {
    expect(into(4, 'large').toSorted()).toEqual(['medium@3', 'small@2']);
    expect(into(2, 'medium')).toEqual(['small@1']);
  });

  it('is nothing that comes as late, has outgrown it, or lives elsewhere', () => {
    expect(into(0, 'large')).toEqual([]);
    expect(into(3, 'small')).toEqual([]);
    const elsewhere = [parcelAt(0, [packOf('small', 0, 1)]), parcelAt(1, [packOf('medium', 1)])];
    expect(growsInto({ parcels: elsewhere, places: [place, place] }, { parcel: 1, pack: 0 })).toEqual([]);
  });
});
