/** The way of a colony: who is alive, who breeds, and what is taken or still bought, week by week. */
import { scaleLinear } from 'd3-scale';
import { listed, parts } from '../format.ts';
import type { ColonyTold } from '../pages/colony-answer.tsx';
import { dayOfWeek } from '../pages/colony-words.ts';
import { Alive, Breeders, LEFT, PANELS, type PanelProps, Weekly, WIDTH } from './colony-panels.tsx';
import { pathFinding, pathTable, weeksShown } from './colony-path-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { Hatches } from './hatches.tsx';
import { place } from './ruler.tsx';

interface PathProps {
  readonly id: string;
  readonly told: ColonyTold;
}

const HEIGHT = 316;
const AXIS_TEXT = 306;
const MARKS_TOP = 14;
const MARK_STEP = 15;

export const ColonyPath = ({ id, told }: PathProps) => {
  const weeks = weeksShown(told);
  const x = scaleLinear().domain([0, weeks.length]).range([LEFT, WIDTH]);
  const finding = pathFinding(told);
  return (
    <figure class="colony-path">
      <Drawing
        id={id}
        title={finding}
        description="Along: weeks. Above: heads alive; below them breeding females, dashed how many it takes; at the foot what is taken each week, red hatch what is still bought, dashed what is wanted."
        width={WIDTH}
        height={HEIGHT}
      >
        <Hatches chart={id} />
        <Alive id={id} told={told} weeks={weeks} x={x} />
        <Breeders told={told} weeks={weeks} x={x} />
        <Weekly id={id} told={told} weeks={weeks} x={x} />
        <Months told={told} weeks={weeks} x={x} />
        <Marks told={told} weeks={weeks} x={x} />
      </Drawing>
      <figcaption>
        <strong>{finding}.</strong> Red hatch: still bought. Dashed: what it takes, and what is wanted.
      </figcaption>
      <Numbers {...pathTable(told)} />
    </figure>
  );
};

const NAMED_MONTHS = 4;

const Months = ({ told, weeks, x }: PanelProps) => {
  const step = Math.ceil(weeks.length / NAMED_MONTHS);
  return (
    <g>
      {weeks.map((_, week) => {
        if (week % step !== 0) return null;
        const { month, year } = parts(dayOfWeek(told, week));
        return (
          <text x={place(x(week))} y={AXIS_TEXT} font-size="12" class="axis-number">
            {month.slice(0, 3)} {year}
          </text>
        );
      })}
    </g>
  );
};

/** Width of a letter of a mark, so that its words stay within the picture. */
const LETTER = 6.4;

/** What happens in which week; two in one week share a mark. */
function marksOf({
  start: { firstHarvest, lastsFrom, breakEven },
}: ColonyTold): ReadonlyMap<number, string[]> {
  const named = [
    { week: firstHarvest, name: 'first harvest' },
    { week: lastsFrom === firstHarvest ? null : lastsFrom, name: 'enough for good' },
    { week: breakEven, name: 'paid for' },
  ];
  const marks = new Map<number, string[]>();
  for (const { week, name } of named) if (week !== null) marks.set(week, [...(marks.get(week) ?? []), name]);
  return marks;
}

const Marks = ({ told, weeks, x }: PanelProps) => (
  <g>
    {[...marksOf(told)].map(([week, names], i) => {
      if (week > weeks.length) return null;
      const at = place(x(week - 1));
      const y = MARKS_TOP + i * MARK_STEP;
      const words = `week ${week}: ${listed(names)}`;
      const half = (words.length * LETTER) / 2;
      const middle = place(Math.min(WIDTH - half, Math.max(half, at)));
      return (
        <>
          <line x1={at} x2={at} y1={y + 4} y2={PANELS.week.base} class="visit-line" />
          <text x={middle} y={y} text-anchor="middle" font-size="12">
            {words}
          </text>
        </>
      );
    })}
  </g>
);
