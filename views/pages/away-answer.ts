/** What the page of an absence is told of it. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { AwayPlan, AwayRounds } from '../../src/husbandry/supply/index.ts';
import type { SourceLine } from '../partials/sources.tsx';

export interface AwayAnswer {
  readonly from: string;
  readonly to: string;
  readonly plan: AwayPlan;
  /** Null when the absence begins too far ahead to name bins. */
  readonly rounds: AwayRounds | null;
  /** The calendar holds these days, and the Sunday check leaves them out. */
  readonly saved: boolean;
  /** Feeding days that fall away. */
  readonly lost: readonly DayNumber[];
  /** Parcels that come while nobody is there. */
  readonly parcels: readonly { readonly label: string; readonly day: DayNumber }[];
  readonly sources: readonly SourceLine[];
}
