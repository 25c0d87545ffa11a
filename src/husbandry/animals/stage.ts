/** From what the keeper measures to life stage, reference length and mass. */
import { LENGTH_TO_MASS, type Mg, type Mm } from '../units.ts';
import type { Animal } from './animal.ts';
import type { Kind, StageRule } from './kind.ts';

/** Middle of the adult gauge of a kind. */
export const adultGauge = (kind: Kind): Mm => (kind.adultGaugeMm.value[0] + kind.adultGaugeMm.value[1]) / 2;

/** The rule for an animal of this gauge: by share of the adult gauge, unless matured or set by the keeper. */
export function ruleOf(kind: Kind, animal: Pick<Animal, 'gaugeMm' | 'matured' | 'stageOverride'>): StageRule {
  const named = animal.matured ? 'mature male' : animal.stageOverride;
  const byName = kind.stages.find(({ stage }) => stage === named);
  if (byName) return byName;
  const share = animal.gaugeMm / adultGauge(kind);
  const growing = kind.stages.filter(({ stage }) => stage !== 'mature male');
  const reached = growing.filter(({ fromShareOfAdult }) => fromShareOfAdult <= share);
  return (reached[reached.length - 1] ?? growing[0] ?? kind.stages[0]) as StageRule;
}

/** An animal as what it eats is measured against. */
export interface Eater {
  /** Body length; trunk for scorpions, snout to vent for frogs and lizards. */
  readonly referenceMm: Mm;
  readonly massMg: Mg;
}

/** Reference length and live mass of one head. */
export function eaterOf(kind: Kind, animal: Pick<Animal, 'gaugeMm' | 'matured'>): Eater {
  const ratio = animal.matured && kind.bodyPerGaugeMale ? kind.bodyPerGaugeMale : kind.bodyPerGauge;
  const referenceMm = animal.gaugeMm * ratio.value;
  return { referenceMm, massMg: kind.massPerCubicMm.value * referenceMm ** LENGTH_TO_MASS };
}

/** Frogs and lizards do not: nothing about a moult is asked of them. */
export const moults = ({ stages }: Pick<Kind, 'stages'>): boolean =>
  stages.some(({ moult }) => moult !== null);
