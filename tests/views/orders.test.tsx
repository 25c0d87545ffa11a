/** The page of orders says first, in words, what comes and what is late; then what a box means. */
import { describe, expect, it } from 'vitest';
import { ordersHeadline } from '../../views/order-words.ts';
import { OrdersPage } from '../../views/pages/orders.tsx';
import { TODAY } from '../support/view-fixtures.ts';
import { nothingOrderedProps, ordersProps } from '../support/view-orders.ts';

const [late, today] = ordersProps.coming;
const told = (over: Partial<typeof ordersProps>) => ordersHeadline({ ...nothingOrderedProps, ...over });
const dayOf = (day: number) => ({ ...late!, day });

describe('the first line', () => {
  it('names what comes first, and what is late', () => {
    expect(told({})).toBe('Nothing is on its way');
    expect(told({ coming: [today!] })).toBe('A parcel from Grille & Co comes today');
    expect(told({ coming: [dayOf(TODAY + 1)] })).toBe('A parcel from Hof Schabenau comes tomorrow');
    expect(told({ coming: [late!, dayOf(TODAY + 4), dayOf(TODAY + 9)] })).toBe(
      'A parcel from Hof Schabenau comes on Thursday 26 November, 1 more after it; one is a day late',
    );
    expect(told({ coming: [late!] })).toBe('A parcel from Hof Schabenau is a day late');
    expect(told({ coming: [dayOf(TODAY - 3), late!] })).toBe('2 are late, the longest for 3 days');
    expect(told({ singles: ordersProps.singles })).toBe(
      'A delivery of large fruit flies comes on Tuesday 24 November',
    );
  });
});

it('a parcel leaves on a day to come and was sent on one that has passed', () => {
  const page = (sentDay: number) =>
    String(OrdersPage({ ...ordersProps, coming: [{ ...dayOf(TODAY + 4), sentDay }] }));
  expect(page(TODAY + 2)).toContain('Leaves Tue 24 Nov.');
  expect(page(TODAY - 2)).toContain('Sent Fri 20 Nov.');
});

describe('a box that fell short', () => {
  const [box] = ordersProps.boxes;
  const page = (over: Partial<NonNullable<typeof box>>) =>
    String(OrdersPage({ ...ordersProps, boxes: [{ ...box!, ...over }] }));

  it('names who cannot wait, what they take tonight, and who still sends in time', () => {
    const markup = page({});
    expect(markup).toContain('fell short: the spiderlings cannot wait');
    expect(markup).toContain('They can take about 140 from Fly cup 7.');
    expect(markup).toContain('Yes: Hof Schabenau, ordered by Mon 23 Nov, 12:00, is here on Thu 26 Nov');
    expect(markup).toContain('by 14:30 on Monday 23 November');
  });

  it('is asked for once the page is there, and can be waited for without script', () => {
    const markup = page({ answer: null, again: [], act: null });
    expect(markup).toContain('data-hx-get="/orders/O8/box"');
    expect(markup).toContain('href="/orders?wait=1#box-O8"');
  });

  it('may leave everybody able to wait', () => {
    expect(page({ answer: { ...box!.answer!, short: [] } })).toContain('but everybody can wait');
  });

  it('tells the hour of a claim only where it is known', () => {
    expect(page({ claim: { day: TODAY, time: null, hours: 24 } })).toContain(
      'wants to hear of the dead within 24 hours: today, by the hour of the day at which the box came. Take',
    );
    expect(page({ claim: { day: TODAY, time: null, hours: 12 } })).toContain(
      'within 12 hours of the box coming, which may end today. Take',
    );
  });
});
