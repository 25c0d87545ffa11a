/**
 * Harvests: what is eaten out of a colony in a period, as much in all as is enough with the chance at which stock
 * stands ready, of each trade size its share of the mean. What is out and not eaten is prey still, while what stays may
 * grow into breeders that nobody is fed.
 */
import { meanOf } from '../../maths/mean.ts';
import { sortedQuantile } from '../../maths/quantile.ts';
import { civilDate } from '../calendar.ts';
import type { SizeClass } from '../prey/index.ts';
import type { Mm } from '../units.ts';
import type { PlanLine } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { eatenBy, type LivedInFates, type Taken } from './lived-in-fates.ts';
import { countedOn, type Node, type Nodes } from './nodes.ts';
import type { Place } from './place-of.ts';
import type { Decisions } from './proposal.ts';

interface Harvesting extends Pick<Decisions, 'rests'> {
  readonly lived: LivedInFates;
  /** Chance with which what is taken out is enough. */
  readonly level: number;
}

/** One line a size; less than half a head is none. What is left alone is not harvested. */
export function harvestLines(laid: LaidOut, { lived, level, rests }: Harvesting): PlanLine[] {
  const { policy } = laid.snapshot.facts;
  return laid.places.flatMap((place, p) => {
    const bin = place.bins[0]?.bin.code;
    if (place.role !== 'colony' || bin === undefined) return [];
    const mostMm = leavingBreeders(place);
    const resting = rests[laid.problem.rests.findIndex((rest) => rest.place === p)] ?? 0;
    return laid.periods.flatMap(({ from, days }, t) => {
      if (t < resting) return [];
      const all = takenInFates(laid, lived, { p, t, size: null });
      const times = sortedQuantile(all.toSorted(), level) / meanOf(all);
      return place.chain.species.sizeClasses.value.flatMap((size): PlanLine[] => {
        const mean = meanOf(takenInFates(laid, lived, { p, t, size }));
        const heads = mean > 0 ? Math.round(times * mean) : 0;
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
            toMm: Math.min(size.toMm, mostMm),
            day: from,
          },
        ];
      });
    });
  });
}

/** Greatest whole length that is not yet grown, where the grown are kept to breed and look like their young. */
function leavingBreeders({ bin, chain: { species } }: Place): Mm {
  return bin.keepAdults && species.adult.fed
    ? Math.ceil(species.adultLengthMm.value) - 1
    : Number.POSITIVE_INFINITY;
}

/** A size by where it begins. */
type Size = Pick<SizeClass, 'fromMm'>;

/** A place and a period, as `laid.places` and `laid.periods` count them. */
interface Taking {
  readonly p: number;
  readonly t: number;
  /** Null: of all sizes. */
  readonly size: Size | null;
}

/** Heads taken out of a place in a period by each of the fine groups in the mean, and the items they stand for. */
export function takenOf(laid: LaidOut, lived: LivedInFates, taking: Taking): Taken[] {
  const place = laid.fine.placeOf[taking.p] as number;
  const counts = nodesOf(laid, taking);
  return laid.fine.eaters.map((_, e) =>
    eatenBy(laid.fine, lived, { e, t: taking.t, from: (at, n) => at === place && (counts[n] as boolean) }),
  );
}

/** Heads taken out of it by all in each fate. */
export function takenInFates(laid: LaidOut, { fates, taken }: LivedInFates, taking: Taking): Float64Array {
  const { nodes, placeOf } = laid.fine;
  const place = placeOf[taking.p] as number;
  const { first, all } = countedOn(nodes);
  const counts = nodesOf(laid, taking);
  return Float64Array.from({ length: fates }, (_, fate) => {
    const at = (fate * laid.periods.length + taking.t) * all + (first[place] as number);
    return counts.reduce((sum, is, n) => sum + (is ? (taken[at + n] as number) : 0), 0);
  });
}

/** Which nodes of a place are of the size. */
function nodesOf({ fine, places }: LaidOut, { p, size }: Taking): boolean[] {
  const sizes = (places[p] as Place).chain.species.sizeClasses.value;
  const { all } = fine.nodes[fine.placeOf[p] as number] as Nodes;
  return all.map((node) => size === null || isOf(node, size, sizes));
}

/** Every node is of one size: the first that holds its middle, else the one nearest to it. */
function isOf({ fromMm, toMm }: Node, size: Size, sizes: readonly SizeClass[]): boolean {
  const mm = (fromMm + toMm) / 2;
  const away = (each: SizeClass) => Math.max(each.fromMm - mm, mm - each.toMm);
  const nearest = sizes.reduce((best, each) => (away(each) < away(best) ? each : best));
  const own = sizes.find((each) => each.fromMm <= mm && mm < each.toMm) ?? nearest;
  return own.fromMm === size.fromMm;
}
