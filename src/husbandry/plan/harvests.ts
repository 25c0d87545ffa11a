/** Harvests: what is eaten out of a colony in a period, in the mean of the plan's fates, by trade size. */
import { civilDate } from '../calendar.ts';
import type { SizeClass } from '../prey/index.ts';
import type { PlanLine } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import type { LivedInFates } from './lived-in-fates.ts';
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
  { eaten }: LivedInFates,
  { p, t, size }: TakenAt & { readonly size: Pick<SizeClass, 'fromMm' | 'toMm'> },
): { heads: number; items: number }[] {
  const place = fine.placeOf[p] as number;
  const before = (at: number) => fine.nodes.slice(0, at).reduce((sum, { all }) => sum + all.length, 0);
  const [first, nodes] = [before(place), before(fine.nodes.length)];
  const { all } = fine.nodes[place] as Nodes;
  return fine.eaters.map(({ fare }, e) => {
    const row = (t * fine.eaters.length + e) * nodes + first;
    const worth = new Map(
      fare.filter((each) => each.place === place).map(({ node, items }) => [node, items]),
    );
    let [heads, items] = [0, 0];
    all.forEach((node, n) => {
      if (!isWithin(node, size)) return;
      const taken = eaten[row + n] as number;
      heads += taken;
      items += taken * (worth.get(n) ?? 0);
    });
    return { heads, items };
  });
}

/** A node is of the size its middle is of. */
function isWithin({ fromMm, toMm }: Node, size: { fromMm: number; toMm: number }): boolean {
  const middle = (fromMm + toMm) / 2;
  return size.fromMm <= middle && middle < size.toMm;
}
