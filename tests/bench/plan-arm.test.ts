/** The program as a buyer: it is told what the keeper wrote down, and its lines become orders. */
import { describe, expect, it } from 'vitest';
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import type { PlanAnswer, PlanLine } from '../../src/husbandry/plan/index.ts';
import { type CoverAnswer, sundayCheck } from '../../src/husbandry/supply/index.ts';
import { restLine } from '../support/view-plan.ts';
import { planning, snapshotOf } from './plan-arm.ts';
import { play } from './plan-rules/play.ts';
import { buyerBy, type Rule } from './plan-rules/rules.ts';
import { houseOf, live } from './plan-worlds/house.ts';
import { logOf } from './plan-worlds/household.ts';
import { FORMS, KINDS, type Kind } from './plan-worlds/kinds.ts';
import type { Log } from './plan-worlds/log.ts';
import { BREEDS } from './plan-worlds/prey.ts';
import { roomNamed } from './plan-worlds/rooms.ts';

const RULE: Rule = {
  rule: 'reorder',
  menu: [0, 1, 2, 3],
  belowDays: 11,
  upToDays: 25,
  together: true,
  shopDays: 0,
};

async function logAfter(name: string, weeks: number): Promise<Log> {
  const house = houseOf(roomNamed(name), { seed: 3, weeks: weeks + 1 });
  const buy = buyerBy(RULE);
  for (let week = 0; week < weeks; week += 1) live(house, await buy(logOf(house)));
  return logOf(house);
}

describe('what the worlds and the program both know', () => {
  it.each(Object.values<Kind>(KINDS))('of $code agrees: windows, meals, intervals, moults', (kind) => {
    const told = kindsByCode.get(kind.code)!;
    expect(told.bodyPerGauge.value).toBe(kind.bodyPerGauge);
    for (const stage of kind.stages.filter(({ from }) => from > 0 || kind.stages.length > 1)) {
      const rule = told.stages.find(({ fromShareOfAdult }) => fromShareOfAdult === stage.from)!;
      const { min, ideal, max, killFirstAbove } = rule.window.value;
      expect([min, ideal, killFirstAbove ?? max, max]).toEqual(stage.window);
      expect([rule.mealItems.value, rule.intervalDays.value]).toEqual([stage.items, stage.interval]);
      expect(rule.moult && [rule.moult.meanDays.value, rule.moult.lengthFactor.value]).toEqual(stage.moult);
      expect([rule.graceDays.value, rule.safeGapDays.value, rule.urgency]).toEqual([
        stage.grace,
        stage.gap,
        stage.urgency,
      ]);
    }
  });

  it.each(FORMS)('of a %s agrees: its length when grown, its deaths', (form) => {
    const told = speciesByCode.get(BREEDS[form].species)!;
    const lengths = told.lengthByDevelopment.value;
    expect(BREEDS[form].lengths.at(-1)?.[1]).toBeCloseTo(lengths.at(-1)![1], -0.5);
    expect(BREEDS[form].deathsPerDay).toBe(told.holdingLossPerDay.value);
  });
});

describe('the snapshot', () => {
  it.each(['40', 'colonies'])('of room %s is one whose Sunday can be answered', async (name) => {
    const log = await logAfter(name, 6);
    const answer: CoverAnswer = sundayCheck(snapshotOf(log), { days: 7 });
    expect(answer.mealsDue).toBeGreaterThan(log.animals.length / 4);
    expect(answer.bins.length).toBeGreaterThan(2);
  });
});

describe('the program', () => {
  it('has done on its day what the plan wants done before the next Sunday, and nothing of later', async () => {
    const seen: number[] = [];
    const line = (actBy: number, packs: number): PlanLine => ({
      key: `order ${actBy}`,
      what: 'order',
      actBy,
      species: 'acheta-domesticus',
      heads: 100 * packs,
      cents: 380 * packs,
      minutes: 0,
      pinned: false,
      reason: null,
      parcel: 'p',
      supplier: 'barn',
      offer: 'barn-cricket-1-4-in',
      packs,
      fromMm: 4.5,
      toMm: 7.5,
      sent: actBy + 1,
      comes: actBy + 3,
      bin: null,
    });
    const planner = async ({ today }: { today: number }): Promise<PlanAnswer> => {
      seen.push(today);
      return { lines: [line(today + 1, 2), line(today + 7, 3)] } as unknown as PlanAnswer;
    };
    const { steps, score } = await play(
      roomNamed('40'),
      { seed: 1, weeks: 2 },
      planning(planner, { weeks: 12 }),
    );
    expect(seen[1]).toBe((seen[0] as number) + 7);
    expect(steps.map(({ orders }) => orders)).toEqual([
      [{ day: 1, offer: 1, packs: 2 }],
      [{ day: 8, offer: 1, packs: 2 }],
    ]);
    expect(score.goods).toBe(2 * 1000);
  });

  it('leaves alone what the plan leaves alone, until its day', async () => {
    const planner = async ({ today }: { today: number }) =>
      ({
        lines: [{ ...restLine, bin: 'colony-2', actBy: today, until: today + 10 }],
      }) as unknown as PlanAnswer;
    const { steps } = await play(
      roomNamed('colonies'),
      { seed: 1, weeks: 2 },
      planning(planner, { weeks: 12 }),
    );
    expect(steps.map(({ rests }) => rests)).toEqual([
      [{ tub: 'colony 2', until: 10 }],
      [{ tub: 'colony 2', until: 17 }],
    ]);
  });
});
