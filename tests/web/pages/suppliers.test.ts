/** Suppliers and offers by their forms: added, changed, refused beside the field with what was typed, closed. */
import { expect, test } from 'vitest';
import { editSettings, loadSnapshot } from '../../../src/actions/index.ts';
import { filledHome, type Home } from '../../support/house.ts';
import { attributes, tags, words } from '../../support/markup-words.ts';
import { good } from '../../support/store-at.ts';

const market = async ({ room }: Home) => (await loadSnapshot(room)).market!;
const FORM = {
  name: 'Kerfpost',
  kind: 'parcel',
  weekday: ['0', '3'],
  transitDays: '1',
  cutOffDays: '1',
  cutOffTime: '9:30',
  postageFlat: '4,50',
  postagePerKg: '',
  postageFreeFrom: '',
  minimum: '',
  cold: '-2',
  heat: '',
  holdDays: '',
  loss: '2',
  over: '',
  claimHours: '12',
  notes: '',
};
const OFFER = {
  species: 'acheta-domesticus',
  size: '',
  called: '',
  from: '',
  to: '',
  packHeads: '100',
  price: '5',
  mostPacks: '',
};
const HALF_INCH = 'acheta-domesticus|1/2 in';

/** The sentence beside a field of a page, and what the field holds. */
function beside(html: string, id: string) {
  const sentence = new RegExp(`id="${id}-problem">([^<]*)<`).exec(html)?.[1];
  const value = tags(html, 'input')
    .filter((tag) => attributes(tag, 'id')[0] === id)
    .flatMap((tag) => attributes(tag, 'value'))[0];
  return [sentence?.replaceAll('&quot;', '"'), value];
}

test('the list says first by when to order and when it comes, then what they sell at which price a head', async () => {
  const home = await filledHome();
  const said = words(await home.see('/suppliers'));
  expect(said).toContain('Order from Grille & Co by Sun 6 Oct, 12:00, and it comes on Wed 9 Oct');
  expect(said).toContain('Sends Mon to Wed, 2 days on the way; order by 12:00 the day before.');
  expect(said).toContain('House crickets, 1/2 in');
  expect(said).toContain('€6.00, €0.024 each from 5 packs €5.00, €0.020 each');
});

test('cold outside moves the next parcel, and says what becomes of one already ordered', async () => {
  const home = await filledHome();
  const { room } = home;
  good(await editSettings(room, { spell: { from: room.date(3), to: room.date(5), tempC: -4 } }));
  const said = words(await home.see('/suppliers/S1'));
  expect(said).toContain('Grille & Co: order by Sun 13 Oct, 12:00, and it comes on Wed 16 Oct');
  expect(said).toContain(
    'The weather holds back what would leave on Mon 7 Oct: an order already placed leaves on Mon 14 Oct.',
  );
});

test('a supplier is added by its form and leads to its page', async () => {
  const home = await filledHome();
  const answer = await home.send('/suppliers/new', FORM);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/suppliers/S2']);
  expect((await market(home)).suppliers[1]).toMatchObject({
    name: 'Kerfpost',
    cutOffTime: '09:30',
    dispatchWeekdays: [true, false, false, true, false, false, false],
    postage: { flatCents: 450, perKgCents: 0, freeFromCents: null },
    coldBelowC: -2,
    heatAboveC: null,
    lossShare: 0.02,
    overCountShare: null,
    holdDays: null,
  });
  expect(words(await home.see('/suppliers/S2'))).toContain(
    'You say 2 % are lost; dead prey is claimed within 12 hours.',
  );
});

test('the form of a supplier saved as it is shown changes nothing', async () => {
  const home = await filledHome();
  await home.send('/suppliers/new', FORM);
  const before = (await market(home)).suppliers;
  const html = await home.see('/suppliers/S2/edit');
  const shown = tags(html, 'input').filter((tag) => tag.includes('id="supplier-'));
  const fields = shown.map((tag) => [attributes(tag, 'name')[0], attributes(tag, 'value')[0] ?? '']);
  const answer = await home.send('/suppliers/S2/edit', {
    ...Object.fromEntries(fields),
    kind: 'parcel',
    weekday: ['0', '3'],
  });
  expect(answer.status).toBe(303);
  expect((await market(home)).suppliers).toEqual(before);
});

test.each([
  [{ weekday: [] }, 'weekday', 'Choose a day at least on which parcels are sent.'],
  [{ cutOffTime: '25:00' }, 'cutOffTime', '"25:00" is not a time of day; write it as 09:00 or 14:30.'],
  [{ transitDays: '365' }, 'transitDays', '"365" is not a whole number of days from 0 to 30, such as 2.'],
  [{ minimum: '-5' }, 'minimum', '"-5" is less than nothing; write a sum such as 12.50, or 0.'],
  [{ heat: '-8' }, 'cold', '"-2" °C is not below -8 °C, where it gets too hot: no parcel would ever go.'],
  [
    { kind: 'shop' },
    'transitDays',
    '"1" does not fit: a shop is gone to, so write 0, or say that it sends parcels.',
  ],
  [{ loss: 'some' }, 'loss', '"some" is not a percentage from 0 to 100.'],
])(
  'a supplier with %j is refused beside its field, and what was typed stays',
  async (over, field, sentence) => {
    const home = await filledHome();
    const before = await home.acts();
    const answer = await home.send('/suppliers/new', { ...FORM, ...over });
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(beside(html, `supplier-${field}`)[0]).toBe(sentence);
    expect(beside(html, 'supplier-name')[1]).toBe('Kerfpost');
    expect(await home.acts()).toBe(before);
  },
);

test('an offer takes its lengths from the size of the trade, and prices row by row', async () => {
  const home = await filledHome();
  const form = {
    ...OFFER,
    size: HALF_INCH,
    from2: '3',
    price2: '4.50',
    from3: '',
    price3: '',
    from4: '10',
    price4: '4',
  };
  const answer = await home.send('/suppliers/S1/offers', form);
  expect([answer.status, answer.headers.get('location')]).toEqual([303, '/suppliers/S1']);
  expect((await market(home)).offers[1]).toMatchObject({
    size: '1/2 in',
    fromMm: 10.5,
    toMm: 15,
    packHeads: 100,
    prices: [
      { fromPacks: 1, packCents: 500 },
      { fromPacks: 3, packCents: 450 },
      { fromPacks: 10, packCents: 400 },
    ],
  });
});

test('lengths of their own stand in place of those of the size, and are not rounded by being shown', async () => {
  const home = await filledHome();
  await home.send('/suppliers/S1/offers', { ...OFFER, called: 'special', from: '10.4 mm', to: '13' });
  const html = await home.see('/offers/F2/edit');
  expect([beside(html, 'offer-from')[1], beside(html, 'offer-to')[1]]).toEqual(['10 mm', '13 mm']);
  const { species: _, ...known } = OFFER;
  await home.send('/offers/F2/edit', { ...known, called: 'special', from: '10 mm', to: '14', price: '6' });
  expect((await market(home)).offers[1]).toMatchObject({ size: 'special', fromMm: 10.4, toMm: 14 });
});

test.each([
  [{}, 'size', 'Choose a size above, or say how long they are.'],
  [
    { species: 'blaptica-dubia', size: HALF_INCH },
    'size',
    /^"1\/2 in" is not a size of the dubia roach; its sizes are/,
  ],
  [{ species: '' }, 'species', 'Choose the prey from the list.'],
  [{ size: HALF_INCH, price: '' }, 'price', 'An offer needs a price: say what a pack costs.'],
  [{ size: HALF_INCH, price: '$5' }, 'price', /^"\$5" is not in your currency, the Euro/],
  [{ size: HALF_INCH, packHeads: '0' }, 'packHeads', '"0" heads are no pack; say how many are in it.'],
  [{ size: HALF_INCH, from3: '4', price3: '' }, 'price3', 'Say what a pack costs from 4 packs on.'],
  [{ size: HALF_INCH, from2: '', price2: '4' }, 'from2', 'Say from how many packs on a pack costs 4.'],
  [
    { size: HALF_INCH, from2: '4', price2: '4', from4: '4', price4: '3' },
    'from4',
    '"4" packs have two prices; say from how many packs each holds.',
  ],
  [{ size: HALF_INCH, to: '70 mm' }, 'to', /is no size of house crickets/],
])('an offer with %j is refused beside its field', async (over, field, sentence) => {
  const home = await filledHome();
  const answer = await home.send('/suppliers/S1/offers', { ...OFFER, ...over });
  expect(answer.status).toBe(422);
  const html = await answer.text();
  expect(beside(html, `offer-${field}`)[0]).toMatch(sentence);
  expect((await market(home)).offers).toHaveLength(1);
});

test('holidays come and go, an offer ends, a supplier is bought from no more', async () => {
  const home = await filledHome();
  const days = { from: '2024-10-06', to: '2024-10-20' };
  await home.send('/suppliers/S1/holidays', days);
  expect(words(await home.see('/suppliers/S1'))).toContain(
    'order by Sun 20 Oct, 12:00, and it comes on Wed 23 Oct',
  );
  await home.send('/suppliers/S1/holidays/remove', days);
  expect((await market(home)).suppliers[0]?.holidays).toEqual([]);
  const backwards = await home.send('/suppliers/S1/holidays', { from: days.to, to: days.from });
  expect(beside(await backwards.text(), 'holiday-to')[0]).toMatch(/runs backwards/);
  const ended = await home.send('/offers/F1/close', {});
  expect([ended.status, ended.headers.get('location')]).toEqual([303, '/suppliers/S1']);
  const closed = await home.send('/suppliers/S1/close', {});
  expect([closed.status, closed.headers.get('location')]).toEqual([303, '/suppliers']);
  expect(words(await home.see('/suppliers'))).toContain('Nobody sells you prey yet');
  expect(words(await home.see('/history'))).toContain('No longer buys from Grille & Co');
});

test('money, weather and the weeks of a plan are set on the settings page', async () => {
  const home = await filledHome();
  await home.send('/settings/purse', { currency: 'GBP', hour: '£9', weekMost: '' });
  await home.send('/settings/plan', { planWeeks: '16' });
  await home.send('/settings/weather', { from: '2024-10-08', to: '2024-10-10', outside: '23 F' });
  const said = words(await home.see('/settings'));
  expect(said).toContain('Sums in GBP; an hour at £9.00; no bound for a week');
  expect(said).toContain('A plan looks 16 weeks ahead');
  expect(said).toContain('-5 °C, Tue 8 Oct to Thu 10 Oct');
  await home.send('/settings/weather/remove', { from: '2024-10-08', to: '2024-10-10' });
  expect((await market(home)).weather).toEqual([]);
});

test.each([
  [
    'purse',
    { currency: 'GBP', hour: '€9', weekMost: '' },
    'purse-hour',
    /^"€9" is not in your currency, the British Pound/,
  ],
  ['plan', { planWeeks: '52' }, 'plan-planWeeks', '"52" is not a whole number from 4 to 26.'],
  [
    'weather',
    { from: '2024-10-08', to: '2024-10-10', outside: '900' },
    'weather-outside',
    'is not a likely temperature; it should be from -50 to 50 °C.',
  ],
  ['weather', { from: '2024-10-10', to: '2024-10-08', outside: '-5' }, 'weather-to', /runs backwards/],
])('%s of %j is refused beside its field', async (act, form, id, sentence) => {
  const home = await filledHome();
  const answer = await home.send(`/settings/${act}`, form);
  expect(answer.status).toBe(422);
  expect(beside(await answer.text(), id)[0]).toMatch(sentence);
});
