/** The keeper's day and evening, wherever the machine stands. */
import { expect, test } from 'vitest';
import { nowIn } from '../../src/actions/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';

const said = (timezone: string, instant: string) => {
  const { today, evening } = nowIn(timezone, new Date(instant));
  return [civilDate(today), civilDate(evening)];
};

test('before 04:00 the evening is still yesterday', () => {
  expect(said('Europe/Berlin', '2026-01-10T02:59:00Z')).toEqual(['2026-01-10', '2026-01-09']);
  expect(said('Europe/Berlin', '2026-01-10T03:00:00Z')).toEqual(['2026-01-10', '2026-01-10']);
});

test('the day is the keeper’s, not the machine’s', () => {
  expect(said('Pacific/Auckland', '2026-01-10T12:30:00Z')).toEqual(['2026-01-11', '2026-01-10']);
  expect(said('America/Los_Angeles', '2026-01-10T05:00:00Z')).toEqual(['2026-01-09', '2026-01-09']);
});

test('the night the clocks change has one evening', () => {
  expect(said('Europe/Berlin', '2026-03-29T00:59:00Z')[1]).toBe('2026-03-28');
  expect(said('Europe/Berlin', '2026-03-29T01:01:00Z')[1]).toBe('2026-03-28');
});
