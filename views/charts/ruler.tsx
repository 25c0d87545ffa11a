/** The ruler all pictures share: prey length from 1 to 60 mm on a log scale. */
import { type ScaleLogarithmic, scaleLog } from 'd3-scale';
import { MM_PER_INCH, type Mm } from '../../src/husbandry/units.ts';
import { inches, type LengthUnit } from '../format.ts';

const RULER_FROM_MM: Mm = 1;
export const RULER_TO_MM: Mm = 60;

/** Millimetres to a place along the ruler; lengths beyond its ends stand at its ends. */
export const rulerScale = (left: number, right: number): ScaleLogarithmic<number, number> =>
  scaleLog().domain([RULER_FROM_MM, RULER_TO_MM]).range([left, right]).clamp(true);

const TICKS_MM = [
  1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 35, 40, 45, 50, 55, 60,
];
const MARKS_MM = { many: [1, 2, 3, 5, 8, 12, 20, 30, 40, 60], few: [1, 2, 3, 5, 10, 20, 40, 60] };
const TICKS_IN = [1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 1.25, 1.5, 1.75, 2];
const MARKS_IN = {
  many: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1, 1.5, 2],
  few: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2],
};

interface RulerProps {
  readonly x: ScaleLogarithmic<number, number>;
  readonly top: number;
  readonly height: number;
  readonly marks: 'many' | 'few';
  readonly unit: LengthUnit;
  /** Without the unit, where the column's head says it. */
  readonly bare?: boolean;
}

const inMm = (values: readonly number[], unit: LengthUnit): readonly Mm[] =>
  unit === 'mm' ? values : values.map((value) => value * MM_PER_INCH);

const EDGE = 10;
const UNIT_AFTER = 10;
const LONG_TICK = 0.36;
const SHORT_TICK = 0.2;

/** The strip itself, with ticks hanging from its upper edge and numbers below them. */
export const Ruler = ({ x, top, height, marks, unit, bare }: RulerProps) => {
  const [left, right] = x.range() as [number, number];
  const marked = inMm(unit === 'mm' ? MARKS_MM[marks] : MARKS_IN[marks], unit);
  const ticks = inMm(unit === 'mm' ? TICKS_MM : TICKS_IN, unit);
  return (
    <g class="ruler">
      <rect
        x={left - EDGE}
        y={top}
        width={right - left + 2 * EDGE}
        height={height}
        rx="3"
        class="ruler-strip"
      />
      {ticks.map((mm) => (
        <line
          x1={place(x(mm))}
          x2={place(x(mm))}
          y1={top}
          y2={top + height * (marked.includes(mm) ? LONG_TICK : SHORT_TICK)}
          class="ruler-tick"
        />
      ))}
      {marked.map((mm) => (
        <text x={place(x(mm))} y={top + height - 5} text-anchor="middle" class="ruler-number">
          {unit === 'mm' ? mm : inches(mm)}
        </text>
      ))}
      {bare ? null : (
        <text x={place(left + UNIT_AFTER)} y={top + height - 5} class="ruler-number ruler-unit">
          {unit}
        </text>
      )}
    </g>
  );
};

const TENTHS = 10;

/** Coordinates to a tenth of a point: small and the same everywhere. */
export const place = (value: number): number => Math.round(value * TENTHS) / TENTHS;
