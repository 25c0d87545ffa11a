/** Cover lines of a plan: for each demand group what is wanted and eaten week by week, and what stands ready after it. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { GroupCover, PlanAnswer } from '../../src/husbandry/plan/index.ts';
import { counted, expected, roundly, sentenceCase, shortDay } from '../format.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { MissingPattern } from './hatches.tsx';
import { MealBlocks } from './meal-blocks.tsx';
import { coversByName, sum } from './plan-covers.ts';
import { place } from './ruler.tsx';

/** Panels drawn; the others stand in a table. */
const MOST_PANELS = 6;

export const PlanCover = ({ plan }: { plan: PlanAnswer }) => {
  const groups = coversByName(plan.cover);
  const others = groups.slice(MOST_PANELS);
  return groups.length === 0 ? null : (
    <section aria-labelledby="plan-cover" class="plan-cover">
      <h2 id="plan-cover">What stands ready for whom</h2>
      <p>
        Blocks: prey wanted each week; red hatch: missed. Line: prey that fits and stands ready after the
        week’s meals, shared with others who eat the same; dashed: what should stand ready against bad luck.
      </p>
      <div class="plan-panels">
        {groups.slice(0, MOST_PANELS).map((group, i) => (
          <CoverPanel id={`plan-cover-${i}`} group={group} plan={plan} />
        ))}
      </div>
      {others.length === 0 ? null : <Numbers {...othersTable(others)} />}
    </section>
  );
};

const othersTable = (others: readonly GroupCover[]): NumbersTable => ({
  caption: `The other ${counted(others.length, 'group')}, over all weeks`,
  head: ['Group', 'Wanted', 'Late', 'Missed'],
  rows: others.map(({ name, wanted, late, missed }) => [
    sentenceCase(name),
    ...[wanted, late, missed].map((values) => expected(sum(values))),
  ]),
});

const WIDTH = 340;
const TOP = 12;
const BASE = 118;
const LEFT = 38;

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

const CoverPanel = (props: PanelProps) => {
  const { id, group, plan } = props;
  const weeks = plan.periods.length;
  const most = Math.max(1, ...group.wanted, ...group.ready, ...group.safety);
  const x = scaleLinear().domain([0, weeks]).range([LEFT, WIDTH]);
  const y = scaleLinear().domain([0, most]).nice(2).range([BASE, TOP]);
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
        description="Blocks: wanted each week; red hatch: missed. Line: stands ready; dashed: should stand ready."
        width={WIDTH}
        height={BASE + 20}
      >
        <defs>
          <MissingPattern chart={id} />
        </defs>
        {y.ticks(2).map((tick) => (
          <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
            {tick.toLocaleString('en-GB')}
          </text>
        ))}
        <MealBlocks id={id} wanted={group.wanted} unmet={group.missed} x={x} y={y} gap={1.5} />
        <path d={path(group.safety)} class="without-line" />
        <path d={path(group.ready)} class="stock-line" />
        <line x1={LEFT} x2={WIDTH} y1={BASE} y2={BASE} class="axis" />
        <WeekNames plan={plan} x={x} />
      </Drawing>
      <Numbers {...coverTable(props)} />
    </figure>
  );
};

type Scale = (value: number) => number;

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
