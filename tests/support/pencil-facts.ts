/** Facts for rooms worked by hand: kinds without moults or doubt, prey whose growth a pencil can follow. */

import type { Kind, StageRule } from '../../src/husbandry/animals/kind.ts';
import type { PreySpecies } from '../../src/husbandry/prey/species.ts';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { Facts } from '../../src/husbandry/snapshot.ts';
import type { Sourced } from '../../src/husbandry/sourced.ts';
import { certainPolicy } from './room.ts';

export const given = <T>(value: T, unit = '1'): Sourced<T> => ({
  value,
  unit,
  source: 'test',
  status: 'yours',
});

export interface PencilRule {
  readonly code: string;
  /** Shortest and longest prey, mm; the shortest is the ideal, so that every fitting head makes one item. */
  readonly prey: readonly [number, number];
  readonly intervalDays: readonly [number, number];
  readonly graceDays: number;
  readonly safeGapDays: number;
  readonly urgency: StageRule['urgency'];
  readonly words: string;
  readonly portions?: number;
  readonly accepts?: readonly PreyForm[];
}

/** A kind of 10 mm that takes one item a meal, always, and never moults. */
export function pencilKind(rule: PencilRule): Kind {
  const [min, max] = rule.prey;
  const stage: StageRule = {
    stage: 'juvenile',
    words: [rule.words],
    fromShareOfAdult: 0,
    window: given({ min: min / 10, ideal: min / 10, max: max / 10, killFirstAbove: null }),
    gape: null,
    mealItems: given([1, 1]),
    intervalDays: given(rule.intervalDays, 'days'),
    weeklyNeed: given([0, 1]),
    moult: null,
    waitAfterMoultDays: given(0, 'days'),
    retryDays: given(1, 'days'),
    acceptance: given([{ from: 0, to: 1, acceptance: 1 }]),
    graceDays: given(rule.graceDays, 'days'),
    safeGapDays: given(rule.safeGapDays, 'days'),
    urgency: rule.urgency,
    accepts: rule.accepts ?? ['cricket'],
    shareCaps: given({}),
    refusesHard: false,
    portions: given(rule.portions ?? 1),
  };
  return {
    code: rule.code,
    name: rule.code,
    commonName: rule.code,
    aliases: [],
    group: 'tarantula',
    habit: 'terrestrial',
    gauge: 'body length',
    bodyPerGauge: given(1),
    bodyPerGaugeMale: null,
    massPerCubicMm: given(0.1),
    adultGaugeMm: given([10, 10], 'mm'),
    firstFeedingGaugeMm: given([10, 10], 'mm'),
    stages: [stage],
    cautions: [],
  };
}

const FOR_EVER = 1e12;

/**
 * Prey of one growing stage, from `fromMm` to `toMm`, made of a single part: above 15 C half of it has become adult
 * (and is fed no more) after every 70 degree-days, a week at 25 C. Heads are in order of age, and lengths go evenly
 * over those still growing. Nothing dies and nothing is lost.
 */
export function pencilPrey(code: string, [fromMm, toMm]: readonly [number, number]): PreySpecies {
  return {
    code,
    name: code,
    commonName: code,
    aliases: [],
    form: 'cricket',
    massPerCubicMm: given(0.05),
    widthPerLength: given(0.3),
    spans: [
      {
        code: 'growth',
        lowerThresholdC: given(15, 'C'),
        degreeDays: given(70 / Math.LN2, 'degree-days'),
        points: given([], 'days'),
        optimumC: given(35, 'C'),
        upperStopC: given(45, 'C'),
      },
    ],
    stages: [
      {
        name: 'growing',
        kind: 'young',
        span: 'growth',
        share: 1,
        survival: given([{ tempC: 25, share: 1 }]),
        fed: true,
      },
    ],
    immatureCv: given(1),
    lengthByDevelopment: given([
      [0, fromMm],
      [1, toMm],
    ]),
    adultLengthMm: given(toMm, 'mm'),
    adult: { longevity: given([{ tempC: 25, days: FOR_EVER }], 'days'), cv: given(1), fed: false },
    laying: null,
    cup: null,
    sizeClasses: given([], 'mm'),
    holdingLossPerDay: given(0, 'per day'),
    traits: { hard: false, bites: false },
    notes: [],
  };
}

export const pencilFacts = (
  kinds: readonly Kind[],
  species: readonly PreySpecies[],
  policy = certainPolicy,
): Facts => ({
  kinds: new Map(kinds.map((kind) => [kind.code, kind])),
  species: new Map(species.map((prey) => [prey.code, prey])),
  policy,
});
