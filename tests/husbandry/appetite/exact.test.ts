/** The closed form of demand against the simulation: the same law, to within what chance allows. */
import { describe, expect, it } from 'vitest';
import type { Animal } from '../../../src/husbandry/animals/animal.ts';
import type { Kind, StageRule } from '../../../src/husbandry/animals/kind.ts';
import { exactItems } from '../../../src/husbandry/appetite/exact.ts';
import { feedingDaysFrom } from '../../../src/husbandry/appetite/feeding-days.ts';
import { rosterOf } from '../../../src/husbandry/appetite/roster.ts';
import type { FeedingCalendar } from '../../../src/husbandry/calendar.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { forecastDemand, type GroupDemand } from '../../../src/husbandry/supply/demand.ts';
import { convolve, momentsOf } from '../../../src/maths/convolve.ts';
import { animalWith, facts, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const REPLICATES = 4000;
const STANDARD_ERRORS = 4;

const source = { unit: '1', source: 'invented', status: 'yours' } as const;
const said = <T>(value: T) => ({ value, ...source });

/** A tarantula whose moults are over, with a meal and an interval made for the test. */
function grownKind(code: string, meal: Partial<StageRule>): Kind {
  const base = facts.kinds.get('brachypelma-hamorii') as Kind;
  const adult = base.stages.find(({ stage }) => stage === 'adult') as StageRule;
  const steady = said([{ from: 0, to: 1, acceptance: 0.8 }]);
  return {
    ...base,
    code,
    stages: [{ ...adult, fromShareOfAdult: 0, moult: null, acceptance: steady, ...meal }],
  };
}

const kinds = [
  grownKind('weekly', {
    mealItems: said([1, 3] as const),
    intervalDays: said([5, 9] as const),
    retryDays: said(4),
  }),
  grownKind('rare', {
    mealItems: said([2, 2] as const),
    intervalDays: said([14, 21] as const),
    retryDays: said(7),
  }),
  grownKind('daily', {
    mealItems: said([0, 2] as const),
    intervalDays: said([1, 2] as const),
    retryDays: said(1),
  }),
];

const roomOf = (over: Partial<Snapshot> & { policy?: Snapshot['facts']['policy'] }): Snapshot => {
  const { policy = policyWith({ eveningSkippedChance: 0, generosityCv: 0 }), ...rest } = over;
  const all = new Map(kinds.map((kind) => [kind.code, kind]));
  return snapshotWith({ facts: { ...facts, kinds: all, policy }, ...rest });
};

const grown = (code: string, over: Partial<Animal> = {}): Animal =>
  animalWith({ code, kind: 'weekly', gaugeMm: 130, ...over });

const TUESDAYS_AND_SATURDAYS: FeedingCalendar = {
  feedingWeekdays: [false, true, false, false, false, true, false],
  absences: [{ from: TODAY + 9, to: TODAY + 13 }],
};

const rooms: readonly (readonly [string, Snapshot])[] = [
  [
    'fed on any evening, with known last meals',
    roomOf({ animals: [1, 3, 6, 8].map((ago) => grown(`A${ago}`, { lastTaken: TODAY - ago })) }),
  ],
  ['never recorded before', roomOf({ animals: ['A1', 'A2', 'A3'].map((code) => grown(code)) })],
  [
    'fed twice a week with days away, one of them refused and one long overdue',
    roomOf({
      calendar: TUESDAYS_AND_SATURDAYS,
      animals: [
        grown('A1', { lastTaken: TODAY - 8, lastOffered: TODAY - 2, lastOutcome: 'refused' }),
        grown('A2', { lastTaken: TODAY - 40 }),
        grown('A3', { lastTaken: TODAY }),
      ],
    }),
  ],
  [
    'fed rarely, with a record of refusals',
    roomOf({
      animals: ['A1', 'A2'].map((code) =>
        grown(code, { kind: 'rare', lastTaken: TODAY - 10, offersOnRecord: 20, takenOnRecord: 12 }),
      ),
    }),
  ],
  [
    'fed almost daily, some of them a group alike',
    roomOf({
      animals: [
        grown('A1', { kind: 'daily', count: 7 }),
        grown('A2', { kind: 'daily', lastTaken: TODAY - 1 }),
      ],
    }),
  ],
];

const sumOfWeeks = (group: GroupDemand) => group.cumulative[group.cumulative.length - 1]!;

/** Fourth central moment of what the room wants in three weeks: the variance of n draws has error sqrt((m4 - v^2)/n). */
function fourthMoment(snapshot: Snapshot): number {
  const roster = rosterOf(snapshot, 1);
  const days = 3 * 7;
  const feeding = feedingDaysFrom(snapshot.calendar, snapshot.today, days + 40);
  const law = roster.codes
    .map((_, i) => exactItems(roster, i, { feeding, days })!)
    .reduce((sum, row) => convolve(sum, row));
  const { mean } = momentsOf(law);
  return law.reduce((sum, chance, k) => sum + chance * (k - mean) ** 4, 0);
}

describe.each(rooms)('a room %s', (_, snapshot) => {
  const { groups, exactShare } = forecastDemand(snapshot, { weeks: 3, replicates: REPLICATES });
  const group = groups[0]!;

  it('has a closed form for everybody', () => {
    expect(groups).toHaveLength(1);
    expect(exactShare).toBe(1);
  });

  it('wants as many items on average, in all and in each week', () => {
    const simulated = sumOfWeeks(group);
    const error = Math.sqrt(simulated.variance / REPLICATES);
    expect(Math.abs(simulated.mean - group.exact.whole!.mean)).toBeLessThan(STANDARD_ERRORS * error);
    group.weeks.forEach(({ mean, variance }, week) => {
      expect(Math.abs(mean - group.exact.weekMeans![week]!)).toBeLessThan(
        STANDARD_ERRORS * Math.sqrt(variance / REPLICATES) + 1e-9,
      );
    });
    const ofWeeks = group.exact.weekMeans!.reduce((a, b) => a + b, 0);
    expect(ofWeeks).toBeCloseTo(group.exact.whole!.mean, 9);
  });

  it('varies as much', () => {
    const { variance } = group.exact.whole!;
    const error = Math.sqrt((fourthMoment(snapshot) - variance ** 2) / REPLICATES);
    expect(Math.abs(sumOfWeeks(group).variance - variance)).toBeLessThan(STANDARD_ERRORS * error);
  });

  it('has the same 5, 50 and 95 % quantiles, to one item', () => {
    const { low, mid, high } = sumOfWeeks(group);
    const exact = group.exact.whole!;
    expect(Math.abs(low - exact.low)).toBeLessThanOrEqual(1);
    expect(Math.abs(mid - exact.mid)).toBeLessThanOrEqual(1);
    expect(Math.abs(high - exact.high)).toBeLessThanOrEqual(1);
  });
});

describe.each([
  ['of changing generosity', { meals: 0, items: 0 }],
  ['who on record gives half of what is meant', { meals: 100, items: 100 }],
  ['who on record gives half as much again', { meals: 100, items: 300 }],
])('with evenings skipped and a keeper %s', (_, givenOnRecord) => {
  const policy = policyWith({ eveningSkippedChance: 0.2, generosityCv: 0.3 });
  const animals = [1, 4, 7].map((ago) => grown(`A${ago}`, { lastTaken: TODAY - ago, givenOnRecord }));
  const [group] = forecastDemand(roomOf({ policy, animals, calendar: TUESDAYS_AND_SATURDAYS }), {
    weeks: 3,
    replicates: REPLICATES,
  }).groups;

  it('the mean of each week is exact all the same', () => {
    group!.weeks.forEach(({ mean, variance }, week) => {
      expect(Math.abs(mean - group!.exact.weekMeans![week]!)).toBeLessThan(
        STANDARD_ERRORS * Math.sqrt(variance / REPLICATES),
      );
    });
  });

  it('no distribution is claimed, since animals share these causes', () => {
    expect(group!.exact.whole).toBeNull();
  });
});

it('claims no closed form for animals that still moult', () => {
  const young = animalWith({ code: 'A1', kind: 'brachypelma-hamorii', gaugeMm: 20, lastTaken: TODAY - 2 });
  const { groups, exactShare } = forecastDemand(snapshotWith({ animals: [young] }), { weeks: 2 });
  expect(exactShare).toBe(0);
  expect(groups[0]!.exact).toEqual({ share: 0, weekMeans: null, whole: null });
});
