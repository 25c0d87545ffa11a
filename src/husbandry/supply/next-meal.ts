/** When an animal eats next: the range its rule and record give, the evening in it, and why it may have to wait. */
import { type Animal, type Kind, ruleOf, type StageRule } from '../animals/index.ts';
import { feedingDaysFrom, learnedInterval, offeredOn } from '../appetite/index.ts';
import type { DayNumber } from '../calendar.ts';
import type { Snapshot } from '../snapshot.ts';
import { spokenDay } from './wording.ts';

export interface NextMeal {
  readonly animal: Animal;
  readonly kind: Kind;
  readonly rule: StageRule;
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** The evening it falls on; null when no feeding day lies ahead. */
  readonly evening: DayNumber | null;
  readonly tonight: boolean;
}

/**
 * The range in which the next meal falls, and whether it falls on tonight, a feeding day: its middle day has come, or
 * no other feeding day is left inside the range.
 */
export function nextMealOf(snapshot: Snapshot, animal: Animal): NextMeal {
  const { today, calendar, facts } = snapshot;
  const kind = facts.kinds.get(animal.kind);
  if (!kind) throw new Error(`animal ${animal.code} has the unknown kind ${animal.kind}`);
  const rule = ruleOf(kind, animal);
  const { min, max } = learnedInterval(rule, animal, facts.policy);
  const [from, to] = rangeAfterRecord({ animal, rule, today, min, max });
  const days = Math.max(max, to - today) + facts.policy.nextEveningDays.value;
  const feeding = feedingDaysFrom(calendar, today, days);
  const drawn = Math.round((from + to) / 2) - today;
  const nominal = offeredOn(feeding, { from: from - today, to: to - today, drawn: Math.max(0, drawn) });
  const next = feeding.next[1] as number;
  return {
    animal,
    kind,
    rule,
    from,
    to,
    evening: nominal < days ? today + nominal : null,
    tonight: feeding.next[0] === 0 && from <= today && (nominal === 0 || next > to - today),
  };
}

interface Recorded {
  readonly animal: Animal;
  readonly rule: StageRule;
  readonly today: DayNumber;
  readonly min: number;
  readonly max: number;
}

/** From the last meal taken; after a refusal from the retry; with nothing on record now. */
function rangeAfterRecord({ animal, rule, today, min, max }: Recorded): [DayNumber, DayNumber] {
  if (animal.lastOffered !== null && animal.lastOutcome === 'refused') {
    const again = animal.lastOffered + rule.retryDays.value;
    return [again, again + max - min];
  }
  const waiting = animal.lastOutcome === 'offered' ? animal.lastOffered : null;
  const last = waiting ?? animal.lastTaken ?? animal.lastOffered;
  return last === null ? [today, today + max - min] : [last + min, last + max];
}

/** Why this animal must be left alone, or null. */
export function reasonToWait(
  { animal, rule }: Pick<NextMeal, 'animal' | 'rule'>,
  today: DayNumber,
): string | null {
  const hardOn = hardFrom(animal, rule) ?? today;
  if (hardOn > today) return `moulted; nothing before ${spokenDay(hardOn)}, until it has hardened.`;
  if (isInPremoult(animal)) return 'about to moult; no live prey until it has moulted and hardened.';
  const over = fastOver(animal, today);
  return over === null ? null : `off its food until ${spokenDay(over)}, as you said: it guards its young.`;
}

/** First day on which it may be fed after its moult and after a fast under way; null when neither is on record. */
export function shutUntil(animal: Animal, rule: StageRule, today: DayNumber): DayNumber | null {
  const days = [hardFrom(animal, rule), fastOver(animal, today)].filter((day) => day !== null);
  return days.length === 0 ? null : Math.max(...days);
}

const hardFrom = ({ lastMoult }: Animal, rule: StageRule): DayNumber | null =>
  lastMoult === null ? null : lastMoult.found + Math.ceil(rule.waitAfterMoultDays.value);

const fastOver = ({ fasts = null }: Animal, today: DayNumber): DayNumber | null =>
  fasts !== null && fasts.from <= today && today <= fasts.to ? fasts.to + 1 : null;

const isInPremoult = ({ premoultSeen, lastMoult }: Animal): boolean =>
  premoultSeen !== null && (lastMoult === null || premoultSeen >= lastMoult.found);
