/** What a plan is asked for: how far ahead, what the keeper insists on, and what is supposed for once. */
import type { DayNumber } from '../calendar.ts';
import type { Wish } from './answer.ts';
import type { Decided } from './likeness.ts';

/** Something supposed about the room, for a plan beside the plan. */
export type Supposed =
  | { readonly what: 'warmer'; readonly degrees: number }
  | { readonly what: 'away'; readonly from: DayNumber; readonly to: DayNumber }
  | { readonly what: 'sac'; readonly kind: string; readonly young: number; readonly day: DayNumber }
  | { readonly what: 'sell'; readonly kind: string; readonly heads: number; readonly day: DayNumber }
  | { readonly what: 'supplier stops'; readonly supplier: string }
  | { readonly what: 'bin dies'; readonly bin: string }
  | { readonly what: 'price'; readonly offer: string; readonly percent: number }
  /** The line of this key is forbidden: what would be done in its place? */
  | { readonly what: 'without'; readonly key: string }
  | { readonly what: 'weather'; readonly from: DayNumber; readonly to: DayNumber; readonly tempC: number };

/** whole: several chances of ready stock, judged, and the programme's proof; quick: the rule searched on, for plans of which many are made. */
export type Effort = 'whole' | 'quick';

export interface PlanQuestion {
  /** 4 to 26. */
  readonly weeks: number;
  readonly wishes: readonly Wish[];
  readonly supposed: readonly Supposed[];
  /** Whether lines are explained; default: they are. */
  readonly explained?: boolean;
  /** Default: whole. */
  readonly effort?: Effort;
  /** What the plan it stands beside decides, which follows from the room: a plan for what is supposed is hardly dearer than doing the same. */
  readonly beside?: readonly Decided[];
}

/** Told while a plan is being made. */
export interface PlanProgress {
  readonly step: 'laying out' | 'solving' | 'judging' | 'improving' | 'explaining';
  /** 0 to 1 of the whole, never falling. */
  readonly share: number;
  /** Least cost found so far, where there is one. */
  readonly cents: number | null;
}
