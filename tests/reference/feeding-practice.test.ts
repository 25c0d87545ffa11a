/**
 * The rules of tarantulas against common practice (no source): a spiderling gets nothing longer than itself; a
 * juvenile nothing longer than two thirds of itself unless the prey is killed first; juveniles take 3-4 small to
 * medium crickets every 7-14 days; adults 5-6 large crickets every 14-21 days, falling to monthly as a moult nears;
 * no food for 5-7 days after a juvenile's moult and 10-14 after an adult's; refused prey is offered again after 7-14
 * days; with nothing small enough the smallest cricket is killed first, or cut.
 */
import { describe, expect, it } from 'vitest';
import { kinds, kindsByCode } from '../../src/facts/kinds/index.ts';
import type { LifeStage, StageRule } from '../../src/husbandry/animals/kind.ts';

const rulesOf = (stage: LifeStage): readonly StageRule[] =>
  kinds
    .filter(({ group }) => group === 'tarantula')
    .map(({ stages }) => stages.find((rule) => rule.stage === stage)!);

const within = (value: number, [least, most]: readonly [number, number]): boolean =>
  least <= value && value <= most;

/** Items a week from the middle of a range of items and of days. */
const weekly = (items: readonly [number, number], days: readonly [number, number]): number =>
  ((items[0] + items[1]) / (days[0] + days[1])) * 7;

describe('sizes of prey', () => {
  it('gives a spiderling nothing longer than itself', () => {
    expect(new Set(rulesOf('young').map(({ window }) => window.value.max))).toEqual(new Set([1]));
  });

  it('gives a juvenile or a subadult live prey up to two thirds of itself, longer prey only killed', () => {
    for (const stage of ['juvenile', 'subadult'] as const)
      expect(new Set(rulesOf(stage).map(({ window }) => window.value.killFirstAbove))).toEqual(
        new Set([2 / 3]),
      );
  });

  it('kills first what is nearly as long as a spiderling, and cuts what is longer', () => {
    for (const { window, portions } of rulesOf('young')) {
      expect(window.value.killFirstAbove).toBeLessThan(window.value.max);
      expect(portions.value).toBeGreaterThanOrEqual(2);
    }
  });
});

describe('waits', () => {
  it('leaves a juvenile 5-7 days and an adult 10-14 days after a moult', () => {
    expect(
      rulesOf('juvenile').every(({ waitAfterMoultDays }) => within(waitAfterMoultDays.value, [5, 7])),
    ).toBe(true);
    expect(
      rulesOf('adult').every(({ waitAfterMoultDays }) => within(waitAfterMoultDays.value, [10, 14])),
    ).toBe(true);
  });

  it('offers again 7-14 days after a refusal', () => {
    for (const stage of ['young', 'juvenile', 'subadult', 'adult', 'mature male'] as const)
      expect(rulesOf(stage).every(({ retryDays }) => within(retryDays.value, [7, 14]))).toBe(true);
  });

  it('feeds an adult of slow growth about every 35 days late in its cycle, where practice says monthly', () => {
    const { intervalDays, acceptance } = kindsByCode
      .get('brachypelma-hamorii')!
      .stages.find(({ stage }) => stage === 'adult')!;
    const late = acceptance.value.find(({ from }) => from === 0.75)!;
    expect((intervalDays.value[0] + intervalDays.value[1]) / 2 / late.acceptance).toBe(35);
  });
});

/** Items a week of the rule over those of practice: where the two part, by how much. */
const DISAGREEMENTS = [
  { code: 'brachypelma-hamorii', stage: 'juvenile', items: [3, 4], days: [7, 14], ratio: 0.818 },
  { code: 'brachypelma-hamorii', stage: 'adult', items: [5, 6], days: [14, 21], ratio: 0.909 },
  { code: 'tliltocatl-albopilosus', stage: 'adult', items: [5, 6], days: [14, 21], ratio: 0.606 },
  { code: 'lasiodora-parahybana', stage: 'adult', items: [5, 6], days: [14, 21], ratio: 0.606 },
] as const;

describe('items a week', () => {
  it.each(DISAGREEMENTS)(
    'gives $code as $stage $ratio of what practice says',
    ({ code, stage, items, days, ratio }) => {
      const rule = kindsByCode.get(code)!.stages.find((candidate) => candidate.stage === stage)!;
      expect(weekly(rule.mealItems.value, rule.intervalDays.value) / weekly(items, days)).toBeCloseTo(
        ratio,
        3,
      );
    },
  );
});
