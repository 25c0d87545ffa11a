/** The way of a colony: who is alive, who breeds, and what is taken or still bought, week by week. */
import { scaleLinear } from 'd3-scale';
import { area, curveStepBefore, line } from 'd3-shape';
import type { StartWeek } from '../../src/husbandry/colony/index.ts';
import { parts, recordDay, sentenceCase } from '../format.ts';
import type { ColonyTold } from '../pages/colony-answer.tsx';
import { about, dayOfWeek, sizeName } from '../pages/colony-words.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { Hatches, hatchFill, hueClass, missingFill } from './hatches.tsx';
import { place } from './ruler.tsx';

interface PathProps {
  readonly id: string;
  readonly told: ColonyTold;
}

const WIDTH = 340;
const LEFT = 40;
const HEIGHT = 316;
const AXIS_TEXT = 306;
/** Each panel from its top to its base, below its name. */
const PANELS = {
  alive: { top: 58, base: 130 },
  breeders: { top: 154, base: 196 },
  week: { top: 220, base: 288 },
} as const;
const MARKS_TOP = 14;
const MARK_STEP = 15;
/** Weeks shown after the last mark. */
const WEEKS_AFTER = 26;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** The weeks until the colony has found its stride. */
function weeksShown({ start: { path, lastsFrom, breakEven } }: ColonyTold): readonly StartWeek[] {
  if (lastsFrom === null) return path;
  return path.slice(0, Math.max(lastsFrom, breakEven ?? 0) + WEEKS_AFTER);
}

const findingOf = ({ start: { firstHarvest, lastsFrom, bridge } }: ColonyTold): string => {
  if (lastsFrom === null) return 'What is wanted is not there for good';
  const bought = bridge < 1 ? 'with nothing bought' : `after about ${about(bridge)} bought`;
  const all = `all that is wanted from week ${lastsFrom}, ${bought}`;
  return firstHarvest === lastsFrom || firstHarvest === null
    ? sentenceCase(all)
    : `A first harvest in week ${firstHarvest}, ${all}`;
};

function tableOf(told: ColonyTold): NumbersTable {
  const { question, species, start } = told;
  return {
    caption: 'The colony week by week, by means',
    head: [
      'Week to',
      'Alive',
      'Breeding females',
      'Bins',
      ...question.wanted.map((size) => `Taken, ${sizeName(species, size)}`),
      'Bought',
      ...(start.costs === null ? [] : ['Cost so far', 'All bought']),
    ],
    rows: weeksShown(told).map(({ week, heads, females, bins, taken, bought }) => [
      recordDay(dayOfWeek(told, week)),
      `${Math.round(heads)}`,
      `${Math.round(females)}`,
      bins === null ? '–' : `${bins}`,
      ...taken.map((n) => `${Math.round(n)}`),
      `${Math.round(bought)}`,
      ...costCells(told, week),
    ]),
  };
}

function costCells({ start: { costs } }: ColonyTold, week: number): readonly string[] {
  const found = costs?.[week - 1];
  return found === undefined ? [] : [`${Math.round(found.own)}`, `${Math.round(found.bought)}`];
}

export const ColonyPath = ({ id, told }: PathProps) => {
  const weeks = weeksShown(told);
  const x = scaleLinear().domain([0, weeks.length]).range([LEFT, WIDTH]);
  const finding = findingOf(told);
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
      <Numbers {...tableOf(told)} />
    </figure>
  );
};

type Scale = (value: number) => number;

interface PanelProps {
  readonly told: ColonyTold;
  readonly weeks: readonly StartWeek[];
  readonly x: Scale;
}

const heightOf = ({ top, base }: { top: number; base: number }, most: number) =>
  scaleLinear().domain([0, most]).nice().range([base, top]);

/** A step for each week from its first day to its last. */
const stepped = (weeks: readonly StartWeek[], of: (week: StartWeek) => number): [number, number][] => {
  const [first] = weeks;
  return [
    ...(first ? [[0, of(first)] as [number, number]] : []),
    ...weeks.map((week, i) => [i + 1, of(week)] as [number, number]),
  ];
};

const PanelFrame = ({
  name,
  base,
  top,
  y,
}: {
  name: string;
  base: number;
  top: number;
  y: ReturnType<typeof heightOf>;
}) => (
  <g>
    <text x="0" y={top - 8} font-size="12" class="panel-name">
      {name}
    </text>
    {y.ticks(2).map((tick) => (
      <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
        {tick}
      </text>
    ))}
    <line x1={LEFT} x2={WIDTH} y1={base} y2={base} class="axis" />
  </g>
);

const Alive = ({ id, told, weeks, x }: PanelProps & { id: string }) => {
  const panel = PANELS.alive;
  const y = heightOf(panel, Math.max(1, ...weeks.map(({ heads }) => heads)));
  const shape = area<[number, number]>()
    .x(([week]) => place(x(week)))
    .y0(panel.base)
    .y1(([, heads]) => place(y(heads)));
  const d = shape(stepped(weeks, ({ heads }) => heads)) ?? '';
  const { code, form } = told.species;
  return (
    <>
      <path d={d} class={`layer ${hueClass(form)}`} />
      <path d={d} fill={hatchFill(id, told.names.species, code)} />
      <PanelFrame name="alive" {...panel} y={y} />
      <Bins weeks={weeks} x={x} y={y} />
    </>
  );
};

const NAMED_BINS = 4;

/** Where another bin is needed. */
const Bins = ({ weeks, x, y }: { weeks: readonly StartWeek[]; x: Scale; y: Scale }) => {
  const rises = weeks.filter(
    ({ bins }, i) => bins !== null && bins > Math.max(1, ...weeks.slice(0, i).map((each) => each.bins ?? 0)),
  );
  const step = Math.ceil(rises.length / NAMED_BINS);
  const named = rises.filter((_, i) => (rises.length - 1 - i) % step === 0);
  return (
    <g>
      {named.map(({ week, bins, heads }) => (
        <text x={place(x(week))} y={place(y(heads)) - 4} text-anchor="end" font-size="11" class="axis-number">
          {bins} bins
        </text>
      ))}
    </g>
  );
};

const Breeders = ({ told, weeks, x }: PanelProps) => {
  const panel = PANELS.breeders;
  const takes = told.start.sustaining?.females ?? Math.ceil(told.start.smallest.females);
  const y = heightOf(panel, Math.max(takes, ...weeks.map(({ females }) => females)));
  const shape = line<[number, number]>()
    .x(([week]) => place(x(week)))
    .y(([, females]) => place(y(females)));
  return (
    <>
      <line x1={LEFT} x2={WIDTH} y1={place(y(takes))} y2={place(y(takes))} class="without-line" />
      <path d={shape(stepped(weeks, ({ females }) => females)) ?? ''} class="stock-line" />
      <PanelFrame name={`breeding females, of ${takes}`} {...panel} y={y} />
    </>
  );
};

/** Taken, and bought on top of it, up to what is wanted. */
const Weekly = ({ id, told, weeks, x }: PanelProps & { id: string }) => {
  const panel = PANELS.week;
  const wanted = sum(told.question.wanted.map(({ heads }) => heads));
  const y = heightOf(panel, wanted);
  const taken = stepped(weeks, (week) => sum(week.taken));
  const shape = (from: (i: number) => number, to: (i: number) => number) =>
    area<[number, number]>()
      .x(([week]) => place(x(week)))
      .y0((_, i) => place(y(from(i))))
      .y1((_, i) => place(y(to(i))))
      .curve(curveStepBefore)(taken) ?? '';
  const takenAt = (i: number) => taken[i]?.[1] ?? 0;
  return (
    <>
      <path d={shape(() => 0, takenAt)} class="demand" />
      <path d={shape(takenAt, () => wanted)} fill={missingFill(id)} />
      <line x1={LEFT} x2={WIDTH} y1={place(y(wanted))} y2={place(y(wanted))} class="without-line" />
      <PanelFrame name="a week: taken, and bought" {...panel} y={y} />
    </>
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

/** Share of the width from which the label stands left of its mark. */
const LABEL_TURNS = 0.55;

const Marks = ({ told, weeks, x }: PanelProps) => {
  const { firstHarvest, lastsFrom, breakEven } = told.start;
  const marks = [
    { week: firstHarvest, name: 'first harvest' },
    { week: lastsFrom === firstHarvest ? null : lastsFrom, name: 'all of it for good' },
    { week: breakEven, name: 'cheaper than buying' },
  ].flatMap(({ week, name }) => (week === null || week > weeks.length ? [] : [{ week, name }]));
  return (
    <g>
      {marks.map(({ week, name }, i) => {
        const at = place(x(week - 1));
        const anchor = at > WIDTH * LABEL_TURNS ? 'end' : 'start';
        const y = MARKS_TOP + i * MARK_STEP;
        return (
          <>
            <line x1={at} x2={at} y1={y - 8} y2={PANELS.week.base} class="visit-line" />
            <text x={anchor === 'end' ? at - 4 : at + 4} y={y} text-anchor={anchor} font-size="12">
              {name}: week {week}
            </text>
          </>
        );
      })}
    </g>
  );
};
