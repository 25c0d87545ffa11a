/** The plan's headline and the sentence below it: what is to be done this week, answer first. */
import { expect, test } from 'vitest';
import type { PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { planHeadline, planLede } from '../../views/pages/plan-headline.ts';
import { TODAY } from '../support/view-fixtures.ts';
import { plan, planProps, restLine } from '../support/view-plan.ts';

const said = planProps.shown.told!;
const changed = (change: Partial<PlanAnswer>) => ({ ...said, plan: { ...plan, ...change } });
const headline = (lines: PlanAnswer['lines']) => planHeadline(changed({ lines }));
const lede = (lines: PlanAnswer['lines']) => planLede(changed({ lines, whole: served }));
const served = { ...plan.whole, missedMeals: { mean: 0.2, low: 0, high: 0.4 } };
const linesOf = (...what: readonly string[]) => plan.lines.filter((line) => what.includes(line.what));
const inDays = (days: number) => (line: PlanAnswer['lines'][number]) => ({ ...line, actBy: TODAY + days });

test('the headline says the first thing to do this week, the sentence below what is ordered and that nobody goes short', () => {
  expect(headline(linesOf('order'))).toBe(
    'Order from Marrowgate Feeders by Tuesday: banded crickets and house crickets',
  );
  expect(headline(plan.lines)).toBe('Start 2 cups of large fruit flies by tomorrow; then order by Tuesday');
  expect(lede(plan.lines)).toBe(
    'To order from Marrowgate Feeders: 500 small banded crickets and 60 large house crickets; then every second Tuesday. Nobody goes short.',
  );
});

test('sizes of one prey are told together', () => {
  const [first] = linesOf('order');
  const large = { ...first!, key: 'order:O2@2026-11-25', offer: 'O2', heads: 60 } as typeof first;
  expect(lede([first!, large!])).toBe('To order: 500 small and 60 large banded crickets. Nobody goes short.');
});

test('several sizes and many kinds are counted in the headline', () => {
  const [first, second] = linesOf('order').filter(({ key }) => key.startsWith('order:O1'));
  const large = { ...first!, key: 'order:O2@2026-11-25', offer: 'O2' } as typeof first;
  expect(headline([first!, large!])).toContain(': banded crickets in 2 sizes');
  const other = (species: string) => ({ ...first!, key: species, species });
  expect(headline([first!, other('acheta'), other('dubia'), second!])).toContain(': 3 kinds of prey');
});

test('where nothing is ordered this week the headline says so, and what is to be done or when the next order is', () => {
  const late = linesOf('order').filter(({ actBy }) => actBy >= TODAY + 7);
  expect(headline(late)).toBe('Nothing to order this week; the next order is by Mon 30 Nov');
  expect(lede(late)).toBe('It goes to Corner shop: 50 small banded crickets. Nobody goes short.');
  const harvest = linesOf('harvest').slice(0, 1).map(inDays(3));
  expect(headline([...late, ...harvest, restLine])).toBe(
    'Nothing to order this week; harvest from Roach tub by Wednesday',
  );
  expect(lede([...late, ...harvest, restLine])).toBe(
    'The next order, to Corner shop, is by Mon 30 Nov: 50 small banded crickets. 1 more step this week. Nobody goes short.',
  );
  expect(headline([...late, restLine])).toBe(
    'Nothing to order this week; leave Roach tub alone until Fri 11 Dec',
  );
});

test('a plan without orders says what comes first, or that there is nothing to do', () => {
  expect(headline(linesOf('cull'))).toBe('Nothing to buy; cull from Roach tub by Mon 14 Dec');
  expect(headline(linesOf('start'))).toBe('Nothing to buy; start 2 cups of large fruit flies by tomorrow');
  expect(lede(linesOf('start'))).toBe('Nobody goes short.');
  expect(headline([restLine])).toBe('Nothing to buy; leave Roach tub alone until Fri 11 Dec');
  expect(headline([])).toBe('Nothing has to be bought, harvested or started');
  const unserved = { ...plan.whole, service: plan.whole.service.map((each) => ({ ...each, met: false })) };
  expect(planHeadline(changed({ lines: [], whole: unserved }))).toBe(
    'Nothing that is here or on offer feeds all of them',
  );
  expect(headline(linesOf('cull').map(inDays(-1)))).toBe('Nothing more is to be done in these weeks');
});

test('an order comes before what is due on the same day, and one whose day has passed is counted', () => {
  const [order, later] = linesOf('order');
  const start = inDays(2)(linesOf('start')[0]!);
  expect(headline([start, order!])).toBe('Order from Marrowgate Feeders by Tuesday: banded crickets');
  expect(lede([inDays(-1)(order!), later!])).toMatch(/^1 order was due before today\. It goes to Marrowgate/);
});

test('orders without a rhythm are counted', () => {
  const [first, second, , fourth] = linesOf('order').filter(({ key }) => key.startsWith('order:O1'));
  expect(lede([first!, second!, fourth!])).toContain('; then 2 more orders, the last by Tue 5 Jan.');
});
