/** The verdict in about ten words. */
import { describe, expect, it } from 'vitest';
import type { GroupAnswer } from '../../../src/husbandry/supply/answer.ts';
import { dayName, headlineOf, type Spoken, spokenDay } from '../../../src/husbandry/supply/wording.ts';
import { plural } from '../../../src/husbandry/words.ts';
import { TODAY } from '../../support/room.ts';

const group = (over: Partial<GroupAnswer>): GroupAnswer =>
  ({
    name: 'tarantula spiderlings',
    verdict: 'runs short',
    missedMeals: 2,
    dangers: 0,
    runOut: { chance: 1, day: { low: 1, mid: 2, high: 4 } },
    ...over,
  }) as GroupAnswer;
const said = (over: Partial<Spoken>) =>
  headlineOf({
    verdict: 'lasts',
    today: TODAY,
    days: 7,
    untilDelivery: false,
    groups: [],
    larderEmpty: false,
    unfedDangers: 0,
    ...over,
  });

describe('the headline', () => {
  it('says that all is well, and until when', () => {
    expect(said({})).toBe('The feeders last the week.');
    expect(said({ days: 4, untilDelivery: true })).toBe('The feeders last until the delivery on Friday.');
    expect(said({ days: 14 })).toBe('The feeders last the next 14 days.');
  });

  it('says that prey is not the trouble when nobody feeds', () => {
    expect(said({ unfedDangers: 2.6 })).toBe(
      'The feeders last the week, but 3 animals go too long without food.',
    );
    expect(said({ unfedDangers: 0.4 })).toBe('The feeders last the week.');
  });

  it('names who runs short first, on which day, and how many more do', () => {
    const short = { verdict: 'runs short', groups: [group({})] } as const;
    expect(said(short)).toBe('Tarantula spiderlings run short on Thursday; the rest lasts.');
    const two = [group({}), group({ name: 'frogs', missedMeals: 5 })];
    expect(said({ ...short, groups: two })).toBe('Frogs run short on Thursday; so does one more group.');
  });

  it('says which of a name runs short when the others of that name last', () => {
    const sized = (key: string, maxMm: number, verdict: 'lasts' | 'runs short') =>
      group({ key, verdict, heads: 3, window: { minMm: 1, idealMm: 2, killFirstAboveMm: null, maxMm } });
    const [small, middle, large] = [3, 6, 12] as const;
    const room = (short: number) => ({
      verdict: 'runs short' as const,
      groups: [small, middle, large].map((mm) => sized(`${mm}`, mm, mm === short ? 'runs short' : 'lasts')),
    });
    expect(said(room(small))).toBe(
      'The smallest tarantula spiderlings run short on Thursday; the rest lasts.',
    );
    expect(said(room(large))).toMatch(/^The largest tarantula spiderlings run short/);
    expect(said(room(middle))).toMatch(/^Some tarantula spiderlings run short/);
  });

  it('puts danger before missed meals', () => {
    const groups = [group({ missedMeals: 9 }), group({ name: 'mantid nymphs', dangers: 1, missedMeals: 1 })];
    expect(said({ verdict: 'runs short', groups })).toMatch(/^Mantid nymphs/);
  });

  it('never says tight of a room that runs short, though no group does so by itself', () => {
    const groups = [group({ verdict: 'tight', dangers: 0.2 })];
    expect(said({ verdict: 'tight', groups })).toBe(
      'Tight: tarantula spiderlings could run short on Thursday; the rest lasts.',
    );
    expect(said({ verdict: 'runs short', groups })).toMatch(/^Runs short: tarantula spiderlings could/);
    expect(said({ verdict: 'runs short' })).toMatch(/^Runs short: a few meals could be missed/);
  });

  it('says that nobody is here, or nothing', () => {
    expect(said({ verdict: 'empty' })).toBe('Nobody to feed yet: add or import your animals.');
    expect(said({ verdict: 'runs short', larderEmpty: true })).toBe(
      'The larder is empty: nobody can be fed.',
    );
  });
});

describe('days and words', () => {
  it('are said as a keeper says them', () => {
    expect([0, 1, 2, 9].map((ahead) => dayName(TODAY + ahead, TODAY))).toEqual([
      'tonight',
      'tomorrow',
      'on Thursday',
      'in 9 days',
    ]);
    expect(spokenDay(TODAY)).toBe('Tue 24 Nov');
    expect(['house cricket', 'fruit fly', 'red runner roach'].map(plural)).toEqual([
      'house crickets',
      'fruit flies',
      'red runner roaches',
    ]);
  });
});
