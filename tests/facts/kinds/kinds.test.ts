/** The kinds keep their own promises: stages in order, windows in order, names that lead to one kind. */
import { describe, expect, it } from 'vitest';
import { kinds, kindsByCode } from '../../../src/facts/kinds/index.ts';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';

const GENERAL = [
  'tarantula',
  'tarantula-fossorial',
  'tarantula-arboreal',
  'jumping-spider',
  'true-spider',
  'scorpion',
  'mantid',
  'centipede',
  'whip-spider',
  'frog',
  'dart-frog',
  'lizard',
];

it('knows 73 kept kinds and a general kind for every group', () => {
  expect(kinds).toHaveLength(73 + GENERAL.length);
  expect(kindsByCode.size).toBe(kinds.length);
  const groups = new Set(kinds.map((kind) => kind.group));
  expect(new Set(GENERAL.map((code) => kindsByCode.get(code)?.group))).toEqual(groups);
});

it('leads every name, lower case, to one kind only', () => {
  const names = kinds.flatMap((kind) => [
    ...new Set([kind.name.toLowerCase(), kind.commonName.toLowerCase(), ...kind.aliases]),
  ]);
  const twice = names.filter((name, i) => names.indexOf(name) !== i);
  expect(twice).toEqual([]);
  expect(names.filter((name) => name !== name.toLowerCase())).toEqual([]);
});

it('knows the abbreviations keepers write', () => {
  expect(kinds.find((kind) => kind.aliases.includes('b. hamorii'))?.code).toBe('brachypelma-hamorii');
  expect(kinds.find((kind) => kind.aliases.includes('gbb'))?.code).toBe('chromatopelma-cyaneopubescens');
});

describe.each(kinds.map((kind) => [kind.code, kind] as const))('%s', (_, kind: Kind) => {
  it('has stages that follow each other from share 0, the mature male last', () => {
    const growing = kind.stages.filter(({ stage }) => stage !== 'mature male');
    expect(growing[0]!.fromShareOfAdult).toBe(0);
    expect(
      growing.every((rule, i) => i === 0 || rule.fromShareOfAdult > growing[i - 1]!.fromShareOfAdult),
    ).toBe(true);
    expect(kind.stages.slice(0, growing.length)).toEqual(growing);
    expect(kind.stages.length - growing.length).toBe(kind.group === 'tarantula' ? 1 : 0);
  });

  it('has windows, meals and times in order', () => {
    for (const rule of kind.stages) {
      const { min, ideal, max, killFirstAbove } = rule.window.value;
      expect(0 < min && min < ideal && ideal < max).toBe(true);
      if (killFirstAbove !== null) expect(ideal < killFirstAbove && killFirstAbove <= max).toBe(true);
      expect(rule.mealItems.value[0]).toBeLessThanOrEqual(rule.mealItems.value[1]);
      expect(rule.intervalDays.value[0]).toBeLessThanOrEqual(rule.intervalDays.value[1]);
      expect(rule.weeklyNeed.value[0]).toBeLessThan(rule.weeklyNeed.value[1]);
    }
  });

  it('holds an animal in danger no sooner than its meal is missed', () => {
    for (const rule of kind.stages)
      expect(rule.safeGapDays.value).toBeGreaterThanOrEqual(
        rule.intervalDays.value[1] + rule.graceDays.value,
      );
  });

  it('has acceptance from moult to moult without a hole, falling towards the next', () => {
    for (const rule of kind.stages) {
      const phases = rule.acceptance.value;
      expect(phases[0]!.from).toBe(0);
      expect(phases.at(-1)!.to).toBe(1);
      expect(
        phases.every(
          (phase, i) =>
            i === 0 || (phase.from === phases[i - 1]!.to && phase.acceptance < phases[i - 1]!.acceptance),
        ),
      ).toBe(true);
    }
  });

  it('first feeds smaller than it is full grown, and as its youngest stage', () => {
    const first = kind.firstFeedingGaugeMm.value[1];
    const adult = (kind.adultGaugeMm.value[0] + kind.adultGaugeMm.value[1]) / 2;
    expect(first / adult).toBeLessThan(kind.stages[1]!.fromShareOfAdult);
  });
});

it('lets a mature male eat little, not nothing', () => {
  for (const kind of kinds.filter(({ group }) => group === 'tarantula')) {
    const [male, adult] = ['mature male', 'adult'].map(
      (stage) => kind.stages.find((rule) => rule.stage === stage)!,
    );
    const weekly = (rule: typeof male) =>
      (rule!.mealItems.value[0] + rule!.mealItems.value[1]) /
      (rule!.intervalDays.value[0] + rule!.intervalDays.value[1]);
    expect(weekly(male)).toBeGreaterThan(0);
    expect(weekly(male)).toBeLessThan(weekly(adult) / 2);
  }
});
