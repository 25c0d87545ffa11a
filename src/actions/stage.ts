/** The feeding rule an animal is under, from its gauge and what the keeper said. */
import type { Kind, StageRule } from '../husbandry/animals/kind.ts';
import type { AnimalRow } from '../store/index.ts';

type Sized = Pick<AnimalRow, 'gaugeMm' | 'matured' | 'stageOverride'>;

/** The rule of the stage said, of mature males, or of the last stage whose share of the adult gauge is reached. */
export function stageRuleOf(kind: Kind, animal: Sized): StageRule {
  const said = animal.stageOverride ?? (animal.matured ? 'mature male' : null);
  const named = kind.stages.find(({ stage }) => stage === said);
  if (named !== undefined) return named;
  const share = animal.gaugeMm / adultGaugeMm(kind);
  const grown = kind.stages.filter(({ stage }) => stage !== 'mature male');
  return grown.findLast(({ fromShareOfAdult }) => fromShareOfAdult <= share) ?? grown[0]!;
}

/** The middle of the kind's adult range, mm. */
function adultGaugeMm(kind: Kind): number {
  const [least, most] = kind.adultGaugeMm.value;
  return (least + most) / 2;
}
