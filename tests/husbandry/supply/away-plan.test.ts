/** Who can wait while the keeper is away, worked by hand; and the fewest visits, against every set of evenings. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awayPlan } from '../../../src/husbandry/supply/away.ts';
import { awayRounds } from '../../../src/husbandry/supply/away-rounds.ts';
import { visitsFor, type Waiting } from '../../../src/husbandry/supply/away-visits.ts';
import { eveningOf } from '../../../src/husbandry/supply/evening.ts';
import { larderAhead, shelvesOn } from '../../../src/husbandry/supply/larder-ahead.ts';
import { animalWith, countedBin, mixedAnimals, mixedBins, snapshotWith, TODAY } from '../../support/room.ts';

/** Spiderlings every 3 to 7 days, 2 days of grace, safe for 10; an adult every 14 to 21 days, safe for 60. */
const KIND = 'brachypelma-hamorii';
const young = (code: string, fedDaysAgo: number) =>
  animalWith({ code, kind: KIND, gaugeMm: 12, lastTaken: TODAY - fedDaysAgo });
const adult = (code: string, fedDaysAgo: number) =>
  animalWith({ code, kind: KIND, gaugeMm: 145, lastTaken: TODAY - fedDaysAgo });
const away = (from: number, to: number) => ({ from: TODAY + from, to: TODAY + to });
const standings = (plan: ReturnType<typeof awayPlan>) =>
  Object.fromEntries(plan.animals.map(({ animal, standing }) => [animal, standing]));

describe('an absence of a week that begins in the morning', () => {
  const animals = [
    young('fed yesterday', 1),
    young('fed four days ago', 4),
    adult('adult', 5),
    { ...young('premoult', 4), premoultSeen: TODAY - 1 },
    { ...young('moulted', 9), lastMoult: { earliest: TODAY - 1, found: TODAY } },
  ];
  const plan = awayPlan(snapshotWith({ animals }), away(0, 5));

  it('lets those wait whose meal is in time on the day of return', () => {
    expect(standings(plan)).toEqual({
      'fed yesterday': 'waits',
      'fed four days ago': 'needs a sitter',
      adult: 'waits',
      premoult: 'leave alone',
      moulted: 'waits',
    });
  });

  it('needs the sitter on the last evening that is in time: 7 days and 2 of grace after it was fed', () => {
    expect(plan.visits).toEqual([{ day: TODAY + 5, animals: ['fed four days ago'] }]);
    expect(plan.absence).toEqual({
      from: TODAY,
      to: TODAY + 5,
      eve: null,
      home: TODAY + 6,
      fedAgain: TODAY + 6,
    });
  });

  it('says why an animal is left alone, and puts the fragile first', () => {
    expect(plan.animals.map(({ urgency }) => urgency)).toEqual([
      'fragile',
      'fragile',
      'fragile',
      'fragile',
      'robust',
    ]);
    expect(plan.animals.find(({ animal }) => animal === 'premoult')?.reason).toContain('about to moult');
  });
});

it('feeding on the eve spares a visit, where the meal may be offered that early', () => {
  const animals = [young('open', 3), young('shut', 1)];
  const calendar = { feedingWeekdays: [true, false, false, false, false, false, false], absences: [] };
  const plan = awayPlan(snapshotWith({ animals, calendar }), away(1, 6));
  expect(plan.absence.eve).toBe(TODAY);
  expect(plan.animals.map(({ animal, fedBefore, standing }) => [animal, fedBefore, standing])).toEqual([
    ['shut', false, 'first when back'],
    ['open', true, 'first when back'],
  ]);
  expect(plan.visits).toEqual([]);
});

it('the usual evenings before leaving are counted as fed', () => {
  const plan = awayPlan(snapshotWith({ animals: [young('A1', 3)] }), away(4, 9));
  const [animal] = plan.animals;
  expect(animal).toMatchObject({ standing: 'waits', meal: { missedAfter: TODAY + 2 + 9 } });
});

it('a robust adult that only misses a meal needs nobody, a large one past its safe gap does', () => {
  const animals = [adult('misses', 10), adult('danger', 20)];
  const none = { feedingWeekdays: Array<boolean>(7).fill(true), absences: [] };
  const plan = awayPlan(snapshotWith({ animals, calendar: none }), away(0, 45));
  expect(standings(plan)).toEqual({ misses: 'misses a meal', danger: 'needs a sitter' });
  expect(plan.animals.find(({ animal }) => animal === 'danger')?.danger).toBe(true);
  expect(plan.visits.map(({ animals }) => animals)).toEqual([['danger']]);
  expect(plan.besides).toEqual([{ day: plan.visits[0]!.day, animals: ['misses'] }]);
});

it('a day or two before the safe gap ends is too close to wait for', () => {
  const plan = (daysAgo: number) => awayPlan(snapshotWith({ animals: [adult('A1', daysAgo)] }), away(0, 29));
  const { absence, animals } = plan(28);
  expect(animals[0]!.meal.dangerAfter - absence.fedAgain).toBe(2);
  expect([28, 29, 30, 31].map((daysAgo) => standings(plan(daysAgo)).A1)).toEqual([
    'misses a meal',
    'needs a sitter',
    'needs a sitter',
    'needs a sitter',
  ]);
});

it('a spiderling is visited again and again while the absence lasts, and never waits too long', () => {
  const plan = awayPlan(snapshotWith({ animals: [young('A1', 0)] }), away(0, 29));
  const days = plan.visits.map(({ day }) => day - TODAY);
  expect(days).toEqual([9, 18, 27]);
});

describe('the fewest visits', () => {
  const once = fc.record({ open: fc.integer({ min: -3, max: 11 }), slack: fc.integer({ min: 0, max: 6 }) });
  const within = { from: 0, to: 11 };
  const waiting = (rows: readonly { open: number; slack: number }[]): Waiting[] =>
    rows.map(({ open, slack }, i) => {
      const missedAfter = Math.max(0, Math.min(11, open + slack));
      return {
        animal: `${i}`,
        meal: { open, missedAfter, dangerAfter: 99 },
        fedOn: () => ({ open: 99, missedAfter: 99, dangerAfter: 99 }),
        cannotWait: () => false,
      };
    });

  it('are as few as any set of evenings that meets everybody in time', () => {
    fc.assert(
      fc.property(fc.array(once, { minLength: 1, maxLength: 9 }), (rows) => {
        const all = waiting(rows);
        const visits = visitsFor(all, within);
        const met = (days: readonly number[]) =>
          all.every(({ meal }) => days.some((day) => meal.open <= day && day <= meal.missedAfter));
        expect(met(visits.map(({ day }) => day))).toBe(true);
        expect(visits.flatMap(({ animals }) => animals).sort()).toEqual(
          all.map(({ animal }) => animal).sort(),
        );
        let fewest = 12;
        for (let set = 0; set < 1 << 12; set++) {
          const days = Array.from({ length: 12 }, (_, day) => day).filter((day) => set & (1 << day));
          if (days.length < fewest && met(days)) fewest = days.length;
        }
        expect(visits).toHaveLength(fewest);
      }),
      { numRuns: 60 },
    );
  });

  const again = fc.record({
    open: fc.integer({ min: -2, max: 3 }),
    wait: fc.integer({ min: 0, max: 3 }),
    min: fc.integer({ min: 1, max: 3 }),
    more: fc.integer({ min: 0, max: 4 }),
  });

  it('come to no more than one over the fewest where some must be fed again and again, and nearly always to the fewest', () => {
    let over = 0;
    const runs = 150;
    fc.assert(
      fc.property(fc.array(again, { minLength: 1, maxLength: 5 }), (rows) => {
        const all = rows.map(
          ({ open, wait, min, more }, i): Waiting => ({
            animal: `${i}`,
            meal: { open, missedAfter: open + wait, dangerAfter: 99 },
            fedOn: (day) => ({ open: day + min, missedAfter: day + min + more, dangerAfter: 99 }),
            cannotWait: ({ missedAfter }) => missedAfter < 12,
          }),
        );
        const visits = visitsFor(all, within);
        const does = (days: readonly number[], each: Waiting, meal = each.meal): boolean =>
          meal.open > 11 ||
          (meal !== each.meal && !each.cannotWait(meal)) ||
          days.some(
            (day) =>
              meal.open <= day &&
              day <= Math.max(Math.min(meal.missedAfter, 11), meal.open, 0) &&
              does(days, each, each.fedOn(day)),
          );
        const days = visits.map(({ day }) => day);
        expect(all.every((each) => does(days, each))).toBe(true);
        let fewest = 12;
        for (let set = 0; set < 1 << 12; set++) {
          const some = Array.from({ length: 12 }, (_, day) => day).filter((day) => set & (1 << day));
          if (some.length < fewest && all.every((each) => does(some, each))) fewest = some.length;
        }
        expect(visits.length - fewest).toBeLessThanOrEqual(1);
        over += visits.length - fewest;
      }),
      { numRuns: runs, seed: 7 },
    );
    expect(over / runs).toBeLessThan(0.05);
  });
});

describe('the rounds of a sitter', () => {
  const bins = [countedBin('B1', 'acheta-domesticus', { heads: 60, fromMm: 3, toMm: 4 })];

  it('take prey that has grown until then out of a bin that fed others before', () => {
    const snapshot = snapshotWith({ animals: [young('A1', 2), young('A2', 6)], bins });
    const plan = awayPlan(snapshot, away(2, 10));
    const rounds = awayRounds(snapshot, plan, false)!;
    expect(rounds.visits.map(({ day }) => day)).toEqual(plan.visits.map(({ day }) => day));
    const offers = rounds.visits.flatMap(({ servings }) => servings.map(({ offer }) => offer));
    expect(offers).toHaveLength(plan.visits.flatMap(({ animals }) => animals).length);
    const taken = offers.reduce((sum, offer) => sum + (offer?.heads ?? 0), 0);
    expect(rounds.prey.reduce((sum, { heads }) => sum + heads, 0)).toBe(taken);
  });

  it('feed on the planned evenings exactly those planned, whatever the room', () => {
    const snapshot = snapshotWith({ animals: mixedAnimals(60), bins: mixedBins(10) });
    const plan = awayPlan(snapshot, away(3, 16));
    const rounds = awayRounds(snapshot, plan, false)!;
    expect(plan.visits.length).toBeGreaterThan(0);
    expect(rounds.visits.map(({ servings }) => servings.map(({ animal }) => animal).sort())).toEqual(
      plan.visits.map(({ animals }) => [...animals].sort()),
    );
    const besides = awayRounds(snapshot, plan, true)!;
    const count = (all: typeof rounds) => all.visits.flatMap(({ servings }) => servings).length;
    expect(count(besides)).toBe(count(rounds) + plan.besides.flatMap(({ animals }) => animals).length);
  });

  it('are not guessed for an absence that begins months ahead', () => {
    const snapshot = snapshotWith({ animals: [young('A1', 2)], bins });
    expect(awayRounds(snapshot, awayPlan(snapshot, away(60, 80)), false)).toBeNull();
  });

  it("a parcel that comes before leaving feeds the sitter's evening, one that comes later does not", () => {
    const lot = { heads: 50, fromMm: 2, toMm: 3 };
    const delivery = (day: number) => ({
      code: 'D1',
      species: 'acheta-domesticus',
      bin: 'B1',
      lot,
      day: TODAY + day,
    });
    const empty = [countedBin('B1', 'acheta-domesticus', { heads: 0, fromMm: 2, toMm: 3 })];
    const offered = (day: number) => {
      const snapshot = snapshotWith({ animals: [young('A1', 0)], bins: empty, deliveries: [delivery(day)] });
      const plan = awayPlan(snapshot, away(2, 12));
      return awayRounds(snapshot, plan, false)!.visits[0]!.servings[0]!.offer;
    };
    expect(offered(1)?.heads).toBeGreaterThan(0);
    expect(offered(3)).toBeNull();
  });
});

it("the larder followed ahead offers tonight what tonight's round offers", () => {
  const snapshot = snapshotWith({ animals: mixedAnimals(60), bins: mixedBins(10) });
  const shelves = shelvesOn(larderAhead(snapshot, 3), 0);
  expect(eveningOf(snapshot, { shelves })).toEqual(eveningOf(snapshot));
});
