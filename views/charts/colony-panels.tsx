/** The three panels of a colony's way, one below the other on the same weeks: alive, breeding, and each week's harvest. */
import { scaleLinear } from 'd3-scale';
import { area, curveStepBefore, line } from 'd3-shape';
import type { StartWeek } from '../../src/husbandry/colony/index.ts';
import type { ColonyTold } from '../pages/colony-answer.tsx';
import { hatchFill, hueClass, missingFill } from './hatches.tsx';
import { place } from './ruler.tsx';

export const WIDTH = 340;
export const LEFT = 40;
/** Each panel from its top to its base, below its name. */
export const PANELS = {
  alive: { top: 58, base: 130 },
  breeders: { top: 154, base: 196 },
  week: { top: 220, base: 288 },
} as const;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

type Scale = (value: number) => number;

export interface PanelProps {
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

export const Alive = ({ id, told, weeks, x }: PanelProps & { id: string }) => {
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

export const Breeders = ({ told, weeks, x }: PanelProps) => {
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
export const Weekly = ({ id, told, weeks, x }: PanelProps & { id: string }) => {
  const panel = PANELS.week;
  const wanted = sum(told.start.wanted.map(({ heads }) => heads));
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
