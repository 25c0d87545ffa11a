/** The numbers of the bulk-order curve: what each count costs, a head eaten, and each head more of the last pack. */
import type { BulkCurve, BulkPoint } from '../../src/husbandry/plan/index.ts';
import { headPrice, money } from '../format.ts';
import { type BulkTold, eatenPrice, pointAt } from '../pages/bulk-words.ts';
import type { NumbersTable } from './figure.tsx';

export function bulkTable(told: BulkTold): NumbersTable {
  const [now, ...others] = told.answer.curves;
  const priceAt = (curve: BulkCurve, packs: number) => {
    const point = pointAt(curve, packs);
    return point === undefined ? '–' : eatenPrice(point, told);
  };
  return {
    caption: 'What each head that is eaten costs',
    head: [
      'Packs',
      'All, with postage',
      'Each one eaten',
      'Each more, of the last pack',
      ...others.map(({ warmerC }) => (warmerC < 0 ? `${-warmerC} °C cooler` : `${warmerC} °C warmer`)),
    ],
    rows: now!.points.map((point) => [
      `${point.packs}`,
      money(point.cents, told.currency),
      eatenPrice(point, told),
      moreText(point, told),
      ...others.map((curve) => priceAt(curve, point.packs)),
    ]),
  };
}

function moreText({ centsPerMoreEaten }: BulkPoint, { currency }: BulkTold): string {
  if (centsPerMoreEaten === null) return 'feeds nobody';
  return centsPerMoreEaten < 0 ? 'cheaper in all' : headPrice(centsPerMoreEaten, currency);
}
