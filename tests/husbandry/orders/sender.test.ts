/** What a supplier's boxes teach: worked by hand, checked with jStat, and true as often as its intervals say. */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { policy } from '../../../src/facts/policy.ts';
import { type Arrival, asSender, type LearnedShare, senderOf } from '../../../src/husbandry/orders/index.ts';
import { normalQuantile } from '../../../src/maths/normal.ts';
import { diceOf } from '../../support/sequences/draw.ts';

const box = (over: Partial<Arrival> = {}): Arrival => ({
  supplier: 'S1',
  ordered: 100,
  alive: 100,
  dead: 0,
  due: 10,
  came: 10,
  counted: true,
  ...over,
});

describe('of a supplier nobody knows', () => {
  const { loss, overCount, late } = senderOf([], policy);

  it('the method is believed', () => {
    expect(loss.mean).toBeCloseTo(0.0115, 12);
    expect(overCount.mean).toBeCloseTo(0.075, 12);
    expect(late.mean).toBeCloseTo(0.1, 12);
    expect([loss.boxes, overCount.boxes, late.boxes]).toEqual([0, 0, 0]);
  });
});

describe('the share lost', () => {
  // Four boxes of the method's 0.0115 and two of 0.05 and 0.15: (4 x 0.0115 + 0.2) / 6 = 0.041.
  const { loss } = senderOf([box({ alive: 95, dead: 5 }), box({ alive: 1700, dead: 300 })], policy);

  it('weighs boxes and not heads', () => {
    expect(loss.mean).toBeCloseTo(0.041, 12);
    expect(loss.boxes).toBe(2);
  });

  it('has the interval of one over gamma(7, 0.246)', () => {
    expect(loss.low).toBeCloseTo(1 / jStat.gamma.inv(0.95, 7, 1 / 0.246), 8);
    expect(loss.high).toBeCloseTo(1 / jStat.gamma.inv(0.05, 7, 1 / 0.246), 8);
  });

  it('is never more than all, and an empty box tells nothing of it', () => {
    expect(senderOf(Array(40).fill(box({ alive: 0, dead: 100 })), policy).loss.high).toBe(1);
    expect(senderOf([box({ alive: 0 })], policy).loss.boxes).toBe(0);
  });
});

describe('the share sent over', () => {
  // ln(1.075) and ln(1.2), each half of it: their geometric mean, 1.135782, less 1.
  const { overCount } = senderOf([box({ alive: 118, dead: 2 })], policy);

  it('is half the method and half the box after one', () => {
    const spread = Math.log1p(0.05 ** 2);
    const mean = (Math.log(1.075) - spread / 2 + Math.log(1.2)) / 2;
    expect(overCount.mean).toBeCloseTo(Math.exp(mean + spread / 2) - 1, 12);
    const sd = Math.sqrt(spread / 2);
    expect(overCount.high).toBeCloseTo(Math.exp(jStat.normal.inv(0.95, mean, sd) + spread / 2) - 1, 8);
    expect(overCount.low).toBeCloseTo(Math.exp(jStat.normal.inv(0.05, mean, sd) + spread / 2) - 1, 8);
  });

  it('learns nothing from a box whose label was believed', () => {
    expect(senderOf([box({ counted: false })], policy).overCount).toEqual(senderOf([], policy).overCount);
  });
});

describe('lateness', () => {
  it('is beta of the days late and the boxes: beta(1 + 3, 9 + 2) after one on its day and one three days late', () => {
    const { late } = senderOf([box(), box({ came: 13 })], policy);
    expect(late.mean).toBeCloseTo(4 / 15, 12);
    expect(late.low).toBeCloseTo(jStat.beta.inv(0.05, 4, 11), 6);
    expect(late.high).toBeCloseTo(jStat.beta.inv(0.95, 4, 11), 6);
  });

  it('takes a box before its day as on its day', () => {
    expect(senderOf([box({ came: 8 })], policy).late).toEqual(senderOf([box()], policy).late);
  });
});

describe('for the engine', () => {
  it("the keeper's own word stands before what was learned", () => {
    const record = senderOf([box({ alive: 50, dead: 50 })], policy);
    expect(asSender({ lossShare: 0.02, overCountShare: null }, record)).toEqual({
      lossShare: 0.02,
      overCountShare: record.overCount.mean,
      lateChance: record.late.mean,
    });
  });
});

/** Worlds in which suppliers differ as the priors say and boxes as the engine draws them. */
describe('an interval of 90 %', () => {
  const WORLDS = 1500;
  const BOXES = 6;
  const dice = diceOf(7);
  const within = (found: LearnedShare, truth: number) => found.low <= truth && truth <= found.high;
  const normal = () => normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, dice.share())));
  const sd = Math.sqrt(Math.log1p(0.05 ** 2));

  const world = () => {
    const rate = jStat.gamma.inv(dice.share(), 5, 1 / (4 * 0.0115));
    const loss = 1 / rate;
    const log = Math.log(1.075) - sd ** 2 / 2 + sd * normal();
    const late = jStat.beta.inv(dice.share(), 1, 9);
    const boxes = Array.from({ length: BOXES }, () => {
      const came = Math.round(100_000 * Math.exp(log + sd * normal()));
      const dead = Math.round(came * Math.min(1, -Math.log(dice.share()) * loss));
      const daysLate = Math.floor(Math.log(dice.share()) / Math.log(late));
      return box({ ordered: 100_000, alive: came - dead, dead, came: 10 + daysLate });
    });
    const found = senderOf(boxes, policy);
    return [
      within(found.loss, loss),
      within(found.overCount, Math.exp(log + sd ** 2 / 2) - 1),
      within(found.late, late),
    ];
  };

  it('holds the truth in nine worlds of ten, of each of the three', () => {
    const held = Array.from({ length: WORLDS }, world);
    // 1,500 worlds tell a share of 0.9 to 0.02 (2.6 standard errors).
    for (const at of [0, 1, 2]) {
      const share = held.filter((each) => each[at]).length / WORLDS;
      expect(Math.abs(share - 0.9)).toBeLessThan(0.02);
    }
  });
});
