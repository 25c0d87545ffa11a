/** The demo room: what is in it, that it is the same every time, goes in one step, and makes Sunday worth reading. */
import { expect, test } from 'vitest';
import { LODGERS } from '../../seed/animals.ts';
import { seedDemo } from '../../seed/demo.ts';
import { BINS, CUPS } from '../../seed/larder.ts';
import { ROOMS, SHELVES } from '../../seed/places.ts';
import {
  addAnimal,
  addBin,
  addRoom,
  type Context,
  editSettings,
  emptyDemo,
  loadSnapshot,
  placeOrder,
  undo,
} from '../../src/actions/index.ts';
import { civilDate, type DayNumber, isFeedingDay, weekday } from '../../src/husbandry/calendar.ts';
import { dispatchesOf, offerTrouble } from '../../src/husbandry/orders/index.ts';
import { eveningOf } from '../../src/husbandry/supply/evening.ts';
import { sundayCheck } from '../../src/husbandry/supply/sunday.ts';
import { settings } from '../../src/store/index.ts';
import { facts } from '../support/room.ts';
import { freshStore, good } from '../support/store-at.ts';

/** A Monday in autumn and one in spring. */
const AUTUMN = 20_780;
const SPRING = 20_969;
const FEW_REPLICATES = 120;

/** An empty place on a day. */
async function placeOn(day: DayNumber): Promise<Context> {
  const moment = `${civilDate(day)}T18:00:00.000Z`;
  return { store: await freshStore(), facts, clock: () => ({ today: day, moment }) };
}

async function demoOn(day: DayNumber): Promise<Context> {
  const context = await placeOn(day);
  good(await seedDemo(context));
  return context;
}

test('some 130 animals of twenty kinds live on seven shelves in two rooms', async () => {
  const { animals, rooms } = await loadSnapshot(await demoOn(AUTUMN));
  expect(new Set(animals.map(({ kind }) => kind)).size).toBe(20);
  expect(animals.length).toBeGreaterThanOrEqual(125);
  expect(animals.length).toBeLessThanOrEqual(145);
  expect(animals.reduce((heads, { count }) => heads + count, 0)).toBeGreaterThan(animals.length + 100);
  expect(new Set(animals.map(({ shelf }) => shelf))).toEqual(new Set(SHELVES.map(({ shelf }) => shelf)));
  expect(rooms.map(({ name }) => name)).toEqual(ROOMS.map(({ name }) => name));
});

test('two send parcels and a shop is near; who sends first is there on the day the delivery is', async () => {
  const { market, facts: book } = await loadSnapshot(await demoOn(AUTUMN));
  expect(market!.suppliers.map(({ kind }) => kind)).toEqual(['parcel', 'parcel', 'shop']);
  expect(new Set(market!.offers.map(({ supplier }) => supplier)).size).toBe(3);
  const crickets = market!.offers.filter(({ species }) => species === 'acheta-domesticus');
  expect(new Set(crickets.map(({ size }) => size)).size).toBe(5);
  expect(
    market!.offers.every((offer) => offerTrouble(offer, book.species.get(offer.species)!) === null),
  ).toBe(true);
  const [mail] = market!.suppliers;
  const [next] = dispatchesOf(mail!, { from: AUTUMN, to: AUTUMN + 7 });
  expect(next).toEqual({ orderBy: AUTUMN + 1, sent: AUTUMN + 2, comes: AUTUMN + 4 });
});

test('nine bins, two colonies, three cups and a frozen stock stand in the larder, and an order of two lines is on its way', async () => {
  const { bins, changes, calendar, ...snapshot } = await loadSnapshot(await demoOn(AUTUMN));
  const roles = (role: string) => bins.filter((bin) => bin.role === role);
  expect(
    [roles('holding'), roles('colony'), roles('cup'), roles('frozen')].map(({ length }) => length),
  ).toEqual([9, 2, 3, 1]);
  expect(bins.every(({ species }) => facts.species.has(species))).toBe(true);
  const [delivery, ...others] = snapshot.deliveries;
  expect(others.map(({ day, order }) => [day, order])).toEqual([[delivery!.day, delivery!.order]]);
  expect(delivery!.day - AUTUMN).toBe(4);
  expect(snapshot.deliveryWeekdays[weekday(delivery!.day)]).toBe(true);
  expect(changes.map(({ kind, from }) => [kind, from - AUTUMN])).toEqual([['sac', 35]]);
  expect(calendar.absences).toEqual([{ from: AUTUMN + 14, to: AUTUMN + 17 }]);
});

test('every animal is of a size its kind can have', async () => {
  const { animals } = await loadSnapshot(await demoOn(AUTUMN));
  const odd = animals.filter(({ kind: code, gaugeMm }) => {
    const kind = facts.kinds.get(code)!;
    return gaugeMm < kind.firstFeedingGaugeMm.value[0] || gaugeMm > kind.adultGaugeMm.value[1];
  });
  expect(odd.map(({ name, gaugeMm }) => `${name} ${gaugeMm}`)).toEqual([]);
});

test('it has a past: meals taken and refused, moults, premoult, and one that died', async () => {
  const { animals } = await loadSnapshot(await demoOn(AUTUMN));
  expect(animals.every(({ lastOffered }) => lastOffered !== null)).toBe(true);
  expect(animals.filter(({ lastOutcome }) => lastOutcome === 'refused').length).toBeGreaterThan(0);
  expect(animals.filter(({ lastOutcome }) => lastOutcome === 'taken (assumed)').length).toBeGreaterThan(5);
  expect(animals.filter(({ premoultSeen }) => premoultSeen !== null)).toHaveLength(2);
  expect(animals.filter(({ lastMoult }) => lastMoult !== null).length).toBeGreaterThanOrEqual(5);
  expect(animals).toHaveLength(LODGERS.flatMap((each) => each.animals).length - 1);
});

test('the same day gives the same room in two databases', async () => {
  const [one, other] = [await demoOn(SPRING), await demoOn(SPRING)];
  expect(await loadSnapshot(one)).toEqual(await loadSnapshot(other));
});

test('one step takes all of it away, and undo brings it back', async () => {
  const context = await placeOn(AUTUMN);
  const empty = { ...(await loadSnapshot(context)), revision: 0 };
  good(await seedDemo(context));
  const full = await loadSnapshot(context);
  const emptied = good(await emptyDemo(context, {}));
  expect({ ...(await loadSnapshot(context)), revision: 0 }).toEqual(empty);
  good(await undo(context, { act: emptied.act }));
  expect({ ...(await loadSnapshot(context)), revision: 0 }).toEqual({ ...full, revision: 0 });
});

test('it goes with what the keeper ordered in it, and undo brings that back too', async () => {
  const context = await placeOn(AUTUMN);
  const empty = { ...(await loadSnapshot(context)), revision: 0 };
  good(await seedDemo(context));
  const [next] = dispatchesOf((await loadSnapshot(context)).market!.suppliers[0]!, {
    from: AUTUMN,
    to: AUTUMN + 7,
  });
  const lines = [{ offer: 'F1', packs: 3, bin: 'B1' }];
  good(await placeOrder(context, { supplier: 'S1', sentDay: civilDate(next!.sent), lines }));
  const full = await loadSnapshot(context);
  const emptied = good(await emptyDemo(context, {}));
  expect({ ...(await loadSnapshot(context)), revision: 0 }).toEqual(empty);
  good(await undo(context, { act: emptied.act }));
  expect({ ...(await loadSnapshot(context)), revision: 0 }).toEqual({ ...full, revision: 0 });
});

test('it is not put up twice, but again once it has been taken away', async () => {
  const context = await demoOn(AUTUMN);
  expect(await seedDemo(context)).toMatchObject({ ok: false, problem: { code: 'demo-here' } });
  good(await emptyDemo(context, {}));
  good(await seedDemo(context));
  expect((await loadSnapshot(context)).bins).toHaveLength(15);
});

test('an animal and a bin of the keeper, on a shelf of the same name, are left alone', async () => {
  const context = await placeOn(AUTUMN);
  good(await addRoom(context, { name: 'Own room', dayTempC: 25, nightTempC: 22 }));
  const shelf = SHELVES[0].shelf;
  good(await addAnimal(context, { kind: 'brachypelma-hamorii', room: 'Own room', shelf, gaugeMm: 70 }));
  const lot = { heads: 500, fromMm: 10, toMm: 15 };
  good(await addBin(context, { species: 'acheta-domesticus', room: 'Own room', lot }));
  const own = await loadSnapshot(context);
  good(await seedDemo(context));
  good(await emptyDemo(context, {}));
  expect({ ...(await loadSnapshot(context)), revision: 0 }).toEqual({ ...own, revision: 0 });
});

test('what the keeper has set is neither changed by the demo room nor lost with it', async () => {
  const context = await placeOn(AUTUMN);
  good(await editSettings(context, { leadTimeDays: 9 }));
  good(await seedDemo(context));
  good(await editSettings(context, { absences: [] }));
  expect(await context.store.ask(settings)).toMatchObject({ leadTimeDays: 9, absences: [] });
  const found = await context.store.ask(settings);
  expect([...found.ofDemo].sort()).toEqual(['deliveryWeekdays', 'feedingWeekdays', 'purse']);
  good(await emptyDemo(context, {}));
  expect(await context.store.ask(settings)).toMatchObject({ leadTimeDays: 9, absences: [], ofDemo: [] });
});

for (const after of [0, 1, 2, 3, 4, 5, 6]) {
  const day = (after % 2 === 0 ? AUTUMN : SPRING) + after;
  test(`on ${civilDate(day)} one or two groups run short before the delivery, and Tonight is a fair round`, async () => {
    const snapshot = await loadSnapshot(await demoOn(day));
    const { servings, withheld } = eveningOf(snapshot);
    expect(isFeedingDay(snapshot.calendar, day)).toBe(true);
    expect(servings.length).toBeGreaterThanOrEqual(15);
    expect(servings.length).toBeLessThanOrEqual(35);
    expect(withheld).toHaveLength(3);
    const answer = sundayCheck(snapshot, { replicates: FEW_REPLICATES });
    const short = answer.groups.filter(({ verdict }) => verdict !== 'lasts').map(({ name }) => name);
    expect(['tight', 'runs short']).toContain(answer.verdict);
    expect(short).toContain('tarantula spiderlings');
    expect(short.length).toBeLessThanOrEqual(2);
    expect(answer.act?.after.missedMeals).toBeLessThan(answer.missedMeals / 2);
  });
}

test('names are plain words, each given once, with numbers where there are many', () => {
  const names = [
    ...LODGERS.flatMap(({ animals }) => animals.map(([name]) => name)),
    ...BINS.map(({ name }) => name),
  ];
  const all = [...names, ...CUPS.map(({ name }) => name)];
  expect(new Set(all).size).toBe(all.length);
  expect(all.filter((name) => !/^[A-Z][a-z]+(,? [a-z]+)*( \d)?$/.test(name))).toEqual([]);
});
