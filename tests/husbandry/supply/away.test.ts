/** While the keeper is away nobody is fed, and the check says what that costs. */
import { describe, expect, it } from 'vitest';
import type { FeedingCalendar } from '../../../src/husbandry/calendar.ts';
import { judge } from '../../../src/husbandry/supply/cover.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { animalWith, certainPolicy, countedBin, facts, snapshotWith, TODAY } from '../../support/room.ts';

const everyDay = [true, true, true, true, true, true, true];
const room = (calendar: FeedingCalendar) =>
  snapshotWith({
    animals: [1, 2, 3].map((n) =>
      animalWith({ code: `A${n}`, kind: 'brachypelma-hamorii', gaugeMm: 12, lastTaken: TODAY - n }),
    ),
    bins: [countedBin('B1', 'acheta-domesticus', { heads: 400, fromMm: 2, toMm: 5 })],
    calendar,
    facts: { ...facts, policy: certainPolicy },
  });

describe('an absence that outlasts the horizon', () => {
  const away = room({ feedingWeekdays: everyDay, absences: [{ from: TODAY, to: TODAY + 30 }] });

  it('makes spiderlings late and pass their safe gap once each, unless one moults, and miss meals again and again', () => {
    const { tally } = judge(away, { days: 14, replicates: 20 });
    const mean = (sums: Float64Array) => sums.reduce((a, b) => a + b, 0) / 20;
    for (const sums of [tally.lateOf, tally.unfedDangersOf]) {
      expect(Math.max(...sums)).toBe(3);
      expect(mean(sums)).toBeGreaterThan(2);
    }
    // Of 14 days the first 7 to 9 are range and grace; a week later, within them for some, the next is missed.
    expect(mean(tally.unfedMissedOf)).toBeGreaterThan(mean(tally.unfedDangersOf));
    expect(Math.max(...tally.unfedMissedOf)).toBeLessThanOrEqual(2 * 3);
  });

  it('is not put down to the larder, and said beside it', () => {
    const answer = sundayCheck(away, { days: 14, replicates: 20 });
    expect(answer).toMatchObject({ verdict: 'lasts', missedMeals: 0, dangers: 0, act: null });
    expect(answer.unfed.dangers).toBeGreaterThan(2);
    expect(answer.headline).toBe(
      'The feeders last the next 14 days, but 3 animals go too long without food.',
    );
  });
});

it('counts no meal as overdue that is offered on its day', () => {
  const { tally } = judge(room({ feedingWeekdays: everyDay, absences: [] }), { days: 5, replicates: 20 });
  expect(tally.missedOf.every((missed) => missed === 0)).toBe(true);
});
