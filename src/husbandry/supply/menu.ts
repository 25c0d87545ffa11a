/** What each demand group may eat, laid out in arrays, and the order in which groups draw on the larder. */
import type { DemandGroup } from '../appetite/index.ts';
import { type PreySpecies, takesDead } from '../prey/index.ts';

export interface Menu {
  readonly groups: readonly DemandGroup[];
  readonly species: readonly PreySpecies[];
  /** Lengths at [group * species + s]; a refused species has an empty window (min above max). */
  readonly minMm: Float64Array;
  readonly idealMm: Float64Array;
  readonly liveMaxMm: Float64Array;
  readonly maxMm: Float64Array;
  /** Longest prey that may be cut for the group; equal to maxMm where nothing is cut. */
  readonly cutMaxMm: Float64Array;
  /** Portions one item is cut into. */
  readonly portions: Int32Array;
  /** 1 where the group takes prey that is dead already. */
  readonly takesDead: Uint8Array;
  /** Most of a day's items of this species, share; 1 without a cap. */
  readonly shareCap: Float64Array;
  /** 1 where some species of the group has a cap. */
  readonly hasCaps: Uint8Array;
  /** Groups in the order in which they are served. */
  readonly order: Int32Array;
  /** Longest prey of each species that anybody takes. */
  readonly longestMm: Float64Array;
}

const RANK = { fragile: 0, ordinary: 1, robust: 2 } as const;

/** Lays out the menu; `cut` are the groups for whom larger prey is cut. */
export function menuOf(
  groups: readonly DemandGroup[],
  species: readonly PreySpecies[],
  cut: ReadonlySet<string>,
): Menu {
  const cells = (value: (group: DemandGroup, s: PreySpecies) => number) =>
    Float64Array.from(groups.flatMap((group) => species.map((s) => value(group, s))));
  const maxMm = cells((group, s) => group.windows.get(s.code)?.maxMm ?? Number.NEGATIVE_INFINITY);
  const portions = Int32Array.from(groups, (group) => (cut.has(group.key) ? group.rule.portions.value : 1));
  return {
    groups,
    species,
    minMm: cells((group, s) => group.windows.get(s.code)?.minMm ?? Number.POSITIVE_INFINITY),
    idealMm: cells((group, s) => group.windows.get(s.code)?.idealMm ?? 1),
    liveMaxMm: cells((group, s) => group.windows.get(s.code)?.liveMaxMm ?? Number.NEGATIVE_INFINITY),
    maxMm,
    cutMaxMm: maxMm.map(
      (max, cell) => max * Math.cbrt(portions[Math.floor(cell / species.length)] as number),
    ),
    portions,
    takesDead: Uint8Array.from(groups, ({ rule }) => Number(takesDead(rule))),
    shareCap: cells((group, s) => group.rule.shareCaps.value[s.form] ?? 1),
    hasCaps: Uint8Array.from(groups, ({ rule }) =>
      Number(Object.values(rule.shareCaps.value).some((cap) => cap < 1)),
    ),
    order: servingOrder(groups),
    longestMm: Float64Array.from(species, (_, s) =>
      groups.reduce((most, __, g) => Math.max(most, maxMm[g * species.length + s] as number), 0),
    ),
  };
}

/** Fragile groups first, then the narrowest window, then the smallest prey, then the key. */
function servingOrder(groups: readonly DemandGroup[]): Int32Array {
  const width = (group: DemandGroup) =>
    Math.max(0, ...[...group.windows.values()].map((w) => w.maxMm / w.minMm));
  const least = (group: DemandGroup) => Math.min(...[...group.windows.values()].map((w) => w.minMm));
  const order = groups.map((_, g) => g);
  order.sort((a, b) => {
    const [first, second] = [groups[a] as DemandGroup, groups[b] as DemandGroup];
    return (
      RANK[first.rule.urgency] - RANK[second.rule.urgency] ||
      width(first) - width(second) ||
      least(first) - least(second) ||
      (first.key < second.key ? -1 : 1)
    );
  });
  return Int32Array.from(order);
}
