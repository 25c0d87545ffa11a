/** The plan's calendar: suppliers, bins and cultures against weeks, with what is ordered, harvested, culled and started. */
import { scaleLinear } from 'd3-scale';
import { stepsOf } from '../../src/husbandry/plan/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, longDay, shortDay } from '../format.ts';
import { stepTitle } from '../pages/plan-steps.ts';
import type { PlanSaid } from '../pages/plan-words.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { ROW, Row, type Scale, TOP } from './plan-calendar-row.tsx';
import { type CalendarRow, calendarRows } from './plan-rows.ts';
import { place } from './ruler.tsx';

interface Sheet {
  readonly at: 'desk' | 'phone';
  readonly width: number;
  /** Weeks from one named day to the next. */
  readonly namedEvery: number;
}
const SHEETS: readonly Sheet[] = [
  { at: 'desk', width: 760, namedEvery: 2 },
  { at: 'phone', width: 340, namedEvery: 4 },
];

export const PlanCalendar = (said: PlanSaid) => {
  const rows = calendarRows(said);
  if (rows.length === 0) return null;
  return (
    <figure class="plan-calendar">
      {SHEETS.map((sheet) => (
        <CalendarSheet sheet={sheet} rows={rows} said={said} />
      ))}
      <figcaption>
        {calendarFinding(said)}. Box: a parcel, from the day it leaves to the day it comes; triangle: a
        harvest; cross: a cull; cup: a start, and how long it yields; two bars: a colony left alone, and until
        when. Beside each stands how many.
      </figcaption>
      <Numbers {...calendarTable(said)} />
    </figure>
  );
};

const WHAT = { order: 'order line', harvest: 'harvest', cull: 'cull', start: 'start', rest: 'rest' } as const;

function calendarFinding({ plan }: PlanSaid): string {
  const steps = stepsOf(plan.lines);
  const many = (what: keyof typeof WHAT) => steps.filter(({ line }) => line.what === what).length;
  const kinds = Object.entries(WHAT).flatMap(([what, word]) => {
    const n = many(what as keyof typeof WHAT);
    return n === 0 ? [] : [counted(n, word)];
  });
  return `${counted(plan.periods.length, 'week')}: ${kinds.join(', ')}`;
}

const calendarTable = (said: PlanSaid): NumbersTable => ({
  caption: 'The plan’s steps by day',
  head: ['Last day for it', 'What'],
  rows: stepsOf(said.plan.lines).map((step) => [longDay(step.line.actBy), stepTitle(step, said)]),
});

interface SheetProps {
  readonly sheet: Sheet;
  readonly rows: readonly CalendarRow[];
  readonly said: PlanSaid;
}

const CalendarSheet = ({ sheet, rows, said }: SheetProps) => {
  const { plan } = said;
  const { at, width, namedEvery } = sheet;
  const days = plan.periods.reduce((sum, period) => sum + period.days, 0);
  const x = scaleLinear()
    .domain([plan.day, plan.day + days])
    .range([2, width - 2])
    .clamp(true);
  const height = TOP + rows.length * ROW;
  return (
    <div class={at}>
      <Drawing
        id={`plan-calendar-${at}`}
        title={calendarFinding(said)}
        description="Rows of suppliers, bins and cultures against weeks; the same as a table below."
        width={width}
        height={height}
      >
        <Weeks {...{ days, namedEvery, x, height, today: said.today }} first={plan.day} />
        {rows.map((row, i) => (
          <Row row={row} top={TOP + i * ROW} x={x} said={said} width={width} />
        ))}
      </Drawing>
    </div>
  );
};

interface WeeksProps {
  readonly today: number;
  readonly first: number;
  readonly days: number;
  readonly namedEvery: number;
  readonly x: Scale;
  readonly height: number;
}

const Weeks = ({ today, first, days, namedEvery, x, height }: WeeksProps) => (
  <g>
    {Array.from({ length: Math.ceil(days / DAYS_PER_WEEK) }, (_, week) => {
      const at = place(x(first + week * DAYS_PER_WEEK));
      const isNamed = week % namedEvery === 0;
      return (
        <>
          <line
            x1={at}
            x2={at}
            y1={TOP - (isNamed ? 8 : 0)}
            y2={height}
            class={isNamed ? 'week-line is-named' : 'week-line'}
          />
          {isNamed ? (
            <text x={at} y="11" font-size="12" class="axis-number">
              {week === 0 && first === today
                ? 'today'
                : shortDay(first + week * DAYS_PER_WEEK).slice(DAY_NAME)}
            </text>
          ) : null}
        </>
      );
    })}
  </g>
);
/** Letters of 'Thu '. */
const DAY_NAME = 4;
