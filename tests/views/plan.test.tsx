/** The plan in words: what is ordered and how often, why, who goes short, and what a what if changes. */
import { expect, test } from 'vitest';
import { type PlanAnswer, stepsOf } from '../../src/husbandry/plan/index.ts';
import { calendarRows } from '../../views/charts/plan-rows.ts';
import { PlanPart } from '../../views/pages/plan.tsx';
import { acceptAt } from '../../views/pages/plan-accept.ts';
import { reasonWords } from '../../views/pages/plan-reasons.ts';
import { provenWords, serviceWords } from '../../views/pages/plan-service.ts';
import { stepTitle } from '../../views/pages/plan-steps.ts';
import {
  amountOf,
  amountUnit,
  byWhen,
  keyWords,
  lineCourse,
  planHeadline,
} from '../../views/pages/plan-words.ts';
import { changeWords } from '../../views/pages/what-if-words.ts';
import { TODAY } from '../support/view-fixtures.ts';
import { plan, planProps, restLine } from '../support/view-plan.ts';

const said = planProps.shown.told!;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const headline = (change: Partial<PlanAnswer>) => planHeadline({ ...said, plan: { ...plan, ...change } });
const served = { ...plan.whole, missedMeals: { mean: 0.2, low: 0, high: 0.4 } };

test('the headline says the next order, its rhythm, and that nobody goes short', () => {
  expect(headline({ whole: served })).toBe(
    'Order 500 small banded crickets and 60 large house crickets by Tuesday; then every second Tuesday. Nobody goes short',
  );
});

test('orders without a rhythm are counted; without orders the first step is said', () => {
  const orders = plan.lines.filter(({ key }) => key.startsWith('order:O1'));
  const [first, second, , fourth] = orders;
  expect(headline({ lines: [first!, second!, fourth!] })).toContain(
    'by Tuesday; then 2 more orders, the last by Tue 5 Jan.',
  );
  expect(headline({ lines: plan.lines.filter(({ what }) => what === 'start') })).toContain(
    'Nothing has to be bought. First, by tomorrow: start 2 cups of large fruit flies.',
  );
  expect(headline({ lines: [] })).toContain('Nothing has to be bought, harvested or started.');
});

test('who goes short is named with the share served and the share asked', () => {
  const [fragile, ...others] = plan.whole.service;
  const short = { ...fragile!, notMissed: { mean: 0.971, low: 0.96, high: 0.98 }, met: false };
  expect(plain(serviceWords({ ...plan, whole: { ...plan.whole, service: [short, ...others] } }))).toBe(
    'Fragile animals go short: 97.1 % of their meals are served, 99.5 % is asked',
  );
});

test('how far a plan is proven is said, and why it was made by rule', () => {
  expect(plain(provenWords(plan))).toBe(
    'It grew out of the best plan for average weeks, proven to within 0.8 %, and was then fitted to good and bad luck.',
  );
  expect(plain(provenWords({ ...plan, gap: 0.00001 }))).toContain('to within 0.1 %');
  expect(provenWords({ ...plan, made: 'rule', gap: null, trouble: 'The solver found no plan.' })).toBe(
    'This plan was made by rule: the solver found no plan. It can be carried out. How near it comes to the best there is was not proven.',
  );
});

test('a step says whom it feeds, what happens without it, and what an eaten head costs', () => {
  const steps = stepsOf(plan.lines);
  const why = (what: string) => reasonWords(steps.find(({ line }) => line.what === what)!, said).join(' ');
  expect(why('order')).toBe(
    'Feeds small juveniles from Fri 4 Dec to Sun 20 Dec (about 210 eaten), spiderlings from Sat 28 Nov to Tue 8 Dec (about 95 eaten) and 1 more group. Without it: 12 to 19 missed meals and €9.40 saved. One banded cricket eaten costs €0.064.',
  );
  expect(why('harvest')).toContain('Were nothing ever taken from Roach tub: 12 to 19 missed meals');
});

test('what is taken out of a bin by one day is one step with its sizes', () => {
  const harvest = plan.lines.find(({ what }) => what === 'harvest')!;
  const small = { ...harvest, key: 'other', heads: 14, fromMm: 3, toMm: 6 } as typeof harvest;
  const steps = stepsOf([harvest, small]);
  expect(steps.map((step) => stepTitle(step, said))).toEqual([
    'Harvest 54 dubia roaches from Roach tub: 40 of 12–19 mm and 14 of 3–6 mm',
  ]);
});

test('days are said as a keeper says them', () => {
  const days = [-1, 0, 1, 3, 8].map((ahead) => byWhen(TODAY + ahead, TODAY));
  expect(days).toEqual([
    '(it was due on Sat 21 Nov)',
    'today',
    'by tomorrow',
    'by Wednesday',
    'by Mon 30 Nov',
  ]);
});

test('a line that is in no plan any more is called by its key', () => {
  expect(keyWords('order:O2@2026-11-25', said)).toBe(
    'large house crickets from Marrowgate Feeders, sent Wed 25 Nov',
  );
  const unnamed = {
    ...said,
    market: { ...said.market, offers: said.market.offers.map((o) => ({ ...o, size: '' })) },
  };
  expect(keyWords('order:O2@2026-11-25', unnamed)).toMatch(/^house crickets from /);
  expect(keyWords('order:O9@2026-11-25', said)).toBe('an offer no longer here, sent Wed 25 Nov');
  expect(keyWords('cull:B2:room', said)).toBe('culling for room from Roach tub');
  expect(keyWords('cull:B2:males', said)).toBe('culling males from Roach tub');
  expect(keyWords('nonsense', said)).toBe('nonsense');
});

test('a what if that changes nothing says so', () => {
  expect(changeWords(plan, plan, 'EUR')).toBe('Costs the same, about as many meals missed; the same steps.');
});

test('an older plan is not offered for applying', () => {
  const { shown } = planProps;
  const age = { madeOn: TODAY - 5, changes: 0, tooLate: [], withoutWishes: false };
  const part = (of: typeof shown) => String(PlanPart({ shown: of, weeks: 12 }));
  expect(part(shown)).toContain('Apply the plan’s orders of this week');
  expect(part({ ...shown, age })).not.toContain('Apply the plan’s orders');
  expect(part({ ...shown, age })).toContain('This is the plan made on Tuesday 17 November.');
  expect(part({ ...shown, age: { ...age, tooLate: ['Marrowgate Feeders'] } })).toContain(
    'Today’s last hour to order from Marrowgate Feeders has passed.',
  );
});

test('a colony that is left alone: until when, what to do meanwhile, and what it grows to', () => {
  const [step] = stepsOf([restLine]);
  const told = { ...said, plan: { ...plan, lines: [restLine] } };
  expect(stepTitle(step!, said)).toBe('Leave Roach tub alone until Fri 11 Dec');
  expect(lineCourse(restLine)).toBe('Feed from the other bins until then, as long as anything in them fits.');
  expect(reasonWords(step!, said)).toEqual([
    'So it holds about 2,300 by Fri 12 Feb; fed from all along, about 1,900.',
  ]);
  expect(keyWords(restLine.key, said)).toBe('leaving Roach tub alone');
  expect([amountOf(restLine), amountUnit(restLine)]).toEqual([3, 'weeks']);
  expect(acceptAt(restLine, told)).toBe('/larder/B2?days=19&begin=rest#rest');
  expect(calendarRows(told)).toEqual([
    {
      name: 'Roach tub',
      marks: [{ what: 'rest', from: TODAY, to: TODAY + 19, species: 'blaptica-dubia', label: '', bin: 'B2' }],
    },
  ]);
});
