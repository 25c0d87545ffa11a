/** The instar ladder: sizes behind from the journal, sizes ahead by the kind's factor of growth. */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { type GrowthRecord, instarLadder } from '../../../src/husbandry/appetite/ladder.ts';
import { nextMoult } from '../../../src/husbandry/appetite/next-moult.ts';
import { animalWith, facts, snapshotWith, TODAY } from '../../support/room.ts';

const kind = facts.kinds.get('tliltocatl-albopilosus') as Kind;
const nothing: GrowthRecord = { moults: [], sizes: [] };
const spiderling = animalWith({
  code: 'A1',
  kind: kind.code,
  gaugeMm: 20,
  lastMoult: { earliest: TODAY - 31, found: TODAY - 30 },
});
const room = snapshotWith({ animals: [spiderling] });

describe('ahead', () => {
  const ladder = instarLadder(room, spiderling, nothing);

  it('grows by 38 % a moult, three moults far', () => {
    expect(ladder.map(({ place }) => place)).toEqual(['now', 'ahead', 'ahead', 'ahead']);
    expect(ladder.map(({ gaugeMm }) => Math.round(gaugeMm * 10) / 10)).toEqual([20, 27.6, 38.1, 52.6]);
  });

  it('begins with the next moult', () => {
    const next = nextMoult(room, spiderling);
    expect(next.kind === 'expected' && next.day).toEqual(ladder[1]?.expected);
    expect(ladder[0]?.expected).toBeNull();
  });

  it('takes prey by the window of the stage it will be in', () => {
    for (const { rule, window, referenceMm, gaugeMm } of ladder) {
      expect(referenceMm).toBeCloseTo(gaugeMm * kind.bodyPerGauge.value, 9);
      expect(window.maxMm).toBeCloseTo(rule.window.value.max * referenceMm, 9);
      expect(window.idealMm).toBeCloseTo(rule.window.value.ideal * referenceMm, 9);
    }
    expect(new Set(ladder.map(({ rule }) => rule.stage)).size).toBeGreaterThan(1);
  });

  it('ends with the first adult size', () => {
    const subadult = { ...spiderling, gaugeMm: kind.adultGaugeMm.value[0] * 0.8 };
    const stages = instarLadder(snapshotWith({ animals: [subadult] }), subadult, nothing).map(
      ({ rule }) => rule.stage,
    );
    expect(stages).toEqual(['subadult', 'adult']);
  });

  it('has no rung for a male that has matured, nor for a group', () => {
    for (const over of [{ matured: true, sex: 'male' as const }, { count: 12 }]) {
      const animal = { ...spiderling, ...over };
      const places = instarLadder(snapshotWith({ animals: [animal] }), animal, nothing).map(
        ({ place }) => place,
      );
      expect(places).toEqual(['now']);
    }
  });
});

describe('behind', () => {
  const record: GrowthRecord = {
    moults: [TODAY - 200, TODAY - 110, TODAY - 30],
    sizes: [
      { day: TODAY - 150, gaugeMm: 11 },
      { day: TODAY - 29, gaugeMm: 20 },
    ],
  };
  const ladder = instarLadder(room, spiderling, record);

  it('has a rung for each size between the moults on record, with the moult that began it', () => {
    expect(ladder.slice(0, 4).map(({ place, since }) => [place, since])).toEqual([
      ['behind', null],
      ['behind', TODAY - 200],
      ['behind', TODAY - 110],
      ['now', TODAY - 30],
    ]);
  });

  it('takes a size that was measured, and else reckons back by the factor', () => {
    expect(ladder.slice(0, 4).map(({ gaugeMm, measured }) => [gaugeMm.toFixed(2), measured])).toEqual([
      [(11 / 1.38).toFixed(2), false],
      ['11.00', true],
      [(20 / 1.38).toFixed(2), false],
      ['20.00', true],
    ]);
  });

  it('says of a size taken from the stage that it was not measured', () => {
    const [now] = instarLadder(room, { ...spiderling, gaugeAssumed: true }, nothing);
    expect(now?.measured).toBe(false);
  });
});
