/**
 * A box worked out by hand. Six animals take one cricket of 4-8 mm a day: 42 in a week. Crickets stand in a room of
 * 25 C, ten degrees above the threshold, and half of those still growing become adult, and too large for everybody, in
 * a week (70 degree-days). A pack is 100 crickets of 4-8 mm at 5.00, postage 5.00; the box comes today, and a week is
 * judged in its middle, three days on: of a pack 100 x 2^(-3/7) = 74.3 are still growing then.
 *
 *     packs   first week       second               third             eaten   cost    a head eaten
 *       1     74.3: 42 eaten   (32.3/2) 16.1 eaten                     58.1   10.00      17.2
 *       2     148.6: 42        53.3: 42             5.6 eaten          89.6   15.00      16.7
 *       3     222.9: 42        90.4: 42             24.2 eaten        108.2   20.00      18.5
 *       4     297.2: 42        127.6: 42            42.8: 42          126.0   25.00      19.8  (then 0.4 more)
 *
 * The price falls from one pack to two, and rises from then on.
 */
import { describe, expect, it } from 'vitest';
import { decidedOf, lineOf } from '../../../src/husbandry/plan/bulk-point.ts';
import { withPlan } from '../../../src/husbandry/plan/deliver.ts';
import { type BulkAnswer, bulkOrder } from '../../../src/husbandry/plan/index.ts';
import { layOut } from '../../../src/husbandry/plan/lay-out.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { judge } from '../../../src/husbandry/supply/index.ts';
import { estimate } from '../../../src/maths/estimate.ts';
import { given, pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { marketWith, mixedMarket, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, certainPolicy, mixedAnimals, snapshotWith, TODAY } from '../../support/room.ts';

const WEEKS = 6;
const GROWING = 100 * 2 ** (-3 / 7);

const eater = pencilKind({
  code: 'small-one',
  prey: [4, 8],
  intervalDays: [1, 1],
  graceDays: 0,
  safeGapDays: 9,
  urgency: 'ordinary',
  words: 'small one',
});
const supplier = supplierWith({
  code: 'S1',
  transitDays: 0,
  cutOffDays: 0,
  dispatchWeekdays: Array<boolean>(7).fill(true),
  postage: { flatCents: 500, perKgCents: 0, freeFromCents: null },
  lossShare: 0,
  overCountShare: 0,
});
const offer = offerWith({ code: 'F1', supplier: 'S1', species: 'cricket', fromMm: 4, toMm: 8 });

function room(over: { offer?: Partial<typeof offer>; supplier?: Partial<typeof supplier> } = {}): Snapshot {
  return snapshotWith({
    animals: Array.from({ length: 6 }, (_, i) =>
      animalWith({ code: `A${i}`, kind: 'small-one', gaugeMm: 10, lastTaken: TODAY - 1 }),
    ),
    rooms: [{ code: 'room', name: 'Room', dayTempC: 25, nightTempC: 25 }],
    facts: pencilFacts([eater], [pencilPrey('cricket', [4, 8])], {
      ...certainPolicy,
      planKeepShare: given(0),
    }),
    market: marketWith({
      suppliers: [{ ...supplier, ...over.supplier }],
      offers: [{ ...offer, ...over.offer }],
    }),
  });
}

const asked = (over: Parameters<typeof room>[0] = {}) => {
  const answer = bulkOrder(room(over), { offer: 'F1', weeks: WEEKS });
  if (typeof answer === 'string') throw new Error(answer);
  return answer;
};
const now = (over: Parameters<typeof room>[0] = {}) => asked(over).curves[0]!;

/** Eaten of a box by the week's halving, as on paper. */
function onPaper(packs: number): number {
  let here = packs * GROWING;
  let eaten = 0;
  for (let week = 0; week < WEEKS; week++) {
    const takes = Math.min(42, here);
    eaten += takes;
    here = (here - takes) / 2;
  }
  return eaten;
}

describe('how many the box should hold, by hand', () => {
  const { points, best } = now();

  it('eats what the pencil finds, and costs what goods and postage come to', () => {
    expect(points.length).toBeGreaterThan(4);
    for (const { packs, eaten, cents, centsPerEaten } of points) {
      expect(eaten).toBeCloseTo(onPaper(packs), 6);
      expect(cents).toBe(500 + 500 * packs);
      expect(centsPerEaten).toBeCloseTo(cents / onPaper(packs), 6);
    }
  });

  it('falls from one pack to two and rises from then on: two are best', () => {
    const price = points.map(({ centsPerEaten }) => centsPerEaten as number);
    expect(price.slice(0, 4).map((cents) => Number(cents.toFixed(1)))).toEqual([17.2, 16.7, 18.5, 19.8]);
    expect(price.slice(1)).toEqual([...price.slice(1)].sort((a, b) => a - b));
    expect(best).toBe(2);
  });

  it('says what ends it: dear heads, nobody to eat them, what there is, or what is worked out', () => {
    expect(now().end).toBe('no use');
    const posted = { flatCents: 0, perKgCents: 0, freeFromCents: null };
    expect(now({ supplier: { postage: posted } }).end).toBe('dear');
    expect(now({ offer: { mostPacks: 2 } }).end).toBe('no more');
    const facts = room().facts;
    const three = bulkOrder(
      { ...room(), facts: { ...facts, policy: { ...facts.policy, bulkPacksMost: given(3) } } },
      { offer: 'F1', weeks: WEEKS },
    );
    expect(typeof three === 'string' ? three : three.curves[0]!.end).toBe('not worked out');
  });

  it('goes no further than twice the least price', () => {
    const dear = points.filter(({ centsPerEaten }) => (centsPerEaten as number) > 2 * (1500 / onPaper(2)));
    expect(dear.length).toBeLessThan(2);
  });

  it('loses nobody: who is not eaten has outgrown everybody, as nothing dies here', () => {
    for (const { packs, heads, eaten, died, outgrown, left } of points) {
      expect(heads).toBeCloseTo(100 * packs, 6);
      expect(died).toBeLessThan(1e-6);
      expect(eaten + outgrown + left).toBeCloseTo(100 * packs, 6);
    }
  });

  it('tells what each head more costs that the last pack feeds', () => {
    const [, second] = points;
    expect(second?.centsPerMoreEaten).toBeCloseTo(500 / (onPaper(2) - onPaper(1)), 6);
  });

  it('tells where the box is each week: half as many still growing', () => {
    const { weeks } = asked();
    const growing = weeks.map(({ bands }) =>
      bands.reduce((sum, { toMm, fromMm, heads }) => sum + (toMm > fromMm ? heads : 0), 0),
    );
    expect(growing[0]).toBeCloseTo(2 * GROWING - 42, 6);
    expect(growing[1]).toBeCloseTo(growing[0]! / 2 - 42, 6);
  });
});

describe('how many the box should hold, asked otherwise', () => {
  const atPacks = (count: number, over: Parameters<typeof room>[0] = {}) =>
    now(over).points.find(({ packs }) => packs === count);

  it('falls where a price break is reached, and names the best at each price', () => {
    const over = {
      offer: {
        prices: [
          { fromPacks: 1, packCents: 500 },
          { fromPacks: 3, packCents: 300 },
        ],
      },
    };
    expect(atPacks(3, over)?.cents).toBe(500 + 900);
    expect(atPacks(3, over)?.centsPerEaten).toBeLessThan(atPacks(2, over)?.centsPerEaten as number);
    expect(asked(over).breaks.map(({ fromPacks, best }) => [fromPacks, best?.packs])).toEqual([
      [1, 2],
      [3, 3],
    ]);
  });

  it('spares the postage from the sum on that is sent free', () => {
    const over = { supplier: { postage: { flatCents: 500, perKgCents: 0, freeFromCents: 1500 } } };
    expect(atPacks(2, over)?.cents).toBe(1500);
    expect(atPacks(3, over)?.cents).toBe(1500);
  });

  it('begins with the fewest packs that are sent alone', () => {
    expect(now({ supplier: { minimumCents: 1200 } }).points[0]?.packs).toBe(3);
  });

  it('outgrows sooner in a warmer bin, and later in a cooler one', () => {
    const [usual, cooler, warmer] = asked().curves;
    expect([usual, cooler, warmer].map((curve) => curve?.warmerC)).toEqual([0, -4, 4]);
    expect(warmer?.tempC).toEqual({ minC: 29, maxC: 29 });
    for (let i = 0; i < 3; i++) {
      const at = [cooler, usual, warmer].map((curve) => curve!.points[i]!);
      expect(at.map(({ outgrown }) => outgrown)).toEqual(
        at.map(({ outgrown }) => outgrown).sort((a, b) => a - b),
      );
      expect(at[0]!.eaten).toBeGreaterThan(at[1]!.eaten);
      expect(at[1]!.eaten).toBeGreaterThan(at[2]!.eaten);
    }
  });

  it('says why no count can be named', () => {
    const why = (from: Snapshot, code = 'F1') => bulkOrder(from, { offer: code, weeks: WEEKS });
    expect(why({ ...room(), animals: [] })).toBe('nobody eats');
    expect(why(room({ supplier: { transitDays: 90 } }))).toBe('cannot come');
    expect(why(room({ supplier: { minimumCents: 100_000 } }))).toBe('under minimum');
    expect(why(room(), 'F9')).toBe('unknown');
  });
});

describe('a bulk order in a mixed room', () => {
  const mixed = snapshotWith({
    animals: mixedAnimals(40),
    market: { ...mixedMarket },
  });
  const offers = ['O1', 'O2', 'O4'];
  const answers = offers.map((code) => bulkOrder(mixed, { offer: code, weeks: 8 }) as BulkAnswer);

  /** More packs let the first eaters choose otherwise, so that a box may lose a few meals to another size: 2.4 % at most here. */
  it('eats no fewer with more packs but for three in a hundred, and accounts for every head', () => {
    for (const answer of answers)
      for (const { points } of answer.curves)
        points.forEach(({ heads, eaten, died, outgrown, left }, i) => {
          expect(eaten).toBeGreaterThanOrEqual(0.97 * (points[i - 1]?.eaten ?? 0));
          expect(Math.min(eaten, died, outgrown, left)).toBeGreaterThanOrEqual(0);
          expect(eaten + died + outgrown + left).toBeCloseTo(heads, 6);
        });
  });

  /**
   * Lived through day by day the same boxes were eaten by 758 [739, 777], 333 [328, 339] and 259 [257, 261], 95 %; the
   * weekly programme says 769, 378 and 262: within the interval, 13 % and 1 % above it. It knows each week's meals
   * beforehand and whole bands of lengths, where the engine gives what is nearest to outgrowing evening by evening.
   */
  it('eats within a seventh of what the daily engine eats of the same box', () => {
    for (const [i, answer] of answers.entries()) {
      const { best, points } = answer.curves[0]!;
      const said = points.find(({ packs }) => packs === best)!.eaten;
      const lived = eatenByEngine(mixed, offers[i]!, best);
      expect(said).toBeGreaterThan(lived.low);
      expect(said).toBeLessThan(lived.high * (8 / 7));
    }
  });
});

const WORLDS = 10;

/** The box put into the room as a delivery and lived through day by day, in worlds of several seeds. */
function eatenByEngine(snapshot: Snapshot, code: string, packs: number) {
  const laid = layOut(snapshot, { weeks: 8, wishes: [], supposed: [] });
  const line = lineOf(laid, code)!;
  const decided = decidedOf(line, packs);
  const days = laid.periods.reduce((sum, period) => sum + period.days, 0);
  const eaten = Float64Array.from({ length: WORLDS }, (_, seed) => {
    const { larder } = judge(
      { ...withPlan(laid, decided, new Map()), seed: seed + 1 },
      { days, replicates: 20 },
    );
    return larder.totals.eaten.reduce((a, b) => a + b, 0) / 20;
  });
  return estimate(eaten);
}
