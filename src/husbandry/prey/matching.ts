/** The matching rule: which lengths of a prey species an animal takes whole, best, and only when killed first. */
import type { Eater, StageRule } from '../animals/index.ts';
import { LENGTH_TO_MASS, type Mm } from '../units.ts';
import type { PreySpecies } from './species.ts';

export interface LengthWindow {
  readonly minMm: Mm;
  readonly idealMm: Mm;
  /** Longer prey is killed or crushed first; equal to maxMm when live prey is fine up to there. */
  readonly liveMaxMm: Mm;
  readonly maxMm: Mm;
}

/** The window for one species, or null where the rule refuses it. */
export function windowFor(rule: StageRule, eater: Eater, species: PreySpecies): LengthWindow | null {
  if (!rule.accepts.includes(species.form) || (rule.refusesHard && species.traits.hard)) return null;
  const { min, ideal, max, killFirstAbove } = rule.window.value;
  const longest = Math.min(max * eater.referenceMm, ...gapeLimits(rule, eater, species));
  const shrink = longest / (max * eater.referenceMm);
  const scale = eater.referenceMm * shrink;
  return {
    minMm: min * scale,
    idealMm: ideal * scale,
    liveMaxMm: Math.min(killFirstAbove ?? max, max) * scale,
    maxMm: longest,
  };
}

/** Whether dead prey is taken: only where the rule knows prey that is killed first; all others are fed live prey alone. */
export const takesDead = ({ window }: StageRule): boolean => window.value.killFirstAbove !== null;

/** Longest prey by its width against the head, and by its mass against the animal's. */
function gapeLimits(rule: StageRule, eater: Eater, species: PreySpecies): number[] {
  if (!rule.gape) return [];
  const { headWidthShare, widthMaxOfHead, massMaxShare } = rule.gape;
  const widest = widthMaxOfHead.value * headWidthShare.value * eater.referenceMm;
  const byWidth = widest / species.widthPerLength.value;
  if (!massMaxShare) return [byWidth];
  return [byWidth, Math.cbrt((massMaxShare.value * eater.massMg) / species.massPerCubicMm.value)];
}

/**
 * Items of the ideal size that one prey item of this length stands for, by live mass (cube of length); a small item
 * counts at least 1/smallerMost, since no more than that many replace one.
 */
export const itemsWorth = (lengthMm: Mm, idealMm: Mm, smallerMost: number): number =>
  Math.max(1 / smallerMost, (lengthMm / idealMm) ** LENGTH_TO_MASS);

/** Mean of the cube of lengths that lie evenly between two, mm^3: (a + b)/2 x (a^2 + b^2)/2. */
export const meanCube = (fromMm: Mm, toMm: Mm): number =>
  ((fromMm + toMm) / 2) * ((fromMm ** 2 + toMm ** 2) / 2);

/**
 * How well a length suits, 0 outside the window to 1 at the ideal: sin^2 of the way there in the logarithm of length.
 */
export function suitability(window: LengthWindow, lengthMm: Mm): number {
  const { minMm, idealMm, maxMm } = window;
  if (!(lengthMm > minMm && lengthMm < maxMm)) return lengthMm === idealMm ? 1 : 0;
  const edge = lengthMm < idealMm ? minMm : maxMm;
  const way = Math.log(lengthMm / edge) / Math.log(idealMm / edge);
  return Math.sin((Math.min(1, way) * Math.PI) / 2) ** 2;
}
