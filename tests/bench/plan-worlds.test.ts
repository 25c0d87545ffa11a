/** The worlds of the plan's benchmark: of their own making, true to their seed, and without a head gained or lost. */
import { describe, expect, it } from 'vitest';
import { importsOf, sourceFiles } from '../support/source-files.ts';
import { copyOf, type House, houseOf, live } from './plan-worlds/house.ts';
import { logOf } from './plan-worlds/household.ts';
import type { Order } from './plan-worlds/log.ts';
import { ROOMS, roomNamed } from './plan-worlds/rooms.ts';
import { coloniesCents, scoreOf } from './plan-worlds/score.ts';
import { OFFERS } from './plan-worlds/sellers.ts';

const YEAR = { seed: 5, weeks: 8 };

/** A few packs of everything, other things in other weeks. */
const ordersOf = ({ day }: House): Order[] =>
  OFFERS.map((_, offer) => ({ day: day + (offer % 3), offer, packs: (offer + day / 7) % 3 }));

function lived(name: string, year = YEAR, weeks = YEAR.weeks): House {
  const house = houseOf(roomNamed(name), year);
  for (let week = 0; week < weeks; week += 1)
    live(house, { orders: ordersOf(house), harvests: [], rests: [] });
  return house;
}

const alive = ({ larder }: House): number => larder.tubs.reduce((sum, tub) => sum + (tub?.alive ?? 0), 0);

describe('the worlds', () => {
  it('and the rules that buy in them know nothing of the program', () => {
    const files = [...sourceFiles('tests/bench/plan-worlds'), ...sourceFiles('tests/bench/plan-rules')];
    const strays = files.flatMap((file) =>
      importsOf(file)
        .filter((name) => !/^tests\/bench\/plan-(worlds|rules)\//.test(name))
        .map((name) => `${file.path} imports ${name}`),
    );
    expect(files.length).toBeGreaterThan(20);
    expect(strays).toEqual([]);
  });

  it.each(ROOMS.filter(({ heads }) => heads < 200))('keep every head of room $name', ({ name }) => {
    const house = houseOf(roomNamed(name), YEAR);
    for (let week = 0; week < YEAR.weeks; week += 1) {
      live(house, { orders: ordersOf(house), harvests: [], rests: [] });
      const { came, born, eaten, died, thrownOut } = house.larder.heads;
      expect(came + born - eaten - died - thrownOut).toBe(alive(house));
    }
    expect(house.larder.heads.eaten).toBeGreaterThan(100);
    expect(house.larder.heads.died).toBeGreaterThan(100);
  });

  it('move the heads of a harvest and no others', () => {
    const house = lived('colonies', YEAR, 2);
    const before = alive(house);
    const there = house.larder.tubs[0]?.alive as number;
    const harvest = { day: house.day, tub: 'colony 1', heads: 25, fromMm: 5, toMm: 30 };
    const eaten = house.larder.heads.eaten;
    const { died, thrownOut } = house.larder.heads;
    live(house, { orders: [], harvests: [harvest], rests: [] });
    const note = logOf(house).tubs.find(({ code }) => code === 'colony 1');
    expect(note?.events.filter(({ what }) => what === 'harvested')).toEqual([
      { what: 'harvested', day: harvest.day, heads: 25, fromMm: 5, toMm: 30 },
    ]);
    expect(there).toBeGreaterThan(25);
    const { heads } = house.larder;
    expect(alive(house)).toBeLessThan(before + heads.came + heads.born);
    expect(heads.eaten + heads.died + heads.thrownOut).toBeGreaterThan(eaten + died + thrownOut);
  });

  it('put on the cost what colonies have lost, and take off nothing for what they have gained', () => {
    const emptied = houseOf(roomNamed('colonies'), YEAR);
    expect(scoreOf(emptied)).toMatchObject({ lost: 0, cents: -scoreOf(emptied).left });
    const all = ['colony 1', 'colony 2'].map((tub) => ({ day: 0, tub, heads: 5000, fromMm: 0, toMm: 99 }));
    live(emptied, { orders: [], harvests: all, rests: [] });
    const bare = scoreOf(emptied);
    // Nearly all they were worth; a few are born.
    expect(bare.lost).toBeGreaterThan(0.95 * emptied.coloniesCents);
    expect(bare.cents).toBe(bare.lost - bare.left);
    const grown = houseOf(roomNamed('colonies'), YEAR);
    const untouched = { ...grown, animals: { ...grown.animals, count: 0 } };
    for (let week = 0; week < YEAR.weeks; week += 1) live(untouched, { orders: [], harvests: [], rests: [] });
    expect(coloniesCents(untouched)).toBeGreaterThan(1.05 * grown.coloniesCents);
    expect(scoreOf(untouched).lost).toBe(0);
  });

  it('are the same by the same seed and others by another', () => {
    const logs = [YEAR, YEAR, { ...YEAR, seed: 6 }].map((year) => JSON.stringify(logOf(lived('40', year))));
    expect(logs[1]).toBe(logs[0]);
    expect(logs[2]).not.toBe(logs[0]);
  });

  it('go on from a copy as from the original', () => {
    const house = lived('40', YEAR, 3);
    const copy = copyOf(house);
    for (const each of [house, copy]) live(each, { orders: ordersOf(each), harvests: [], rests: [] });
    expect(scoreOf(copy)).toEqual(scoreOf(house));
  });

  it('are played alike whether anything is written down or not', () => {
    const silent = houseOf(roomNamed('40'), YEAR, false);
    for (let week = 0; week < YEAR.weeks; week += 1)
      live(silent, { orders: ordersOf(silent), harvests: [], rests: [] });
    expect(scoreOf(silent)).toEqual(scoreOf(lived('40')));
  });

  it('have the same weather, evenings and parcels whoever buys', () => {
    const [bought, starved] = [lived('40'), houseOf(roomNamed('40'), YEAR)];
    expect(starved.truth.tempC).toEqual(bought.truth.tempC);
    expect(starved.truth.skipped).toEqual(bought.truth.skipped);
    live(starved, { orders: [{ day: 2, offer: 2, packs: 2 }], harvests: [], rests: [] });
    const lot = (house: House) => house.post.arrivals.find(({ ordered }) => ordered === 2 * 70);
    expect(lot(starved)).toBeDefined();
    expect(lot(starved)).toEqual(lot(bought));
  });

  it('ask postage once a parcel, none from the sum on which it is free, and at least the least order', () => {
    const spent = (orders: Order[]) => {
      const house = houseOf(roomNamed('40'), YEAR);
      live(house, { orders, harvests: [], rests: [] });
      return house.post.purse;
    };
    expect(spent([{ day: 0, offer: 0, packs: 1 }])).toEqual({ goods: 1000, postage: 650, shop: 0 });
    const two = [0, 1].map((offer) => ({ day: 0, offer, packs: 2 }));
    expect(spent(two)).toEqual({ goods: 4 * 380, postage: 650, shop: 0 });
    expect(spent([{ day: 0, offer: 3, packs: 20 }])).toEqual({ goods: 20 * 374, postage: 0, shop: 0 });
    expect(spent([{ day: 2, offer: 9, packs: 2 }])).toEqual({ goods: 0, postage: 0, shop: 700 });
  });

  it('feed from a colony that is left alone only those for whom nothing else is there', () => {
    const rests = ['colony 1', 'colony 2'].map((tub) => ({ tub, until: 7 }));
    const fedFrom = (house: House) =>
      logOf(house)
        .tubs.filter(({ colonyRoom }) => colonyRoom !== null)
        .flatMap(({ events }) => events)
        .reduce((sum, event) => (event.what === 'fed' ? sum + event.heads : sum), 0);
    const [open, resting] = [[], rests].map((left) => {
      const house = houseOf(roomNamed('colonies'), YEAR);
      live(house, { orders: [], harvests: [], rests: left });
      return house;
    });
    expect(fedFrom(open!)).toBeGreaterThan(100);
    expect(fedFrom(resting!)).toBeLessThan(0.75 * fedFrom(open!));
    expect([...resting!.meals.missed]).toEqual([...open!.meals.missed]);
  });

  it('count a missed meal again and again while nothing comes', () => {
    const house = houseOf(roomNamed('40'), { seed: 5, weeks: 16 });
    const missed = () => house.meals.missed.reduce((sum, n) => sum + n, 0);
    for (let week = 0; week < 8; week += 1) live(house, { orders: [], harvests: [], rests: [] });
    const before = missed();
    for (let week = 0; week < 8; week += 1) live(house, { orders: [], harvests: [], rests: [] });
    expect(before).toBeGreaterThan(0);
    expect(missed() - before).toBeGreaterThan(40);
  });
});
