/** A bin's coming weeks: sizes stacked, the doubt of their total, what it can carry, and what was counted and taken before. */
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { area, curveMonotoneX } from 'd3-shape';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { BinEvent } from '../../src/husbandry/larder/index.ts';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { BinAhead, BinWeek } from '../../src/husbandry/supply/index.ts';
import { sentenceCase, shortDay } from '../format.ts';
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
}

const WIDTH = 358;
const FRAME = { left: 40, right: 290, top: 20, bottom: 196 };
const HEIGHT = FRAME.bottom + 24;
/** Days before today that are shown where something was counted or taken in them. */
const PAST_DAYS = 28;

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
function legendOf({ ahead: { weeks }, events }: BinWeeksProps): string {
  const marks = marksOf(events, weeks[0]!.day);
  const said = [
    weeks[0]!.bySize.length > 2 ? 'layers: sizes' : '',
    'soft band: the total in 9 cases of 10',
    marks.some(({ seen }) => seen) ? 'dots: counted' : '',
    marks.some(({ seen }) => !seen) ? 'triangles: taken out' : '',
  ].filter((words) => words !== '');
  return `If nothing is taken out. ${sentenceCase(said.join('; '))}.`;
}

type Scale = ScaleLinear<number, number>;
interface Scales {
  readonly x: Scale;
  readonly y: Scale;
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

interface Mark {
  readonly day: DayNumber;
  readonly heads: number;
  /** Counted, or else taken out. */
  readonly seen: boolean;
}

const marksOf = (events: readonly BinEvent[], today: DayNumber): readonly Mark[] =>
  events
    .filter(({ day }) => day >= today - PAST_DAYS && day <= today)
    .flatMap((event) => {
      if (event.kind !== 'counted' && event.kind !== 'culled' && event.kind !== 'moved out') return [];
      return [{ day: event.day, heads: event.heads, seen: event.kind === 'counted' }];
    });

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

const Limit = ({ at }: { at: number }) => (
  <g class="limit">
    <line x1={FRAME.left} x2={FRAME.right} y1={at} y2={at} class="limit-line" />
    <text x={FRAME.right} y={at - 4} text-anchor="end" font-size="12">
      room for so many
    </text>
  </g>
);

const OverFrom = ({ at }: { at: number }) => (
  <line x1={at} x2={at} y1={FRAME.top} y2={FRAME.bottom} class="limit-line" />
);

const MarkOf = ({ mark: { day, heads, seen }, x, y }: Scales & { mark: Mark }) => {
  const at = place(x(day));
  return seen ? (
    <circle cx={at} cy={place(y(heads))} r="3.5" class="ideal" />
  ) : (
    <path d={`M${at - 4} ${FRAME.bottom - 9}h8l-4 7z`} class="ideal" />
  );
};

const NAMED_EVERY = 4;

const DayNames = ({ weeks, x }: { weeks: readonly BinWeek[]; x: Scale }) => (
  <g>
    {weeks.map(({ day }, week) =>
      week % NAMED_EVERY === 0 ? (
        <text x={place(x(day))} y={FRAME.bottom + 16} text-anchor="middle" font-size="12" class="axis-number">
          {week === 0 ? 'today' : shortDay(day).slice(DAY_NAME)}
        </text>
      ) : null,
    )}
  </g>
);
/** Letters of 'Thu '. */
const DAY_NAME = 4;
