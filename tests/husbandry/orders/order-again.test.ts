/** Another order, where it still helps. */
import { expect, test } from 'vitest';
import { type Market, noMarket, orderAgain } from '../../../src/husbandry/orders/index.ts';
import { offerWith, supplierWith } from '../../support/market.ts';
import { TODAY } from '../../support/room-clock.ts';

const parcel = supplierWith({ code: 'S1', transitDays: 2, cutOffDays: 1 });
const shop = supplierWith({ code: 'S2', kind: 'shop' });
const flies = supplierWith({ code: 'S3' });
const market: Market = {
  ...noMarket,
  suppliers: [flies, shop, parcel],
  offers: [
    offerWith(),
    offerWith({ code: 'F2', supplier: 'S2' }),
    offerWith({ code: 'F3', supplier: 'S3', species: 'drosophila-hydei' }),
  ],
};
const wanted = { supplier: 'S1', species: new Set(['acheta-domesticus']), today: TODAY };
const told = (before: number) =>
  orderAgain(market, { ...wanted, before }).map(({ supplier, next, inTime }) => [
    supplier.code,
    next.comes - TODAY,
    inTime,
  ]);

test('the same supplier is named where its next parcel comes in time', () => {
  expect(told(TODAY + 4)).toEqual([['S1', 3, true]]);
});

test('where that is too late, whoever sells such prey and is soonest is named beside it', () => {
  expect(told(TODAY + 3)).toEqual([
    ['S1', 3, false],
    ['S2', 0, true],
  ]);
});

test('nobody is named where nobody sends', () => {
  const shut = { ...parcel, dispatchWeekdays: Array<boolean>(7).fill(false) };
  expect(orderAgain({ ...market, suppliers: [shut] }, { ...wanted, before: TODAY + 9 })).toEqual([]);
});
