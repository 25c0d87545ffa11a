/** A bulk order in words: the best count, what it comes to, what more packs and another warmth would change. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { type Offer, packCents, type Supplier } from '../../src/husbandry/orders/index.ts';
import type { BulkAnswer, BulkCurve, BulkPoint } from '../../src/husbandry/plan/index.ts';
import { counted, headPrice, type LengthUnit, listed, money, roundly } from '../format.ts';
import { type Names, preyName, sizedPrey } from '../names.ts';
import type { SourceLine } from '../partials/sources.tsx';

export interface BulkTold {
  readonly answer: BulkAnswer;
  readonly offer: Offer;
  readonly supplier: Supplier;
  readonly weeks: number;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly today: DayNumber;
  readonly currency: string;
  readonly sources: readonly SourceLine[];
}

/** 'small house crickets' */
export const offerWords = ({ size, species }: Offer, names: Names): string =>
  sizedPrey(size, preyName(names.species, species));

export const manyOf = (n: number): string => roundly(n).toLocaleString('en-GB');

export const packsWords = (n: number): string => counted(n, 'pack');

/** The curve as the bins stand. */
export const curveNow = ({ answer }: BulkTold): BulkCurve => answer.curves[0]!;

export const pointAt = ({ points }: BulkCurve, packs: number): BulkPoint | undefined =>
  points.find((point) => point.packs === packs);

export const bestOf = (curve: BulkCurve): BulkPoint => pointAt(curve, curve.best)!;

/** '€0.046' */
export const eatenPrice = ({ centsPerEaten }: BulkPoint, { currency }: BulkTold): string =>
  centsPerEaten === null ? '–' : headPrice(centsPerEaten, currency);

/** '4 packs of small house crickets: each one that is eaten costs €0.046' */
export function bulkHeadline(told: BulkTold): string {
  const best = bestOf(curveNow(told));
  return `${packsWords(best.packs)} of ${offerWords(told.offer, told.names)}: each one that is eaten costs ${eatenPrice(best, told)}`;
}

/** 'With 8 packs it would be €0.049, and 780 would die.' */
export function moreWords(told: BulkTold): string {
  const curve = curveNow(told);
  const { points, best } = curve;
  const other = pointAt(curve, 2 * best) ?? points.at(-1)!;
  if (other.packs <= best)
    return `${points.length < 2 ? '' : 'It gets cheaper up to there. '}${endWords(curve)}`;
  const lost = lostWords(other);
  const end = lost.length > 1 ? `; ${listed(lost)}` : lost.map((words) => `, and ${words}`).join('');
  return `With ${packsWords(other.packs)} it would be ${eatenPrice(other, told)}${end}.`;
}

/** Why no more packs are spoken of than the best. */
function endWords({ best, end }: BulkCurve): string {
  switch (end) {
    case 'no more':
      return `There ${best === 1 ? 'is' : 'are'} no more than ${packsWords(best)} to be had.`;
    case 'not worked out':
      return `More than ${packsWords(best)} ${best === 1 ? 'was' : 'were'} not worked out.`;
    default:
      return `More than ${packsWords(best)} could be of no use.`;
  }
}

const lostWords = ({ died, outgrown }: BulkPoint): readonly string[] => [
  ...(roundly(died) > 0 ? [`${manyOf(died)} would die uneaten`] : []),
  ...(roundly(outgrown) > 0 ? [`${manyOf(outgrown)} would outgrow everybody here`] : []),
];

/** Within this of the best price, others are as good. */
const NEAR = 1.03;

/** '3 packs are hardly dearer: 140 more would be eaten, at €0.032 for each of all.' Empty where it does. */
export function nearWords(told: BulkTold): string {
  const curve = curveNow(told);
  const best = bestOf(curve);
  const near = curve.points.filter(
    ({ packs, centsPerEaten }) =>
      packs > best.packs && centsPerEaten !== null && centsPerEaten <= NEAR * (best.centsPerEaten ?? 0),
  );
  const last = near.at(-1);
  if (last === undefined || roundly(last.eaten - best.eaten) < 1) return '';
  return `${packsWords(last.packs)} are hardly dearer: ${manyOf(last.eaten - best.eaten)} more would be eaten, at ${eatenPrice(last, told)} for each of all.`;
}

/** 'Grille & Co sends nothing under €10.00 of goods: 2 packs at least.' Empty where one pack is sent. */
export function leastWords(told: BulkTold): string {
  const { supplier, currency } = told;
  const least = curveNow(told).points[0]?.packs ?? 1;
  return least < 2
    ? ''
    : `${supplier.name} sends nothing under ${money(supplier.minimumCents, currency)} of goods: ${packsWords(least)} at least.`;
}

/** 'The 4 packs cost €18.40 with postage, bring about 400 alive …' */
export function fateWords(told: BulkTold): string {
  const best = bestOf(curveNow(told));
  const { cents, heads, eaten, died, outgrown, left } = best;
  const fates = [
    `${manyOf(eaten)} of them are eaten within ${counted(told.weeks, 'week')}`,
    ...(roundly(died) > 0 ? [`${manyOf(died)} die before`] : []),
    ...(roundly(outgrown) > 0 ? [`${manyOf(outgrown)} outgrow everybody here`] : []),
    ...(roundly(left) > 0 ? [`${manyOf(left)} are left for later`] : []),
  ];
  const verb = best.packs === 1 ? 'costs' : 'cost';
  const bring = best.packs === 1 ? 'brings' : 'bring';
  const postage = cents > best.packs * packCents(told.offer, best.packs) ? ', postage in it,' : '';
  return `${packsWords(best.packs)} ${verb} ${money(cents, told.currency)}${postage} and ${bring} about ${manyOf(heads)} alive: ${listed(fates)}.`;
}

/** 'Pack 4 feeds 72 more, at €0.061 each. Pack 5 would feed 20 more, at €0.35 each.' */
export function lastPackWords(told: BulkTold): string {
  const curve = curveNow(told);
  const at = (packs: number) => pointAt(curve, packs);
  const best = curve.best;
  const sentences = [
    ...packAdds(told, at(best), at(best - 1), 'feeds'),
    ...packAdds(told, at(best + 1), at(best), 'would feed'),
  ];
  return sentences.map((sentence) => `${sentence}.`).join(' ');
}

function packAdds(
  { currency }: BulkTold,
  point: BulkPoint | undefined,
  before: BulkPoint | undefined,
  verb: string,
): readonly string[] {
  if (point === undefined || before === undefined) return [];
  const more = roundly(point.eaten - before.eaten);
  const nth = `Pack ${point.packs}`;
  const { centsPerMoreEaten } = point;
  if (more < 1 || centsPerMoreEaten === null) return [`${nth} ${verb} nobody`];
  if (centsPerMoreEaten < 0) return [`${nth} makes the whole parcel cheaper`];
  return [`${nth} ${verb} ${manyOf(more)} more, at ${headPrice(centsPerMoreEaten, currency)} each`];
}

/** 'In a bin 4 degrees cooler (16–19 °C) 3 packs would be best, at €0.038 a head eaten.' */
export function warmthWords(told: BulkTold): readonly string[] {
  return told.answer.curves.slice(1).map((curve) => {
    const { minC, maxC } = curve.tempC;
    const how = curve.warmerC < 0 ? 'cooler' : 'warmer';
    const best = bestOf(curve);
    const temp = minC === maxC ? `${minC} °C` : `${minC} to ${maxC} °C`;
    return `In a bin ${Math.abs(curve.warmerC)} degrees ${how} (${temp}) ${packsWords(best.packs)} would be best, at ${eatenPrice(best, told)} for each one; ${manyOf(best.eaten)} would be eaten.`;
  });
}
