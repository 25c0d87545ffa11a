/** The figures of a stage's rule as they are entered: shares in percent, times in whole days; what is not named stays. */

import { z } from 'zod';
import type { StageRule, StageValues } from '../husbandry/animals/index.ts';
import type { PreyForm } from '../husbandry/prey-form.ts';
import { inPercent, PERCENT } from '../husbandry/units.ts';
import { figureOrNone, figureWithin, flag, oneOf } from './fields.ts';

const LONGEST_DAYS = 400;
const LONGEST_CYCLE_DAYS = 1500;
const LONGEST_SHARE = 150;
const MOST_NEED = 1000;

const shares = (least: number, most: number, example: string) => ({
  code: 'share-out-of-range',
  least,
  most,
  wanted: `a share from ${least} to ${most} %; write it in percent, such as ${example}`,
});
const share = (least: number, most = LONGEST_SHARE, example = '40') =>
  figureWithin(shares(least, most, example));
const days = (least: number, most = LONGEST_DAYS) =>
  figureWithin({
    code: 'days-out-of-range',
    least,
    most,
    wanted: `a whole number of days from ${least} to ${most}`,
    whole: true,
  });
const count = (least: number, most: number, of: string) =>
  figureWithin({
    code: 'number-out-of-range',
    least,
    most,
    wanted: `a whole number of ${of} from ${least} to ${most}`,
    whole: true,
  });

export const FORMS = [
  'cricket',
  'roach',
  'fly',
  'mealworm',
  'flour beetle',
  'waxworm',
  'superworm',
  'springtail',
  'bean beetle',
  'silkworm',
] as const satisfies readonly PreyForm[];
const URGENCIES = ['fragile', 'ordinary', 'robust'] as const;

type Hyphened<W extends string> = W extends `${infer A} ${infer B}` ? `${A}-${B}` : W;
type CapField = `cap-${Hyphened<PreyForm>}`;

/** Field of a prey form's greatest share: 'cap-flour-beetle'. */
export const capField = (form: PreyForm) => `cap-${form.replace(' ', '-')}` as CapField;
const cap = figureOrNone(shares(1, PERCENT, '30')).optional();
const caps = Object.fromEntries(FORMS.map((form) => [capField(form), cap])) as Record<CapField, typeof cap>;

/** Every figure, by the name of its field. */
export const ruleFigures = {
  windowMin: share(1).optional(),
  windowIdeal: share(1).optional(),
  windowMax: share(1).optional(),
  /** '' or null: live prey is fine up to the longest. */
  killFirstAbove: figureOrNone(shares(1, LONGEST_SHARE, '40')).optional(),
  itemsLeast: count(0, 1000, 'items').optional(),
  itemsMost: count(1, 1000, 'items').optional(),
  intervalLeast: days(1).optional(),
  intervalMost: days(1).optional(),
  needLeast: share(0, MOST_NEED, '5').optional(),
  needMost: share(0, MOST_NEED, '5').optional(),
  accepts: z.array(oneOf(FORMS)).min(1, { error: 'Choose at least one kind of prey.' }).optional(),
  ...caps,
  refusesHard: flag.optional(),
  portions: count(1, 20, 'portions').optional(),
  waitAfterMoultDays: days(0).optional(),
  retryDays: days(1).optional(),
  graceDays: days(0).optional(),
  safeGapDays: days(1).optional(),
  urgency: oneOf(URGENCIES).optional(),
  moultDays: days(1, LONGEST_CYCLE_DAYS).optional(),
  moultCv: share(1, PERCENT, '30').optional(),
  moultGrowth: share(0, PERCENT, '25').optional(),
};
const figures = z.strictObject(ruleFigures);
export type RuleFigures = z.output<typeof figures>;

const part = (percent: number | undefined, now: number): number =>
  percent === undefined ? now : percent / PERCENT;

/** The rule's values with those figures that are given in place. */
export function valuesWith(now: StageValues, given: RuleFigures): StageValues {
  const { window, mealItems, intervalDays, weeklyNeed } = now;
  const { killFirstAbove: kill } = given;
  return {
    ...now,
    window: {
      min: part(given.windowMin, window.min),
      ideal: part(given.windowIdeal, window.ideal),
      max: part(given.windowMax, window.max),
      killFirstAbove: kill === undefined ? window.killFirstAbove : kill && kill / PERCENT,
    },
    mealItems: [given.itemsLeast ?? mealItems[0], given.itemsMost ?? mealItems[1]],
    intervalDays: [given.intervalLeast ?? intervalDays[0], given.intervalMost ?? intervalDays[1]],
    weeklyNeed: [part(given.needLeast, weeklyNeed[0]), part(given.needMost, weeklyNeed[1])],
    accepts: given.accepts === undefined ? now.accepts : inOldOrder(given.accepts, now.accepts),
    shareCaps: capsWith(now.shareCaps, given),
    refusesHard: given.refusesHard ?? now.refusesHard,
    portions: given.portions ?? now.portions,
    waitAfterMoultDays: given.waitAfterMoultDays ?? now.waitAfterMoultDays,
    retryDays: given.retryDays ?? now.retryDays,
    graceDays: given.graceDays ?? now.graceDays,
    safeGapDays: given.safeGapDays ?? now.safeGapDays,
    urgency: given.urgency ?? now.urgency,
    ...moultWith(now, given),
  };
}

/** The form named first is the staple: a form ticked anew comes last. */
const inOldOrder = (given: readonly PreyForm[], before: readonly PreyForm[]): readonly PreyForm[] => [
  ...before.filter((form) => given.includes(form)),
  ...FORMS.filter((form) => given.includes(form) && !before.includes(form)),
];

function capsWith(now: StageValues['shareCaps'], given: RuleFigures): StageValues['shareCaps'] {
  const named = FORMS.map((form) => {
    const percent = given[capField(form)];
    return [form, percent === undefined ? (now[form] ?? null) : percent && percent / PERCENT] as const;
  });
  return Object.fromEntries(named.filter(([, most]) => most !== null));
}

/** A stage that moults no more has no cycle to change. */
function moultWith(now: StageValues, given: RuleFigures) {
  if (now.moultDays === null || now.moultCv === null || now.moultFactor === null) return {};
  return {
    moultDays: given.moultDays ?? now.moultDays,
    moultCv: part(given.moultCv, now.moultCv),
    moultFactor: given.moultGrowth === undefined ? now.moultFactor : 1 + given.moultGrowth / PERCENT,
  };
}

const shown = (share: number): string => `${inPercent(share)}`;

/** Each figure as a form shows it; '' where there is none. */
export function figuresShown(rule: StageRule): Readonly<Record<string, string>> {
  const { min, ideal, max, killFirstAbove } = rule.window.value;
  const { moult } = rule;
  const caps = FORMS.map((form) => {
    const most = rule.shareCaps.value[form];
    return [capField(form), most === undefined ? '' : shown(most)];
  });
  return {
    windowMin: shown(min),
    windowIdeal: shown(ideal),
    windowMax: shown(max),
    killFirstAbove: killFirstAbove === null ? '' : shown(killFirstAbove),
    itemsLeast: `${rule.mealItems.value[0]}`,
    itemsMost: `${rule.mealItems.value[1]}`,
    intervalLeast: `${rule.intervalDays.value[0]}`,
    intervalMost: `${rule.intervalDays.value[1]}`,
    needLeast: shown(rule.weeklyNeed.value[0]),
    needMost: shown(rule.weeklyNeed.value[1]),
    ...Object.fromEntries(caps),
    portions: `${rule.portions.value}`,
    waitAfterMoultDays: `${rule.waitAfterMoultDays.value}`,
    retryDays: `${rule.retryDays.value}`,
    graceDays: `${rule.graceDays.value}`,
    safeGapDays: `${rule.safeGapDays.value}`,
    moultDays: moult === null ? '' : `${moult.meanDays.value}`,
    moultCv: moult === null ? '' : shown(moult.cv.value),
    moultGrowth: moult === null ? '' : shown(moult.lengthFactor.value - 1),
  };
}
