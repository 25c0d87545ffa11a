/** Harvests: what is eaten out of a colony in a period, in the mean of the plan's fates, by trade size. */
import { civilDate } from '../calendar.ts';
import type { SizeClass } from '../prey/index.ts';
import type { PlanLine } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { eatenBy, type LivedInFates, type Taken } from './lived-in-fates.ts';
import type { Node, Nodes } from './nodes.ts';
import type { Place } from './place-of.ts';

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
        const taken = takenOf(laid, lived, { p, t, size });
        const heads = Math.round(taken.reduce((sum, each) => sum + each.heads, 0));
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

type Size = Pick<SizeClass, 'fromMm' | 'toMm'>;

/** Heads of a size, or of all, taken out of a place in a period by each of the fine groups, and the items they stand for. */
export function takenOf(
  { fine, places }: LaidOut,
  lived: LivedInFates,
  { p, t, size }: TakenAt & { readonly size: Size | null },
): Taken[] {
  const place = fine.placeOf[p] as number;
  const sizes = (places[p] as Place).chain.species.sizeClasses.value;
  const counts = (fine.nodes[place] as Nodes).all.map((node) => size === null || isOf(node, size, sizes));
  return fine.eaters.map((_, e) =>
    eatenBy(fine, lived, { e, t, from: (at, n) => at === place && (counts[n] as boolean) }),
  );
}

/** Every node is of one size: the first that holds its middle, else the one nearest to it. */
function isOf({ fromMm, toMm }: Node, size: Size, sizes: readonly SizeClass[]): boolean {
  const mm = (fromMm + toMm) / 2;
  const away = (each: Size) => Math.max(each.fromMm - mm, mm - each.toMm);
  const nearest = sizes.reduce((best, each) => (away(each) < away(best) ? each : best));
  const own = sizes.find((each) => each.fromMm <= mm && mm < each.toMm) ?? nearest;
  return own.fromMm === size.fromMm && own.toMm === size.toMm;
}
