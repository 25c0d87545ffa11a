/** What an order comes to while it is written. */
import { expect, test } from 'vitest';
import { orderTotal } from '../../../src/husbandry/orders/index.ts';
import { offerWith, supplierWith } from '../../support/market.ts';

const seller = supplierWith({
  minimumCents: 1000,
  postage: { flatCents: 400, perKgCents: 500, freeFromCents: 3000 },
});
const offer = offerWith({
  packHeads: 100,
  ...{ fromMm: 10, toMm: 10 },
  prices: [
    { fromPacks: 1, packCents: 600 },
    { fromPacks: 3, packCents: 500 },
  ],
});
/** A head of 10 mm weighs 0.1 x 10^3 = 100 mg, a pack 10 g. */
const total = (packs: number) => orderTotal(seller, [{ offer, packs }], () => 0.1);

test('it is goods at the break reached and postage by their weight', () => {
  expect(total(2)).toMatchObject({ goodsCents: 1200, postageCents: 410 });
  expect(total(4)).toMatchObject({ goodsCents: 2000, postageCents: 420 });
});

test('it tells what is missing to the least order and to free postage', () => {
  expect(total(1)).toMatchObject({ shortCents: 400, toFreeCents: 2400 });
  expect(total(4)).toMatchObject({ shortCents: 0, toFreeCents: 1000 });
  expect(total(6)).toEqual({ goodsCents: 3000, postageCents: 0, shortCents: 0, toFreeCents: 0 });
});

test('where postage is never free nothing is missing to it', () => {
  const always = supplierWith({ postage: { flatCents: 400, perKgCents: 0, freeFromCents: null } });
  expect(orderTotal(always, [], () => 0.1)).toEqual({
    ...{ goodsCents: 0, postageCents: 400, shortCents: 0, toFreeCents: 0 },
  });
});
