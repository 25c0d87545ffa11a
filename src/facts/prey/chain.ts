/** Arithmetic that turns published whole-life figures into stages: split of losses, geometric growth. */
import type { SurvivalPoint } from '../../husbandry/prey/index.ts';

/** Share of the log of all losses before adulthood that falls on the first young (Gryllodes, first 14 days). */
const EARLY_LOSS = 0.8;

/** Share of the time from hatch to adult spent as first young (Gryllodes at 30 C: 14 of 43.74 days). */
export const FIRST_YOUNG = 0.32;

/** Survival through the first young: S^0.8, with S the survival from hatch to adult. */
export const firstYoungSurvival = (hatchToAdult: readonly SurvivalPoint[]): readonly SurvivalPoint[] =>
  hatchToAdult.map(({ tempC, share }) => ({ tempC, share: share ** EARLY_LOSS }));

/** Survival through the later young: S^0.2. */
export const laterYoungSurvival = (hatchToAdult: readonly SurvivalPoint[]): readonly SurvivalPoint[] =>
  hatchToAdult.map(({ tempC, share }) => ({ tempC, share: share ** (1 - EARLY_LOSS) }));

/** Survival after `days` at a steady daily loss: exp(-loss x days). */
export const steadySurvival = (tempC: number, lossPerDay: number, days: number): readonly SurvivalPoint[] => [
  { tempC, share: Math.exp(-lossPerDay * days) },
];

/** Length growing by one factor per step of equal time, from the hatchling's to the last. */
export const geometricLengths = (
  fromMm: number,
  toMm: number,
  until = 1,
): readonly (readonly [number, number])[] => {
  const steps = 8;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const share = step / steps;
    return [share * until, fromMm * (toMm / fromMm) ** share] as const;
  });
};
