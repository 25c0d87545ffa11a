/** The size a kind is expected to have, from a size on record on. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { expectedGrowth } from '../../../src/husbandry/appetite/growth.ts';
import { animalWith, facts, snapshotWith, TODAY } from '../../support/room.ts';

const kind = facts.kinds.get('tliltocatl-albopilosus') as Kind;
const animal = animalWith({ code: 'A1', kind: kind.code, gaugeMm: 12 });
const room = snapshotWith({ animals: [animal] });
const grown = (days: number, gaugeMm = 12, snapshot = room) =>
  expectedGrowth(snapshot, animal, { from: { day: TODAY - days, gaugeMm }, to: TODAY }).at(-1)!;

describe('by hand', () => {
  it('a spiderling grows by 1.38 in 60 days at 25 °C, and by its square in 120', () => {
    expect(grown(0).midMm).toBe(12);
    expect(grown(60).midMm).toBeCloseTo(12 * 1.38, 6);
    expect(grown(120).midMm).toBeCloseTo(12 * 1.38 ** 2, 6);
  });

  it('its doubt is half a step, and 1.645 times 0.3 steps after one moult', () => {
    expect(grown(0).highMm).toBeCloseTo(12 * Math.sqrt(1.38), 6);
    expect(grown(60).highMm).toBeCloseTo(12 * 1.38 * 1.38 ** (0.5 + 1.6449 * 0.3), 3);
    expect(grown(60).lowMm).toBeCloseTo((12 * 1.38) / 1.38 ** (0.5 + 1.6449 * 0.3), 3);
  });

  it('ten degrees colder it takes twice as long', () => {
    const cold = snapshotWith({ rooms: [{ code: 'room', name: 'Room', dayTempC: 16, nightTempC: 14 }] });
    expect(grown(120, 12, cold).midMm).toBeCloseTo(12 * 1.38, 6);
  });
});

it('changes its pace with its stage, and never shrinks', () => {
  const points = expectedGrowth(room, animal, { from: { day: TODAY - 1500, gaugeMm: 12 }, to: TODAY });
  const sizes = points.map(({ midMm }) => midMm);
  expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
  expect(new Set(points.map(({ factor }) => factor)).size).toBeGreaterThan(1);
  expect(points.map(({ day }) => day).at(-1)).toBe(TODAY);
});

it('stands still where the stage moults no more', () => {
  const frog = animalWith({ code: 'A2', kind: 'dendrobates-tinctorius', gaugeMm: 40 });
  const snapshot = snapshotWith({ animals: [frog] });
  const points = expectedGrowth(snapshot, frog, { from: { day: TODAY - 100, gaugeMm: 40 }, to: TODAY });
  expect(new Set(points.map(({ midMm }) => midMm))).toEqual(new Set([40]));
});
