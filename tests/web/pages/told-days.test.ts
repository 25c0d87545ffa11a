/** Days in refusals: told as a keeper writes them, quoted as they were typed. */
import { expect, test } from 'vitest';
import { daysTold } from '../../../src/web/pages/told-days.ts';

test('a day that is told is written out, one that was typed stays', () => {
  expect(daysTold('"2026-11-19" is before it came (2026-11-20).')).toBe(
    '"2026-11-19" is before it came (20 Nov 2026).',
  );
  expect(daysTold('“Box 2026-01-01” was lent on 2026-01-02.')).toBe(
    '“Box 2026-01-01” was lent on 2 Jan 2026.',
  );
  expect(daysTold('It is 2026-13-45.')).toBe('It is 2026-13-45.');
});
