/** Stage rules laid out in arrays, one row a rule. */

import { logSdOf } from '../../maths/log-normal.ts';
import type { StageRule } from '../animals/index.ts';

export interface RuleTable {
  readonly rules: readonly StageRule[];
  readonly indexOf: (rule: StageRule) => number;
  readonly itemsMin: Int32Array;
  readonly itemsMax: Int32Array;
  readonly wait: Int32Array;
  readonly retry: Int32Array;
  readonly grace: Int32Array;
  readonly safeGap: Int32Array;
  readonly cycleLogSd: Float64Array;
  /** Acceptance by phase of the moult cycle in equal steps, at [rule * PHASES + phase]. */
  readonly acceptance: Float64Array;
  /** Greatest acceptance of the cycle: for stages that moult no more. */
  readonly acceptanceBest: Float64Array;
  /** Phase from which acceptance is less than half of that. */
  readonly premoultFrom: Float64Array;
  readonly phases: number;
}

/** Lays out the distinct rules among these. */
export function ruleTable(all: readonly StageRule[], phases: number): RuleTable {
  const rules = [...new Set(all)];
  const index = new Map(rules.map((rule, i) => [rule, i]));
  const ints = (value: (rule: StageRule) => number) => Int32Array.from(rules, value);
  const acceptance = new Float64Array(rules.length * phases);
  rules.forEach((rule, r) => {
    for (let p = 0; p < phases; p++) acceptance[r * phases + p] = acceptanceAt(rule, (p + 1 / 2) / phases);
  });
  const ofRule = (r: number) => acceptance.subarray(r * phases, (r + 1) * phases);
  const best = (r: number) => Math.max(...ofRule(r));
  const premoult = (r: number) => (ofRule(r).findLastIndex((share) => share >= best(r) / 2) + 1) / phases;
  return {
    rules,
    indexOf: (rule) => index.get(rule) as number,
    itemsMin: ints(({ mealItems }) => mealItems.value[0]),
    itemsMax: ints(({ mealItems }) => mealItems.value[1]),
    wait: ints(({ waitAfterMoultDays }) => Math.ceil(waitAfterMoultDays.value)),
    retry: ints(({ retryDays }) => Math.max(1, Math.round(retryDays.value))),
    grace: ints(({ graceDays }) => Math.floor(graceDays.value)),
    safeGap: ints(({ safeGapDays }) => Math.floor(safeGapDays.value)),
    cycleLogSd: Float64Array.from(rules, ({ moult }) => (moult ? logSdOf(moult.cv.value) : 0)),
    acceptance,
    acceptanceBest: Float64Array.from(rules, (_, r) => best(r)),
    premoultFrom: Float64Array.from(rules, (_, r) => premoult(r)),
    phases,
  };
}

/** Acceptance at a phase of the moult cycle, 0 moulted to 1 the next moult; full where the rule says nothing. */
function acceptanceAt(rule: StageRule, phase: number): number {
  const within = rule.acceptance.value.find(({ from, to }) => from <= phase && phase < to);
  return within?.acceptance ?? 1;
}
