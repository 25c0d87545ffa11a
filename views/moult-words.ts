/** The next moult and the instar ladder in words: days with their doubt, the finding, the numbers. */
import type { DayBand, NextMoult, Rung } from '../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../src/husbandry/calendar.ts';
import type { NumbersTable } from './charts/figure.tsx';
import {
  type LengthUnit,
  lengthRange,
  lengthText,
  partOfMonth,
  parts,
  recordDay,
  sentenceCase,
  spell,
} from './format.ts';

/** A day is named where its doubt is less. */
const NAMED_WITHIN_DAYS = 11;
/** Only a part of a month where its doubt is more. */
const VAGUE_FROM_DAYS = 63;
/** A moult this near is not given a day. */
const ANY_DAY_WITHIN = 2;

const halfWidth = ({ low, mid, high }: DayBand): number => Math.max(high - mid, mid - low);

/** A day further off than this is given its year. */
const YEAR_AFTER_DAYS = 200;

/** ' 2027', or nothing when the month alone says which year is meant. */
const farYear = (day: DayNumber, today: DayNumber): string =>
  day - today > YEAR_AFTER_DAYS ? ` ${parts(day).year}` : '';

/** '12 March', with its year when it is far off. */
function dateWords(day: DayNumber, today: DayNumber): string {
  const { date, month } = parts(day);
  return `${date} ${month}${farYear(day, today)}`;
}

/** 'early March', with its year when it is far off. */
const monthWords = (day: DayNumber, today: DayNumber): string => `${partOfMonth(day)}${farYear(day, today)}`;

const isNear = ({ mid }: DayBand, today: DayNumber): boolean => mid - today <= ANY_DAY_WITHIN;

/** For a sentence: 'any day now', 'about 12 March', 'about mid January'. */
export function moultDay(band: DayBand, today: DayNumber): string {
  if (isNear(band, today)) return 'any day now';
  const precise = halfWidth(band) < NAMED_WITHIN_DAYS;
  return `about ${precise ? dateWords(band.mid, today) : monthWords(band.mid, today)}`;
}

/** For a rung: 'about 12 March, 3 weeks either way'; where there is little room '12 March ± 3 weeks'. */
function moultDayWithDoubt(band: DayBand, today: DayNumber, brief: boolean): string {
  const half = halfWidth(band);
  if (isNear(band, today)) return `any day now, within ${spell(band.high - today)}`;
  const vague = half >= VAGUE_FROM_DAYS;
  const day = vague ? monthWords(band.mid, today) : dateWords(band.mid, today);
  return brief ? `${day} ± ${spell(half)}` : `about ${day}, ${spell(half)} either way`;
}

export interface LadderTold {
  readonly rungs: readonly Rung[];
  readonly next: NextMoult;
  readonly today: DayNumber;
  readonly unit: LengthUnit;
}

const takes = ({ window }: Rung, unit: LengthUnit): string => lengthRange(window.minMm, window.maxMm, unit);

const WHY_NO_MOULT = {
  'never moults': 'It grows without moulting',
  'moults no more': 'It moults no more',
  'kept as a group': 'A group, whose moults are not foretold',
} as const;

/** 'Next moult about mid January; then it takes prey of 9–14 mm'. */
export function ladderFinding({ rungs, next, today, unit }: LadderTold): string {
  const now = rungs.find(({ place }) => place === 'now') as Rung;
  if (next.kind === 'none') {
    return `${WHY_NO_MOULT[next.reason]}; it takes prey of ${takes(now, unit)}`;
  }
  const after = rungs.find(({ place }) => place === 'ahead');
  const then = after === undefined ? '' : `; then it takes prey of ${takes(after, unit)}`;
  if (next.basis === 'no moult on record')
    return `No moult is on record: the next may come any time until about ${monthWords(next.day.high, today)}${then}`;
  if (isNear(next.day, today)) return `It may moult any day now${then}`;
  return `Next moult ${moultDay(next.day, today)}${then}`;
}

/** When a size began or will begin: 'since 4 Jun 2026', 'before 4 Jun 2026', 'about 12 March, 3 weeks either way'. */
export function rungDay(
  { rungs, today }: Pick<LadderTold, 'rungs' | 'today'>,
  rung: Rung,
  brief = false,
): string {
  if (rung.expected !== null) return moultDayWithDoubt(rung.expected, today, brief);
  if (rung.since !== null) return `${rung.place === 'now' ? 'now, since' : 'from'} ${recordDay(rung.since)}`;
  const following = rungs[rungs.indexOf(rung) + 1]?.since ?? null;
  return rung.place === 'now' || following === null ? 'now' : `until ${recordDay(following)}`;
}

export const rungPrey = (rung: Rung, unit: LengthUnit): string => `takes ${takes(rung, unit)}`;

/** What the picture shows, for those who do not see it. */
export function ladderDescription({ rungs, unit }: LadderTold): string {
  const sizes = rungs.map(({ place, gaugeMm, window }) => {
    const size = `${place} ${lengthText(gaugeMm, unit)}`;
    return `${size}, takes prey of ${lengthRange(window.minMm, window.maxMm, unit)}`;
  });
  return `Rungs from the smallest size up, on the ruler of prey lengths: ${sizes.join('; ')}. Behind them, faintly, what is alive in the larder.`;
}

const bandDays = ({ low, high }: DayBand): string => `${recordDay(low)} to ${recordDay(high)}`;

export function ladderTable(told: LadderTold, gaugeWord: string): NumbersTable {
  const { rungs, unit } = told;
  return {
    caption: 'Sizes behind and ahead; nine times in ten the moult comes between the days of the last column',
    head: ['Stage', sentenceCase(gaugeWord), 'Own body', 'Prey it takes', 'Best', 'When', '9 times in 10'],
    rows: rungs.map((rung) => [
      rung.rule.words[0] ?? rung.rule.stage,
      `${lengthText(rung.gaugeMm, unit)}${rung.measured ? '' : ', reckoned'}`,
      lengthText(rung.referenceMm, unit),
      takes(rung, unit),
      lengthText(rung.window.idealMm, unit),
      rungDay(told, rung),
      rung.expected === null ? '–' : bandDays(rung.expected),
    ]),
  };
}
