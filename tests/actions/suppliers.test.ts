/** Suppliers and their offers: written down, changed, closed, taken back; what cannot be is refused in a sentence. */
import { expect, test } from 'vitest';
import {
  addOffer,
  addSupplier,
  closeOffer,
  closeSupplier,
  editOffer,
  editSettings,
  editSupplier,
  emptyDemo,
  loadSnapshot,
  undo,
} from '../../src/actions/index.ts';
import { ok } from '../../src/husbandry/result.ts';
import { rowNamed } from '../../src/store/index.ts';
import { putRows } from '../../src/store/rows.ts';
import { facts } from '../support/room.ts';
import { freshContext, good, type Room, TODAY } from '../support/store-at.ts';

const MONDAYS = [true, false, false, false, false, false, false];
const MAIL = {
  name: 'Grille & Co',
  dispatchWeekdays: MONDAYS,
  transitDays: '2',
  cutOffDays: '1 day',
  cutOffTime: '12',
  postageFlat: '4,90',
  postageFreeFrom: '€50',
  minimum: '15 EUR',
  coldBelowC: '-2',
  heatAboveC: 32,
  holdDays: 5,
} as const;
const GOODS = {
  supplier: 'S1',
  species: 'acheta-domesticus',
  size: 'medium',
  fromMm: 9,
  toMm: 12,
  packHeads: 250,
  prices: [
    { fromPacks: 1, pack: '6' },
    { fromPacks: 5, pack: '5.5' },
  ],
};

const emptyRoom = async (): Promise<Room> => ({ ...(await freshContext()), facts });

async function marketHome(): Promise<Room> {
  const room = await emptyRoom();
  good(await addSupplier(room, MAIL));
  good(await addOffer(room, GOODS));
  return room;
}
const marketIn = async (room: Room) => (await loadSnapshot(room)).market!;

test('a supplier and an offer are in the market as they were written', async () => {
  const { suppliers, offers } = await marketIn(await marketHome());
  expect(suppliers).toEqual([
    {
      code: 'S1',
      name: 'Grille & Co',
      kind: 'parcel',
      transitDays: 2,
      dispatchWeekdays: MONDAYS,
      cutOffDays: 1,
      cutOffTime: '12:00',
      holidays: [],
      postage: { flatCents: 490, perKgCents: 0, freeFromCents: 5000 },
      minimumCents: 1500,
      lossShare: null,
      overCountShare: null,
      coldBelowC: -2,
      heatAboveC: 32,
      holdDays: 5,
    },
  ]);
  expect(offers).toEqual([
    {
      ...GOODS,
      code: 'F1',
      prices: [
        { fromPacks: 1, packCents: 600 },
        { fromPacks: 5, packCents: 550 },
      ],
      mostPacks: null,
    },
  ]);
});

test('what is changed is changed alone, and holidays come and go one by one', async () => {
  const room = await marketHome();
  const change = async (over: Omit<Parameters<typeof editSupplier>[1], 'supplier'>) =>
    good(await editSupplier(room, { supplier: 'S1', ...over }));
  await change({ postageFlat: 0, postageFreeFrom: '' });
  await change({ addHoliday: { from: room.date(20), to: room.date(24) } });
  await change({ addHoliday: { from: room.date(5), to: room.date(6) } });
  await change({ dropHoliday: { from: room.date(20), to: room.date(24) } });
  good(await editOffer(room, { offer: 'F1', packHeads: 200 }));
  const { suppliers, offers } = await marketIn(room);
  expect(suppliers[0]).toMatchObject({
    postage: { flatCents: 0, perKgCents: 0, freeFromCents: null },
    minimumCents: 1500,
    holidays: [{ from: TODAY + 5, to: TODAY + 6 }],
  });
  expect(offers[0]).toMatchObject({ packHeads: 200, prices: [{ packCents: 600 }, { packCents: 550 }] });
});

test('a closed supplier is out of the market with its offers, takes no more of them, and undo brings all back', async () => {
  const room = await marketHome();
  const { act } = good(await closeSupplier(room, { supplier: 'S1' }));
  expect(await marketIn(room)).toMatchObject({ suppliers: [], offers: [] });
  const refused = await addOffer(room, GOODS);
  expect(refused).toMatchObject({ ok: false, problem: { code: 'supplier-closed', field: 'supplier' } });
  good(await undo(room, { act }));
  expect(await marketIn(room)).toMatchObject({ suppliers: [{ code: 'S1' }], offers: [{ code: 'F1' }] });
});

test('an offer no longer to be had leaves the market alone', async () => {
  const room = await marketHome();
  good(await closeOffer(room, { offer: 'F1' }));
  expect(await marketIn(room)).toMatchObject({ suppliers: [{ code: 'S1' }], offers: [] });
});

test('a supplier with orders under way is not closed, and which they are is said', async () => {
  const room = await marketHome();
  const order = { supplier: 'S1', postageCents: 0, state: 'placed' as const, notes: '', demo: false };
  const days = { placedDay: TODAY, sentDay: TODAY + 3, dueDay: TODAY + 5 };
  good(
    await room.store.write(async (tx) => {
      await putRows(tx, 'purchase', [{ code: 'O1', ...order, ...days }]);
      return ok(null);
    }),
  );
  const refused = await closeSupplier(room, { supplier: 'S1' });
  expect(refused).toMatchObject({
    ok: false,
    problem: {
      sentence:
        'Grille & Co has orders under way (of Fri 4 Oct, due Wed 9 Oct); say first that they came or do not come.',
    },
  });
});

test('the same form twice adds one supplier', async () => {
  const room = await emptyRoom();
  const form = { ...MAIL, formId: 'one' };
  const [first, second] = [good(await addSupplier(room, form)), good(await addSupplier(room, form))];
  expect([first.reply, second.again]).toEqual([{ supplier: 'S1' }, true]);
  expect((await marketIn(room)).suppliers).toHaveLength(1);
});

test('two who change one supplier: the second is told', async () => {
  const room = await marketHome();
  const { revision } = await loadSnapshot(room);
  good(await editSupplier(room, { supplier: 'S1', minimum: 20, asOf: revision }));
  const refused = await editSupplier(room, { supplier: 'S1', minimum: 30, asOf: revision });
  expect(refused).toMatchObject({ ok: false, problem: { code: 'changed-meanwhile' } });
});

type SupplierInput = Parameters<typeof addSupplier>[1];
test.each<[string, Partial<SupplierInput>, string, string]>([
  ['no name', { name: ' ' }, 'name', 'This is needed.'],
  [
    'a year on the way',
    { transitDays: 365 },
    'transitDays',
    '"365" is not a whole number of days from 0 to 30, such as 2.',
  ],
  [
    'no day of sending',
    { dispatchWeekdays: MONDAYS.map(() => false) },
    'dispatchWeekdays',
    'Choose a day at least on which parcels are sent.',
  ],
  [
    'an hour that is none',
    { cutOffTime: '25:00' },
    'cutOffTime',
    '"25:00" is not a time of day; write it as 09:00 or 14:30.',
  ],
  [
    'a negative minimum',
    { minimum: '-5' },
    'minimum',
    '"-5" is less than nothing; write a sum such as 12.50, or 0.',
  ],
  [
    'another currency',
    { minimum: '£12.50' },
    'minimum',
    '"£12.50" is not in your currency, the Euro (EUR); write the sum in it, such as 12.50, or choose another in the settings.',
  ],
  [
    'thousands parted',
    { postageFlat: '1,200' },
    'postageFlat',
    '"1,200" is not a sum of money; write it as 12 or 12.50.',
  ],
  [
    'cold above heat',
    { coldBelowC: 33 },
    'coldBelowC',
    '"33" °C is not below 32 °C, where it gets too hot: no parcel would ever go.',
  ],
  [
    'a holiday that runs backwards',
    { holidays: [{ from: '2024-12-27', to: '2024-12-24' }] },
    'holidays',
    '"2024-12-27 to 2024-12-24" runs backwards; the earlier day comes first.',
  ],
  [
    'more lost than sent',
    { lossShare: 3 },
    'lossShare',
    '"3" is not a share of heads lost from 0 to 0.9, such as 0.05.',
  ],
])('a supplier with %s is refused', async (_, over, field, sentence) => {
  const room = await emptyRoom();
  const refused = await addSupplier(room, { ...MAIL, ...over });
  expect(refused).toMatchObject({ ok: false, problem: { field, sentence } });
});

type OfferInput = Parameters<typeof addOffer>[1];
test.each<[string, Partial<OfferInput>, string, string]>([
  ['no price', { prices: [] }, 'prices', 'An offer needs a price: say what a pack costs.'],
  [
    'a price of nothing',
    { prices: [{ fromPacks: 1, pack: '0' }] },
    'prices.0.pack',
    'A pack costs something: say what.',
  ],
  ['a pack of none', { packHeads: 0 }, 'packHeads', '"0" heads are no pack; say how many are in it.'],
  [
    'prey nobody knows',
    { species: 'dragonfly' },
    'species',
    '"dragonfly" is not a prey species in the Book.',
  ],
  [
    'lengths of another animal',
    { toMm: 60 },
    'toMm',
    '"9 to 60 mm" is no size of house crickets; they are 2 to 25 mm long.',
  ],
  [
    'a price in another currency',
    { prices: [{ fromPacks: 1, pack: '$6' }] },
    'prices.0.pack',
    '"$6" is not in your currency, the Euro (EUR); write the sum in it, such as 6, or choose another in the settings.',
  ],
  ['an unknown supplier', { supplier: 'S9' }, 'supplier', 'There is no supplier "S9" here.'],
])('an offer with %s is refused', async (_, over, field, sentence) => {
  const room = await marketHome();
  const refused = await addOffer(room, { ...GOODS, ...over });
  expect(refused).toMatchObject({ ok: false, problem: { field, sentence } });
});

test('sums are read in the currency of the settings, by its sign or its code', async () => {
  const room = await emptyRoom();
  good(await editSettings(room, { purse: { currency: 'gbp', hour: '£9.50', weekMost: '' } }));
  good(await addSupplier(room, { ...MAIL, postageFreeFrom: '£50', minimum: 'GBP 15' }));
  expect((await marketIn(room)).purse).toEqual({ currency: 'GBP', hourCents: 950, weekMostCents: null });
  const refused = await editSupplier(room, { supplier: 'S1', minimum: '€ 3' });
  expect(refused).toMatchObject({ ok: false, problem: { field: 'minimum' } });
});

test('emptying the demo room takes its suppliers, but none that the keeper has written an offer of', async () => {
  const room = await emptyRoom();
  good(await addSupplier(room, { ...MAIL, demo: true }));
  good(await addSupplier(room, { ...MAIL, name: 'Used by the keeper', demo: true }));
  good(await addOffer(room, { ...GOODS, demo: true }));
  good(await addOffer(room, { ...GOODS, supplier: 'S2' }));
  const { act } = good(await emptyDemo(room, {}));
  expect(await marketIn(room)).toMatchObject({ suppliers: [{ code: 'S2' }], offers: [{ code: 'F2' }] });
  expect(await room.store.ask(rowNamed('offer', 'F1'))).toBeNull();
  good(await undo(room, { act }));
  expect((await marketIn(room)).offers).toHaveLength(2);
});
