/** The instar ladder, the meals as dots and the growth: geometry that does not lie, words that say the finding. */
import { describe, expect, it } from 'vitest';
import type { MealShare } from '../../src/husbandry/appetite/index.ts';
import { Growth } from '../../views/charts/growth.tsx';
import { InstarLadder, type InstarLadderProps } from '../../views/charts/instar-ladder.tsx';
import { MealDots } from '../../views/charts/meal-dots.tsx';
import { rulerScale } from '../../views/charts/ruler.tsx';
import { growthFinding } from '../../views/growth-words.ts';
import { ladderFinding, moultDay, rungDay } from '../../views/moult-words.ts';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { names, spectrum, TODAY } from '../support/view-fixtures.ts';
import { growth, meals, nextMoult, rungs } from '../support/view-life.ts';
import { markup } from '../support/view-pages.tsx';

const props: InstarLadderProps = {
  rungs,
  next: nextMoult,
  today: TODAY,
  unit: 'mm',
  gaugeWord: 'diagonal leg span',
  larder: spectrum,
  species: names.species,
};
const ladder = (over: Partial<InstarLadderProps> = {}): string =>
  markup(<InstarLadder {...props} {...over} />);
const band = (mid: number, half: number) => ({
  low: TODAY + mid - half,
  mid: TODAY + mid,
  high: TODAY + mid + half,
});

describe('the day of a moult', () => {
  it('is told no finer than its doubt', () => {
    expect(moultDay(band(20, 6), TODAY)).toBe('about 12 December');
    expect(moultDay(band(58, 40), TODAY)).toBe('about mid January');
    expect(moultDay(band(400, 90), TODAY)).toBe('about late December 2027');
    expect(moultDay(band(2, 2), TODAY)).toBe('any day now');
  });

  it('has its doubt beside it on the rung, in days, weeks or months', () => {
    const [, , , ahead] = rungs;
    const told = (mid: number, half: number, brief = false) =>
      rungDay({ rungs, today: TODAY }, { ...ahead!, expected: band(mid, half) }, brief);
    expect(told(20, 6)).toBe('about 12 December, 6 days either way');
    expect(told(58, 20)).toBe('about 19 January, 3 weeks either way');
    expect(told(200, 92)).toBe('about early June, 3 months either way');
    expect(told(58, 20, true)).toBe('19 January ± 3 weeks');
    expect(told(1, 9)).toBe('any day now, within 10 days');
  });
});

describe('the finding', () => {
  const found = (over: Partial<InstarLadderProps>) => ladderFinding({ ...props, ...over });

  it('says when, and what it then takes', () => {
    expect(found({})).toBe('Next moult about mid January; then it takes prey of 6–18 mm');
    expect(found({ unit: 'in' })).toContain('then it takes prey of 1/4–11/16 in');
  });

  it('says what is not known, and what will not be', () => {
    expect(found({ next: { kind: 'expected', basis: 'no moult on record', day: band(58, 50) } })).toBe(
      'No moult is on record: the next may come any time until about early March; then it takes prey of 6–18 mm',
    );
    const done = { rungs: rungs.slice(0, 3), next: { kind: 'none', reason: 'moults no more' } as const };
    expect(found(done)).toBe('It moults no more; it takes prey of 4.5–13 mm');
    const frog = { rungs: rungs.slice(0, 3), next: { kind: 'none', reason: 'never moults' } as const };
    expect(found(frog)).toBe('It grows without moulting; it takes prey of 4.5–13 mm');
    expect(found({ next: { kind: 'expected', basis: 'premoult seen', day: band(1, 3) } })).toContain(
      'It may moult any day now',
    );
  });
});

describe('the picture', () => {
  const html = ladder();

  it('draws each window and each body at its length on the ruler, smallest size lowest', () => {
    const x = rulerScale(288, 828);
    const bars = tags(html, 'path')
      .filter((tag) => tag.includes('class="rung-bar"'))
      .map((tag) => /d="M([\d.]+) ([\d.]+)v12M\S+ (\S+)H([\d.]+)M/.exec(tag)!)
      .slice(0, rungs.length);
    bars.forEach((bar, i) => {
      expect(Number(bar[1])).toBeCloseTo(x(rungs[i]!.window.minMm), 0);
      expect(Number(bar[4])).toBeCloseTo(x(rungs[i]!.window.maxMm), 0);
    });
    const heights = bars.map((bar) => Number(bar[3]));
    expect(heights).toEqual(heights.toSorted((a, b) => b - a));
  });

  it('softens what is ahead, the more the greater its doubt', () => {
    const soft = tags(html, 'rect')
      .filter((tag) => tag.includes('ladder-desk-soft'))
      .map((tag) => Number(attributes(tag, 'height')[0]));
    expect(soft).toHaveLength(3);
    expect(soft).toEqual(soft.toSorted((a, b) => a - b));
    expect(tags(html, 'g').filter((tag) => tag.includes('is-now'))).toHaveLength(2);
  });

  it('has the prey alive behind it, by name', () => {
    expect(words(html)).toContain('large fruit flies');
    expect(attributes(html, 'class').filter((look) => look.startsWith('shadow'))).toHaveLength(8);
  });

  it('survives an empty larder and a single rung', () => {
    const bare = ladder({ rungs: rungs.slice(2, 3), larder: { edgesMm: [1, 8, 60], alive: [] } });
    expect(bare).not.toContain('NaN');
    expect(words(bare)).toContain('now, since 28 Sep 2026');
  });

  it('keeps older sizes for the table', () => {
    const many = [...Array.from({ length: 7 }, () => rungs[0]!), ...rungs];
    const drawn = ladder({ rungs: many });
    expect(tags(drawn, 'g').filter((tag) => tag.includes('is-behind'))).toHaveLength(2 * 4);
    expect(insides(drawn, 'tbody')[0]?.match(/<tr>/g)).toHaveLength(many.length);
  });

  it('has the same numbers as a table, with the days in nine cases of ten', () => {
    const table = words(insides(html, 'table')[0] ?? '');
    expect(table).toContain('Stage Diagonal leg span Own body Prey it takes Best When 9 times in 10');
    expect(table).toContain('juvenile 34 mm 14 mm 4.5–13 mm 9 mm now, since 28 Sep 2026 –');
    expect(table).toContain('47 mm, reckoned');
    expect(table).toContain('10 Dec 2026 to 28 Feb 2027');
  });
});

describe('the meals as dots', () => {
  const html = markup(<MealDots meals={meals} from={TODAY - 70} today={TODAY} />);

  it('says how many were eaten and refused', () => {
    expect(words(html)).toContain('7 meals and 2 refusals in 10 weeks.');
  });

  it('draws a meal by area, refused ones hollow, half a dot for half a meal', () => {
    const two: MealShare[] = [
      { day: TODAY - 9, outcome: 'taken', share: 0.4 },
      { day: TODAY - 2, outcome: 'taken', share: 0.1 },
    ];
    const circles = tags(markup(<MealDots meals={two} from={TODAY - 10} today={TODAY} />), 'circle');
    const [large, small] = circles.map((tag) => Number(attributes(tag, 'r')[0]));
    expect(large! / small!).toBeCloseTo(2, 5);
    expect(tags(html, 'circle').filter((tag) => tag.includes('is-refused'))).toHaveLength(3);
    expect(tags(html, 'path')).toHaveLength(1);
  });
});

describe('growth', () => {
  it('is said against what its kind is expected to do', () => {
    const grown = (gaugeMm: number) =>
      growthFinding([growth.sizes[0]!, { day: TODAY - 50, gaugeMm }], growth.expected, 'mm');
    expect(grown(34)).toBe('From 25 mm to 34 mm in 5 months, as its kind is expected to');
    expect(grown(24)).toContain('slower than its kind is expected to grow');
    expect(grown(60)).toContain('faster than its kind is expected to grow');
  });

  it('draws each size, the expected line, and the moults within', () => {
    const html = markup(<Growth {...growth} gaugeWord="diagonal leg span" unit="mm" />);
    expect(attributes(html, 'class').filter((look) => look === 'size-seen')).toHaveLength(2);
    expect(attributes(html, 'class').filter((look) => look === 'moult-tick')).toHaveLength(2);
    expect(html).not.toContain('NaN');
    expect(words(insides(html, 'table')[0] ?? '')).toContain('3 Oct 2026 34 mm');
  });
});
