/** Harvests: what is eaten out of a colony in a period, in the mean of the plan's fates, by trade size. */
import { civilDate } from '../calendar.ts';
import type { SizeClass } from '../prey/index.ts';
import type { PlanLine } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { eatenBy, type LivedInFates, type Taken } from './lived-in-fates.ts';
import type { Node, Nodes } from './nodes.ts';

/** One place in one period, as `laid.places` and `laid.periods` count them. */
export interface TakenAt {
  readonly p: number;
  readonly t: number;
}

/** One line a size; less than half a head is none. */
export function harvestLines(laid: LaidOut, lived: LivedInFates): PlanLine[] {
  const { policy } = laid.snapshot.facts;
  return laid.places.flatMap((place, p) => {
    const bin = place.bins[0]?.bin.code;
    if (place.role !== 'colony' || bin === undefined) return [];
    return laid.periods.flatMap(({ from, days }, t) =>
      place.chain.species.sizeClasses.value.flatMap((size): PlanLine[] => {
        const heads = Math.round(takenOf(laid, lived, { p, t, size }).reduce((sum, n) => sum + n.heads, 0));
        if (heads < 1) return [];
        return [
          {
            pinned: false,
            reason: null,
            key: `harvest:${bin}:${size.name}@${civilDate(from)}`,
            actBy: from + days - 1,
            species: place.species,
            heads,
            cents: 0,
            minutes: policy.planHarvestMinutes.value,
            what: 'harvest',
            bin,
            fromMm: size.fromMm,
            toMm: size.toMm,
            day: from,
          },
        ];
      }),
    );
  });
}

/** Heads of a size taken out of a place in a period by each of the fine groups, and the items they stand for. */
export function takenOf(
  { fine }: LaidOut,
  lived: LivedInFates,
  { p, t, size }: TakenAt & { readonly size: Pick<SizeClass, 'fromMm' | 'toMm'> },
): Taken[] {
  const place = fine.placeOf[p] as number;
  const { all } = fine.nodes[place] as Nodes;
  return fine.eaters.map((_, e) =>
    eatenBy(fine, lived, { e, t, from: (at, n) => at === place && isWithin(all[n] as Node, size) }),
  );
}

/** A node is of the size its middle is of. */
function isWithin({ fromMm, toMm }: Node, size: { fromMm: number; toMm: number }): boolean {
  const middle = (fromMm + toMm) / 2;
  return size.fromMm <= middle && middle < size.toMm;
}
