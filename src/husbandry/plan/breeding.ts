/**
 * Colonies as what they may become: what a head is worth to its colony's future, how large colonies have to be so that
 * all who eat of them can do so for ever, and what it costs them where they are eaten smaller than that.
 */
import { afterStep, type Step } from '../../maths/chain-step.ts';
import {
  type Chain,
  type ColonyGrowth,
  capacityOf,
  colonyGrowth,
  colonyRates,
  loadOf,
} from '../larder/index.ts';
import type { Policy } from '../policy.ts';
import type { DayTemp } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Nodes } from './nodes.ts';
import type { Place } from './place-of.ts';
import type { Breeders, PlanEater, PlanPlace } from './problem.ts';

/** What a head of each node is worth to its colony's future, in breeders; the share of them that can be spared in each week for ever. */
export interface Breeding {
  readonly counts: Float64Array;
  readonly weeklyShare: number;
  /** What it is worth where it spares most, of all sizes as in the long run; Infinity where its room is not known. */
  readonly most: number;
}

/**
 * By reproductive value (Fisher 1930) at what this colony lays, the most a head can be worth being one; where it is too
 * cold to lay at all, by that at the warmth its species does best in. Null where nobody is kept to breed.
 */
export function breedingOf(
  place: Place,
  { all }: Nodes,
  { today, facts: { policy } }: Pick<Snapshot, 'today' | 'facts'>,
): Breeding | null {
  const { role, chain, climate } = place;
  if (role !== 'colony' || chain.species.laying === null) return null;
  const now = growthAt(place, climate.on(today));
  const growth = now ?? growthAt(place, bestFor(chain));
  if (growth === null) return null;
  const { reproductive } = growth;
  const one = Math.max(...reproductive);
  const counts = Float64Array.from(all, ({ profile }) =>
    profile.reduce((sum, share, j) => sum + (share * (reproductive[j] as number)) / one, 0),
  );
  const most = policy.planBreederRoom.value * filled(place, growth);
  return { counts, weeklyShare: now?.weeklyShare ?? 0, most };
}

/** What it is worth when full, of all sizes as in the long run. */
function filled({ bin, chain }: Place, { stable, reproductive }: ColonyGrowth): number {
  const capacity = capacityOf(bin, chain);
  if (capacity === null) return Number.POSITIVE_INFINITY;
  const one = Math.max(...reproductive);
  const worth = stable.reduce(
    (sum, share, j) => (j < chain.firstHead ? sum : sum + (share * (reproductive[j] as number)) / one),
    0,
  );
  return (capacity.heads * worth) / loadOf(chain, stable, capacity);
}

function growthAt({ chain, bins: [colony] }: Place, temp: DayTemp): ColonyGrowth | null {
  const rates = colonyRates(chain, temp);
  const laying = Math.exp(colony?.state.layingLog?.mean ?? 0);
  return colonyGrowth({ ...rates, birth: rates.birth.map((births) => births * laying) });
}

function bestFor({ species: { spans } }: Chain): DayTemp {
  const optimumC = spans.at(-1)?.optimumC.value ?? 0;
  return { minC: optimumC, maxC: optimumC };
}

interface Sustained {
  readonly species: string;
  readonly breeding: Breeding;
  readonly place: PlanPlace;
}

export interface Sustaining {
  readonly places: readonly Place[];
  readonly planPlaces: readonly PlanPlace[];
  readonly breeding: readonly (Breeding | null)[];
  readonly eaters: readonly PlanEater[];
  readonly policy: Policy;
}

/**
 * What each colony is to be worth: all of a species together what can just spare, week by week, what all who eat of them
 * want, each of the size that costs the colony least; shared out by what they are worth now, and none more than it is
 * where it spares most. One that does not grow can spare nothing. A breeder missing is priced at the food it would have
 * spared, at least at that it is.
 */
export function breedersOf({
  places,
  planPlaces,
  breeding,
  eaters,
  policy,
}: Sustaining): (Breeders | null)[] {
  const kept = places.map(({ species }, p): Sustained | null => {
    const own = breeding[p];
    return own ? { species, breeding: own, place: planPlaces[p] as PlanPlace } : null;
  });
  const wants = wantedOf(kept, eaters);
  return kept.map((each) => {
    if (!each) return null;
    const { counts, weeklyShare, most } = each.breeding;
    const want = wants.get(each.species);
    const share = shareOf(each, kept.filter((other) => other?.species === each.species) as Sustained[]);
    if (!want || want.breeders <= 0 || share <= 0) return { counts, wanted: 0, cents: 0 };
    const times = Math.max(1, policy.planBreederWeeks.value * weeklyShare);
    return {
      counts,
      wanted: Math.min(most, (share * want.breeders) / weeklyShare),
      cents: (times * want.cents) / want.breeders,
    };
  });
}

/** What all who eat of a species want in a week, in breeders; and what that is worth. */
interface Want {
  readonly breeders: number;
  readonly cents: number;
}

function wantedOf(
  kept: readonly (Sustained | null)[],
  eaters: readonly PlanEater[],
): ReadonlyMap<string, Want> {
  const wants = new Map<string, Want>();
  for (const { fare, end } of eaters) {
    const items = fare.flatMap(({ place, node, items: worth }) => {
      const colony = kept[place];
      return colony
        ? [{ species: colony.species, breeders: (colony.breeding.counts[node] as number) / worth }]
        : [];
    });
    if (items.length === 0) continue;
    const item = items.reduce((least, each) => (each.breeders < least.breeders ? each : least));
    const { breeders, cents } = wants.get(item.species) ?? { breeders: 0, cents: 0 };
    wants.set(item.species, {
      breeders: breeders + end.weekly * item.breeders,
      cents: cents + end.weekly * end.cents,
    });
  }
  return wants;
}

/** Of all colonies of a species by what they are worth at first; where none is worth anything, alike. */
function shareOf(own: Sustained, kin: readonly Sustained[]): number {
  const worth = ({ breeding, place }: Sustained) => worthOf(breeding.counts, place.comes[0] as Float64Array);
  const all = kin.reduce((sum, each) => sum + worth(each), 0);
  return all > 0 ? worth(own) / all : 1 / kin.length;
}

const worthOf = (counts: Float64Array, heads: Float64Array): number =>
  counts.reduce((sum, count, n) => sum + count * (heads[n] as number), 0);

/** In each period what a colony should be worth: as much as is wanted, no more than it would be if nobody ate of it. */
export function floorOf(breeders: Breeders | null, { comes, passes }: PlanPlace): PlanPlace['floor'] {
  if (breeders === null || breeders.wanted <= 0) return null;
  let heads = new Float64Array(comes[0] as Float64Array);
  const least = comes.map((more, t) => {
    if (t > 0) heads = afterStep(heads, passes[t - 1] as Step).map((n, at) => n + (more[at] as number));
    return Math.min(breeders.wanted, worthOf(breeders.counts, heads));
  });
  return { counts: breeders.counts, cents: breeders.cents, least: Float64Array.from(least) };
}
