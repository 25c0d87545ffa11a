/** Makes the plan of a room. */
import type { Snapshot } from '../snapshot.ts';
import type { PlanAnswer } from './answer.ts';
import type { PlanProgress, PlanQuestion } from './question.ts';

export async function makePlan(
  { revision, today }: Snapshot,
  _question: PlanQuestion,
  onProgress?: (progress: PlanProgress) => void,
): Promise<PlanAnswer> {
  onProgress?.({ step: 'laying out', share: 0, cents: null });
  const none = { mean: 0, low: 0, high: 0 };
  return {
    revision,
    day: today,
    periods: [],
    made: 'rule',
    gap: null,
    trouble: null,
    safetyLevel: 0,
    lines: [],
    whole: {
      cents: { goods: 0, postage: 0, keeping: 0, labour: 0, total: 0 },
      service: [],
      missedMeals: none,
      dangers: none,
      bought: 0,
      eaten: 0,
      died: 0,
      outgrown: 0,
      minutes: 0,
    },
    cover: [],
    obstacles: [],
  };
}
