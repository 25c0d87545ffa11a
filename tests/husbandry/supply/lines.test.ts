/** Lines that insure each other: the chance that all are lost, against arithmetic and against dice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { policy } from '../../../src/facts/policy.ts';
import { allLostWithin, linesOf } from '../../../src/husbandry/supply/lines.ts';
import { mix32, uniform } from '../../../src/maths/random.ts';
import { binWith, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const colony = (code: string, room: string, origin = '') =>
  binWith({ code, species: 'blaptica-dubia', role: 'colony', room, origin });
const rooms = ['room', 'cellar', 'attic'].map((code) => ({ code, name: code, dayTempC: 25, nightTempC: 20 }));

describe('lines of a species', () => {
  it('are apart where they share neither room nor origin, also through a third', () => {
    const bins = [colony('B1', 'room', 'fair'), colony('B2', 'cellar'), colony('B3', 'attic', ' Fair ')];
    expect(linesOf(snapshotWith({ bins, rooms }))).toMatchObject([
      { species: 'blaptica-dubia', bins: ['B1', 'B2', 'B3'], apart: 2 },
    ]);
    const linked = [...bins, colony('B4', 'cellar', 'fair')];
    expect(linesOf(snapshotWith({ bins: linked, rooms }))[0]!.apart).toBe(1);
  });

  it('count cups while they give: neither finished nor past their age', () => {
    const cup = (code: string, day: number, looks: readonly ('finished' | 'crashed')[] = []) =>
      binWith({
        code,
        species: 'drosophila-hydei',
        role: 'cup',
        events: [
          { kind: 'cup looked', look: 'started', day },
          ...looks.map((look) => ({ kind: 'cup looked', look, day: TODAY }) as const),
        ],
      });
    const bins = [cup('B1', TODAY - 10), cup('B2', TODAY - 400), cup('B3', TODAY - 20, ['crashed'])];
    expect(linesOf(snapshotWith({ bins }))[0]!.bins).toEqual(['B1']);
    expect(linesOf(snapshotWith({ bins: [binWith({ code: 'B9', species: 'acheta-domesticus' })] }))).toEqual(
      [],
    );
  });
});

describe('the chance that all are lost', () => {
  it('is that of one line alone, and falls with every line more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0001, max: 0.01, noNaN: true }),
        fc.integer({ min: 1, max: 8 }),
        (perDay, lines) => {
          const said = policyWith({ dieOffPerDay: perDay });
          const one = allLostWithin(policyWith({ dieOffPerDay: perDay, lineSharedShare: 0 }), {
            lines: 1,
            days: 84,
          });
          expect(one).toBeCloseTo(1 - (1 - perDay) ** 84, 12);
          const [fewer, more] = [lines, lines + 1].map((n) => allLostWithin(said, { lines: n, days: 84 }));
          expect(more).toBeLessThanOrEqual(fewer!);
          if (lines < 3) expect(more).toBeLessThan(fewer!);
          expect(more).toBeGreaterThanOrEqual(0);
        },
      ),
      { seed: 4 },
    );
  });

  it('is what dice say, common causes and own ones thrown apart', () => {
    const said = policyWith({ dieOffPerDay: 0.004, lineSharedShare: 0.4 });
    const lost = 1 - (1 - 0.004) ** 84;
    const throws = 200_000;
    let all = 0;
    for (let n = 0; n < throws; n++) {
      const dice = (k: number) => uniform(mix32(n), k);
      all += Number(dice(0) < 0.4 * lost || (dice(1) < 0.6 * lost && dice(2) < 0.6 * lost));
    }
    const chance = allLostWithin(said, { lines: 2, days: 84 });
    expect(Math.abs(all / throws - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / throws));
    expect(policy.lineSharedShare.value).toBeLessThan(1);
  });
});
