/** The moult cycle in the forecast: nothing while hardening, larger prey afterwards, no appetite before. */
import { describe, expect, it } from 'vitest';
import type { Kind, StageRule } from '../../../src/husbandry/animals/kind.ts';
import { ruleOf } from '../../../src/husbandry/animals/stage.ts';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { forecastDemand } from '../../../src/husbandry/supply/demand.ts';
import { animalWith, certainPolicy, countedBin, facts, snapshotWith, TODAY } from '../../support/room.ts';

const kind = facts.kinds.get('tliltocatl-albopilosus') as Kind;
const spiderling = (over: object) =>
  animalWith({ code: 'A1', kind: kind.code, gaugeMm: 12, lastTaken: TODAY - 4, ...over });
const rule = ruleOf(kind, spiderling({})) as StageRule;
const cycle = rule.moult?.meanDays.value as number;
const room = (over: object) =>
  snapshotWith({
    animals: [spiderling(over)],
    bins: [countedBin('B1', 'acheta-domesticus', { heads: 500, fromMm: 2, toMm: 7 })],
    facts: { ...facts, policy: certainPolicy },
  });
const moulted = (daysAgo: number) => ({
  lastMoult: { earliest: TODAY - daysAgo - 1, found: TODAY - daysAgo },
});

describe('an animal', () => {
  it('is offered nothing while it hardens, and eats from the day the wait is over', () => {
    const wait = rule.waitAfterMoultDays.value;
    expect(wait).toBeGreaterThan(2);
    const { tally } = judge(room(moulted(1)), { days: 10, replicates: 50 });
    const due = Array.from({ length: 10 }, (_, day) =>
      Array.from({ length: tally.groups }, (__, g) => tally.wanted[g * 10 + day] as number).reduce(
        (a, b) => a + b,
        0,
      ),
    );
    expect(due.findIndex((items) => items > 0)).toBe(wait - 1);
  });

  it('takes longer prey after it has moulted, in the ratio by which it grows', () => {
    const forecast = forecastDemand(room(moulted(Math.round(cycle))), { weeks: 12, replicates: 200 });
    const [before, after] = forecast.groups.toSorted((a, b) => a.window.idealMm - b.window.idealMm);
    expect((after?.window.idealMm as number) / (before?.window.idealMm as number)).toBeCloseTo(
      rule.moult?.lengthFactor.value as number,
      6,
    );
    const week = (n: number) =>
      [before, after].map((group) => group?.weeks[n]?.mean as number) as [number, number];
    expect(week(0)[0]).toBeGreaterThan(week(0)[1]);
    expect(week(5)[1]).toBeGreaterThan(5 * week(5)[0]);
  });

  it('eats less often late in its cycle than early in it', () => {
    const items = (daysAgo: number) => {
      const { groups } = forecastDemand(room(moulted(daysAgo)), { weeks: 2, replicates: 400 });
      return groups.reduce((sum, group) => sum + (group.cumulative[1]?.mean as number), 0);
    };
    const early = items(rule.waitAfterMoultDays.value + 1);
    expect(items(Math.round(cycle))).toBeLessThan(0.9 * early);
  });
});
