/** Offers and suppliers that cannot be say what is wrong, and beside which field. */
import { expect, test } from 'vitest';
import { speciesByCode } from '../../../src/facts/prey/index.ts';
import {
  type Offer,
  offerTrouble,
  type Supplier,
  supplierTrouble,
} from '../../../src/husbandry/orders/index.ts';
import { offerWith, supplierWith } from '../../support/market.ts';

const cricket = speciesByCode.get('acheta-domesticus')!;
const wrongOffer = (over: Partial<Offer>) => {
  const trouble = offerTrouble(offerWith(over), cricket);
  return trouble === null ? null : [trouble.field, trouble.sentence];
};
const priced = (...breaks: [number, number][]) => ({
  prices: breaks.map(([fromPacks, packCents]) => ({ fromPacks, packCents })),
});

test('an offer that can be has no trouble, also where more packs cost more a head', () => {
  expect(wrongOffer({})).toBeNull();
  expect(wrongOffer(priced([1, 500], [5, 450], [10, 470]))).toBeNull();
});

test.each<[string, Partial<Offer>, string, string]>([
  ['a pack of none', { packHeads: 0 }, 'packHeads', '"0" heads are no pack; say how many are in it.'],
  ['no price', { prices: [] }, 'prices', 'An offer needs a price: say what a pack costs.'],
  ['a pack for nothing', priced([1, 500], [5, 0]), 'prices.1.packCents', 'A pack costs something: say what.'],
  [
    'no price for a single pack',
    priced([2, 500]),
    'prices.0.fromPacks',
    '"2" cannot be the first; the first price holds from 1 pack.',
  ],
  [
    'two prices for as many packs',
    priced([1, 500], [5, 450], [5, 400]),
    'prices.2.fromPacks',
    '"5" packs have two prices; say from how many packs each holds.',
  ],
  [
    'prices that do not rise in packs',
    priced([1, 500], [10, 450], [5, 400]),
    'prices.2.fromPacks',
    '"5" packs stand after 10; write the price of fewer packs first.',
  ],
  [
    'a price beyond what there is',
    { ...priced([1, 500], [5, 450]), mostPacks: 4 },
    'prices.1.fromPacks',
    '"5" packs are never reached: there are 4 at most.',
  ],
  [
    'lengths that run backwards',
    { fromMm: 12, toMm: 9 },
    'fromMm',
    '"12 to 9" runs backwards; the lesser comes first.',
  ],
])('%s', (_, over, field, sentence) => {
  expect(wrongOffer(over)).toEqual([field, sentence]);
});

test('every size the trade sells is a size of its species, and none a millimetre longer is', () => {
  for (const species of speciesByCode.values()) {
    const lengths = species.sizeClasses.value;
    for (const { fromMm, toMm } of lengths)
      expect(offerTrouble(offerWith({ fromMm, toMm }), species)).toBeNull();
    const longest = Math.max(
      ...lengths.map(({ toMm }) => toMm),
      ...species.lengthByDevelopment.value.map(([, mm]) => mm),
      species.adultLengthMm.value,
    );
    const trouble = offerTrouble(offerWith({ fromMm: longest, toMm: longest + 1 }), species);
    expect([trouble?.field, trouble?.code]).toEqual(['toMm', 'size-out-of-range']);
  }
});

const wrongSupplier = (over: Partial<Supplier>) => {
  const trouble = supplierTrouble(supplierWith(over));
  return trouble === null ? null : [trouble.field, trouble.sentence];
};
const NEVER = Array<boolean>(7).fill(false);

test.each<[string, Partial<Supplier>, string, RegExp]>([
  ['no day of sending', { dispatchWeekdays: NEVER }, 'dispatchWeekdays', /parcels are sent/],
  ['a shop that never opens', { kind: 'shop', dispatchWeekdays: NEVER }, 'dispatchWeekdays', /shop is open/],
  [
    'a shop two days away',
    { kind: 'shop', transitDays: 2 },
    'transitDays',
    /^"2" does not fit: a shop is gone to/,
  ],
  [
    'a shop that asks postage',
    { kind: 'shop', postage: { flatCents: 100, perKgCents: 0, freeFromCents: null } },
    'postageFlat',
    /asks no postage/,
  ],
  ['cold above heat', { coldBelowC: 31, heatAboveC: 30 }, 'coldBelowC', /^"31" °C is not below 30 °C/],
  [
    'a holiday that runs backwards',
    { holidays: [{ from: 20_010, to: 20_009 }] },
    'holidays',
    /^"2024-10-14 to 2024-10-13" runs backwards/,
  ],
])('%s', (_, over, field, sentence) => {
  expect(wrongSupplier(over)).toEqual([field, expect.stringMatching(sentence)]);
  expect(wrongSupplier({})).toBeNull();
});
