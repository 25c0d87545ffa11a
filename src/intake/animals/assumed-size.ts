/** A gauge for an animal nobody measured: the middle of its stage, marked as assumed. */
import { adultGauge, type Kind, type KindGroup, type LifeStage } from '../../husbandry/animals/index.ts';
import type { Mm } from '../../husbandry/units.ts';

const ORDER: readonly LifeStage[] = ['young', 'juvenile', 'subadult', 'adult'];
const ARACHNIDS: ReadonlySet<KindGroup> = new Set([
  'tarantula',
  'true spider',
  'jumping spider',
  'scorpion',
  'whip spider',
]);
/** Keepers count from the sac: an arachnid first feeds as its second instar, an insect as its first. */
const firstFeedingInstar = ({ group }: Kind): number => (ARACHNIDS.has(group) ? 2 : 1);

const middle = ([least, most]: readonly [Mm, Mm]): Mm => (least + most) / 2;

const growing = (kind: Kind) => kind.stages.filter(({ stage }) => stage !== 'mature male');

/** The stage a gauge falls in. */
export const stageOfGauge = (kind: Kind, gaugeMm: Mm): LifeStage | null =>
  growing(kind).findLast(({ fromShareOfAdult }) => fromShareOfAdult * adultGauge(kind) <= gaugeMm)?.stage ??
  growing(kind)[0]?.stage ??
  null;

/** Middle of a stage; of the nearest earlier stage where the kind has no such stage. */
export function gaugeOfStage(kind: Kind, stage: LifeStage): Mm {
  if (stage === 'young') return middle(kind.firstFeedingGaugeMm.value);
  if (stage === 'adult' || stage === 'mature male') return adultGauge(kind);
  const stages = growing(kind);
  const place = stages.findLastIndex((rule) => ORDER.indexOf(rule.stage) <= ORDER.indexOf(stage));
  const from = stages[place]?.fromShareOfAdult ?? 0;
  const to = stages[place + 1]?.fromShareOfAdult ?? 1;
  return ((from + to) / 2) * adultGauge(kind);
}

/** First-feeding gauge grown by the kind's factor at each moult since, at most the adult gauge. */
export function gaugeOfInstar(kind: Kind, instar: number): Mm {
  const factor = kind.stages.find(({ moult }) => moult)?.moult?.lengthFactor.value ?? 1;
  const moults = instar - firstFeedingInstar(kind);
  const grown = middle(kind.firstFeedingGaugeMm.value) * factor ** Math.max(0, moults);
  return Math.min(grown, adultGauge(kind));
}
