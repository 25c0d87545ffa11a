/** Cups started so that flies keep coming. */
import { describe, expect, it } from 'vitest';
import { drosophilaHydei } from '../../../src/facts/prey/drosophila-hydei.ts';
import { steadyClimate } from '../../../src/husbandry/larder/climate.ts';
import { cupGives, weekFrom } from '../../../src/husbandry/larder/cup-life.ts';
import { cupCalendars } from '../../../src/husbandry/supply/cup-calendar.ts';
import { fliesStanding } from '../../../src/husbandry/supply/cups-standing.ts';
import { binWith, facts, snapshotWith, TODAY } from '../../support/room.ts';

const room = [{ code: 'room', name: 'Room', dayTempC: 25, nightTempC: 25 }];
const cup = (day: number) =>
  binWith({
    code: 'B1',
    species: 'drosophila-hydei',
    role: 'cup',
    events: [{ kind: 'cup looked', look: 'started', day }],
  });
const coming = (eaten: number) => ({
  bins: [{ species: 'drosophila-hydei', eaten }] as never,
  groups: [],
  horizonDays: 7,
});

describe('the cups to start', () => {
  const gives = cupGives(drosophilaHydei, {
    climate: steadyClimate({ minC: 25, maxC: 25 }),
    policy: facts.policy,
  })!;

  it('fill every week that lies far enough ahead, with what the cups here still give', () => {
    const snapshot = snapshotWith({ bins: [cup(TODAY - 15)], rooms: room });
    const [calendar] = cupCalendars(snapshot, coming(100));
    expect(calendar!.weekly).toBe(100);
    const there = weekFrom(gives.flies, 15 + 35);
    const started = calendar!.starts.reduce(
      (sum, { day, cups }) => sum + cups * weekFrom(gives.flies, TODAY + 35 - day),
      there,
    );
    expect(started).toBeGreaterThanOrEqual(100 - 1e-9);
    expect(calendar!.starts.every(({ day }) => day >= TODAY)).toBe(true);
  });

  it('reckon with the flies of a cup started anew in its old box', () => {
    const again = binWith({
      ...cup(TODAY - 90),
      events: [TODAY - 90, TODAY - 1].flatMap((day) => cup(day).events),
    });
    const standing = (bin: typeof again) =>
      fliesStanding(snapshotWith({ bins: [bin], rooms: room }), {
        cups: [bin],
        species: drosophilaHydei,
        day: TODAY + 21,
      });
    expect(standing(cup(TODAY - 1))).toBeGreaterThan(10);
    expect(standing(again)).toBeCloseTo(standing(cup(TODAY - 1)), 6);
    expect(standing(cup(TODAY - 90))).toBe(0);
  });

  it('are none where nothing is eaten from them', () => {
    const snapshot = snapshotWith({ bins: [cup(TODAY - 15)], rooms: room });
    expect(cupCalendars(snapshot, coming(0))[0]!.starts).toEqual([]);
    expect(cupCalendars(snapshotWith({ bins: [] }), coming(50))).toEqual([]);
  });
});
