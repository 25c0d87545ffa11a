/** The plan's calendar: suppliers, bins and cultures against weeks, with what is ordered, harvested, culled and started. */
import { scaleLinear } from 'd3-scale';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { counted, longDay, shortDay } from '../format.ts';
import { stepsOf, stepTitle } from '../pages/plan-steps.ts';
import type { PlanSaid } from '../pages/plan-words.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { type CalendarMark, type CalendarRow, calendarRows } from './plan-rows.ts';
import { place } from './ruler.tsx';

const TOP = 22;
const ROW = 42;
const NAME_DOWN = 14;
const MARK_DOWN = 30;

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
        {calendarFinding(said)}. Box: a parcel, from the day it is sent to the day it comes; triangle: a
        harvest; cross: a cull; cup: a start, and how long it yields. Beside each stands how many.
      </figcaption>
      <Numbers {...calendarTable(said)} />
    </figure>
  );
};

const WHAT = { order: 'order line', harvest: 'harvest', cull: 'cull', start: 'start' } as const;

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

type Scale = (day: number) => number;

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

interface RowProps {
  readonly row: CalendarRow;
  readonly top: number;
  readonly x: Scale;
  readonly said: PlanSaid;
  readonly width: number;
}

const Row = ({ row, top, x, said, width }: RowProps) => {
  const marks = row.marks.toSorted((a, b) => a.to - b.to);
  return (
    <g class="plan-row">
      <text x="2" y={top + NAME_DOWN} font-size="12" class="panel-name">
        {row.name}
      </text>
      <line x1="2" x2={width - 2} y1={top + ROW} y2={top + ROW} class="strip-line" />
      {marks.map((mark, i) => (
        <Mark
          mark={mark}
          y={top + MARK_DOWN}
          x={x}
          hue={hueOf(mark, said)}
          room={roomAfter(mark, marks[i + 1], x, width)}
        />
      ))}
    </g>
  );
};

/** Space for words between a mark and the next. */
const roomAfter = (mark: CalendarMark, next: CalendarMark | undefined, x: Scale, width: number): number =>
  (next === undefined ? width : x(stands(next)) - SIZE) - x(stands(mark)) - SIZE;

/** A parcel stands where it comes, a cup where it is started. */
const stands = ({ what, from, to }: CalendarMark): number => (what === 'start' ? from : to);

function hueOf({ species }: CalendarMark, { names }: PlanSaid): string {
  const form = names.species.get(species)?.form;
  return form === undefined ? '' : hueClass(form);
}

/** Half of a mark. */
const SIZE = 5;
const LETTER = 6.6;

const SHAPES: Readonly<Record<CalendarMark['what'], string>> = {
  order: 'M-5 -5h10v10h-10z',
  harvest: 'M-5.500 -4.500h11L0 5.500z',
  cull: 'M-5 -3.200L-3.200 -5L0 -1.800L3.200 -5L5 -3.200L1.800 0L5 3.200L3.200 5L0 1.800L-3.200 5L-5 3.200L-1.800 0z',
  start: 'M-5 -5h10l-2 10h-6z',
};

interface MarkProps {
  readonly mark: CalendarMark;
  readonly x: Scale;
  readonly y: number;
  readonly hue: string;
  readonly room: number;
}

const Mark = ({ mark, x, y, hue, room }: MarkProps) => {
  const at = place(x(stands(mark)));
  const [from, to] = [place(x(mark.from)), place(x(mark.to))];
  return (
    <g>
      {from === to ? null : <line x1={from} x2={to} y1={y} y2={y} class={`course is-${mark.what}`} />}
      <path d={SHAPES[mark.what]} transform={`translate(${at} ${y})`} class={`plan-mark ${hue}`} />
      {mark.label.length * LETTER + 6 > room ? null : (
        <text x={at + SIZE + 2} y={y + 4} font-size="11" class="plan-label">
          {mark.label}
        </text>
      )}
    </g>
  );
};
