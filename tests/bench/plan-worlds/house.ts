/** A world played week by week: what is done on Sundays goes in, what the keeper wrote down comes out. */
import type { Animals } from './animal-places.ts';
import { animalsOf, stirs, wake } from './animals.ts';
import { bear, crash, harvest, startColonies, throwOut } from './colony.ts';
import { keyOf, logNormal, uniform } from './dice.ts';
import { feed, type Meals, noMeals } from './evening.ts';
import { bandsByTub, emptyLarder, type Larder, newTub, putIn, type Tub } from './larder.ts';
import type { Steps } from './log.ts';
import { emptyPost, morning, type Post, place } from './parcels.ts';
import { BAND_MM, BANDS, BREEDS, bandOf } from './prey.ts';
import type { Room } from './rooms.ts';
import { coloniesCents } from './score.ts';
import { OFFERS } from './sellers.ts';
import { type Truth, truthOf } from './truth.ts';

export interface House {
  readonly room: Room;
  readonly truth: Truth;
  readonly animals: Animals;
  readonly larder: Larder;
  readonly post: Post;
  readonly meals: Meals;
  /** What the colonies were worth on the first day. */
  readonly coloniesCents: number;
  /** Whether anything is written down; where nobody reads it, a world is played faster. */
  readonly noted: boolean;
  /** The Sunday that comes next. */
  day: number;
}

/** Days beyond the last week in which what was ordered may still come. */
const MARGIN_DAYS = 30;

/** A world on its first Sunday, with prey for about ten days. */
export interface Year {
  readonly seed: number;
  readonly weeks: number;
}

export function houseOf(room: Room, { seed, weeks }: Year, noted = true): House {
  const truth = truthOf(seed, weeks * 7 + MARGIN_DAYS);
  const larder = emptyLarder();
  startColonies(larder, truth, room);
  const house: House = {
    room,
    truth,
    animals: animalsOf(room, truth),
    larder,
    post: emptyPost(),
    meals: noMeals(),
    coloniesCents: coloniesCents({ larder, truth, day: 0 }),
    noted,
    day: 0,
  };
  stock(house);
  return house;
}

/** What was bought before the world begins: packs in proportion to the room. */
function stock({ room, truth, larder }: House): void {
  OFFERS.forEach(({ seller, form, fromMm, toMm, code }, o) => {
    if (seller !== 0 || (room.colonies.length > 0 && form !== 'cricket')) return;
    const heads = Math.ceil(room.heads * (FIRST_HEADS[form] ?? 0));
    const key = keyOf(truth.key, 5_000_000 + o);
    const tub = newTub(larder, {
      code: `first ${code}`,
      form,
      colonyRoom: null,
      key,
      book: heads,
      looksMm: (fromMm + toMm) / 2,
    });
    putIn(larder, truth, { tub, lot: { heads, fromMm, toMm, day: 0, key } });
    larder.heads.came += heads;
    (larder.tubs[tub] as Tub).events.push({ day: -1, what: 'came', heads, dead: 0, fromMm, toMm });
  });
}

const FIRST_HEADS: Readonly<Record<string, number>> = { cricket: 1.6, roach: 0.5, mealworm: 0.1 };

/** A world as it stands, to go on from more than once; what is true of it is shared. */
export const copyOf = ({ room, truth, noted, day, coloniesCents: worth, ...state }: House): House => ({
  room,
  truth,
  noted,
  day,
  coloniesCents: worth,
  ...structuredClone(state),
});

/** Lives through a week from its Sunday on, and looks through the tubs on the next. */
export function live(house: House, { orders, harvests, rests }: Steps): void {
  const { room, truth, animals, larder, post } = house;
  for (const tub of larder.tubs)
    if (tub) tub.restsUntil = rests.find((rest) => rest.tub === tub.code)?.until ?? house.day;
  for (let day = house.day; day < house.day + 7; day += 1) {
    for (const order of orders) if (order.day === day) place(post, truth, order);
    morning(post, { larder, truth, day });
    for (const each of harvests) if (each.day === day) harvest(larder, truth, each);
    for (let i = 0; i < animals.count; i += 1)
      if (stirs(animals, i, day)) wake(room, truth, { animals, i, day });
    feed({ ...house, day });
  }
  house.day += 7;
  crash(larder, house.day - 1);
  bear(larder, truth, { colonies: room.colonies, day: house.day });
  lookThrough(house);
}

const COUNTS = 0.5;
const COUNT_LOG_SD = 0.05;
const EYE_LOG_SD = 0.1;
const NOT_WORTH_KEEPING = 3;

/** Sunday: every tub is looked at, about half are counted, a few leftovers are thrown out. */
function lookThrough({ larder, truth, day, noted }: House): void {
  const found = noted ? bandsByTub(larder, truth, day) : null;
  larder.tubs.forEach((tub, t) => {
    if (!tub) return;
    if (tub.alive <= NOT_WORTH_KEEPING && tub.colonyRoom === null) {
      throwOut(larder, t, day - 1);
      return;
    }
    if (!found) return;
    const bands = found.subarray(t * BANDS, (t + 1) * BANDS);
    const { heads, middleMm } = seenIn(bands);
    const key = keyOf(keyOf(tub.key, 77), day);
    tub.looksMm = (middleMm ?? tub.looksMm) * logNormal(key, 0, EYE_LOG_SD);
    if (tub.colonyRoom === null)
      tub.events.push({ day, what: 'looks', fromMm: tub.looksMm * 0.85, toMm: tub.looksMm * 1.15 });
    if (uniform(key, 1) >= (tub.colonyRoom === null ? COUNTS : COUNTS / 2)) return;
    tub.book = Math.round(heads * logNormal(key, 2, COUNT_LOG_SD));
    const grown = Math.round((bands[grownBand(tub)] as number) * logNormal(key, 3, COUNT_LOG_SD));
    const apart = tub.colonyRoom === null ? null : Math.min(tub.book, grown);
    tub.events.push({ day, what: 'counted', heads: tub.book, grown: apart });
  });
}

/** The grown of a breed are all of one length, which nobody reaches before. */
const grownBand = ({ form }: Tub): number => bandOf(BREEDS[form].lengths.at(-1)?.[1] ?? 0);

/** Heads of a tub and the length of the one in the middle; null of none. */
function seenIn(bands: Int32Array): { heads: number; middleMm: number | null } {
  const heads = bands.reduce((sum, n) => sum + n, 0);
  let below = 0;
  for (let band = 0; band < BANDS; band += 1) {
    below += bands[band] as number;
    if (below * 2 > heads) return { heads, middleMm: BAND_MM[band] as number };
  }
  return { heads, middleMm: null };
}
