/** What packs, heads and parcels cost; small cases worked by hand. */
import { expect, test } from 'vitest';
import { headCents, packCents, postageCents, shortOfMinimum } from '../../../src/husbandry/orders/index.ts';
import { offerWith, supplierWith } from '../../support/market.ts';

const offer = offerWith({
  packHeads: 250,
  prices: [
    { fromPacks: 1, packCents: 600 },
    { fromPacks: 3, packCents: 550 },
    { fromPacks: 10, packCents: 400 },
  ],
});

test('every pack costs what the last price reached says', () => {
  expect([1, 2, 3, 9, 10, 40].map((packs) => packCents(offer, packs))).toEqual([
    600, 600, 550, 550, 400, 400,
  ]);
});

test('one head of 250 at 6.00 costs 2.4 cents, from ten packs on 1.6', () => {
  expect([1, 3, 10].map((packs) => headCents(offer, packs))).toEqual([2.4, 2.2, 1.6]);
});

test('postage is a flat sum and so much a kilogram, to the nearest cent', () => {
  const postage = { flatCents: 490, perKgCents: 250, freeFromCents: null };
  expect(postageCents(postage, { goodsCents: 1200, grams: 0 })).toBe(490);
  expect(postageCents(postage, { goodsCents: 1200, grams: 300 })).toBe(565);
  expect(postageCents(postage, { goodsCents: 1200, grams: 333 })).toBe(573);
});

test('postage is free from its sum on, a cent below it is not, and from 0 on always', () => {
  const postage = { flatCents: 490, perKgCents: 0, freeFromCents: 5000 };
  const of = (goodsCents: number) => postageCents(postage, { goodsCents, grams: 800 });
  expect([4999, 5000, 5001].map(of)).toEqual([490, 0, 0]);
  expect(postageCents({ ...postage, freeFromCents: 0 }, { goodsCents: 0, grams: 800 })).toBe(0);
});

test('what is missing to the least order is told, nothing once it is reached', () => {
  const supplier = supplierWith({ minimumCents: 1500 });
  expect([0, 1499, 1500, 9000].map((goods) => shortOfMinimum(supplier, goods))).toEqual([1500, 1, 0, 0]);
});
