/**
 * Rooms that run short, each helped most by another act: that act is proposed, and no act on the list does better when
 * each is judged in full. A room that lasts is left in peace.
 */
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../../src/husbandry/animals/kind.ts';
import type { Bin } from '../../../src/husbandry/larder/bin.ts';
import type { PreySpecies } from '../../../src/husbandry/prey/species.ts';
import type { Snapshot } from '../../../src/husbandry/snapshot.ts';
import { better } from '../../../src/husbandry/supply/acts.ts';
import type { ActKind } from '../../../src/husbandry/supply/answer.ts';
import { candidatesOf } from '../../../src/husbandry/supply/candidates.ts';
import { type CoverOptions, judge } from '../../../src/husbandry/supply/cover.ts';
import { nothingMissed, shortfallOf } from '../../../src/husbandry/supply/summary.ts';
import { sundayCheck } from '../../../src/husbandry/supply/sunday.ts';
import { given, pencilFacts, pencilKind, pencilPrey } from '../../support/pencil-facts.ts';
import { marketWith, offerWith, supplierWith } from '../../support/plan/markets.ts';
import { animalWith, binWith, countedBin, policyWith, snapshotWith, TODAY } from '../../support/room.ts';

const policy = policyWith({ replicates: 60 });
const meal = { intervalDays: [3, 4], graceDays: 1, safeGapDays: 9 } as const;
const young = pencilKind({
  ...meal,
  code: 'young',
  words: 'young one',
  prey: [4, 8],
  urgency: 'fragile',
  portions: 3,
});
const grown = pencilKind({
  code: 'grown',
  words: 'grown one',
  prey: [4, 8],
  intervalDays: [4, 10],
  graceDays: 4,
  safeGapDays: 40,
  urgency: 'robust',
});
const cricket = pencilPrey('cricket', [4, 8]);
const long = pencilPrey('long cricket', [9, 11]);
const inShops: PreySpecies = { ...cricket, sizeClasses: given([{ name: 'small', fromMm: 4, toMm: 8 }]) };
const breeding: PreySpecies = {
  ...pencilPrey('breeder', [4, 8]),
  laying: {
    perFemaleDay: given([{ tempC: 25, perDay: 0.2 }]),
    firstAfterDays: given(5),
    femaleShare: given(0.5),
    hatchShare: given(1),
  },
};

interface Wish {
  readonly kinds?: readonly Kind[];
  readonly species: readonly PreySpecies[];
  readonly bins: readonly Bin[];
  readonly over?: Partial<Snapshot>;
  readonly tempC?: number;
}

/** Six animals, shared out among the kinds, fed 1 to 3 days ago. */
const room = ({ kinds = [young], species, bins, over = {}, tempC = 15 }: Wish): Snapshot =>
  snapshotWith({
    animals: Array.from({ length: 6 }, (_, i) =>
      animalWith({
        code: `A${i}`,
        kind: kinds[i % kinds.length]!.code,
        gaugeMm: 10,
        lastTaken: TODAY - 1 - (i % 3),
      }),
    ),
    bins,
    rooms: [{ code: 'room', name: 'Room', dayTempC: tempC, nightTempC: tempC }],
    facts: pencilFacts(kinds, species, policy),
    ...over,
  });

const box = (species: string, heads: number, [fromMm, toMm]: readonly [number, number]): Bin =>
  countedBin(`box of ${species}`, species, { heads, fromMm, toMm });

const delivery = (day: number, heads: number) => ({
  code: 'D1',
  species: 'cricket',
  bin: 'box of cricket',
  lot: { heads, fromMm: 4, toMm: 8 },
  day: TODAY + day,
});

const ROOMS: readonly (readonly [ActKind, string, Snapshot])[] = [
  [
    'cut prey',
    'only crickets too long to be taken whole',
    room({ species: [long], bins: [box('long cricket', 30, [9, 11])] }),
  ],
  [
    'buy at a shop',
    'nothing in the larder, and shops that sell the right size',
    room({ species: [inShops], bins: [box('cricket', 1, [4, 8])] }),
  ],
  [
    'bring delivery forward',
    'a delivery that comes late in the week',
    room({ species: [cricket], bins: [box('cricket', 3, [4, 8])], over: { deliveries: [delivery(9, 40)] } }),
  ],
  [
    'enlarge delivery',
    'a delivery tomorrow that is too small',
    room({ species: [cricket], bins: [box('cricket', 3, [4, 8])], over: { deliveries: [delivery(1, 7)] } }),
  ],
  [
    'harvest a colony',
    'a colony left in peace beside an empty box',
    room({
      species: [cricket, breeding],
      bins: [
        box('cricket', 1, [4, 8]),
        binWith({
          code: 'colony',
          species: 'breeder',
          role: 'colony',
          restsUntil: Number.POSITIVE_INFINITY,
          events: [{ kind: 'counted', day: TODAY, heads: 200, fromMm: 4, toMm: 8 }],
        }),
      ],
    }),
  ],
  [
    'move to a cooler place',
    'crickets that outgrow everybody within days',
    room({ species: [cricket], bins: [box('cricket', 26, [4, 8])], tempC: 30 }),
  ],
  [
    'stretch adults',
    'grown ones that eat what the young ones need',
    room({ kinds: [young, grown], species: [cricket], bins: [box('cricket', 12, [4, 8])] }),
  ],
];

const OPTIONS: CoverOptions = { days: 12 };

describe.each(ROOMS)('%s', (kind, what, snapshot) => {
  it(`helps most with ${what}, of all acts on the list`, () => {
    const { act, verdict } = sundayCheck(snapshot, OPTIONS);
    expect(verdict).not.toBe('lasts');
    expect(act?.kind).toBe(kind);
    const judged = judge(snapshot, OPTIONS);
    const all = candidatesOf(snapshot, judged, OPTIONS).map((candidate) => {
      const after = judge(candidate.snapshot, candidate.options);
      return {
        kind: candidate.kind,
        after: { ...shortfallOf(after), nothingMissed: nothingMissed(after).chance },
      };
    });
    expect(all.filter(({ after }) => better(after, act!.after) < 0)).toEqual([]);
    expect(better(act!.after, act!.before)).toBeLessThan(0);
  });
});

it('proposes nothing in a room that lasts', () => {
  const full = room({ species: [inShops], bins: [box('cricket', 300, [4, 8])] });
  const { act, verdict } = sundayCheck(full, OPTIONS);
  expect([verdict, act]).toEqual(['lasts', null]);
});

it('sends to no shop for what the shops written down do not sell', () => {
  const [, , short] = ROOMS.find(([kind]) => kind === 'buy at a shop')!;
  const acts = (fromMm: number, toMm: number) => {
    const shop = supplierWith({ code: 'S1', kind: 'shop' });
    const offers = [offerWith({ code: 'F1', supplier: 'S1', species: 'cricket', fromMm, toMm })];
    const market = marketWith({ suppliers: [shop], offers });
    return sundayCheck({ ...short, market }).act?.kind;
  };
  expect(acts(4, 8)).toBe('buy at a shop');
  expect(acts(12, 18)).not.toBe('buy at a shop');
});
