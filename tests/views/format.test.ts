/** How days, lengths, counts and chances read. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aboutHeads,
  ago,
  dayRange,
  expected,
  inches,
  lengthRange,
  lengthText,
  listed,
  longDay,
  percent,
  recordDay,
  roundly,
  shortDay,
  weeksIn,
} from '../../views/format.ts';
import { TODAY } from '../support/view-fixtures.ts';

describe('days', () => {
  it('are written short, long and with their year', () => {
    expect(shortDay(TODAY + 5)).toBe('Fri 27 Nov');
    expect(longDay(TODAY)).toBe('Sunday 22 November');
    expect(recordDay(TODAY - 400)).toBe('18 Oct 2025');
  });
  it('of a range are one when both ends are the same', () => {
    expect(dayRange(TODAY, TODAY)).toBe('Sun 22 Nov');
    expect(dayRange(TODAY, TODAY + 2)).toBe('Sun 22 Nov to Tue 24 Nov');
  });
  it('past are counted in words', () => {
    expect([ago(0), ago(1), ago(5)]).toEqual(['today', 'yesterday', '5 days ago']);
  });
});

describe('lengths', () => {
  it('show halves of a millimetre only below 5 mm', () => {
    expect(lengthText(2.4, 'mm')).toBe('2.5 mm');
    expect(lengthText(12.4, 'mm')).toBe('12 mm');
  });
  it('in inches are fractions to the sixteenth', () => {
    expect(inches(19.05)).toBe('3/4');
    expect(inches(38.1)).toBe('1 1/2');
    expect(inches(50.8)).toBe('2');
    expect(inches(0.2)).toBe('1/16');
  });
  it('of a range carry the unit once', () => {
    expect(lengthRange(6, 8, 'mm')).toBe('6–8 mm');
    expect(lengthRange(6.1, 5.9, 'mm')).toBe('6 mm');
  });
});

describe('counts', () => {
  it('are exact only when somebody has just counted', () => {
    expect(aboutHeads({ low: 120, mid: 120, high: 120 })).toBe('120');
    expect(aboutHeads({ low: 240, mid: 343, high: 470 })).toBe('about 340');
    expect(aboutHeads({ low: 0, mid: 0, high: 0 })).toBe('none');
  });
  it('never carry more figures than a guess has', () => {
    expect([roundly(7.4), roundly(58), roundly(1432)]).toEqual([7, 60, 1400]);
  });
  it('of rare things are under 1, not a fraction', () => {
    expect([expected(0), expected(0.2), expected(6.3)]).toEqual(['none', 'under 1', 'about 6']);
  });
});

describe('chances', () => {
  it('read as frequencies', () => {
    expect(weeksIn(0.81)).toBe('about 4 weeks in 5');
    expect(weeksIn(0.41)).toBe('about 2 weeks in 5');
    expect(weeksIn(0.05)).toBe('about 1 week in 20');
  });
  it('are never nothing and never all', () => {
    expect(weeksIn(1)).toBe('more than 19 weeks in 20');
    expect(weeksIn(0)).toBe('fewer than 1 week in 20');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
        expect(percent(chance)).not.toMatch(/^(0|100) %$/);
      }),
    );
  });
});

it('lists join their last two with "and"', () => {
  expect(listed(['crickets', 'flies', 'roaches'])).toBe('crickets, flies and roaches');
  expect(listed([])).toBe('');
});
