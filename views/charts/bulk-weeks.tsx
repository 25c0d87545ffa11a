/** Where the box is each week: what is left of it after the meals, on the ruler, week under week. */
import type { BulkWeek } from '../../src/husbandry/plan/index.ts';
import { lengthText, sentenceCase, shortDay } from '../format.ts';
import { preyName } from '../names.ts';
import { type BulkTold, bestOf, curveNow, manyOf, packsWords } from '../pages/bulk-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { place, Ruler, rulerScale } from './ruler.tsx';

const WIDTH = 358;
const LEFT = 58;
const RIGHT = WIDTH - 12;
const TOP = 30;
const ROW = 22;
const TALLEST = 26;
const RULER_HEIGHT = 24;
/** Half the breadth of those that are all of one length. */
const GROWN = 3;

export const BulkWeeks = ({ told }: { told: BulkTold }) => {
  const weeks = told.answer.weeks.filter((week) => headsIn(week) >= 1);
  if (weeks.length === 0) return null;
  const title = findingOf(told, weeks);
  const bottom = TOP + weeks.length * ROW + 4;
  return (
    <section aria-labelledby="bulk-weeks-head">
      <h2 id="bulk-weeks-head">Where the box will be each week</h2>
      <figure class="bulk-figure">
        <Drawing
          id="bulk-weeks"
          title={title}
          description="Lengths on the ruler, one row a week: as high as many are left of that length after the week’s meals."
          width={WIDTH}
          height={bottom + RULER_HEIGHT + 4}
        >
          <Rows weeks={weeks} told={told} />
          <Ruler
            x={rulerScale(LEFT, RIGHT)}
            top={bottom}
            height={RULER_HEIGHT}
            marks="few"
            unit={told.unit}
          />
        </Drawing>
        <figcaption>{title}. Each row is what a week’s meals leave of it.</figcaption>
        <Numbers
          caption={`What is left of ${packsWords(curveNow(told).best)} after each week’s meals`}
          head={['Week from', 'Left', 'Half are longer than']}
          rows={weeks.map((week) => [
            shortDay(week.day),
            manyOf(headsIn(week)),
            lengthText(middleMm(week), told.unit),
          ])}
        />
      </figure>
    </section>
  );
};

const headsIn = ({ bands }: BulkWeek): number => bands.reduce((sum, { heads }) => sum + heads, 0);

/** Length that half of them pass, within its band as on the ruler. */
function middleMm(week: BulkWeek): number {
  let rest = headsIn(week) / 2;
  for (const { fromMm, toMm, heads } of week.bands) {
    if (heads >= rest && heads > 0) return fromMm * (toMm / fromMm) ** (rest / heads);
    rest -= heads;
  }
  return week.bands.at(-1)?.toMm ?? 0;
}

const TENTH = 0.1;

/** 'House crickets: about 5 mm in the week of Mon 30 Nov, about 14 mm in that of Mon 4 Jan; then fewer than a tenth are left' */
function findingOf({ offer, names, unit, answer }: BulkTold, weeks: readonly BulkWeek[]): string {
  const came = bestOf(answer.curves[0]!).heads;
  const many = weeks.filter((week) => headsIn(week) >= TENTH * came);
  const [first, last] = [many[0] ?? weeks[0]!, many.at(-1) ?? weeks[0]!];
  const prey = sentenceCase(preyName(names.species, offer.species));
  const at = (week: BulkWeek) => lengthText(middleMm(week), unit);
  const begin = `${prey} of about ${at(first)} after the meals from ${shortDay(first.day)}`;
  if (first === last) return `${begin}; then fewer than a tenth are left`;
  const end =
    last === weeks.at(-1) && last.day === answer.weeks.at(-1)?.day
      ? ''
      : '; then fewer than a tenth are left';
  return `${begin}, ${at(last)} after those from ${shortDay(last.day)}${end}`;
}

const Rows = ({ weeks, told }: { weeks: readonly BulkWeek[]; told: BulkTold }) => {
  const form = told.names.species.get(told.offer.species)?.form ?? 'cricket';
  const blocks = weeks.map(blocksOf);
  const highest = Math.max(...blocks.flat().map(({ density }) => density));
  return (
    <g>
      {weeks.map(({ day }, row) => {
        const base = TOP + (row + 1) * ROW;
        return (
          <>
            <line x1={LEFT} x2={RIGHT} y1={base} y2={base} class="strip-line" />
            {blocks[row]!.map(({ from, to, density }) => (
              <path
                d={`M${from} ${base}V${place(base - Math.sqrt(density / highest) * TALLEST)}H${to}V${base}z`}
                class={`layer ${hueClass(form)}`}
              />
            ))}
            <text x={LEFT - 6} y={base} text-anchor="end" class="ruler-number axis-number">
              {shortDay(day).slice(DAY_NAME)}
            </text>
          </>
        );
      })}
    </g>
  );
};

/** Letters of 'Thu '. */
const DAY_NAME = 4;
/** Fewer heads than this are not drawn. */
const SEEN = 0.5;

/** Each band as a block whose area is its heads. */
function blocksOf({ bands }: BulkWeek) {
  const x = rulerScale(LEFT, RIGHT);
  return bands
    .filter(({ heads }) => heads >= SEEN)
    .map(({ fromMm, toMm, heads }) => {
      const grown = toMm <= fromMm ? GROWN : 0;
      const [from, to] = [place(x(fromMm) - grown), place(x(toMm) + grown)];
      return { from, to, density: heads / Math.max(1, to - from) };
    });
}
