/** What a keeper changed of a kind, or of one to make a kind of their own: only the differences. */
import type { DayNumber } from '../calendar.ts';
import type { PreyForm } from '../prey-form.ts';
import type { Mm } from '../units.ts';
import type { LifeStage, PreyWindow, Urgency } from './kind.ts';

/** A value of the keeper's own in place of the Book's. */
export interface Own<T> {
  readonly value: T;
  /** The day it was written. */
  readonly day: DayNumber;
  /** Why, in the keeper's words. */
  readonly why?: string;
}

type Range = readonly [number, number];
export type ShareCaps = Readonly<Partial<Record<PreyForm, number>>>;

/** The values of a stage's rule that may be changed; those of the moult only where the stage has one. */
export interface StageValues {
  readonly window: PreyWindow;
  readonly mealItems: Range;
  readonly intervalDays: Range;
  readonly weeklyNeed: Range;
  readonly accepts: readonly PreyForm[];
  readonly shareCaps: ShareCaps;
  readonly refusesHard: boolean;
  readonly portions: number;
  readonly waitAfterMoultDays: number;
  readonly retryDays: number;
  readonly graceDays: number;
  readonly safeGapDays: number;
  readonly urgency: Urgency;
  readonly moultDays: number | null;
  readonly moultCv: number | null;
  readonly moultFactor: number | null;
}

/** The values of a kind as a whole that may be changed. */
export interface KindValues {
  readonly name: string;
  readonly commonName: string;
  readonly aliases: readonly string[];
  readonly gauge: string;
  readonly bodyPerGauge: number;
  readonly bodyPerGaugeMale: number | null;
  readonly massPerCubicMm: number;
  readonly adultGaugeMm: readonly [Mm, Mm];
  readonly firstFeedingGaugeMm: readonly [Mm, Mm];
}

export type Changed<T> = { readonly [F in keyof T]?: Own<T[F]> };
export type StageField = keyof StageValues;
export type KindField = keyof KindValues;

export interface KindChanges {
  readonly kind: Changed<KindValues>;
  readonly stages: { readonly [S in LifeStage]?: Changed<StageValues> };
}

/** A kind of the Book as the keeper changed it, or one of the keeper's own made from it. */
export interface ChangedKind {
  readonly code: string;
  /** The kind of the Book that a kind of the keeper's own was made from; null for a kind of the Book itself. */
  readonly base: string | null;
  readonly changes: KindChanges;
}

export const NOTHING_CHANGED: KindChanges = { kind: {}, stages: {} };
