/** The plan in words: what is ordered and how often, why, who goes short, and what a what if changes. */
import { expect, test } from 'vitest';
import { type PlanAnswer, stepsOf } from '../../src/husbandry/plan/index.ts';
import { calendarRows } from '../../views/charts/plan-rows.ts';
import { PlanPart } from '../../views/pages/plan.tsx';
import { acceptAt } from '../../views/pages/plan-accept.ts';
import { reasonWords } from '../../views/pages/plan-reasons.ts';
import { provenWords, serviceWords, timesText } from '../../views/pages/plan-service.ts';
import { stepTitle } from '../../views/pages/plan-steps.ts';
import { PlanWhole } from '../../views/pages/plan-whole.tsx';
import { keyWords, wishSentence } from '../../views/pages/plan-wishes.ts';
import { amountOf, amountUnit, byWhen, lineCourse, lineTitle } from '../../views/pages/plan-words.ts';
import { changeWords } from '../../views/pages/what-if-words.ts';
import { words } from '../support/markup-words.ts';
import { TODAY } from '../support/view-fixtures.ts';
import { plan, planProps, restLine } from '../support/view-plan.ts';

const said = planProps.shown.told!;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const changed = (change: Partial<PlanAnswer>) => ({ ...said, plan: { ...plan, ...change } });

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
    'large house crickets from Marrowgate Feeders, leaving Wed 25 Nov',
  );
  const unnamed = {
    ...said,
    market: { ...said.market, offers: said.market.offers.map((o) => ({ ...o, size: '' })) },
  };
  expect(keyWords('order:O2@2026-11-25', unnamed)).toMatch(/^house crickets from /);
  expect(keyWords('order:O9@2026-11-25', said)).toBe('an offer no longer here, leaving Wed 25 Nov');
  expect(keyWords('cull:B2:room', said)).toBe('culling for room from Roach tub');
  expect(keyWords('cull:B2:males', said)).toBe('culling males from Roach tub');
  expect(keyWords('nonsense', said)).toBe('nonsense');
});

test('a wish says how much of what is pinned', () => {
  const pinned = (key: string, amount: number | null) => wishSentence({ key, wish: 'pin', amount }, said);
  expect(pinned('rest:B2', 1)).toBe('Pinned: leave Roach tub alone for 1 week');
  expect(pinned('rest:B2', null)).toBe('Pinned: leave Roach tub alone');
  expect(pinned('order:O2@2026-11-25', 1)).toBe(
    'Pinned: 1 pack of large house crickets from Marrowgate Feeders, leaving Wed 25 Nov',
  );
  expect(pinned('start:hydei@2026-11-23', 2)).toBe('Pinned: 2 cups of large fruit flies on Mon 23 Nov');
  expect(wishSentence({ key: 'rest:B2', wish: 'forbid', amount: null }, said)).toBe(
    'Forbidden: leaving Roach tub alone',
  );
});

test('a size in inches never stands between a count and its prey; an order says when it leaves and comes', () => {
  const market = { ...said.market, offers: said.market.offers.map((o) => ({ ...o, size: '1/4 in' })) };
  const first = plan.lines.find(({ what }) => what === 'order');
  expect(lineTitle(first!, { ...said, market })).toBe(
    'Order 500 banded crickets (1/4 in) from Marrowgate Feeders',
  );
  expect(lineCourse(first!)).toBe('5 packs. Leaves Wed 25 Nov, here on Fri 27 Nov.');
});

test('how often an animal goes too long without food is said in words', () => {
  const times = (low: number, high: number) => timesText({ mean: low, low, high });
  expect([times(0, 0.2), times(1, 1), times(3, 5)]).toEqual(['never', 'once', '3 to 5 times']);
  const dangers = { mean: 4, low: 3, high: 5 };
  const html = words(String(PlanWhole(changed({ whole: { ...plan.whole, dangers } }))));
  expect(html).toContain('2 to 7 missed meals; 3 to 5 times an animal would go too long without food.');
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
  expect(part({ ...shown, age: { ...age, changes: 1 } })).toContain(', before your last change.');
  expect(part({ ...shown, age: { ...age, changes: 3 } })).toContain(', before your last 3 changes.');
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
