/** The days of an absence: for whom a visit is in time when, and the evenings that serve them all. */
import { scaleLinear } from 'd3-scale';
import type { AwayPlan } from '../../src/husbandry/supply/index.ts';
import { counted, dayRange, listed, shortDay } from '../format.ts';
import { type Names, nameOf } from '../names.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

interface AwayDaysProps {
  readonly id: string;
  readonly plan: AwayPlan;
  readonly names: Names;
}

/** Animals that wait alike. */
interface AwayRow {
  readonly animals: readonly string[];
  readonly open: number;
  readonly latest: number;
  readonly visits: readonly number[];
}

const WIDTH = 340;
const LEFT = 104;
const TOP = 26;
const ROW = 20;
const BAR = 11;
const ROWS_MOST = 14;
const LETTERS_MOST = 15;

function rowsOf({ animals, visits }: AwayPlan): readonly AwayRow[] {
  const rows = new Map<string, AwayRow>();
  for (const { animal, meal, latest } of animals) {
    if (latest === null) continue;
    const days = visits.filter((visit) => visit.animals.includes(animal)).map(({ day }) => day);
    const key = `${meal.open} ${latest} ${days.join(' ')}`;
    const row = rows.get(key) ?? { animals: [], open: meal.open, latest, visits: days };
    rows.set(key, { ...row, animals: [...row.animals, animal] });
  }
  return [...rows.values()].sort((a, b) => a.latest - b.latest || a.open - b.open);
}

const titleOf = ({ visits }: AwayPlan): string =>
  visits.length === 1
    ? `One evening serves them all: ${shortDay(visits[0]?.day ?? 0)}`
    : `${visits.length} evenings serve them all`;

/** A row's name, short enough for its margin. */
function labelOf({ animals }: AwayRow, names: Names): string {
  const first = nameOf(names.animals, animals[0] ?? '');
  const room = animals.length === 1 ? LETTERS_MOST : LETTERS_MOST - 4;
  const short = first.length > room ? `${first.slice(0, room - 1)}…` : first;
  return animals.length === 1 ? short : `${short} +${animals.length - 1}`;
}

export const AwayDays = ({ id, plan, names }: AwayDaysProps) => {
  const all = rowsOf(plan);
  const rows = all.slice(0, ROWS_MOST);
  const { from, to } = plan.absence;
  const x = scaleLinear()
    .domain([from, to + 1])
    .range([LEFT, WIDTH]);
  const base = TOP + rows.length * ROW;
  const within = (day: number) => place(x(Math.min(to + 1, Math.max(from, day))));
  return (
    <figure class="away-days">
      <Drawing
        id={id}
        title={titleOf(plan)}
        description="Bars: days on which a visit is in time for the animals named. Lines: evenings with a visit; dots: fed then."
        width={WIDTH}
        height={base + 8}
      >
        {plan.visits.map(({ day }) => (
          <g>
            <line x1={within(day + 0.5)} x2={within(day + 0.5)} y1={TOP - 6} y2={base} class="visit-line" />
            <text x={within(day + 0.5)} y={TOP - 11} text-anchor="middle" font-size="11" class="axis-number">
              {plan.visits.length > VISITS_NAMED ? shortDay(day).split(' ')[1] : shortDay(day)}
            </text>
          </g>
        ))}
        {rows.map((row, i) => (
          <g>
            <text x={LEFT - 6} y={TOP + i * ROW + BAR} text-anchor="end" font-size="12">
              {labelOf(row, names)}
            </text>
            <rect
              x={within(row.open)}
              width={place(Math.max(4, x(row.latest + 1) - x(Math.max(from, row.open))))}
              y={TOP + i * ROW + 1}
              height={BAR}
              class="in-time"
            />
            {row.visits.map((day) => (
              <circle cx={within(day + 0.5)} cy={TOP + i * ROW + 1 + BAR / 2} r="4" class="visit-dot" />
            ))}
          </g>
        ))}
        <line x1={LEFT} x2={WIDTH} y1={base} y2={base} class="axis" />
      </Drawing>
      <figcaption>
        {titleOf(plan)}. Bars: when a visit is in time for the first meal; dots: fed on that evening.
        {all.length > rows.length ? ` ${counted(all.length - rows.length, 'more row')} in the numbers.` : ''}
      </figcaption>
      <Numbers
        caption="When a visit is in time, and when they are fed"
        head={['Who', 'In time', 'Fed on']}
        rows={all.map((row) => [
          listed(row.animals.map((code) => nameOf(names.animals, code))),
          dayRange(Math.max(from, row.open), row.latest),
          listed(row.visits.map(shortDay)),
        ])}
      />
    </figure>
  );
};

/** With more visits than these only the day of the month is written. */
const VISITS_NAMED = 3;
