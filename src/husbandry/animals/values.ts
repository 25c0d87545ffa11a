/** The values a rule and a kind hold, without their sources: what is compared when one is changed. */
import type { Kind, StageRule } from './kind.ts';
import type { KindValues, StageValues } from './own-values.ts';

export const stageValues = (rule: StageRule): StageValues => ({
  window: rule.window.value,
  mealItems: rule.mealItems.value,
  intervalDays: rule.intervalDays.value,
  weeklyNeed: rule.weeklyNeed.value,
  accepts: rule.accepts,
  shareCaps: rule.shareCaps.value,
  refusesHard: rule.refusesHard,
  portions: rule.portions.value,
  waitAfterMoultDays: rule.waitAfterMoultDays.value,
  retryDays: rule.retryDays.value,
  graceDays: rule.graceDays.value,
  safeGapDays: rule.safeGapDays.value,
  urgency: rule.urgency,
  moultDays: rule.moult?.meanDays.value ?? null,
  moultCv: rule.moult?.cv.value ?? null,
  moultFactor: rule.moult?.lengthFactor.value ?? null,
});

export const kindValues = (kind: Kind): KindValues => ({
  name: kind.name,
  commonName: kind.commonName,
  aliases: kind.aliases,
  gauge: kind.gauge,
  bodyPerGauge: kind.bodyPerGauge.value,
  bodyPerGaugeMale: kind.bodyPerGaugeMale?.value ?? null,
  massPerCubicMm: kind.massPerCubicMm.value,
  adultGaugeMm: kind.adultGaugeMm.value,
  firstFeedingGaugeMm: kind.firstFeedingGaugeMm.value,
});
