/** Rooms for tests: a snapshot of invented animals and bins, everything else as the product ships it. */
import { kinds, kindsByCode } from '../../src/facts/kinds/index.ts';
import { policy } from '../../src/facts/policy.ts';
import { speciesByCode } from '../../src/facts/prey/index.ts';
import type { Animal } from '../../src/husbandry/animals/animal.ts';
import type { Bin, Lot } from '../../src/husbandry/larder/bin.ts';
import type { Policy } from '../../src/husbandry/policy.ts';
import type { Facts, Snapshot } from '../../src/husbandry/snapshot.ts';
import type { Sourced } from '../../src/husbandry/sourced.ts';

/** A Tuesday. */
export const TODAY = 20_781;

export const facts: Facts = { kinds: kindsByCode, species: speciesByCode, policy };

/** The policy with some values replaced. */
export function policyWith(values: Partial<Record<keyof Policy, number>>): Policy {
  const replaced = Object.entries(values).map(([name, value]) => {
    const old = policy[name as keyof Policy] as Sourced;
    return [name, { ...old, value }];
  });
  return { ...policy, ...Object.fromEntries(replaced) };
}

/** Nothing unknown: no doubt of counts, speeds or hazards, no evening skipped, no parcel late, one replicate's worth. */
export const certainPolicy = policyWith({
  eveningSkippedChance: 0,
  generosityCv: 0,
  roomTempSdC: 0,
  speedLogSd: 0,
  hazardCv: 0,
  dieOffPerDay: 0,
  countCv: 0,
  doubtGrowthPerDay: 0,
  overCountShare: 0,
  overCountCv: 0,
  deadOnArrivalShare: 0,
  deliveryLateChance: 0,
});

export function animalWith(over: Partial<Animal> & Pick<Animal, 'code' | 'kind' | 'gaugeMm'>): Animal {
  return {
    name: over.code,
    count: 1,
    sex: 'unsexed',
    matured: false,
    gaugeAssumed: false,
    room: 'room',
    shelf: 'A',
    lastOffered: over.lastTaken ?? null,
    lastOutcome: over.lastTaken === undefined ? null : 'taken',
    lastTaken: null,
    lastMoult: null,
    premoultSeen: null,
    intervalsOnRecord: [],
    offersOnRecord: 0,
    takenOnRecord: 0,
    refusalsInRow: 0,
    givenOnRecord: { meals: 0, items: 0 },
    stageOverride: null,
    ...over,
  };
}

export const binWith = (over: Partial<Bin> & Pick<Bin, 'code' | 'species'>): Bin => ({
  name: over.code,
  role: 'holding',
  room: 'room',
  capacity: null,
  keepAdults: false,
  events: [],
  ...over,
});

/** A holding bin counted today. */
export const countedBin = (code: string, species: string, lot: Lot): Bin =>
  binWith({
    code,
    species,
    events: [{ kind: 'counted', day: TODAY, heads: lot.heads, fromMm: lot.fromMm, toMm: lot.toMm }],
  });

export const snapshotWith = (over: Partial<Snapshot>): Snapshot => ({
  today: TODAY,
  revision: 1,
  seed: 1,
  animals: [],
  bins: [],
  deliveries: [],
  changes: [],
  rooms: [{ code: 'room', name: 'Room', dayTempC: 26, nightTempC: 24 }],
  calendar: { feedingWeekdays: [true, true, true, true, true, true, true], absences: [] },
  deliveryWeekdays: [false, true, true, true, true, false, false],
  leadTimeDays: 3,
  facts,
  ...over,
});

/** A mixed collection of `n` animals cycling through the kinds, from first-feeding size to adult. */
export function mixedAnimals(n: number): Animal[] {
  return Array.from({ length: n }, (_, i) => {
    const kind = kinds[(i * 7) % kinds.length] as (typeof kinds)[number];
    const [small] = kind.firstFeedingGaugeMm.value;
    const [, large] = kind.adultGaugeMm.value;
    const gaugeMm = small * (large / small) ** (((i * 13) % 29) / 28);
    return animalWith({ code: `A${i}`, kind: kind.code, gaugeMm, lastTaken: TODAY - 1 - ((i * 5) % 9) });
  });
}

/** A larder of bins of crickets, roaches, flies and mealworms in proportion. */
export function mixedBins(scale: number): Bin[] {
  return [
    countedBin('B1', 'acheta-domesticus', { heads: Math.round(4 * scale), fromMm: 2, toMm: 4 }),
    countedBin('B2', 'acheta-domesticus', { heads: Math.round(4 * scale), fromMm: 5, toMm: 9 }),
    countedBin('B3', 'acheta-domesticus', { heads: Math.round(3 * scale), fromMm: 11, toMm: 15 }),
    countedBin('B4', 'gryllodes-sigillatus', { heads: Math.round(2 * scale), fromMm: 12, toMm: 16 }),
    countedBin('B5', 'blaptica-dubia', { heads: Math.round(2 * scale), fromMm: 12, toMm: 30 }),
    countedBin('B6', 'tenebrio-molitor', { heads: Math.round(2 * scale), fromMm: 15, toMm: 25 }),
    binWith({
      code: 'B7',
      species: 'drosophila-hydei',
      role: 'cup',
      events: [{ kind: 'cup looked', look: 'producing', day: TODAY - 3 }],
    }),
    binWith({
      code: 'B8',
      species: 'drosophila-melanogaster',
      role: 'cup',
      events: [{ kind: 'cup looked', look: 'producing', day: TODAY - 2 }],
    }),
    binWith({
      code: 'B9',
      species: 'blaptica-dubia',
      role: 'colony',
      capacity: 4000,
      keepAdults: true,
      events: [{ kind: 'counted', day: TODAY - 5, heads: Math.round(4 * scale), fromMm: null, toMm: null }],
    }),
  ];
}
