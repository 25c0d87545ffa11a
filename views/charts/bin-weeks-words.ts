/** What the pictures of a bin's weeks say: their findings, and the same numbers as tables. */
import type { BinAhead, BinWeek } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, type LengthUnit, lengthText, roundly, sentenceCase, shortDay } from '../format.ts';
import type { BinWeeksProps } from './bin-weeks.tsx';
import type { NumbersTable } from './figure.tsx';

/** A total that changes by less than this share stays as it is. */
const STEADY = 0.15;

/** 'Grows from about 700 to about 1700 by Thu 25 Feb'. */
export function binWeeksFinding({ ahead: { weeks }, overFrom }: BinWeeksProps): string {
  const [first, last] = [weeks[0]!, weeks.at(-1)!];
  const most = weeks.reduce((a, b) => (b.heads.mid > a.heads.mid ? b : a));
  const [now, then] = [first.heads.mid, last.heads.mid];
  if (Math.max(now, most.heads.mid) < 1) return 'Empty in the coming weeks';
  const full =
    overFrom === null || overFrom <= first.day ? '' : `, too full from about ${shortDay(overFrom)}`;
  if (most.heads.mid > (1 + STEADY) * Math.max(now, then))
    return `Most on about ${shortDay(most.day)}: about ${roundly(most.heads.mid)}${full}`;
  const verb = then > now ? 'Grows' : 'Falls';
  const left = then < 1 ? 'none' : `about ${roundly(then)}`;
  return Math.abs(then - now) <= STEADY * now
    ? `Stays about ${roundly(now)} to ${shortDay(last.day)}${full}`
    : `${verb} from about ${roundly(now)} to ${left} by ${shortDay(last.day)}${full}`;
}

/** By week: the total with its doubt, then each size. */
export function binWeeksTable({ weeks }: BinAhead): NumbersTable {
  const sizes = weeks[0]!.bySize.map(({ size }) => sentenceCase(size));
  return {
    caption: 'Heads week by week if nothing is taken out',
    head: ['Week from', 'Alive', 'From', 'To', ...sizes],
    rows: weeks.map(({ day, heads, bySize }) => [
      shortDay(day),
      aboutHeads(heads),
      `${Math.round(heads.low)}`,
      `${Math.round(heads.high)}`,
      ...bySize.map((size) => `${Math.round(size.heads)}`),
    ]),
  };
}

interface Lengths {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

const SHARES = { low: 0.05, mid: 0.5, high: 0.95 };

/** Lengths of a week by rank; null where nobody is left. */
function lengthsOf({ byBand }: BinWeek, edgesMm: readonly number[]): Lengths | null {
  const all = byBand.reduce((sum, heads) => sum + heads, 0);
  if (all < 1) return null;
  const at = (share: number): number => {
    let below = 0;
    const band = byBand.findIndex((heads) => {
      below += heads;
      return below >= share * all;
    });
    return Math.sqrt(edgesMm[band]! * edgesMm[band + 1]!);
  };
  return { low: at(SHARES.low), mid: at(SHARES.mid), high: at(SHARES.high) };
}

/** 'The middle one is 6 mm long now and 15 mm by Thu 25 Feb'. */
export function creepFinding({ weeks, edgesMm }: BinAhead, unit: LengthUnit): string {
  const known = weeks.filter((week) => lengthsOf(week, edgesMm) !== null);
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last) return 'Nobody is left to measure';
  const middle = (week: BinWeek) => lengthText(lengthsOf(week, edgesMm)!.mid, unit);
  const [now, then] = [middle(first), middle(last)];
  return now === then
    ? `The middle one stays ${now} long`
    : `The middle one is ${now} long now and ${then} by ${shortDay(last.day)}`;
}

/** By week: the shortest, the middle and the longest. */
export function creepTable({ weeks, edgesMm }: BinAhead, unit: LengthUnit): NumbersTable {
  return {
    caption: 'Lengths week by week; 1 in 20 is shorter than the first, 1 in 20 longer than the last',
    head: ['Week from', 'Shortest', 'Middle', 'Longest'],
    rows: weeks.map((week) => {
      const lengths = lengthsOf(week, edgesMm);
      const said = lengths === null ? ['–', '–', '–'] : [lengths.low, lengths.mid, lengths.high];
      return [shortDay(week.day), ...said.map((mm) => (typeof mm === 'string' ? mm : lengthText(mm, unit)))];
    }),
  };
}
