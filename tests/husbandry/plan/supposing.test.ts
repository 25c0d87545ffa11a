/** What is supposed changes that in the room, and nothing else. */
import { describe, expect, it } from 'vitest';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { type Supposed, supposing } from '../../../src/husbandry/plan/index.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { mixedMarket } from '../../support/plan/markets.ts';
import { animalWith, binWith, mixedBins, snapshotWith, TODAY } from '../../support/room.ts';

const room = snapshotWith({
  animals: [
    animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 60 }),
    animalWith({ code: 'A2', kind: 'brachypelma-hamorii', gaugeMm: 40, count: 30 }),
    animalWith({ code: 'A3', kind: 'grammostola-pulchra', gaugeMm: 60 }),
  ],
  bins: mixedBins(10),
  market: mixedMarket,
});

/** Names of the parts of the room that are not as they were. */
function changed(supposed: Supposed): string[] {
  const after = supposing(room, [supposed]);
  return (Object.keys(after) as (keyof Snapshot)[]).filter((name) => after[name] !== room[name]);
}

describe('supposing', () => {
  it('nothing leaves the room as it is', () => {
    expect(supposing(room, [])).toBe(room);
  });

  it('a warmer room warms rooms alone', () => {
    expect(changed({ what: 'warmer', degrees: 3 })).toEqual(['rooms']);
    expect(supposing(room, [{ what: 'warmer', degrees: 3 }]).rooms[0]).toMatchObject({
      dayTempC: 29,
      nightTempC: 27,
    });
  });

  it('days away are added to those there are', () => {
    const away = { what: 'away', from: TODAY + 3, to: TODAY + 9 } as const;
    expect(changed(away)).toEqual(['calendar']);
    expect(supposing(room, [away]).calendar.absences).toEqual([{ from: TODAY + 3, to: TODAY + 9 }]);
  });

  it('a sac brings its young on its day', () => {
    const sac = { what: 'sac', kind: 'brachypelma-hamorii', young: 400, day: TODAY + 30 } as const;
    expect(changed(sac)).toEqual(['changes']);
    expect(supposing(room, [sac]).changes[0]).toMatchObject({ kind: 'sac', count: 400, chance: 1 });
  });

  it('selling takes single animals first, then part of a group', () => {
    const sell = (heads: number) =>
      supposing(room, [{ what: 'sell', kind: 'brachypelma-hamorii', heads, day: TODAY + 1 }]).changes.map(
        ({ animal }) => animal,
      );
    expect(sell(1)).toEqual(['A1']);
    expect(sell(20)).toEqual(['A1', 'A2~sold0']);
    expect(sell(31)).toEqual(['A1', 'A2']);
  });

  it('selling leaves as many heads as there were, and twice sells twice as many', () => {
    const sale = { what: 'sell', kind: 'brachypelma-hamorii', heads: 8, day: TODAY + 1 } as const;
    const heads = ({ animals }: Snapshot) => animals.reduce((sum, { count }) => sum + count, 0);
    const going = ({ animals, changes }: Snapshot) =>
      animals
        .filter(({ code }) => changes.some(({ animal }) => animal === code))
        .reduce((sum, { count }) => sum + count, 0);
    const [once, twice] = [supposing(room, [sale]), supposing(room, [sale, sale])];
    expect([heads(once), heads(twice)]).toEqual([heads(room), heads(room)]);
    expect([going(once), going(twice)]).toEqual([8, 16]);
  });

  it('selling twice out of one group lets each part go on its own day', () => {
    const sale = { what: 'sell', kind: 'brachypelma-hamorii' } as const;
    const { animals, changes } = supposing(room, [
      { ...sale, heads: 4, day: TODAY + 1 },
      { ...sale, heads: 2, day: TODAY + 9 },
    ]);
    const parts = changes.flatMap(({ animal, from }) => {
      const part = animals.find(({ code }) => code === animal);
      return part ? [[from - TODAY, part.count, part.code]] : [];
    });
    expect(new Set(parts.map(([, , code]) => code)).size).toBe(parts.length);
    expect(parts.map(([day, count]) => [day, count])).toEqual([
      [1, 1],
      [1, 3],
      [9, 2],
    ]);
  });

  it('a supplier that stops takes its offers along', () => {
    const { market } = supposing(room, [{ what: 'supplier stops', supplier: 'S1' }]);
    expect(market?.suppliers.map(({ code }) => code)).toEqual(['S2', 'S3']);
    expect(market?.offers.every(({ supplier }) => supplier !== 'S1')).toBe(true);
  });

  it('a bin that dies is empty from today on, and nothing hatches in it', () => {
    const heads = (bins: readonly Bin[]) => {
      const laid = layOut(supposing({ ...room, bins }, [{ what: 'bin dies', bin: 'B9' }]), {
        ...{ weeks: 8, wishes: [], supposed: [] },
      });
      const at = laid.places.findIndex(({ bin }) => bin.code === 'B9');
      return laid.problem.places[at]!.comes.map((comes) => comes.reduce((a, b) => a + b, 0));
    };
    const runners = binWith({
      ...{ code: 'B9', species: 'periplaneta-lateralis', role: 'colony', capacity: 3000 },
      events: [{ kind: 'counted', day: TODAY - 60, heads: 800, fromMm: null, toMm: null }],
    });
    expect(heads([runners])).toEqual(Array(8).fill(0));
  });

  it('a price rises at every break, to whole cents', () => {
    const { market } = supposing(room, [{ what: 'price', offer: 'O1', percent: 10 }]);
    expect(market?.offers[0]?.prices.map(({ packCents }) => packCents)).toEqual([990, 880]);
  });

  it('several things are supposed at once', () => {
    const after = supposing(room, [
      { what: 'warmer', degrees: 1 },
      { what: 'weather', from: TODAY, to: TODAY + 7, tempC: -4 },
    ]);
    expect(after.rooms[0]?.dayTempC).toBe(27);
    expect(after.market?.weather).toEqual([{ from: TODAY, to: TODAY + 7, tempC: -4 }]);
  });
});
