/** Builds a stage's feeding rule from the few figures a template states, with what all kinds share filled in. */
import type {
  AcceptancePhase,
  GapeLimit,
  LifeStage,
  MoultCycle,
  StageRule,
  Urgency,
} from '../../husbandry/animals/index.ts';
import type { PreyForm } from '../../husbandry/prey-form.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { memory, practice } from '../sourced.ts';

export type Range = readonly [number, number];

export interface RuleDraft {
  readonly stage: LifeStage;
  readonly words: readonly string[];
  readonly from: number;
  /** Prey length over reference length: least, ideal, most. */
  readonly window: readonly [number, number, number];
  readonly killFirstAbove?: number;
  /** What the window rests on. */
  readonly basis: string;
  readonly items: Sourced<Range>;
  readonly interval: Sourced<Range>;
  readonly need: Sourced<Range>;
  readonly moult: MoultCycle | null;
  readonly wait: Sourced;
  readonly retry: Sourced;
  readonly acceptance?: Sourced<readonly AcceptancePhase[]>;
  /** Left out: half the mean interval. */
  readonly graceDays?: number;
  /** Days without food held safe, before it is stretched to the day a meal counts as missed. */
  readonly gapDays: number;
  readonly urgency: Urgency;
  readonly accepts: readonly PreyForm[];
  readonly refusesHard?: boolean;
  readonly portions?: number;
  readonly gape?: GapeLimit;
}

/** Acceptance of animals that moult: high after the wait, falling in premoult. */
const moultingAcceptance: Sourced<readonly AcceptancePhase[]> = memory(
  [
    { from: 0, to: 0.5, acceptance: 0.95 },
    { from: 0.5, to: 0.75, acceptance: 0.85 },
    { from: 0.75, to: 0.9, acceptance: 0.5 },
    { from: 0.9, to: 1, acceptance: 0.05 },
  ],
  'share of offers, by position in the moult cycle',
  'our own starting value; no published curve of refusals was found',
);

/** Acceptance of animals that moult no more, the same all the time. */
export const steadyAcceptance = (acceptance: number): Sourced<readonly AcceptancePhase[]> =>
  memory([{ from: 0, to: 1, acceptance }], 'share of offers', 'our own starting value');

const shareCaps = practice(
  { waxworm: 0.1, mealworm: 0.3, superworm: 0.3 },
  "share of a week's items",
  'fat larvae are a treat, mealworms and superworms a part; the figures are our own',
);

const windowOf = ({ window: [min, ideal, max], killFirstAbove, basis }: RuleDraft): StageRule['window'] =>
  memory({ min, ideal, max, killFirstAbove: killFirstAbove ?? null }, 'prey length over own length', basis);

const graceOf = ({ graceDays, interval }: RuleDraft): Sourced =>
  graceDays === undefined
    ? memory(
        Math.round((interval.value[0] + interval.value[1]) / 4),
        'days',
        'our choice: half the mean interval',
      )
    : memory(graceDays, 'days', 'our choice');

/** A danger never comes before the meal counts as missed. */
const safeGapOf = (draft: RuleDraft, graceDays: number): Sourced =>
  memory(
    Math.max(draft.gapDays, draft.interval.value[1] + graceDays),
    'days',
    `our own starting value ${draft.gapDays}, at least the longest interval and the grace`,
  );

/** The whole rule of a stage from its draft. */
export const stageRule = (draft: RuleDraft): StageRule => {
  const grace = graceOf(draft);
  return {
    stage: draft.stage,
    words: draft.words,
    fromShareOfAdult: draft.from,
    window: windowOf(draft),
    gape: draft.gape ?? null,
    mealItems: draft.items,
    intervalDays: draft.interval,
    weeklyNeed: draft.need,
    moult: draft.moult,
    waitAfterMoultDays: draft.wait,
    retryDays: draft.retry,
    acceptance: draft.acceptance ?? (draft.moult === null ? steadyAcceptance(0.95) : moultingAcceptance),
    graceDays: grace,
    safeGapDays: safeGapOf(draft, grace.value),
    urgency: draft.urgency,
    accepts: draft.accepts,
    shareCaps,
    refusesHard: draft.refusesHard ?? false,
    portions: practice(draft.portions ?? 1, 'portions'),
  };
};

/** Days between moults with their spread, and the growth at a moult. */
export const cycle = (meanDays: Sourced, lengthFactor: Sourced): MoultCycle => ({
  meanDays,
  cv: memory(0.3, '1'),
  lengthFactor,
});
