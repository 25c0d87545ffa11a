/** What an own colony has cost against buying everything, week by week. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { Costs } from '../../src/husbandry/colony/index.ts';
import { writtenDay } from '../format.ts';
import type { ColonyTold } from '../pages/colony-answer.tsx';
import { about, dayOfWeek } from '../pages/colony-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

interface CostsProps {
  readonly id: string;
  readonly told: ColonyTold;
  readonly costs: readonly Costs[];
}

const WIDTH = 340;
const LEFT = 48;
const TOP = 24;
const BASE = 140;
const WEEKS_AFTER = 26;
const TABLE_STEP = 4;

function findingOf(told: ColonyTold, costs: readonly Costs[]): string {
  const { breakEven } = told.start;
  const { own, bought } = costs.at(-1) as Costs;
  const end = `after ${told.lasts.years} years it has cost ${money(own, told)}, buying ${money(bought, told)}`;
  return breakEven === null
    ? `Buying stays cheaper: ${end}`
    : `Cheaper than buying from about ${writtenDay(dayOfWeek(told, breakEven))}: ${end}`;
}

const money = (n: number, { currency }: ColonyTold): string => `${about(n)} ${currency}`.trim();

export const ColonyCosts = ({ id, told, costs }: CostsProps) => {
  const { breakEven } = told.start;
  const shown = costs.slice(0, breakEven === null ? costs.length : breakEven + WEEKS_AFTER);
  const x = scaleLinear().domain([0, shown.length]).range([LEFT, WIDTH]);
  const y = scaleLinear()
    .domain([0, Math.max(1, ...shown.flatMap(({ own, bought }) => [own, bought]))])
    .nice(3)
    .range([BASE, TOP]);
  const path = (of: (each: Costs) => number) =>
    line<Costs>()
      .x((_, i) => place(x(i + 1)))
      .y((each) => place(y(of(each))))([...shown]) ?? '';
  const at = breakEven === null ? null : place(x(breakEven));
  const finding = findingOf(told, costs);
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>What it costs</h2>
      <figure class="wave">
        <Drawing
          id={id}
          title={finding}
          description="Line: what the colony has cost so far, with what is bought meanwhile; dashed: what buying everything has cost."
          width={WIDTH}
          height={BASE + 22}
        >
          {y.ticks(3).map((tick) => (
            <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
              {tick}
            </text>
          ))}
          <line x1={LEFT} x2={WIDTH} y1={BASE} y2={BASE} class="axis" />
          {at === null ? null : <line x1={at} x2={at} y1={TOP} y2={BASE} class="visit-line" />}
          <path d={path(({ bought }) => bought)} class="without-line" />
          <path d={path(({ own }) => own)} class="stock-line" />
          <text x={LEFT} y={BASE + 16} font-size="12" class="axis-number">
            start
          </text>
          <text x={WIDTH} y={BASE + 16} text-anchor="end" font-size="12" class="axis-number">
            week {shown.length}
          </text>
        </Drawing>
        <figcaption>
          {finding}. Line: the colony, with what is bought meanwhile; dashed: all bought.
        </figcaption>
        <Numbers
          caption={`Costs so far${told.currency === '' ? '' : `, ${told.currency}`}`}
          head={['Week', 'Own colony', 'All bought']}
          rows={shown.flatMap(({ own, bought }, i) =>
            (i + 1) % TABLE_STEP === 0 ? [[`${i + 1}`, `${Math.round(own)}`, `${Math.round(bought)}`]] : [],
          )}
        />
      </figure>
    </section>
  );
};
