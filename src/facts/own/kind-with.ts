/** A kind with the keeper's own values in place of the Book's; what is not changed keeps its source. */
import type {
  Changed,
  ChangedKind,
  Kind,
  KindValues,
  MoultCycle,
  Own,
  StageRule,
  StageValues,
} from '../../husbandry/animals/index.ts';
import type { Sourced } from '../../husbandry/sourced.ts';
import { yours } from './yours.ts';

const either = <T>(book: Sourced<T>, own: Own<NoInfer<T> | null> | undefined): Sourced<T> =>
  own === undefined || own.value === null ? book : yours(book, own as Own<T>);

/** The kind; the same object where nothing is changed. A kind of the keeper's own keeps the cautions it was made from. */
export function kindWith(book: Kind, { code, base, changes }: ChangedKind): Kind {
  const stages = book.stages.map((rule) => ruleWith(rule, changes.stages[rule.stage] ?? {}));
  const same = base === null && isNone(changes.kind) && stages.every((rule, at) => rule === book.stages[at]);
  if (same) return book;
  const own = base === null ? {} : { code, madeFrom: base };
  return { ...book, ...own, ...wholeWith(book, changes.kind), stages };
}

const isNone = (changes: object): boolean => Object.keys(changes).length === 0;

const wholeWith = (book: Kind, own: Changed<KindValues>): Partial<Kind> => ({
  name: own.name?.value ?? book.name,
  commonName: own.commonName?.value ?? book.commonName,
  aliases: own.aliases?.value ?? book.aliases,
  gauge: own.gauge?.value ?? book.gauge,
  bodyPerGauge: either(book.bodyPerGauge, own.bodyPerGauge),
  bodyPerGaugeMale: book.bodyPerGaugeMale && either(book.bodyPerGaugeMale, own.bodyPerGaugeMale),
  massPerCubicMm: either(book.massPerCubicMm, own.massPerCubicMm),
  adultGaugeMm: either(book.adultGaugeMm, own.adultGaugeMm),
  firstFeedingGaugeMm: either(book.firstFeedingGaugeMm, own.firstFeedingGaugeMm),
});

function ruleWith(book: StageRule, own: Changed<StageValues>): StageRule {
  if (isNone(own)) return book;
  return {
    ...book,
    window: either(book.window, own.window),
    mealItems: either(book.mealItems, own.mealItems),
    intervalDays: either(book.intervalDays, own.intervalDays),
    weeklyNeed: either(book.weeklyNeed, own.weeklyNeed),
    accepts: own.accepts?.value ?? book.accepts,
    shareCaps: either(book.shareCaps, own.shareCaps),
    refusesHard: own.refusesHard?.value ?? book.refusesHard,
    portions: either(book.portions, own.portions),
    waitAfterMoultDays: either(book.waitAfterMoultDays, own.waitAfterMoultDays),
    retryDays: either(book.retryDays, own.retryDays),
    graceDays: either(book.graceDays, own.graceDays),
    safeGapDays: either(book.safeGapDays, own.safeGapDays),
    urgency: own.urgency?.value ?? book.urgency,
    moult: book.moult && moultWith(book.moult, own),
  };
}

const moultWith = (book: MoultCycle, own: Changed<StageValues>): MoultCycle => ({
  meanDays: either(book.meanDays, own.moultDays),
  cv: either(book.cv, own.moultCv),
  lengthFactor: either(book.lengthFactor, own.moultFactor),
});
