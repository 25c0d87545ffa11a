/** Suppliers in words: when the next parcel comes, how they send, what it costs; and how money is written. */
import { describe, expect, it, test } from 'vitest';
import { headPrice, money, moneyTyped } from '../../views/format/money.ts';
import { SuppliersPage } from '../../views/pages/suppliers.tsx';
import {
  afterThatWords,
  arrivesWords,
  type Chances,
  heldWords,
  nextWords,
  postageWords,
  sendsWords,
  weatherWords,
  wrongDayWords,
} from '../../views/supplier-words.ts';
import { offerWith, supplierWith } from '../support/market.ts';
import { words } from '../support/markup-words.ts';
import { TODAY } from '../support/view-fixtures.ts';
import { suppliersProps } from '../support/view-market.ts';
import { markup } from '../support/view-pages.tsx';

test('a sum has two decimals, one head two figures that say something, each in its currency', () => {
  expect([money(0, 'EUR'), money(120_050, 'GBP'), money(500, 'USD')]).toEqual([
    '€0.00',
    '£1,200.50',
    'US$5.00',
  ]);
  expect([250, 100, 20, 2.4, 1, 0.13].map((cents) => headPrice(cents, 'EUR'))).toEqual([
    '€2.50',
    '€1.00',
    '€0.20',
    '€0.024',
    '€0.010',
    '€0.0013',
  ]);
  expect([moneyTyped(490), moneyTyped(0)]).toEqual(['4.90', '0.00']);
});

const chances = (orderBy: readonly number[], over: Partial<Chances> = {}): Chances => ({
  next: orderBy.map((day) => ({ orderBy: TODAY + day, sent: TODAY + day, comes: TODAY + day + 2 })),
  held: [],
  weeks: 8,
  ...over,
});
const noon = supplierWith({ cutOffTime: '12:00', transitDays: 2 });
const shop = supplierWith({ kind: 'shop' });

describe('the next parcel', () => {
  it('is told by when to order and when it comes', () => {
    expect(nextWords(noon, chances([3]), TODAY)).toBe(
      'order by Wed 25 Nov, 12:00, and it comes on Fri 27 Nov',
    );
    expect(nextWords(noon, chances([1]), TODAY)).toBe('order by tomorrow, 12:00, and it comes on Wed 25 Nov');
    expect(nextWords(shop, chances([1]), TODAY)).toBe('open tomorrow');
    expect(nextWords(noon, chances([]), TODAY)).toBe('sends nothing in the next 8 weeks');
    expect(nextWords(shop, chances([]), TODAY)).toBe('not open in 8 weeks');
  });

  it('of today also tells the next one, for who is too late', () => {
    expect(nextWords(noon, chances([0, 1]), TODAY)).toBe(
      'order today before 12:00, and it comes on Tue 24 Nov',
    );
    expect(afterThatWords(noon, chances([0, 1]), TODAY)).toBe(
      'After that: order by tomorrow, 12:00, for Wednesday 25 November.',
    );
    expect([afterThatWords(noon, chances([1, 2]), TODAY), afterThatWords(noon, chances([0]), TODAY)]).toEqual(
      ['', ''],
    );
  });

  it('says what the weather holds and what becomes of it', () => {
    const held = (leaves: number | null) => chances([9], { held: [{ sent: TODAY + 1, leaves }] });
    expect(heldWords(held(TODAY + 8))).toMatch(
      /leave on Mon 23 Nov: an order already placed leaves on Mon 30 Nov\.$/,
    );
    expect(heldWords(held(null))).toMatch(/an order already placed lapses\.$/);
    expect(heldWords(chances([1]))).toBe('');
  });

  it('that comes on a day without parcels is noticed', () => {
    const tuesdays = [false, true, false, false, false, false, false];
    expect(wrongDayWords(noon, chances([0, 1]), tuesdays)).toBe(
      'What leaves on Mon 23 Nov comes on Wed 25 Nov; but by your settings no parcel comes on a Wednesday.',
    );
    expect([
      wrongDayWords(noon, chances([0]), tuesdays),
      wrongDayWords(shop, chances([1]), tuesdays),
    ]).toEqual(['', '']);
  });
});

test('how they send, in a sentence', () => {
  const days = [true, false, true, false, false, false, false];
  expect([
    sendsWords({ ...noon, dispatchWeekdays: days }),
    sendsWords({ ...noon, transitDays: 0, cutOffDays: 3, cutOffTime: null }),
    sendsWords({ ...shop, dispatchWeekdays: [true, true, true, true, true, true, false] }),
  ]).toEqual([
    'Sends Mon and Wed, 2 days on the way; order by 12:00 on the day itself.',
    'Sends every day, there the same day; order at any hour, 3 days before.',
    'A shop, open Mon to Sat.',
  ]);
});

test('what a parcel costs, what holds it, and what arrives of it', () => {
  const postage = { flatCents: 490, perKgCents: 200, freeFromCents: 5000 };
  expect(postageWords({ ...noon, postage, minimumCents: 1500 }, 'EUR')).toBe(
    'Postage €4.90 and €2.00 a kilogram, none from €50.00 on; orders from €15.00.',
  );
  expect([postageWords(noon, 'EUR'), postageWords(shop, 'EUR')]).toEqual(['No postage.', '']);
  expect(weatherWords({ ...noon, coldBelowC: -2.5, heatAboveC: 30, holdDays: 1 })).toBe(
    'Holds parcels back below -2.5 °C and above 30 °C, for 1 day at most.',
  );
  expect([weatherWords(noon), arrivesWords({ ...noon, claimHours: null })]).toEqual(['', '']);
  expect(arrivesWords({ ...noon, lossShare: 0.02, overCountShare: 0.05, claimHours: 24 })).toBe(
    'You say 2 % are lost and 5 % are sent over; dead prey is claimed within 24 hours.',
  );
});

describe('the list of suppliers', () => {
  const drawn = (suppliers: typeof suppliersProps.suppliers) =>
    words(markup(<SuppliersPage {...suppliersProps} suppliers={suppliers} />));
  const view = { supplier: noon, offers: [], chances: chances([1]) };

  it('opens with the next parcel of who has something to sell', () => {
    const later = {
      ...view,
      supplier: { ...noon, name: 'Later' },
      offers: [offerWith()],
      chances: chances([4]),
    };
    expect(drawn([view, later])).toContain(
      'Order from Later by Thu 26 Nov, 12:00, and it comes on Sat 28 Nov',
    );
    expect(drawn([{ ...view, supplier: shop }])).toContain('Grille & Co: open tomorrow');
    expect(drawn([{ ...view, chances: chances([]) }])).toContain('Nobody sends anything in the coming weeks');
  });

  it('teaches while it is empty', () => {
    expect(drawn([])).toContain('Write down who you buy prey from, when they send, and what a pack costs.');
  });

  it('says where more packs cost more a head', () => {
    const prices = [
      { fromPacks: 1, packCents: 500 },
      { fromPacks: 5, packCents: 550 },
    ];
    const said = drawn([{ ...view, offers: [offerWith({ prices })] }]);
    expect(said).toContain('from 5 packs €5.50, €0.055 each, dearer than fewer packs');
  });
});
