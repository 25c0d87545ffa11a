/** The forms of a kind: what they take, and what an act is told of it. */

import { z } from 'zod';
import { type LengthUnit, lengthText } from '../../../views/format.ts';
import { kindFigures } from '../../actions/kind-edited.ts';
import { capField, FORMS, figuresShown, ruleFigures } from '../../actions/rule-fields.ts';
import type { Kind, StageRule } from '../../husbandry/animals/index.ts';
import { inPercent, type Mm } from '../../husbandry/units.ts';
import { anyText, lengthTyped, needed, readMm, revision, ticked, typed, typedOrEmpty } from './typed.ts';

const { accepts: _accepts, refusesHard: _hard, urgency: _urgency, ...figures } = ruleFigures;
const MAY_BE_EMPTY = ['killFirstAbove', ...FORMS.map(capField)];

/** Every figure as text: needed, but for those where empty says something, and the moults of a stage without any. */
const figureFields = Object.fromEntries(
  Object.entries(figures).map(([name, field]) => {
    if (MAY_BE_EMPTY.includes(name)) return [name, typedOrEmpty(field)];
    return [name, name.startsWith('moult') ? typed(field).optional() : typed(field)];
  }),
) as Record<keyof typeof figures, z.ZodType<string | undefined>>;

export const ruleShape = {
  stage: needed,
  ...figureFields,
  accepts: z.array(z.string()).default([]),
  refusesHard: ticked,
  urgency: anyText,
  why: anyText,
  asOf: revision,
};
export type RuleTyped = z.output<z.ZodObject<typeof ruleShape>>;

/** What was typed, without what was left as it was shown. */
export function ruleGiven(code: string, { asOf, ...given }: RuleTyped, rule: StageRule | undefined) {
  const shown: Readonly<Record<string, string>> = rule === undefined ? {} : figuresShown(rule);
  const changed = Object.entries(given).filter(([name, value]) => shown[name] !== value);
  const fields = Object.fromEntries(changed) as Omit<RuleTyped, 'asOf'>;
  return { ...fields, kind: code, asOf };
}

export const kindShape = (unit: LengthUnit) => ({
  aliases: anyText,
  gauge: needed,
  bodyPerGauge: typed(kindFigures.bodyPerGauge),
  bodyPerGaugeMale: typed(kindFigures.bodyPerGaugeMale).optional(),
  massPerCubicMm: typed(kindFigures.massPerCubicMm),
  adultLeast: lengthTyped(unit),
  adultMost: lengthTyped(unit),
  firstLeast: lengthTyped(unit),
  firstMost: lengthTyped(unit),
  why: anyText,
  asOf: revision,
});
export type KindTyped = z.output<z.ZodObject<ReturnType<typeof kindShape>>>;

/** Each figure of a kind as its form shows it. */
export function kindShown(kind: Kind, unit: LengthUnit): Readonly<Record<string, string>> {
  const mm = (length: Mm): string => lengthText(length, unit);
  return {
    aliases: kind.aliases.join(', '),
    gauge: kind.gauge,
    bodyPerGauge: `${inPercent(kind.bodyPerGauge.value)}`,
    bodyPerGaugeMale: kind.bodyPerGaugeMale === null ? '' : `${inPercent(kind.bodyPerGaugeMale.value)}`,
    massPerCubicMm: `${kind.massPerCubicMm.value}`,
    adultLeast: mm(kind.adultGaugeMm.value[0]),
    adultMost: mm(kind.adultGaugeMm.value[1]),
    firstLeast: mm(kind.firstFeedingGaugeMm.value[0]),
    firstMost: mm(kind.firstFeedingGaugeMm.value[1]),
  };
}

const LENGTHS = ['adultLeast', 'adultMost', 'firstLeast', 'firstMost'] as const;

/** What was typed, without what was left as it was shown; lengths in millimetres. */
export function kindGiven(kind: Kind, { asOf, ...given }: KindTyped, unit: LengthUnit) {
  const shown = kindShown(kind, unit);
  const changed = Object.entries(given)
    .filter(([name, value]) => shown[name] !== value)
    .map(([name, value]) => [name, isLength(name) ? mmOf(String(value), unit) : value]);
  const fields = Object.fromEntries(changed) as Partial<Omit<KindTyped, 'asOf'>>;
  return { ...fields, kind: kind.code, asOf };
}

const isLength = (name: string): boolean => LENGTHS.some((each) => each === name);

/** A length already read once. */
function mmOf(text: string, unit: LengthUnit): Mm | string {
  const read = readMm(unit)(text);
  return read.ok ? read.value : text;
}
