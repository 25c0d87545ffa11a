/** Refusals in a row against what the point of the moult cycle makes usual. */
import { describe, expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { MealOnRecord } from '../../../src/husbandry/appetite/intake.ts';
import { refusalsSeen } from '../../../src/husbandry/appetite/refusals.ts';
import { animalWith, snapshotWith, TODAY } from '../../support/room.ts';

const spiderling = (over: Partial<Animal>) =>
  animalWith({ code: 'A1', kind: 'tliltocatl-albopilosus', gaugeMm: 12, ...over });
const moulted = (daysAgo: number) => ({
  lastMoult: { earliest: TODAY - daysAgo - 1, found: TODAY - daysAgo },
});
const refusedOn = (...daysAgo: number[]): MealOnRecord[] =>
  daysAgo.map((days) => ({
    day: TODAY - days,
    outcome: 'refused',
    species: null,
    heads: null,
    fromMm: null,
    toMm: null,
    portions: 1,
  }));
const seen = (animal: Animal, ...daysAgo: number[]) =>
  refusalsSeen(
    snapshotWith({ animals: [animal] }),
    { ...animal, refusalsInRow: daysAgo.length },
    refusedOn(...daysAgo),
  );

describe('by hand', () => {
  it('early in its cycle it takes 95 of 100: three in a row are 1 in 8000', () => {
    const refusals = seen(spiderling(moulted(18)), 11, 8, 6);
    expect(refusals?.chance).toBeCloseTo(0.05 ** 3, 4);
    expect(refusals).toMatchObject({ inRow: 3, usual: false, phase: 'between moults' });
  });

  it('a male that has matured takes half, so that five in a row are 1 in 32', () => {
    const male = spiderling({ gaugeMm: 120, matured: true, sex: 'male' });
    expect(seen(male, 50, 40, 30, 20, 10)).toMatchObject({
      chance: 1 / 32,
      usual: false,
      phase: 'moults no more',
    });
    expect(seen(male, 30, 20, 10)).toMatchObject({ chance: 1 / 8, usual: true });
  });

  it('its own record counts, without the run that is judged: 15 of 20 is (15 + 10)/(20 + 10) of the kind', () => {
    const male = spiderling({
      gaugeMm: 120,
      matured: true,
      sex: 'male',
      takenOnRecord: 15,
      offersOnRecord: 22,
    });
    expect(seen(male, 20, 10)?.chance).toBeCloseTo((1 - (0.5 * 25) / 30) ** 2, 9);
  });
});

describe('the moult cycle', () => {
  it('makes three refusals usual close to a moult, and the more so the closer it is', () => {
    const [late, later] = [55, 80].map((days) => seen(spiderling(moulted(days)), 9, 6, 3));
    expect(later).toMatchObject({ usual: true, phase: 'close to a moult' });
    expect(later?.chance).toBeGreaterThan(late?.chance as number);
  });

  it('makes them usual once premoult was seen', () => {
    expect(seen(spiderling({ ...moulted(40), premoultSeen: TODAY - 12 }), 9, 6, 3)).toMatchObject({
      usual: true,
      phase: 'close to a moult',
    });
  });

  it('counts only cycles without a moult among the refusals', () => {
    const long = seen(spiderling({}), 60, 40, 20, 1);
    const short = seen(spiderling({}), 4, 3, 2, 1);
    expect(long?.chance).toBeGreaterThan(0);
    expect(short?.chance).toBeGreaterThan(0);
    expect(long?.chance).not.toBeCloseTo(short?.chance as number, 3);
  });

  it('makes a further refusal never likelier', () => {
    const chances = [1, 2, 3, 4, 5].map(
      (n) =>
        seen(spiderling(moulted(45)), ...Array.from({ length: n }, (_, i) => 3 * i + 1))?.chance as number,
    );
    expect(chances).toEqual(chances.toSorted((a, b) => b - a));
    expect(chances.every((chance) => chance > 0 && chance <= 1)).toBe(true);
  });
});

it('says nothing without refusals, and nothing of a group', () => {
  expect(seen(spiderling(moulted(40)))).toBeNull();
  expect(seen(spiderling({ ...moulted(40), count: 6 }), 9, 6, 3)).toBeNull();
});
