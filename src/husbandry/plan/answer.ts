/** The plan as it is told: what to order, harvest, cull and start, why, and what it comes to. */
import type { Estimate } from '../../maths/estimate.ts';
import type { Urgency } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Cents } from '../orders/index.ts';
import type { Mm } from '../units.ts';

/** Stretches of days the plan counts in, the first from today; each but the first is a week. */
export interface Period {
  readonly from: DayNumber;
  readonly days: number;
}

interface LineBase {
  /** Tells the line from every other of this room, whatever the plan: what a wish speaks of. */
  readonly key: string;
  /** Last day to do it. */
  readonly actBy: DayNumber;
  readonly species: string;
  readonly heads: number;
  readonly cents: Cents;
  readonly minutes: number;
  /** Whether the keeper asked for it. */
  readonly pinned: boolean;
  readonly reason: Reason | null;
}

export type PlanLine = LineBase &
  (
    | {
        readonly what: 'order';
        /** The parcel it is in: lines of one parcel share its postage. */
        readonly parcel: string;
        readonly supplier: string;
        readonly offer: string;
        readonly packs: number;
        readonly fromMm: Mm;
        readonly toMm: Mm;
        readonly sent: DayNumber;
        readonly comes: DayNumber;
        /** Bin it goes into; null: a new one. */
        readonly bin: string | null;
      }
    | {
        readonly what: 'harvest';
        readonly bin: string;
        readonly fromMm: Mm;
        readonly toMm: Mm;
        /** First day; the harvest may be spread over the week. */
        readonly day: DayNumber;
      }
    | {
        readonly what: 'cull';
        readonly bin: string;
        readonly why: 'room' | 'males';
        readonly fromMm: Mm | null;
        readonly toMm: Mm | null;
        readonly day: DayNumber;
      }
    | {
        readonly what: 'start';
        readonly cups: number;
        readonly day: DayNumber;
        /** First and last day it yields. */
        readonly yieldsFrom: DayNumber;
        readonly yieldsTo: DayNumber;
      }
    | {
        /** Only who finds nothing else is fed from it, so that it grows. */
        readonly what: 'rest';
        readonly bin: string;
        /** Weeks of the plan, the first from today. */
        readonly weeks: number;
        /** First day on which it may be fed from again. */
        readonly until: DayNumber;
      }
  );

/** Why a line is there: from the plan itself and from the plan without it. */
export interface Reason {
  readonly feeds: readonly {
    readonly group: string;
    readonly name: string;
    readonly heads: number;
    readonly from: DayNumber;
    readonly to: DayNumber;
  }[];
  /** What happens when the line is left out and the rest stays: on the same draws. */
  readonly without: {
    readonly missedMeals: Estimate;
    readonly dangers: Estimate;
    /** Positive: leaving it out costs more. */
    readonly cents: Estimate;
  };
  /** Leaving it out changes nothing that could be told from chance. */
  readonly makesLittleDifference: boolean;
  /** Of what is left alone: heads at the end of the plan, and if it were fed from; null for all else. */
  readonly grows: {
    readonly heads: number;
    readonly without: number;
    readonly day: DayNumber;
  } | null;
  /** Price of one head that is eaten, its share of the postage in it; null where none of it is, or most of it later than the plan looks. */
  readonly centsPerEaten: number | null;
}

export interface Service {
  readonly urgency: Urgency;
  readonly mealsDue: number;
  /** Share of due meals not missed. */
  readonly notMissed: Estimate;
  readonly target: number;
  readonly met: boolean;
}

export interface Whole {
  readonly cents: {
    readonly goods: Cents;
    readonly postage: Cents;
    readonly keeping: Cents;
    readonly labour: Cents;
    readonly total: Cents;
  };
  readonly service: readonly Service[];
  readonly missedMeals: Estimate;
  readonly dangers: Estimate;
  /** Days from today that are lived through day by day: service, misses, dangers and heads are of these. */
  readonly heldDays: number;
  /** Heads bought, eaten, died and grown out of every window. */
  readonly bought: number;
  readonly eaten: number;
  readonly died: number;
  readonly outgrown: number;
  readonly minutes: number;
}

/** One demand group over the periods, in items of the ideal size. */
export interface GroupCover {
  readonly group: string;
  readonly name: string;
  readonly urgency: Urgency;
  readonly wanted: readonly number[];
  readonly eaten: readonly number[];
  readonly late: readonly number[];
  readonly missed: readonly number[];
  /** Items that stand ready after the period's meals, shared with others who eat the same. */
  readonly ready: readonly number[];
  readonly safety: readonly number[];
}

export type ObstacleKind =
  | 'lead time'
  | 'size gap'
  | 'capacity'
  | 'price'
  | 'budget'
  | 'forbidden'
  | 'no offer'
  | 'nobody feeds';

/** What stands in the way of a target. */
export interface Obstacle {
  readonly kind: ObstacleKind;
  readonly sentence: string;
  readonly groups: readonly string[];
}

/** A line the keeper insists on, or will not have. */
export interface Wish {
  readonly key: string;
  readonly wish: 'pin' | 'forbid';
  /** Packs, cups, heads or weeks asked for; null: as the plan has it, at least one. */
  readonly amount: number | null;
}

export interface PlanAnswer {
  readonly revision: number;
  readonly day: DayNumber;
  readonly periods: readonly Period[];
  /** By the programme; or by hand's rule, where the solver failed or ran out of time: proven to be possible. */
  readonly made: 'programme' | 'rule';
  /** Share by which the plan may cost more than the best there is, as far as is proven; null: bound unknown. */
  readonly gap: number | null;
  /** Why the plan is by rule. */
  readonly trouble: string | null;
  /** Chance asked of safety stock, as the judge chose it; 0: none. */
  readonly safetyLevel: number;
  readonly lines: readonly PlanLine[];
  readonly whole: Whole;
  readonly cover: readonly GroupCover[];
  readonly obstacles: readonly Obstacle[];
}
