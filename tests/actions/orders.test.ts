/** Orders: what is refused, what becomes of an order that comes, and what the journal says of it. */
import { describe, expect, test } from 'vitest';
import {
  addBin,
  bringBack,
  cancelDelivery,
  cancelOrder,
  deliveryCame,
  editSupplier,
  loadSnapshot,
  orderCame,
  orderLate,
  placeOrder,
  recountDelivery,
  undo,
} from '../../src/actions/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { arrivedLines, rowNamed, rowsOf } from '../../src/store/index.ts';
import { furnished } from '../support/furnished.ts';
import { crickets, parcel, sellsPrey } from '../support/sellers.ts';
import { good, type Room, TODAY } from '../support/store-at.ts';

/** Friday; the parcel of Saturday is ordered today and comes on Monday. */
const SENT = 1;
const DUE = TODAY + 3;

async function shopping(): Promise<Room> {
  const small = await furnished();
  const room: Room = { ...small, facts: { ...small.facts, policy } };
  const own = { species: 'test-cricket', supplier: 'S1' };
  const roaches = {
    ...crickets,
    code: 'F2',
    species: 'test-fly',
    prices: [{ fromPacks: 1, packCents: 900 }],
  };
  await sellsPrey(
    room.store,
    [parcel, { ...parcel, code: 'S2', name: 'Corner Shop' }],
    [{ ...crickets, ...own }, roaches, { ...crickets, ...own, code: 'F3', closed: true }],
  );
  return room;
}

const ordering = (room: Room, over: object = {}) => ({
  supplier: 'S1',
  sentDay: room.date(SENT),
  lines: [{ offer: 'F1', packs: 2, bin: 'B1' }],
  ...over,
});
const problemOf = (done: { ok: boolean }) =>
  (done as { problem?: { sentence: string; field?: string } }).problem;
const eventsOf = async (room: Room, code: string) =>
  (await loadSnapshot(room)).bins.find((each) => each.code === code)!.events;

describe('an order', () => {
  test('has a row of its own and one for each line, with heads, price and the day they are due', async () => {
    const room = await shopping();
    const { reply } = good(
      await placeOrder(
        room,
        ordering(room, {
          lines: [
            { offer: 'F1', packs: 2, bin: 'B1' },
            { offer: 'F1', packs: '1', bin: 'B2' },
          ],
        }),
      ),
    );
    expect(reply).toEqual({ purchase: 'O1', due: DUE });
    expect(await room.store.ask(rowNamed('purchase', 'O1'))).toMatchObject({
      supplier: 'S1',
      placedDay: TODAY,
      sentDay: TODAY + 1,
      dueDay: DUE,
      postageCents: 590,
      state: 'placed',
    });
    // Three packs together reach the break at three.
    expect(await room.store.ask(rowsOf('delivery'))).toMatchObject([
      {
        code: 'D1',
        bin: 'B1',
        heads: 200,
        fromMm: 4,
        toMm: 6,
        day: DUE,
        purchase: 'O1',
        offer: 'F1',
        packs: 2,
        cents: 1000,
      },
      { code: 'D2', bin: 'B2', heads: 100, packs: 1, cents: 500 },
    ]);
    expect((await loadSnapshot(room)).deliveries).toMatchObject([
      { code: 'D1', sender: { lossShare: expect.closeTo(0.0115, 9) } },
      { code: 'D2' },
    ]);
  });

  test('makes the bin it goes into, and undo takes both away', async () => {
    const room = await shopping();
    const lines = [{ offer: 'F1', packs: 2, room: 'R1', name: 'From the hill' }];
    const { act } = good(await placeOrder(room, ordering(room, { lines })));
    expect(await room.store.ask(rowNamed('bin', 'B3'))).toMatchObject({
      name: 'From the hill',
      species: 'test-cricket',
      origin: 'Hill Farm Feeders',
    });
    good(await undo(room, { act }));
    expect(await room.store.ask(rowNamed('bin', 'B3'))).toBeNull();
    expect(await room.store.ask(rowsOf('purchase'))).toEqual([]);
  });

  test.each([
    [
      'a day on which nothing is sent',
      { sentDay: '2024-10-06' },
      'sentDay',
      '"2024-10-06": “Hill Farm Feeders” sends on Mondays, Tuesdays, Wednesdays, Thursdays, Fridays and Saturdays. The next day that can be had is Sat 5 Oct.',
    ],
    [
      'a day that had to be ordered before',
      { sentDay: '2024-10-04' },
      'sentDay',
      '"2024-10-04": “Hill Farm Feeders” had to have the order by Thu 3 Oct. The next day that can be had is Sat 5 Oct.',
    ],
    [
      'no packs',
      { lines: [{ offer: 'F1', packs: 0, bin: 'B1' }] },
      'lines.0.packs',
      '"0" is not a whole number of packs from 1 to 1,000.',
    ],
    [
      'more packs than there are',
      { lines: [{ offer: 'F1', packs: 11, bin: 'B1' }] },
      'lines.0.packs',
      '"11" is more than the 10 packs of small there are.',
    ],
    [
      'too little',
      { lines: [{ offer: 'F1', packs: 1, bin: 'B1' }] },
      'lines',
      '€6.00 of goods is €4.00 short of the least order of “Hill Farm Feeders”, €10.00.',
    ],
    [
      'an offer that is closed',
      { lines: [{ offer: 'F3', packs: 2, bin: 'B1' }] },
      'lines.0.offer',
      'Offer "F3" is not to be had any more; undo that first.',
    ],
    ['an offer of somebody else', { supplier: 'S2' }, 'lines.0.offer', '“Corner Shop” does not offer "F1".'],
    [
      'another prey than the bin holds',
      { lines: [{ offer: 'F2', packs: 2, bin: 'B1' }] },
      'lines.0.bin',
      '"Small" holds Test crickets; choose another bin.',
    ],
    [
      'no bin and no room',
      { lines: [{ offer: 'F1', packs: 2 }] },
      'lines.0.bin',
      'Choose the bin it goes into, or the room of a new one.',
    ],
    ['nothing at all', { lines: [] }, 'lines', 'An order needs a line: say of something how many packs.'],
  ])('of %s is refused in a sentence', async (_, over, field, sentence) => {
    const room = await shopping();
    expect(problemOf(await placeOrder(room, ordering(room, over)))).toMatchObject({ field, sentence });
    expect(await room.store.ask(rowsOf('purchase'))).toEqual([]);
  });

  test('that was placed before today may be written down later, by the day it was placed', async () => {
    const room = await shopping();
    room.pass(1);
    const sentDay = room.date(0);
    expect(problemOf(await placeOrder(room, ordering(room, { sentDay })))).toMatchObject({
      field: 'sentDay',
    });
    good(await placeOrder(room, ordering(room, { sentDay, placedDay: room.date(-1) })));
  });

  test('on a holiday says so', async () => {
    const room = await shopping();
    const holidays = [{ from: room.date(1), to: room.date(4) }];
    good(await editSupplier(room, { supplier: 'S1', addHoliday: holidays[0]! }));
    expect(problemOf(await placeOrder(room, ordering(room)))?.sentence).toBe(
      '"2024-10-05": “Hill Farm Feeders” is on holiday on that day. The next day that can be had is Wed 9 Oct.',
    );
  });
});

describe('an order on its way', () => {
  test('comes later as a whole, and keeps the day it was due', async () => {
    const room = await shopping();
    good(
      await placeOrder(
        room,
        ordering(room, { lines: [1, 2].map((packs) => ({ offer: 'F1', packs, bin: 'B1' })) }),
      ),
    );
    good(await orderLate(room, { purchase: 'O1', day: room.date(6) }));
    expect((await loadSnapshot(room)).deliveries.map(({ day }) => day)).toEqual([TODAY + 6, TODAY + 6]);
    expect(await room.store.ask(rowNamed('purchase', 'O1'))).toMatchObject({ dueDay: DUE });
    expect(problemOf(await orderLate(room, { purchase: 'O1', day: room.date(-1) }))?.sentence).toMatch(
      /has passed/,
    );
  });

  test('that is not coming leaves nothing expected, and can be brought back', async () => {
    const room = await shopping();
    good(await placeOrder(room, ordering(room)));
    good(await cancelOrder(room, { purchase: 'O1' }));
    expect((await loadSnapshot(room)).deliveries).toEqual([]);
    expect(problemOf(await cancelOrder(room, { purchase: 'O1' }))?.sentence).toBe(
      'Order "O1" was cancelled already.',
    );
    expect(problemOf(await bringBack(room, { what: 'delivery', code: 'D1' }))?.sentence).toMatch(
      /bring the order back/,
    );
    good(await bringBack(room, { what: 'purchase', code: 'O1' }));
    expect((await loadSnapshot(room)).deliveries).toHaveLength(1);
  });

  test('is spent on the day it was placed, with its postage, unless it is called off', async () => {
    const room = await shopping();
    good(await placeOrder(room, ordering(room)));
    const spent = async () => (await loadSnapshot(room)).market?.spent;
    expect(await spent()).toEqual([{ day: TODAY, cents: 1790 }]);
    expect((await loadSnapshot(room, TODAY + 6)).market?.spent).toHaveLength(1);
    expect((await loadSnapshot(room, TODAY + 7)).market?.spent).toEqual([]);
    good(await cancelOrder(room, { purchase: 'O1' }));
    expect(await spent()).toEqual([]);
  });

  test('is not taken in or cancelled line by line', async () => {
    const room = await shopping();
    good(await placeOrder(room, ordering(room)));
    const sentence = 'Delivery "D1" is part of order O1: see to the whole box there.';
    expect(problemOf(await deliveryCame(room, { delivery: 'D1', alive: 3 }))?.sentence).toBe(sentence);
    expect(problemOf(await cancelDelivery(room, { delivery: 'D1' }))?.sentence).toBe(sentence);
  });
});

describe('a box that comes', () => {
  const placed = async () => {
    const room = await shopping();
    const lines = [
      { offer: 'F1', packs: 2, bin: 'B1' },
      { offer: 'F1', packs: 1, bin: 'B2' },
    ];
    good(await placeOrder(room, ordering(room, { lines })));
    room.pass(4);
    return room;
  };

  test('is one act: short, dead, of another size, and with what nobody had ordered', async () => {
    const room = await placed();
    const done = good(
      await orderCame(room, {
        purchase: 'O1',
        at: '14:30',
        lines: [
          { delivery: 'D1', came: { how: 'whole', alive: 150 }, dead: 20 },
          { delivery: 'D2', came: { how: 'whole', alive: 104 }, fromMm: 7, toMm: 9 },
        ],
        extra: [{ species: 'test-fly', alive: 30, fromMm: 2, toMm: 2, room: 'R1', name: 'Flies' }],
      }),
    );
    expect(done.reply).toEqual({ purchase: 'O1', lookAgain: false });
    const day = TODAY + 4;
    expect((await eventsOf(room, 'B1')).at(-1)).toEqual({
      day,
      kind: 'delivered',
      lot: { heads: 150, fromMm: 4, toMm: 6 },
      dead: 20,
    });
    expect((await eventsOf(room, 'B2')).at(-1)).toMatchObject({
      lot: { heads: 104, fromMm: 7, toMm: 9 },
      dead: 0,
    });
    expect((await eventsOf(room, 'B3')).at(-1)).toMatchObject({ lot: { heads: 30 } });
    const { deliveries, market } = await loadSnapshot(room);
    expect(deliveries).toEqual([]);
    // One box: 300 ordered, 254 alive; what was not ordered is not counted; a day late.
    expect(market?.arrivals).toEqual([
      { supplier: 'S1', ordered: 300, alive: 254, dead: 20, due: DUE, came: DUE + 1, counted: true },
    ]);
    good(await undo(room, { act: done.act }));
    expect((await loadSnapshot(room)).deliveries).toHaveLength(2);
    expect((await loadSnapshot(room)).market?.arrivals).toEqual([]);
    expect(await room.store.ask(rowsOf('bin'))).toHaveLength(2);
  });

  test('keeps the bins it goes into apart where that is asked for', async () => {
    const room = await placed();
    const lines = ['D1', 'D2'].map((delivery) => ({ delivery, came: { how: 'label' as const } }));
    good(await orderCame(room, { purchase: 'O1', apart: true, lines }));
    const until = TODAY + 4 + policy.quarantineDays.value;
    expect((await loadSnapshot(room)).bins.map(({ quarantineUntil }) => quarantineUntil)).toEqual([
      until,
      until,
    ]);
  });

  test('counts by the label what nobody counted, with what sellers add, and learns no count from it', async () => {
    const room = await placed();
    const lines = ['D1', 'D2'].map((delivery) => ({ delivery, came: { how: 'label' as const }, dead: 5 }));
    good(await orderCame(room, { purchase: 'O1', lines }));
    // 200 and 7.5 %, less 5 dead.
    expect((await eventsOf(room, 'B1')).at(-1)).toMatchObject({ lot: { heads: 210 } });
    expect((await loadSnapshot(room)).market?.arrivals).toMatchObject([{ counted: false }]);
  });

  test('is counted by a sample, a part or its weight', async () => {
    const room = await placed();
    const lines = [
      { delivery: 'D1', came: { how: 'sample' as const, heads: 20, massMg: 130, allMg: 1300 } },
      { delivery: 'D2', came: { how: 'part' as const, heads: 26, share: 0.25 } },
    ];
    good(await orderCame(room, { purchase: 'O1', lines }));
    expect((await eventsOf(room, 'B1')).at(-1)).toMatchObject({ lot: { heads: 200 } });
    expect((await eventsOf(room, 'B2')).at(-1)).toMatchObject({ lot: { heads: 104 } });
    expect(await room.store.ask(arrivedLines)).toMatchObject([
      { delivery: 'D1', counted: 'sample', give: expect.toSatisfy((give) => give > 5 && give < 20) },
      { delivery: 'D2', counted: 'part', give: 18 },
    ]);
  });

  test('of another species goes into a bin of that species', async () => {
    const room = await placed();
    good(await addBin(room, { species: 'test-fly', room: 'R1' }));
    const came = { how: 'whole' as const, alive: 90 };
    const rest = { delivery: 'D2', came: { how: 'label' as const } };
    const other = { delivery: 'D1', came, species: 'test-fly' };
    const refused = await orderCame(room, { purchase: 'O1', lines: [other, rest] });
    expect(problemOf(refused)).toMatchObject({ field: 'lines.0.bin' });
    good(await orderCame(room, { purchase: 'O1', lines: [{ ...other, bin: 'B3' }, rest] }));
    expect((await eventsOf(room, 'B3')).at(-1)).toMatchObject({ kind: 'delivered', lot: { heads: 90 } });
  });

  test.each([
    [
      'a line nobody told of',
      [{ delivery: 'D1', came: { how: 'label' } }],
      'lines',
      /Say how the 100 test-cricket \(D2\) came/,
    ],
    [
      'a line told of twice',
      [
        { delivery: 'D1', came: { how: 'label' } },
        { delivery: 'D2', came: { how: 'label' } },
        { delivery: 'D2', came: { how: 'whole', alive: 90 } },
      ],
      'lines.2.delivery',
      /"D2" is told twice: say each line once/,
    ],
    [
      'a line of another order',
      [
        { delivery: 'D1', came: { how: 'label' } },
        { delivery: 'D2', came: { how: 'label' } },
        { delivery: 'D9', came: { how: 'label' } },
      ],
      'lines.2.delivery',
      /"D9" is not on its way/,
    ],
    [
      'a sample heavier than all',
      [
        { delivery: 'D1', came: { how: 'sample', heads: 9, massMg: 90, allMg: 9 } },
        { delivery: 'D2', came: { how: 'label' } },
      ],
      'lines.0.came.massMg',
      /weighs more than the whole box/,
    ],
    [
      'lengths that run backwards',
      [
        { delivery: 'D1', came: { how: 'label' }, fromMm: 9, toMm: 4 },
        { delivery: 'D2', came: { how: 'label' } },
      ],
      'lines.0.fromMm',
      /runs backwards/,
    ],
  ])('with %s is refused', async (_, lines, field, sentence) => {
    const room = await placed();
    const done = await orderCame(room, { purchase: 'O1', lines: lines as never });
    expect(problemOf(done)).toMatchObject({ field, sentence: expect.stringMatching(sentence) });
  });

  test('that was cold asks to look again, and who moves then is alive', async () => {
    const room = await placed();
    const lines = [
      { delivery: 'D1', came: { how: 'whole' as const, alive: 150 }, dead: 50 },
      { delivery: 'D2', came: { how: 'label' as const } },
    ];
    const done = good(await orderCame(room, { purchase: 'O1', warmed: false, lines }));
    expect(done.reply).toEqual({ purchase: 'O1', lookAgain: true });
    const again = good(await recountDelivery(room, { delivery: 'D1', dead: 8 }));
    expect(again.reply).toEqual({ bin: 'B1', alive: 192 });
    expect((await eventsOf(room, 'B1')).at(-1)).toMatchObject({ kind: 'moved in', lot: { heads: 42 } });
    expect((await room.store.ask(arrivedLines))[0]).toMatchObject({
      alive: 192,
      dead: 8,
      again: true,
      warmed: false,
    });
    expect((await loadSnapshot(room)).market?.arrivals).toMatchObject([{ dead: 8 }]);
    good(await recountDelivery(room, { delivery: 'D1', dead: 10 }));
    expect((await eventsOf(room, 'B1')).at(-1)).toMatchObject({ kind: 'moved out', heads: 2 });
    expect(problemOf(await recountDelivery(room, { delivery: 'D1', dead: 201 }))?.sentence).toBe(
      '"201" dead are more than the 200 that came.',
    );
    expect(problemOf(await undo(room, { act: done.act }))?.sentence).toMatch(/came later and rests on it/);
  });
});
