/** Frozen stock is dead prey: it neither grows nor dies, and feeds those alone that take prey killed first. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleOf } from '../../../src/husbandry/animals/index.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import { takesDead } from '../../../src/husbandry/prey/index.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { eveningOf, larderNow, sundayCheck } from '../../../src/husbandry/supply/index.ts';
import { animalWith, certainPolicy, countedBin, facts, snapshotWith, TODAY } from '../../support/room.ts';

const certain = { ...facts, policy: certainPolicy };
const CRICKETS = 'acheta-domesticus';
const frozen = (heads: number, fromMm: number, toMm: number): Bin => ({
  ...countedBin('F', CRICKETS, { heads, fromMm, toMm }),
  role: 'frozen',
});
/** A spiderling of a tarantula, whose rule knows prey that is killed first. */
const sling = (code: string) =>
  animalWith({ code, kind: 'brachypelma-hamorii', gaugeMm: 20, lastTaken: TODAY - 8 });
/** A kind that is fed live prey alone, at a stage where that is fragile. */
const liveOnly = [...facts.kinds.values()]
  .flatMap((kind) => kind.stages.map((rule) => ({ kind, rule })))
  .find(({ rule }) => !takesDead(rule) && rule.urgency === 'fragile' && rule.accepts.includes('cricket'));
const fragile = (code: string) => {
  const kind = liveOnly?.kind;
  if (!kind) throw new Error('no kind takes live prey alone');
  const gaugeMm = kind.firstFeedingGaugeMm.value[1];
  return animalWith({ code, kind: kind.code, gaugeMm, lastTaken: TODAY - 8 });
};
const roomWith = (over: Partial<Snapshot>) => snapshotWith({ facts: certain, ...over });
const answerFor = (room: Snapshot) => sundayCheck(room, { days: 10, replicates: 8 });
const binOf = (room: Snapshot, code: string) => answerFor(room).bins.find((bin) => bin.code === code);

describe('a frozen stock', () => {
  it('has as many heads of the same length after half a year, and counts as nothing alive', () => {
    const room = roomWith({ today: TODAY + 180, bins: [frozen(120, 8, 10)] });
    expect(binOf(room, 'F')).toMatchObject({ died: 0, eaten: 0, hatched: 0 });
    expect(binOf(room, 'F')?.left).toBeCloseTo(120, 6);
    expect(binOf(room, 'F')?.lengthsNow.low).toBeGreaterThan(7.5);
    expect(answerFor(room).spectrum.alive).toEqual([]);
    expect(larderNow(room).alive.alive).toEqual([]);
  });

  it('does not die off, nor does its count grow vaguer by the day', () => {
    const policy = { ...facts.policy, dieOffPerDay: { ...facts.policy.dieOffPerDay, value: 0.9 } };
    const room = roomWith({ today: TODAY + 60, bins: [frozen(120, 8, 10)], facts: { ...facts, policy } });
    const bin = binOf(room, 'F');
    expect(bin?.died).toBe(0);
    expect((bin?.headsNow.high ?? 0) / (bin?.headsNow.low ?? 1)).toBeLessThan(1.2);
  });

  it('feeds an animal that takes prey killed first, after the live prey is gone', () => {
    const animals = ['A1', 'A2', 'A3'].map(sling);
    const alone = roomWith({ animals, bins: [frozen(60, 5, 6)] });
    expect(binOf(alone, 'F')?.eaten).toBeGreaterThan(2);
    expect(answerFor(alone).nothingMissed.chance).toBe(1);
    const beside = roomWith({
      animals,
      bins: [frozen(60, 5, 6), countedBin('L', CRICKETS, { heads: 300, fromMm: 5, toMm: 6 })],
    });
    expect(binOf(beside, 'F')?.eaten).toBe(0);
    expect(binOf(beside, 'L')?.eaten).toBeGreaterThan(2);
  });

  it('is never given to an animal that takes live prey alone', () => {
    const room = roomWith({ animals: [fragile('A1')], bins: [frozen(500, 1, 12)] });
    expect(binOf(room, 'F')?.eaten).toBe(0);
    expect(eveningOf(room).servings.map(({ offer, choices }) => [offer, choices])).toEqual([[null, []]]);
    const rule = ruleOf(liveOnly!.kind, room.animals[0]!);
    const eater = { referenceMm: 20, massMg: 500 };
    expect(
      larderNow(room)
        .fitting(rule, eater)
        .map(({ heads }) => heads),
    ).toEqual([0]);
  });

  it('loses only what is eaten', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 4 }), (heads, slings) => {
        const animals = [...Array.from({ length: slings }, (_, i) => sling(`A${i}`)), fragile('B1')];
        const bin = binOf(roomWith({ animals, bins: [frozen(heads, 4, 7)] }), 'F');
        expect((bin?.eaten ?? 0) + (bin?.left ?? 0)).toBeCloseTo(heads, 6);
        expect(bin?.died).toBe(0);
      }),
      { numRuns: 12 },
    );
  });
});

describe("tonight's offer", () => {
  it('takes live prey first, and says of frozen prey that it is dead and thawed', () => {
    const room = roomWith({ animals: [sling('A1')], bins: [frozen(60, 5, 6)] });
    expect(eveningOf(room).servings[0]?.offer).toMatchObject({ bin: 'F', thawed: true, killFirst: false });
    const live = countedBin('L', CRICKETS, { heads: 60, fromMm: 5, toMm: 6 });
    const [serving] = eveningOf({ ...room, bins: [...room.bins, live] }).servings;
    expect(serving?.offer).toMatchObject({ bin: 'L', killFirst: false });
    expect(serving?.offer?.thawed).toBeUndefined();
    expect(serving?.choices).toMatchObject([{ bin: 'F', thawed: true }]);
  });
});
