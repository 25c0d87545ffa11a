/** What the forms offer to choose from. */
import { expect, test } from 'vitest';
import { tenebrioMolitor } from '../../../src/facts/prey/tenebrio-molitor.ts';
import { everyLength } from '../../../src/web/pages/choices.ts';

test('a bin whose sizes nobody told may hold larvae longer than the grown beetle', () => {
  const { fromMm, toMm } = everyLength(tenebrioMolitor);
  expect(fromMm).toBeLessThan(3);
  expect(toMm).toBeGreaterThan(25);
  expect(tenebrioMolitor.adultLengthMm.value).toBeLessThan(20);
});
