/** Props of the bulk order, from an invented box of crickets that grows for twelve weeks. */
import type { BulkAnswer, BulkPoint, BulkWeek } from '../../src/husbandry/plan/index.ts';
import type { BulkProps } from '../../views/pages/bulk.tsx';
import type { BulkTold } from '../../views/pages/bulk-words.ts';
import { offerWith, supplierWith } from './market.ts';
import { forms, names, shell, TODAY } from './view-fixtures.ts';

const supplier = supplierWith({
  name: 'Grille & Co',
  transitDays: 2,
  postage: { flatCents: 590, perKgCents: 0, freeFromCents: 6000 },
});
const offer = offerWith({
  species: 'acheta',
  size: 'small',
  fromMm: 4.5,
  toMm: 7,
  packHeads: 250,
  prices: [
    { fromPacks: 1, packCents: 690 },
    { fromPacks: 4, packCents: 590 },
    { fromPacks: 10, packCents: 490 },
  ],
});

const priceAt = (packs: number) => (packs >= 10 ? 490 : packs >= 4 ? 590 : 690);

/** Eaten up to a most of what is wanted while they fit, the sooner outgrown the less. */
function pointsTo(last: number, most: number): BulkPoint[] {
  let before = { cents: 0, eaten: 0 };
  return Array.from({ length: last }, (_, i) => {
    const packs = i + 1;
    const heads = 238 * packs;
    const goods = packs * priceAt(packs);
    const cents = goods + (goods >= 6000 ? 0 : 590);
    const eaten = most * (1 - Math.exp((-0.9 * heads) / most));
    const outgrown = 0.25 * (heads - eaten);
    const left = 0.05 * (heads - eaten);
    const point = {
      ...{ packs, heads, cents, eaten, outgrown, left, died: heads - eaten - outgrown - left },
      centsPerEaten: cents / eaten,
      centsPerMoreEaten: (cents - before.cents) / (eaten - before.eaten),
    };
    before = { cents, eaten };
    return point;
  });
}

const curve = (warmerC: number, last: number, most: number) => {
  const points = pointsTo(last, most);
  const best = points.toSorted((a, b) => a.centsPerEaten! - b.centsPerEaten!)[0]!.packs;
  const tempC = { minC: 20 + warmerC, maxC: 23 + warmerC };
  return { warmerC, tempC, points, best, end: 'dear' } as const;
};

const EDGES = [4.5, 5.5, 6.6, 7.9, 9.4, 11.3, 13.5, 16.2, 19.5];
const weekAt = (week: number): BulkWeek => ({
  day: TODAY + 3 + 7 * week,
  bands: EDGES.slice(1).map((toMm, band) => ({
    fromMm: EDGES[band]!,
    toMm,
    heads: (800 / (week + 1)) * Math.exp(-((band - 1 - 0.9 * week) ** 2) / 1.5),
  })),
});

const now = curve(0, 14, 900);
const answer: BulkAnswer = {
  revision: 12,
  day: TODAY,
  offer: 'F1',
  orderBy: TODAY + 1,
  sent: TODAY + 1,
  comes: TODAY + 3,
  packHeads: 250,
  curves: [now, curve(-4, 14, 1300), curve(4, 12, 640)],
  breaks: [
    { fromPacks: 1, packCents: 690, best: now.points[2]! },
    { fromPacks: 4, packCents: 590, best: now.points[3]! },
    { fromPacks: 10, packCents: 490, best: now.points[9]! },
  ],
  weeks: Array.from({ length: 8 }, (_, week) => weekAt(week)),
};

const told: BulkTold = {
  answer,
  offer,
  supplier,
  weeks: 12,
  names,
  unit: 'mm',
  today: TODAY,
  currency: 'EUR',
  sources: [
    { what: 'Dead on arrival', value: '3 %', status: 'common practice', source: null },
    { what: 'Cooler and warmer by', value: '4 °C', status: 'from memory', source: 'our choice' },
  ],
};

export const bulkProps: BulkProps = {
  shell,
  unit: 'mm',
  names,
  entry: { name: 'bulk', formId: forms.formId, values: { offer: 'F1', weeks: '12' }, problems: {} },
  suppliers: [supplier],
  offers: [offer, offerWith({ code: 'F2', species: 'acheta', size: 'large', fromMm: 15, toMm: 19 })],
  answer: { state: 'told', told },
};

export const bulkAskingProps: BulkProps = {
  ...bulkProps,
  entry: {
    ...bulkProps.entry,
    values: { offer: '', weeks: 'a year' },
    problems: {
      offer: '"F9" is an offer that is closed: it can no longer be ordered. Choose one from the list.',
      weeks: '"a year" is not a number of weeks from 4 to 26.',
    },
  },
  answer: null,
};

export const bulkNoneProps: BulkProps = {
  ...bulkProps,
  answer: {
    state: 'none',
    sentence: 'Nobody here eats small house crickets in these 12 weeks.',
    again: '/suppliers',
  },
};
