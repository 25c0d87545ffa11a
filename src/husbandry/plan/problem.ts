/**
 * What a plan has to decide, laid out in numbers: prey by place, band of size and period, those who eat it, and the
 * parcels and cups that can bring more, colonies that can be left alone. It knows no species and no animal; a textbook's
 * problem can be written in it.
 */

import type { Step } from '../../maths/chain-step.ts';
import type { Urgency } from '../animals/index.ts';
import type { Cents } from '../orders/index.ts';

/** Prey of one species that lives in one climate, by node: a band of size, or those that are not fed. */
export interface PlanPlace {
  readonly key: string;
  readonly nodes: number;
  /** P[to][from] of the nodes from each period to the next: of length periods - 1. */
  readonly passes: readonly Step[];
  /** Heads that come into each node in each period whatever is decided; in the first those that are there. */
  readonly comes: readonly Float64Array[];
  /** Price of keeping one head for a period. */
  readonly keepCents: Cents;
  /** Room: the sum of footprint times heads left is at most this; null: no bound. */
  readonly room: { readonly footprint: Float64Array; readonly most: number } | null;
  /** What a colony should be worth in each period, in breeders; null: nothing. */
  readonly floor: (Pick<Breeders, 'counts' | 'cents'> & { readonly least: Float64Array }) | null;
}

/** What a head of each node counts as a breeder, how many are wanted, and the price of one that is missing. */
export interface Breeders {
  readonly counts: Float64Array;
  readonly wanted: number;
  readonly cents: Cents;
}

/** Prey an eater takes: so many items of the ideal size a head is worth, and what is against it, priced. */
export interface Fare {
  readonly place: number;
  readonly node: number;
  readonly items: number;
  readonly cents: Cents;
  /** Which cap on a share of the meals it falls under; -1: none. */
  readonly cap: number;
  /** How near it is to outgrowing the eater: of what costs the same, the nearest is eaten first; of one size a colony's last. */
  readonly ripeness: number;
}

export interface PlanEater {
  readonly key: string;
  readonly urgency: Urgency;
  /** Mean items wanted in each period. */
  readonly wanted: Float64Array;
  /** Items that may wait from each period to the next without being missed. */
  readonly lateMost: Float64Array;
  readonly lateCents: Cents;
  readonly missedCents: Cents;
  readonly fare: readonly Fare[];
  /** Most of the items that may come from each cap; beyond it at a price. */
  readonly caps: readonly { readonly share: number; readonly cents: Cents }[];
  readonly end: PlanEnd;
}

/** What is left after the last period: worth what it will save, no more of it than is still wanted while it lasts. */
export interface PlanEnd {
  /** Worth of an item. */
  readonly cents: Cents;
  /** Items still wanted in each week that follows. */
  readonly weekly: number;
  readonly fare: readonly EndFare[];
}

/** Heads of a node as they will be found: fit to be eaten in `span` weeks, the last of them `until` weeks on. */
export interface EndFare {
  readonly place: number;
  readonly node: number;
  /** Items of the ideal size one that is there at the end is worth, in the mean of these weeks. */
  readonly items: number;
  readonly span: number;
  readonly until: number;
}

/** One offer in one parcel; the last break reached holds for all packs. */
export interface PlanPack {
  readonly key: string;
  readonly place: number;
  readonly breaks: readonly { readonly fromPacks: number; readonly cents: Cents }[];
  readonly least: number;
  readonly most: number;
  /** Price of having it in the parcel at all. */
  readonly lineCents: Cents;
  /** Postage of one pack by its weight. */
  readonly weightCents: Cents;
  /** Heads alive of one pack by node, as the period in which they come counts them. */
  readonly brings: Float64Array;
}

export interface PlanParcel {
  readonly key: string;
  /** Period in which it can first be eaten from. */
  readonly period: number;
  /** Week of the budget in which it is paid. */
  readonly paid: number;
  /** Flat postage and the keeper's time for it; both fall on the parcel as a whole. */
  readonly postageCents: Cents;
  readonly labourCents: Cents;
  readonly minimumCents: Cents;
  readonly freeFromCents: Cents | null;
  readonly packs: readonly PlanPack[];
}

/** Cups started in one period. */
export interface PlanStart {
  readonly key: string;
  readonly period: number;
  /** Week of the budget in which it is paid. */
  readonly paid: number;
  readonly place: number;
  readonly cents: Cents;
  readonly least: number;
  readonly most: number;
  /** Heads one cup gives by node, in each period. */
  readonly brings: readonly Float64Array[];
}

/** Prey that may be left alone: in so many periods, from the first on, its place feeds only who finds nothing else. */
export interface PlanRest {
  readonly key: string;
  readonly place: number;
  /** Periods in which the keeper leaves it alone already. */
  readonly own: number;
  readonly least: number;
  readonly most: number;
  /** Price of each period more than the least: what spares less is not worth the trouble. */
  readonly cents: Cents;
}

/** Prey that is to stand ready after the meals of a period. */
export interface PlanPool {
  readonly key: string;
  /** Items one head of a node is worth to it. */
  readonly fare: readonly Pick<Fare, 'place' | 'node' | 'items'>[];
  /** Items to be ready in each period. */
  readonly least: Float64Array;
  readonly cents: Cents;
}

export interface PlanProblem {
  readonly periods: number;
  readonly places: readonly PlanPlace[];
  readonly eaters: readonly PlanEater[];
  readonly parcels: readonly PlanParcel[];
  readonly starts: readonly PlanStart[];
  readonly rests: readonly PlanRest[];
  readonly pools: readonly PlanPool[];
  /** Most spent in each week, which need not be a period; Infinity: no bound. */
  readonly budget: Float64Array;
  /** Whole numbers are sought in parcels and starts up to this period; later ones may be broken. */
  readonly wholeUntil: number;
}
