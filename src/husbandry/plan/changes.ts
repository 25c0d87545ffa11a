/**
 * The changes a search tries: a pack more or less, a line dropped, swapped or moved, a whole parcel left out or moved, a
 * colony left alone.
 */
import { growsInto } from './grows-into.ts';
import type { PlanPack, PlanParcel, PlanProblem } from './problem.ts';
import type { Decisions } from './proposal.ts';
import { undated } from './undated.ts';

export interface Draft {
  readonly packs: number[][];
  readonly cups: number[];
  readonly rests: number[];
}

/** Acts on the draft as it then is. */
export type Change = (draft: Draft) => void;

export const copyOf = ({ packs, cups, rests }: Decisions): Draft => ({
  packs: packs.map((row) => [...row]),
  cups: [...cups],
  rests: [...rests],
});

/** All changes worth trying, of what is in the plan before what is not; each acts on the draft as it then is. */
export function changesOf(problem: PlanProblem, { packs, cups, rests }: Decisions): Change[] {
  const sent = problem.parcels.flatMap((_, i) => (packs[i]?.some((count) => count > 0) ? [i] : []));
  const lines = sent.flatMap((i) =>
    (packs[i] ?? []).flatMap((count, j) => (count > 0 ? [{ i, j, count }] : [])),
  );
  return [
    ...sent.flatMap((i) => wholeParcel(problem, i)),
    ...lines.flatMap((line) => changesOfLine(problem, line)),
    ...resting(problem, rests),
    ...cups.flatMap((count, i) => [startingCups(i, 1), ...(count > 0 ? [startingCups(i, -1)] : [])]),
    ...problem.parcels.flatMap(({ packs: row }, i) =>
      row.flatMap((_, j) => (sent.includes(i) ? [adding(i, j, 1)] : [adding(i, j, 1), adding(i, j, 2)])),
    ),
  ];
}

interface Line {
  readonly i: number;
  readonly j: number;
  readonly count: number;
}

/** A line left out, doubled, a pack less, up to a price break, moved, or bought otherwise. */
function changesOfLine(problem: PlanProblem, { i, j, count }: Line): Change[] {
  const breaks = problem.parcels[i]?.packs[j]?.breaks.slice(1) ?? [];
  return [
    adding(i, j, -count),
    ...growing(problem, { i, j }),
    ...moving(problem, { i, j }),
    ...swapping(problem, { i, j }),
    adding(i, j, -1),
    adding(i, j, count),
    ...breaks.flatMap(({ fromPacks }) => (count < fromPacks ? [adding(i, j, fromPacks - count)] : [])),
  ];
}

/** A place left alone for a week more or less, not at all, or to the end; or all of them. */
function resting({ rests: places, periods }: PlanProblem, rests: readonly number[]): Change[] {
  const single = places.flatMap((_, i) => {
    const now = rests[i] as number;
    const lengths = new Set([0, now - 1, now + 1, periods].filter((n) => n >= 0 && n !== now));
    return [...lengths].map((n) => leaving(n, i, i + 1));
  });
  return places.length > 1 ? [...single, leaving(0), leaving(periods)] : single;
}

const leaving =
  (periods: number, ...among: readonly number[]): Change =>
  ({ rests }) =>
    void rests.fill(periods, ...among);

const startingCups =
  (i: number, more: number): Change =>
  ({ cups }) => {
    cups[i] = (cups[i] as number) + more;
  };

const adding =
  (i: number, j: number, more: number): Change =>
  ({ packs }) => {
    const row = packs[i] as number[];
    row[j] = Math.max(0, (row[j] as number) + more);
  };

/** A line in place of which another of the same period is bought, for as much money. */
function swapping({ parcels }: PlanProblem, { i, j }: { i: number; j: number }): Change[] {
  const own = parcels[i] as PlanParcel;
  const cents = own.packs[j]?.breaks[0]?.cents ?? 0;
  return parcels.flatMap((parcel, at) => {
    if (parcel.period !== own.period) return [];
    return parcel.packs.flatMap((pack, to): Change[] => {
      const each = pack.breaks[0]?.cents ?? 0;
      if ((at === i && to === j) || each <= 0) return [];
      return [
        ({ packs }) => {
          const worth = (packs[i]?.[j] as number) * cents;
          (packs[i] as number[])[j] = 0;
          const row = packs[at] as number[];
          row[to] = (row[to] as number) + Math.max(1, Math.round(worth / each));
        },
      ];
    });
  });
}

/** A line in place of which as many heads of its species come earlier in another size, to grow into it until then. */
function growing(problem: PlanProblem, { i, j }: { i: number; j: number }): Change[] {
  const line = problem.parcels[i]?.packs[j] as PlanPack;
  return growsInto(problem, { parcel: i, pack: j }).map(({ parcel, pack }): Change => {
    const other = problem.parcels[parcel]?.packs[pack] as PlanPack;
    return ({ packs }) => {
      const heads = (packs[i]?.[j] as number) * headsIn(line);
      (packs[i] as number[])[j] = 0;
      const row = packs[parcel] as number[];
      row[pack] = (row[pack] as number) + Math.max(1, Math.round(heads / headsIn(other)));
    };
  });
}

const headsIn = ({ brings }: PlanPack): number => brings.reduce((sum, n) => sum + n, 0);

/** A line put into another parcel of its supplier, the nearest before and after. */
function moving({ parcels }: PlanProblem, { i, j }: { i: number; j: number }): Change[] {
  const offer = offerIn(parcels[i] as PlanParcel, j);
  const others = parcels.flatMap((parcel, at) => {
    const to = parcel.packs.findIndex((_, k) => offerIn(parcel, k) === offer);
    return at !== i && to >= 0 ? [{ at, to, gap: parcel.period - (parcels[i]?.period ?? 0) }] : [];
  });
  const near = [others.filter(({ gap }) => gap < 0).at(-1), others.find(({ gap }) => gap > 0)];
  return near.flatMap((other): Change[] =>
    other
      ? [
          ({ packs }) => {
            const count = packs[i]?.[j] as number;
            (packs[i] as number[])[j] = 0;
            (packs[other.at] as number[])[other.to] = (packs[other.at]?.[other.to] as number) + count;
          },
        ]
      : [],
  );
}

const offerIn = ({ packs }: PlanParcel, j: number): string => undated((packs[j] as PlanPack).key);

/** A parcel left out, or all of it put into the one before or after. */
function wholeParcel({ parcels }: PlanProblem, i: number): Change[] {
  const parcel = parcels[i] as PlanParcel;
  const supplier = undated(parcel.key);
  const same = parcels
    .map((other, at) => ({ other, at }))
    .filter(({ other, at }) => at !== i && undated(other.key) === supplier);
  const out: Change = ({ packs }) => void (packs[i] as number[]).fill(0);
  return [
    out,
    ...same.map(
      (to): Change =>
        ({ packs }) => {
          const row = packs[i] as number[];
          row.forEach((count, j) => {
            const k = to.other.packs.findIndex((_, at) => offerIn(to.other, at) === offerIn(parcel, j));
            if (k < 0) return;
            (packs[to.at] as number[])[k] = (packs[to.at]?.[k] as number) + count;
            row[j] = 0;
          });
        },
    ),
  ];
}
