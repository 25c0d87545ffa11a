/** What an animal eats by its rule, worked by hand. */
import { expect, test } from 'vitest';
import type { Facts } from '../../../src/husbandry/snapshot.ts';
import { dietOf } from '../../../src/husbandry/supply/diet.ts';
import { animalWith, facts } from '../../support/room.ts';

const KNEE = 'brachypelma-hamorii';
const nobody = new Set<string>();
const diet = (gaugeMm: number, over: object = {}, known: Facts = facts, kept = nobody) =>
  dietOf(animalWith({ code: 'A1', kind: KNEE, gaugeMm, ...over }), { facts: known, kept })!;

test('an adult takes 20 to 80 % of its body, and five large crickets in 17.5 days are two a week', () => {
  const { eater, window, trade, itemsPerWeek, mgPerWeek, weeklyShare, enough } = diet(140);
  const body = 140 * facts.kinds.get(KNEE)!.bodyPerGauge.value;
  const cricket = facts.species.get('acheta-domesticus')!;
  expect(eater.referenceMm).toBe(body);
  expect([window!.minMm, window!.idealMm, window!.maxMm].map((mm) => mm / body)).toEqual([
    expect.closeTo(0.2, 12),
    expect.closeTo(0.35, 12),
    expect.closeTo(0.8, 12),
  ]);
  expect(trade).toMatchObject({ species: cricket, best: { name: 'adult' } });
  expect(itemsPerWeek).toBe(2);
  expect(mgPerWeek).toBeCloseTo(2 * cricket.massPerCubicMm.value * (0.35 * body) ** 3, 9);
  expect(weeklyShare).toBeCloseTo(mgPerWeek / eater.massMg, 12);
  expect(weeklyShare).toBeGreaterThan(0.025);
  expect(enough).toBe('too much');
});

test.each([
  [[0.2, 0.3], 'too little'],
  [[0.03, 0.06], 'right'],
  [[0.008, 0.025], 'too much'],
])('a need of %j is met: %s', (need, enough) => {
  const kind = facts.kinds.get(KNEE)!;
  const stages = kind.stages.map((rule) => ({ ...rule, weeklyNeed: { ...rule.weeklyNeed, value: need } }));
  const known = { ...facts, kinds: new Map([[KNEE, { ...kind, stages }]]) } as unknown as Facts;
  expect(diet(140, {}, known).enough).toBe(enough);
});

test('what is kept here comes before the first of the Book; the form named first before others', () => {
  expect(diet(100).trade!.species.code).toBe('acheta-domesticus');
  expect(diet(100, {}, facts, new Set(['gryllus-bimaculatus'])).trade!.species.code).toBe(
    'gryllus-bimaculatus',
  );
  expect(diet(100, {}, facts, new Set(['blaptica-dubia'])).trade!.species.code).toBe('acheta-domesticus');
});

test('an animal with a record of its own is reckoned by its own interval', () => {
  const slow = diet(140, { intervalsOnRecord: [28, 28, 28, 28, 28, 28, 28, 28, 28, 28] });
  expect(slow.interval.min).toBeGreaterThan(14);
  expect(slow.itemsPerWeek).toBeLessThan(2);
});

test('an animal whose kind is not in the Book has none', () => {
  expect(dietOf(animalWith({ code: 'A1', kind: 'unicorn', gaugeMm: 9 }), { facts, kept: nobody })).toBeNull();
});
