/** The keeper's day, wherever the machine stands. */
import { expect, test } from 'vitest';
import { nowIn } from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';

const dayIn = (timezone: string, instant: string) => civilDate(nowIn(timezone, new Date(instant)).today);

test('before 04:00 it is still yesterday', () => {
  expect(dayIn('Europe/Berlin', '2026-01-10T02:59:00Z')).toBe('2026-01-09');
  expect(dayIn('Europe/Berlin', '2026-01-10T03:00:00Z')).toBe('2026-01-10');
});

test('the day is the keeper’s, not the machine’s', () => {
  expect(dayIn('Pacific/Auckland', '2026-01-10T16:30:00Z')).toBe('2026-01-11');
  expect(dayIn('America/Los_Angeles', '2026-01-10T05:00:00Z')).toBe('2026-01-09');
});

test('the night the clocks change is one evening', () => {
  expect(dayIn('Europe/Berlin', '2026-03-29T00:59:00Z')).toBe('2026-03-28');
  expect(dayIn('Europe/Berlin', '2026-03-29T01:01:00Z')).toBe('2026-03-28');
});

test('minutes are counted from midnight of the keeper’s day, past it in the small hours', () => {
  const minutes = (instant: string) => nowIn('Europe/Berlin', new Date(instant)).minutes;
  expect(minutes('2026-01-09T10:59:00Z')).toBe(11 * 60 + 59);
  expect(minutes('2026-01-09T23:30:00Z')).toBe(24 * 60 + 30);
});

test('after midnight it is told that the calendar is a day ahead', () => {
  expect(nowIn('Europe/Berlin', new Date('2026-01-09T23:30:00Z')).smallHours).toBe(true);
  expect(nowIn('Europe/Berlin', new Date('2026-01-09T22:30:00Z')).smallHours).toBeUndefined();
});
