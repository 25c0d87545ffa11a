/** A cover panel of a plan is scaled by what is wanted, and its calendar lays no sign on another. */
import { expect, test } from 'vitest';
import { placed } from '../../views/charts/plan-calendar-row.tsx';
import { PlanCover } from '../../views/charts/plan-cover.tsx';
import { beyond, topOf } from '../../views/charts/plan-scale.ts';
import { words } from '../support/markup-words.ts';
import { plan } from '../support/view-plan.ts';

test('stock far above what is wanted does not make the wanted small', () => {
  expect(topOf({ wanted: [40, 60], safety: [20, 70], ready: [9000, 8000] })).toBe(140);
  expect(topOf({ wanted: [40, 60], safety: [20, 70], ready: [90, 80] })).toBe(90);
  expect(topOf({ wanted: [0], safety: [0], ready: [0] })).toBe(1);
});

test('the stretches above the top begin and end where the line crosses it', () => {
  expect(beyond([50, 150, 150, 50, 300], 100)).toEqual([
    { from: 1.5, to: 3.5 },
    { from: 4.2, to: 5 },
  ]);
  expect(beyond([500, 600], 100)).toEqual([{ from: 1, to: 2 }]);
  expect(beyond([50, 100], 100)).toEqual([]);
});

test('a panel says in words how much more stands ready, and its table keeps the numbers', () => {
  const [first] = plan.cover;
  const cover = [{ ...first!, ready: first!.ready.map(() => 9000) }];
  const html = String(PlanCover({ plan: { ...plan, cover } }));
  expect(words(html)).toContain('↑ more than 140');
  expect(html).toContain('Where the line leaves the top, more than 140 stand ready.');
  expect(words(html)).toContain('about 9000');
  const enough = [{ ...first!, ready: first!.wanted }];
  expect(String(PlanCover({ plan: { ...plan, cover: enough } }))).not.toContain('more than');
});

test('signs of one day stand side by side, the one without words first', () => {
  const mark = { from: 0, to: 0, species: 'dubia' };
  const cull = { ...mark, what: 'cull', label: '31' } as const;
  const rest = { ...mark, what: 'rest', to: 60, label: '' } as const;
  const harvest = { ...mark, what: 'harvest', from: 8, to: 8, label: '40' } as const;
  const at = placed([cull, harvest, rest], (day) => day * 9).map(({ mark: { what }, at: x }) => [what, x]);
  expect(at).toEqual([
    ['rest', 0],
    ['cull', 13],
    ['harvest', 72],
  ]);
});
