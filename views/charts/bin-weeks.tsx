/** A bin's coming weeks: sizes stacked, the doubt of their total, what it can carry, and what was counted and taken before. */
import { scaleLinear } from 'd3-scale';
import { area, curveMonotoneX } from 'd3-shape';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { BinEvent } from '../../src/husbandry/larder/index.ts';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { BinAhead, BinWeek } from '../../src/husbandry/supply/index.ts';
import { sentenceCase, shortDay } from '../format.ts';
import {
  DayNames,
  FRAME,
  Limit,
  MarkOf,
  marksOf,
  OverFrom,
  PAST_DAYS,
  type Scales,
} from './bin-weeks-signs.tsx';
import { binWeeksFinding, binWeeksTable } from './bin-weeks-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { place } from './ruler.tsx';

export interface BinWeeksProps {
  readonly ahead: BinAhead;
  readonly form: PreyForm;
  /** What was seen of it and done to it. */
  readonly events: readonly BinEvent[];
  /** First day on which there are more than it can carry; null when not within the weeks. */
  readonly overFrom: DayNumber | null;
  /** First day on which it is fed from again; null where it is not left alone. */
  readonly restsUntil: DayNumber | null;
}

const WIDTH = 358;
const HEIGHT = FRAME.bottom + 24;

export const BinWeeks = (props: BinWeeksProps) => {
  const title = binWeeksFinding(props);
  return (
    <figure class="bin-figure">
      <figcaption>
        <strong>{title}</strong>
        <span class="how"> {legendOf(props)}</span>
      </figcaption>
      <Drawing
        id="bin-weeks"
        title={title}
        description="Heads by size, stacked, from today to the last week; a band shows how sure the total is."
        width={WIDTH}
        height={HEIGHT}
      >
        <Weeks {...props} />
      </Drawing>
      <Numbers {...binWeeksTable(props.ahead)} />
    </figure>
  );
};

/** What the drawing's signs mean, of those that are in it. */
function legendOf({ ahead: { weeks }, events, restsUntil }: BinWeeksProps): string {
  const marks = marksOf(events, weeks[0]!.day);
  const said = [
    weeks[0]!.bySize.length > 2 ? 'layers: sizes' : '',
    'soft band: the total in 9 cases of 10',
    marks.some(({ seen }) => seen) ? 'dots: counted' : '',
    marks.some(({ seen }) => !seen) ? 'triangles: taken out' : '',
  ].filter((words) => words !== '');
  const rest = restsUntil === null ? '' : `; it is left alone until ${shortDay(restsUntil)}`;
  return `If nothing is taken out${rest}. ${sentenceCase(said.join('; '))}.`;
}

/** A capacity far above everything is told in words alone. */
const CAPACITY_SHOWN_TO = 1.6;

function scalesOf({ ahead, events }: BinWeeksProps): Scales & { readonly limit: number | null } {
  const { weeks, capacity } = ahead;
  const [first, last] = [weeks[0]!.day, weeks.at(-1)!.day];
  const past = marksOf(events, first);
  const most = Math.max(
    1,
    ...weeks.map(({ heads }) => heads.high),
    ...past.map(({ heads, seen }) => (seen ? heads : 0)),
  );
  const limit =
    capacity && !capacity.bySize && capacity.heads <= CAPACITY_SHOWN_TO * most ? capacity.heads : null;
  return {
    limit,
    x: scaleLinear()
      .domain([past.length > 0 ? first - PAST_DAYS : first, last])
      .range([FRAME.left, FRAME.right]),
    y: scaleLinear()
      .domain([0, Math.max(most, limit ?? 0)])
      .nice(3)
      .range([FRAME.bottom, FRAME.top]),
  };
}

const Weeks = (props: BinWeeksProps) => {
  const { ahead, form, events, overFrom } = props;
  const { x, y, limit } = scalesOf(props);
  const first = ahead.weeks[0]!.day;
  return (
    <>
      {y.ticks(3).map((tick) => (
        <text x={FRAME.left - 6} y={place(y(tick) + 4)} text-anchor="end" font-size="12" class="axis-number">
          {tick.toLocaleString('en-GB')}
        </text>
      ))}
      <Layers weeks={ahead.weeks} form={form} x={x} y={y} />
      <path d={bandOf(ahead.weeks, { x, y })} class="total-band" />
      <line x1={FRAME.left} x2={FRAME.right} y1={FRAME.bottom} y2={FRAME.bottom} class="axis" />
      {limit === null ? null : <Limit at={place(y(limit))} />}
      {overFrom === null || overFrom <= first ? null : <OverFrom at={place(x(overFrom))} />}
      {marksOf(events, first).map((mark) => (
        <MarkOf mark={mark} x={x} y={y} />
      ))}
      <DayNames weeks={ahead.weeks} x={x} />
    </>
  );
};

const bandOf = (weeks: readonly BinWeek[], { x, y }: Scales): string =>
  area<BinWeek>()
    .x(({ day }) => place(x(day)))
    .y0(({ heads }) => place(y(heads.low)))
    .y1(({ heads }) => place(y(heads.high)))
    .curve(curveMonotoneX)
    .digits(1)([...weeks]) ?? '';

const LABEL_FROM = 12;
const LIGHTEST = 0.3;

/** Sizes on one another, the smallest at the bottom and lightest; named at the right where there is room. */
const Layers = ({ weeks, form, x, y }: Scales & { weeks: readonly BinWeek[]; form: PreyForm }) => {
  const sizes = weeks[0]!.bySize.map(({ size }) => size);
  const upTo = ({ bySize }: BinWeek, layer: number): number =>
    bySize.slice(0, layer).reduce((sum, { heads }) => sum + heads, 0);
  return (
    <g>
      {sizes.map((size, layer) => {
        const outline = area<BinWeek>()
          .x(({ day }) => place(x(day)))
          .y0((week) => place(y(upTo(week, layer))))
          .y1((week) => place(y(upTo(week, layer + 1))))
          .curve(curveMonotoneX)
          .digits(1);
        if (weeks.every(({ bySize }) => bySize[layer]!.heads < 1 / 2)) return null;
        const [low, high] = [upTo(weeks.at(-1)!, layer), upTo(weeks.at(-1)!, layer + 1)].map(y) as [
          number,
          number,
        ];
        const darkness = LIGHTEST + ((1 - LIGHTEST) * layer) / Math.max(1, sizes.length - 1);
        return (
          <>
            <path
              d={outline([...weeks]) ?? ''}
              class={`layer ${hueClass(form)}`}
              fill-opacity={darkness.toFixed(2)}
            />
            {low - high < LABEL_FROM ? null : (
              <text x={FRAME.right + 6} y={place((low + high) / 2 + 4)} font-size="12" class="axis-number">
                {size}
              </text>
            )}
          </>
        );
      })}
    </g>
  );
};
