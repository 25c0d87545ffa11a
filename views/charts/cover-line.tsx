/** The cover line of one group: prey alive that fits, with its doubt, against each day's meals. */

import { scaleLinear } from 'd3-scale';
import { area, curveMonotoneX, line } from 'd3-shape';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { GroupAnswer, Spread } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, expected, sentenceCase, shortDay } from '../format.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { MissingPattern } from './hatches.tsx';
import { MealBlocks } from './meal-blocks.tsx';
import { place } from './ruler.tsx';

interface CoverLineProps {
  readonly id: string;
  readonly group: GroupAnswer;
  readonly firstDay: DayNumber;
}

const WIDTH = 340;
const TOP = 22;
const BASE = 150;
const LEFT = 34;
/** Below this chance a run-out is not marked. */
const MARKED_FROM = 0.05;

/** The day it runs out, days from the first; null when that is too unlikely to mark. */
const runsOut = ({ runOut }: GroupAnswer): number | null =>
  runOut.day === null || runOut.chance < MARKED_FROM ? null : Math.round(runOut.day.mid);

function coverFinding(group: GroupAnswer, firstDay: DayNumber): string {
  const day = runsOut(group);
  const name = sentenceCase(group.name);
  return day === null
    ? `${name}: prey lasts through the check`
    : `${name}: prey runs out about ${shortDay(firstDay + day)}`;
}

function coverTable({ stockByDay, wantedByDay, unmetByDay }: GroupAnswer, firstDay: DayNumber): NumbersTable {
  return {
    caption: 'Prey that fits, and meals, by day',
    head: ['Day', 'Alive', 'From', 'To', 'Wanted', 'Not met'],
    rows: stockByDay.map((stock, i) => [
      shortDay(firstDay + i),
      aboutHeads(stock),
      `${Math.round(stock.low)}`,
      `${Math.round(stock.high)}`,
      expected(wantedByDay[i] ?? 0),
      expected(unmetByDay[i] ?? 0),
    ]),
  };
}

export const CoverLine = ({ id, group, firstDay }: CoverLineProps) => {
  const days = group.stockByDay.length;
  const most = Math.max(1, ...group.stockByDay.map(({ high }) => high), ...group.wantedByDay);
  const x = scaleLinear().domain([0, days]).range([LEFT, WIDTH]);
  const y = scaleLinear().domain([0, most]).nice(3).range([BASE, TOP]);
  const centre = (i: number) => place(x(i + 0.5));
  const band = area<Spread>()
    .x((_, i) => centre(i))
    .y0(({ low }) => place(y(low)))
    .y1(({ high }) => place(y(high)))
    .curve(curveMonotoneX);
  const middle = line<Spread>()
    .x((_, i) => centre(i))
    .y(({ mid }) => place(y(mid)))
    .curve(curveMonotoneX);
  return (
    <figure class="cover">
      <Drawing
        id={id}
        title={coverFinding(group, firstDay)}
        description="Band and line: prey alive that fits, by day. Blocks: meals wanted that day; red hatch: not met."
        width={WIDTH}
        height={BASE + 24}
      >
        <defs>
          <MissingPattern chart={id} />
        </defs>
        {y.ticks(3).map((tick) => (
          <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
            {tick}
          </text>
        ))}
        <path d={band([...group.stockByDay]) ?? ''} class="stock-band" />
        <MealBlocks id={id} wanted={group.wantedByDay} unmet={group.unmetByDay} x={x} y={y} gap={2} />
        <path d={middle([...group.stockByDay]) ?? ''} class="stock-line" />
        <line x1={LEFT} x2={WIDTH} y1={BASE} y2={BASE} class="axis" />
        <DayNames firstDay={firstDay} days={days} x={x} />
        <RunOutMark day={runsOut(group)} firstDay={firstDay} x={x} />
      </Drawing>
      <figcaption>
        {coverFinding(group, firstDay)}. Line: prey alive that fits; band: where it lies in 9 weeks of 10;
        blocks: meals.
      </figcaption>
      <Numbers {...coverTable(group, firstDay)} />
    </figure>
  );
};

type Scale = (value: number) => number;

interface AlongDays {
  readonly firstDay: DayNumber;
  readonly x: Scale;
}

const NAMED_DAYS_MOST = 8;

/** Two letters a day, every second day when there are many. */
const DayNames = ({ firstDay, days, x }: AlongDays & { days: number }) => (
  <g>
    {Array.from({ length: days }, (_, i) =>
      days > NAMED_DAYS_MOST && i % 2 === 1 ? null : (
        <text x={place(x(i + 0.5))} y={BASE + 16} text-anchor="middle" font-size="12" class="axis-number">
          {shortDay(firstDay + i).slice(0, 3)}
        </text>
      ),
    )}
  </g>
);

/** Share of the width from which the label stands left of its mark. */
const LABEL_TURNS = 0.55;

const RunOutMark = ({ day, firstDay, x }: AlongDays & { day: number | null }) => {
  if (day === null) return null;
  const at = place(x(day + 0.5));
  const anchor = at > WIDTH * LABEL_TURNS ? 'end' : 'start';
  return (
    <g class="run-out">
      <line x1={at} x2={at} y1={TOP - 6} y2={BASE} class="run-out-line" />
      <text x={anchor === 'end' ? at - 5 : at + 5} y={TOP - 8} text-anchor={anchor} font-size="13">
        runs out {shortDay(firstDay + day)}
      </text>
    </g>
  );
};
