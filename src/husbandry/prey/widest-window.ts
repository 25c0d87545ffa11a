/** The prey an animal takes, told by one window. */
import type { Eater, StageRule } from '../animals/index.ts';
import { type LengthWindow, windowFor } from './matching.ts';
import type { PreySpecies } from './species.ts';

/**
 * The window that reaches furthest among the prey it takes: for those that swallow prey whole, slender prey may be
 * longer. Where no species is known that it takes, the shares of its rule.
 */
export function widestWindow(rule: StageRule, eater: Eater, species: Iterable<PreySpecies>): LengthWindow {
  const { min, ideal, max, killFirstAbove } = rule.window.value;
  const windows = [...species].flatMap((prey) => windowFor(rule, eater, prey) ?? []);
  const [widest] = windows.toSorted((a, b) => b.maxMm - a.maxMm);
  return (
    widest ?? {
      minMm: min * eater.referenceMm,
      idealMm: ideal * eater.referenceMm,
      liveMaxMm: Math.min(killFirstAbove ?? max, max) * eater.referenceMm,
      maxMm: max * eater.referenceMm,
    }
  );
}
