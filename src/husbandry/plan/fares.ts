/** Which nodes each group eats from, what a head is worth to it, and what is against it. */
import type { DemandGroup } from '../appetite/index.ts';
import { itemsWorth, type LengthWindow, takesDead } from '../prey/index.ts';
import type { PreyForm } from '../prey-form.ts';
import type { Facts } from '../snapshot.ts';
import type { Eating } from './eaters.ts';
import type { Node, Nodes } from './nodes.ts';
import type { Place } from './place-of.ts';
import type { Fare } from './problem.ts';

export interface Served {
  readonly place: Place;
  readonly nodes: Nodes;
}

export type Preparation = 'alive' | 'killed';

export interface PreparedFare extends Fare {
  readonly how: Preparation;
}

/** The fare of a group over all places; prices in times its cheapest item. */
export function faresOf(
  { group, mealItems }: Pick<Eating, 'group' | 'mealItems'>,
  served: readonly Served[],
  { policy, species }: Facts,
): PreparedFare[] {
  const caps = capsOf(group);
  return served.flatMap(({ place, nodes }, p) => {
    const window = group.windows.get(place.species);
    const prey = species.get(place.species);
    if (!window || !prey || (place.role === 'frozen' && !takesDead(group.rule))) return [];
    return nodes.all.flatMap((node, n): PreparedFare[] => {
      if (node.kind === 'unfed' || (node.kind === 'adult' && !isEaten(place))) return [];
      const fit = fitOf({ window, node, least: policy.planBandShare.value });
      if (!fit) return [];
      const worth = itemsWorth(fit.mm, window.idealMm, policy.smallerItemsMost.value);
      const times = fit.how === 'killed' ? policy.planKilledTimes.value : 0;
      return [
        {
          place: p,
          node: n,
          items: Math.min(worth, Math.max(1, mealItems)),
          cents: times,
          cap: caps.findIndex(({ form }) => form === prey.form),
          ripeness: fit.mm / window.maxMm - (place.role === 'colony' ? Number.EPSILON : 0),
          how: fit.how,
        },
      ];
    });
  });
}

/** Adults of a colony that keeps them are there to breed; of species whose adults are not fed nobody is eaten. */
const isEaten = ({ role, bin, chain }: Place): boolean =>
  chain.species.adult.fed && !(role === 'colony' && bin.keepAdults);

interface Fit {
  readonly how: Preparation;
  /** Middle of the part of the node that fits. */
  readonly mm: number;
}

interface Fitting {
  readonly window: LengthWindow;
  readonly node: Node;
  readonly least: number;
}

/** Alive where enough of the node lies within; else killed first. Cutting helps out, and is not planned for. */
function fitOf({ window, node, least }: Fitting): Fit | null {
  const { minMm, liveMaxMm, maxMm } = window;
  const ways: readonly (readonly [Preparation, number, number])[] = [
    ['alive', minMm, liveMaxMm],
    ['killed', minMm, maxMm],
  ];
  for (const [how, low, high] of ways) {
    const mm = middleWithin(node, { low, high, least });
    if (mm !== null && high > low) return { how, mm };
  }
  return null;
}

/** Geometric middle of what a node shares with a stretch of lengths; null where that is less than its least share. */
function middleWithin(
  { fromMm, toMm }: Node,
  { low, high, least }: { low: number; high: number; least: number },
): number | null {
  if (toMm <= fromMm) return low <= fromMm && fromMm <= high ? fromMm : null;
  const [from, to] = [Math.max(low, fromMm), Math.min(high, toMm)];
  if (to <= from || Math.log(to / from) < least * Math.log(toMm / fromMm)) return null;
  return Math.sqrt(from * to);
}

/** Forms of which a group takes no more than a share, in order. */
export const capsOf = ({ rule }: DemandGroup): { readonly form: PreyForm; readonly share: number }[] =>
  Object.entries(rule.shareCaps.value)
    .filter(([, share]) => share !== undefined && share < 1)
    .map(([form, share]) => ({ form: form as PreyForm, share: share as number }))
    .sort((a, b) => (a.form < b.form ? -1 : 1));
