/** A bulk order in words and pictures: the best and what more would do, nearly as good counts, prices, another warmth. */
import { describe, expect, it, test } from 'vitest';
import type { BulkEnd } from '../../src/husbandry/plan/bulk-answer.ts';
import type { BulkAnswer, BulkPoint } from '../../src/husbandry/plan/index.ts';
import { BulkCurveChart } from '../../views/charts/bulk-curve.tsx';
import { bulkTable } from '../../views/charts/bulk-table.ts';
import { BulkAnswerPart } from '../../views/pages/bulk-answer.tsx';
import {
  type BulkTold,
  bulkHeadline,
  fateWords,
  lastPackWords,
  leastWords,
  moreWords,
  nearWords,
  warmthWords,
} from '../../views/pages/bulk-words.ts';
import { offerWith, supplierWith } from '../support/market.ts';
import { words } from '../support/markup-words.ts';
import { bulkProps } from '../support/view-bulk.ts';
import { names, TODAY } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';

const point = (packs: number, centsPerEaten: number, over: Partial<BulkPoint> = {}): BulkPoint => ({
  packs,
  heads: 100 * packs,
  cents: 500 * packs,
  eaten: 80 * packs,
  died: 10 * packs,
  outgrown: 0,
  left: 0,
  centsPerEaten,
  centsPerMoreEaten: 6,
  ...over,
});

function toldOf(points: readonly BulkPoint[], best: number, over: Partial<BulkTold> = {}): BulkTold {
  const curve = { warmerC: 0, tempC: { minC: 22, maxC: 22 }, points, best, end: 'no use' as BulkEnd };
  const answer: BulkAnswer = {
    revision: 1,
    day: TODAY,
    offer: 'F1',
    orderBy: TODAY,
    sent: TODAY,
    comes: TODAY + 2,
    packHeads: 100,
    curves: [curve, { ...curve, warmerC: -4, tempC: { minC: 18, maxC: 18 }, best: points[0]!.packs }],
    breaks: [{ fromPacks: 1, packCents: 500, best: points[0]! }],
    weeks: [],
  };
  return {
    answer,
    offer: offerWith({ species: 'acheta', size: 'small' }),
    supplier: supplierWith({ minimumCents: 1000 }),
    weeks: 12,
    names,
    unit: 'mm',
    today: TODAY,
    currency: 'EUR',
    sources: [],
    ...over,
  };
}
const four = [point(1, 7.2), point(2, 6.1), point(3, 6.9), point(4, 8.04, { outgrown: 90 })];

describe('the words', () => {
  const told = toldOf(four, 2);

  it('name the best count, and what twice as many would cost and lose', () => {
    expect(bulkHeadline(told)).toBe('2 packs of small house crickets: each one that is eaten costs €0.061');
    expect(moreWords(told)).toBe(
      'With 4 packs it would be €0.080; 40 would die uneaten and 90 would outgrow everybody here.',
    );
  });

  it('tell what becomes of the box, and name the postage only where there is one', () => {
    expect(fateWords(told)).toBe(
      '2 packs cost €10.00 and bring about 200 alive: 160 of them are eaten within 12 weeks and 20 die before.',
    );
    const sent = toldOf([point(1, 7.2, { cents: 590 })], 1);
    expect(fateWords(sent)).toMatch(/^1 pack costs €5.90, postage in it, and brings about 100 alive/);
  });

  it('tell what the last pack adds and what one more would', () => {
    expect(lastPackWords(told)).toBe(
      'Pack 2 feeds 80 more, at €0.060 each. Pack 3 would feed 80 more, at €0.060 each.',
    );
    const idle = toldOf([point(1, 5), point(2, 9, { eaten: 80, centsPerMoreEaten: null })], 1);
    expect(lastPackWords(idle)).toBe('Pack 2 would feed nobody.');
    const spared = toldOf([point(1, 9), point(2, 4, { centsPerMoreEaten: -2 })], 2);
    expect(lastPackWords(spared)).toBe('Pack 2 makes the whole parcel cheaper.');
  });

  it('name a larger count that is nearly as good, and say nothing where there is none', () => {
    expect(nearWords(told)).toBe('');
    expect(nearWords(toldOf([point(1, 6), point(2, 6.1), point(3, 9)], 1))).toBe(
      '2 packs are hardly dearer: 80 more would be eaten, at €0.061 for each of all.',
    );
  });

  it('say how few are sent where one pack is not', () => {
    expect(leastWords(told)).toBe('');
    expect(leastWords(toldOf(four.slice(1), 2))).toBe(
      'Grille & Co sends nothing under €10.00 of goods: 2 packs at least.',
    );
  });

  it('say that more is of no use where the best is the most', () => {
    expect(moreWords(toldOf([point(1, 7)], 1))).toBe('More than 1 pack could be of no use.');
    expect(moreWords(toldOf(four.slice(0, 2), 2))).toBe(
      'It gets cheaper up to there. More than 2 packs could be of no use.',
    );
  });

  it('say so where there are no more, or no more were worked out', () => {
    const endsBy = (end: BulkEnd) => {
      const told = toldOf(four.slice(0, 2), 2);
      const [curve] = told.answer.curves;
      return moreWords({ ...told, answer: { ...told.answer, curves: [{ ...curve!, end }] } });
    };
    expect(endsBy('no more')).toContain('There are no more than 2 packs to be had.');
    expect(endsBy('not worked out')).toContain('More than 2 packs were not worked out.');
  });

  it('tell what a cooler bin would change', () => {
    expect(warmthWords(told)).toEqual([
      'In a bin 4 degrees cooler (18 °C) 1 pack would be best, at €0.072 for each one; 80 would be eaten.',
    ]);
  });
});

describe('the curve', () => {
  it('is drawn for a single count too, and gives the same numbers as a table', () => {
    const one = toldOf([point(1, 7)], 1);
    expect(markup(<BulkCurveChart told={one} />)).not.toContain('NaN');
    const { head, rows } = bulkTable(toldOf(four, 2));
    expect(head).toHaveLength(5);
    expect(rows[1]).toEqual(['2', '€10.00', '€0.061', '€0.060', '€0.061']);
  });

  it('marks every price of a pack and the sum from which the postage is spared', () => {
    const shown = bulkProps.answer;
    if (shown?.state !== 'told') throw new Error('the fixture is told');
    const html = markup(<BulkCurveChart told={shown.told} />);
    for (const mark of ['€5.90 a pack', '€4.90 a pack', 'post free', 'best: 4 packs'])
      expect(html).toContain(mark);
  });
});

test('the best count is ordered by a link to the order form', () => {
  const html = markup(<BulkAnswerPart shown={{ state: 'told', told: toldOf(four, 2) }} />);
  expect(html).toMatch(/href="\/orders\/new\?supplier=S1&amp;sent=[\d-]+&amp;offer\.F1=2"/);
  expect(words(html)).toContain('Order 2 packs');
});
