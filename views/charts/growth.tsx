/** Growth: sizes measured over time against what the kind is expected to do from the first of them. */
import { scaleLinear, scaleLog } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { GrowthPoint, SizeSeen } from '../../src/husbandry/appetite/index.ts';
import type { LengthUnit } from '../format.ts';
import { lengthText, recordDay } from '../format.ts';
import { growthFinding, growthTable } from '../growth-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

export interface GrowthProps {
  /** At least two, oldest first. */
  readonly sizes: readonly SizeSeen[];
  /** From the first size to today. */
  readonly expected: readonly GrowthPoint[];
  /** Days on which moults were found. */
  readonly moults: readonly number[];
  readonly gaugeWord: string;
  readonly unit: LengthUnit;
}

const WIDTH = 358;
const HEIGHT = 190;
const FRAME = { left: 52, right: WIDTH - 12, top: 12, bottom: HEIGHT - 34 };

export const Growth = (props: GrowthProps) => {
  const { sizes, expected, gaugeWord, unit } = props;
  const title = growthFinding(sizes, expected, unit);
  return (
    <figure class="growth">
      <figcaption>
        <strong>{title}</strong>
        <span class="how">
          {' '}
          Dots: measured. Line: as its kind grows, with its doubt. Ticks: moults found.
        </span>
      </figcaption>
      <Drawing
        id="growth"
        title={title}
        description={`The ${gaugeWord} over time on a log scale; the first size begins the expected line.`}
        width={WIDTH}
        height={HEIGHT}
      >
        <Curves {...props} />
      </Drawing>
      <Numbers {...growthTable({ sizes, expected, gaugeWord, unit })} />
    </figure>
  );
};

/** Scales over all that is drawn. */
function scalesOf({ sizes, expected }: GrowthProps) {
  const days = expected.map(({ day }) => day);
  const lengths = [
    ...sizes.map(({ gaugeMm }) => gaugeMm),
    ...expected.flatMap(({ lowMm, highMm }) => [lowMm, highMm]),
  ];
  return {
    x: scaleLinear()
      .domain([Math.min(...days), Math.max(...days)])
      .range([FRAME.left, FRAME.right]),
    y: scaleLog()
      .domain([Math.min(...lengths), Math.max(...lengths)])
      .range([FRAME.bottom, FRAME.top]),
  };
}

const Curves = (props: GrowthProps) => {
  const { sizes, expected, moults, unit } = props;
  const { x, y } = scalesOf(props);
  const at = (point: GrowthPoint) => place(x(point.day));
  const band = area<GrowthPoint>()
    .x(at)
    .y0((point) => place(y(point.lowMm)))
    .y1((point) => place(y(point.highMm)))
    .digits(1);
  const middle = line<GrowthPoint>()
    .x(at)
    .y((point) => place(y(point.midMm)))
    .digits(1);
  const [from, to] = x.domain() as [number, number];
  return (
    <>
      <path d={band(expected) ?? ''} class="stock-band" />
      <path d={middle(expected) ?? ''} class="growth-expected" />
      <line x1={FRAME.left} x2={FRAME.right} y1={FRAME.bottom} y2={FRAME.bottom} class="axis" />
      {moults
        .filter((day) => day >= from && day <= to)
        .map((day) => (
          <line
            x1={place(x(day))}
            x2={place(x(day))}
            y1={FRAME.bottom}
            y2={FRAME.bottom + 7}
            class="moult-tick"
          />
        ))}
      {marksMm(y.domain() as [number, number]).map((mm) => (
        <text x={FRAME.left - 6} y={place(y(mm) + 4)} text-anchor="end" class="ruler-number axis-number">
          {lengthText(mm, unit)}
        </text>
      ))}
      <text x={FRAME.left} y={HEIGHT - 8} class="ruler-number axis-number">
        {recordDay(from)}
      </text>
      <text x={FRAME.right} y={HEIGHT - 8} text-anchor="end" class="ruler-number axis-number">
        {recordDay(to)}
      </text>
      {sizes.map(({ day, gaugeMm }) => (
        <circle cx={place(x(day))} cy={place(y(gaugeMm))} r="4.5" class="size-seen" />
      ))}
    </>
  );
};

const ROUND_MM = [1, 2, 3, 5, 8, 12, 20, 30, 40, 60, 80, 100, 150, 200, 300, 400, 600];

/** Round lengths within the scale; its ends where it spans less than two. */
function marksMm([least, most]: readonly [number, number]): readonly number[] {
  const within = ROUND_MM.filter((mm) => mm >= least && mm <= most);
  return within.length > 1 ? within : [least, most];
}
