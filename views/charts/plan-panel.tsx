/** One group's cover in a plan: what is wanted and missed on a scale of its own, and the stock that stands ready, as far as it fits. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { GroupCover, PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { expected, roundly, sentenceCase, shortDay } from '../format.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { MissingPattern } from './hatches.tsx';
import { MealBlocks } from './meal-blocks.tsx';
import { sum } from './plan-covers.ts';
import { beyond, type Stretch, topOf, wordedOf } from './plan-scale.ts';
import { place } from './ruler.tsx';

const WIDTH = 340;
const TOP = 24;
const BASE = 130;
const LEFT = 38;

/** Steps to which the scale is rounded up. */
const NICE = 5;

/** None, the half and the top; halves of an item are not told. */
const ticksTo = (top: number): readonly number[] => [0, top / 2, top].filter(Number.isInteger);

interface PanelProps {
  readonly id: string;
  readonly group: GroupCover;
  readonly plan: PlanAnswer;
}

function coverFinding({ name, missed, late }: GroupCover): string {
  const [short, waits] = [sum(missed), sum(late)];
  const who = sentenceCase(name);
  if (roundly(short) >= 1) return `${who}: ${expected(short)} missed`;
  return roundly(waits) >= 1 ? `${who}: nothing missed, ${expected(waits)} late` : `${who}: all in time`;
}

const coverTable = ({
  group: { wanted, eaten, late, missed, ready, safety },
  plan,
}: PanelProps): NumbersTable => ({
  caption: 'Items of the ideal size, by week',
  head: ['From', 'Wanted', 'Eaten', 'Late', 'Missed', 'Stands ready', 'Should stand ready'],
  rows: plan.periods.map(({ from }, i) => [
    shortDay(from),
    ...[wanted, eaten, late, missed, ready, safety].map((values) => expected(values[i] ?? 0)),
  ]),
});

export const CoverPanel = (props: PanelProps) => {
  const { id, group, plan } = props;
  const x = scaleLinear().domain([0, plan.periods.length]).range([LEFT, WIDTH]);
  const y = scaleLinear()
    .domain([0, topOf(group)])
    .nice(NICE)
    .range([BASE, TOP]);
  const [, top = 0] = y.domain();
  const stretches = beyond(group.ready, top);
  const path = (values: readonly number[]) =>
    line<number>()
      .x((_, i) => place(x(i + 1)))
      .y((value) => place(y(value)))([...values]) ?? '';
  return (
    <figure class="cover plan-panel">
      <figcaption>
        <strong>{coverFinding(group)}</strong>
      </figcaption>
      <Drawing
        id={id}
        title={coverFinding(group)}
        description={described(stretches, top)}
        width={WIDTH}
        height={BASE + 20}
      >
        <defs>
          <MissingPattern chart={id} />
          <clipPath id={`${id}-frame`}>
            <rect x={LEFT} y={TOP - 1} width={WIDTH - LEFT} height={BASE - TOP + 2} />
          </clipPath>
        </defs>
        {ticksTo(top).map((tick) => (
          <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
            {many(tick)}
          </text>
        ))}
        <MealBlocks id={id} wanted={group.wanted} unmet={group.missed} x={x} y={y} gap={1.5} />
        <g clip-path={`url(#${id}-frame)`}>
          <path d={path(group.safety)} class="without-line" />
          <path d={path(group.ready)} class="stock-line" />
        </g>
        <Beyond stretches={stretches} top={top} x={x} />
        <line x1={LEFT} x2={WIDTH} y1={BASE} y2={BASE} class="axis" />
        <WeekNames plan={plan} x={x} />
      </Drawing>
      <Numbers {...coverTable(props)} />
    </figure>
  );
};

const many = (n: number): string => n.toLocaleString('en-GB');

function described(stretches: readonly Stretch[], top: number): string {
  const words =
    'Blocks: wanted each week; red hatch: missed. Line: stands ready; dashed: should stand ready.';
  return stretches.length === 0
    ? words
    : `${words} Where the line leaves the top, more than ${many(top)} stand ready.`;
}

type Scale = (value: number) => number;

interface BeyondProps {
  readonly stretches: readonly Stretch[];
  readonly top: number;
  readonly x: Scale;
}

/** Half of the width of the words. */
const HALF_WORDS = 52;

/** Where the stock line is above the frame: a dotted edge, and the words over the longest stretch. */
const Beyond = ({ stretches, top, x }: BeyondProps) => {
  const worded = wordedOf(stretches);
  if (worded === null) return null;
  const middle = x((worded.from + worded.to) / 2);
  const at = Math.min(WIDTH - HALF_WORDS, Math.max(LEFT + HALF_WORDS, middle));
  return (
    <g>
      {stretches.map(({ from, to }) => (
        <line x1={place(x(from))} x2={place(x(to))} y1={TOP} y2={TOP} class="beyond-line" />
      ))}
      <text x={place(at)} y={TOP - 8} text-anchor="middle" font-size="12" class="axis-number">
        ↑ more than {many(top)}
      </text>
    </g>
  );
};

const NAMED_EVERY = 4;

const WeekNames = ({ plan, x }: { plan: PlanAnswer; x: Scale }) => (
  <g>
    {plan.periods.map(({ from }, i) =>
      i % NAMED_EVERY === 0 ? (
        <text x={place(x(i))} y={BASE + 16} font-size="12" class="axis-number">
          {shortDay(from).slice(DAY_NAME)}
        </text>
      ) : null,
    )}
  </g>
);
/** Letters of 'Thu '. */
const DAY_NAME = 4;
