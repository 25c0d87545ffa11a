/** What is alive in the larder by length, and how much of it fits one animal. */
import { expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import { eaterOf, ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { larderNow } from '../../../src/husbandry/supply/alive-now.ts';
import { animalWith, countedBin, facts, snapshotWith } from '../../support/room.ts';

const kind = facts.kinds.get('tliltocatl-albopilosus') as Kind;
const bins = [
  countedBin('B1', 'acheta-domesticus', { heads: 300, fromMm: 4, toMm: 6 }),
  countedBin('B2', 'acheta-domesticus', { heads: 100, fromMm: 14, toMm: 16 }),
  countedBin('B3', 'tenebrio-molitor', { heads: 50, fromMm: 15, toMm: 25 }),
];
const larder = larderNow(snapshotWith({ bins }));
const heads = (species: string): number[] =>
  larder.alive.alive.find((each) => each.species === species)!.heads as number[];
const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const fitting = (gaugeMm: number) => {
  const animal = animalWith({ code: 'A1', kind: kind.code, gaugeMm });
  return new Map(
    larder.fitting(ruleOf(kind, animal), eaterOf(kind, animal)).map(({ species, heads: n }) => [species, n]),
  );
};

it('has every head once, at its length', () => {
  expect(total(heads('acheta-domesticus'))).toBeCloseTo(400, 6);
  const { edgesMm } = larder.alive;
  const small = heads('acheta-domesticus').filter((_, i) => (edgesMm[i + 1] as number) < 10);
  expect(total(small)).toBeCloseTo(300, 6);
});

it('tells by species what an animal takes at its size, and nothing of what it refuses', () => {
  const young = fitting(16);
  expect(young.get('acheta-domesticus')).toBeCloseTo(300, 0);
  expect(young.get('tenebrio-molitor')).toBe(0);
  expect(fitting(60).get('acheta-domesticus')).toBeCloseTo(100, 0);
  expect(fitting(60).get('tenebrio-molitor')).toBeGreaterThan(0);
});

it('is empty in an empty larder', () => {
  const none = larderNow(snapshotWith({}));
  expect(none.alive.alive).toEqual([]);
  expect(
    none.fitting(ruleOf(kind, { gaugeMm: 20, matured: false, stageOverride: null }), {
      referenceMm: 8,
      massMg: 50,
    }),
  ).toEqual([]);
});
