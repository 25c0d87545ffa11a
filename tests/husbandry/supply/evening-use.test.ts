/** What an evening used, what the bins hold now, and which count is asked for. */
import { describe, expect, it } from 'vitest';
import type { Bin, BinEvent } from '../../../src/husbandry/larder/bin.ts';
import { usedBins } from '../../../src/husbandry/supply/evening-use.ts';
import { binWith, snapshotWith, TODAY } from '../../support/room.ts';

const counted = (heads: number, day = TODAY): BinEvent => ({
  kind: 'counted',
  day,
  heads,
  fromMm: 10,
  toMm: 14,
});
const fed = (heads: number, day = TODAY): BinEvent => ({ kind: 'offered', day, heads, fromMm: 10, toMm: 14 });
const bin = (...events: BinEvent[]): Bin => binWith({ code: 'B1', species: 'blaptica-dubia', events });
const use = (of: Bin, heads: number, day = TODAY) =>
  usedBins(snapshotWith({ bins: [of] }), { day, byBin: new Map([['B1', heads]]) })[0];

describe('a bin fed from', () => {
  it('holds less by what was fed, and is left in peace when it is well known and little was taken', () => {
    const used = use(bin(counted(200), fed(20)), 20);
    expect(used).toMatchObject({ fed: 20, short: false, ask: false });
    expect(used?.before).toBeCloseTo(200, 6);
    expect(Math.abs((used?.now.mid ?? 0) - 180)).toBeLessThan(2);
  });

  it('is to be counted when the evening took much of it, or when nobody has looked for long', () => {
    expect(use(bin(counted(200), fed(80)), 80)?.ask).toBe(true);
    expect(use(bin(counted(400, TODAY - 30), fed(10)), 10)?.ask).toBe(true);
  });

  it('is doubted, never below none, when more was fed than it was thought to hold', () => {
    const used = use(bin(counted(25), fed(40)), 40);
    expect(used).toMatchObject({ short: true, ask: true });
    expect(used?.before).toBeCloseTo(25, 6);
    expect(used?.now).toEqual({ low: 0, mid: 0, high: 0 });
  });

  it('is not doubted any more once it was counted after the meal', () => {
    expect(use(bin(counted(25), fed(40), counted(90)), 40)).toMatchObject({ short: false, ask: false });
  });

  it('is asked about by what that evening took, though it was fed from since', () => {
    const used = use(bin(counted(100, TODAY - 2), fed(5, TODAY - 1), fed(60)), 5, TODAY - 1);
    expect(used).toMatchObject({ fed: 5, ask: false });
    expect(used?.before).toBeGreaterThan(95);
  });

  it('is not counted when it is a cup', () => {
    const cup = binWith({
      code: 'B1',
      species: 'drosophila-hydei',
      role: 'cup',
      events: [{ kind: 'cup looked', look: 'producing', day: TODAY - 3 }, fed(9999)],
    });
    expect(use(cup, 9999)).toMatchObject({ fed: 9999, short: false, ask: false });
  });
});
