/** One rung of the instar ladder: its words, the prey it takes as a bar, its best, its own body. */
import type { Rung } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { LengthUnit } from '../format.ts';
import { rungDay, rungPrey } from '../moult-words.ts';
import { place, RULER_TO_MM, type rulerScale } from './ruler.tsx';
import { OwnLength } from './window-bracket.tsx';

/** Drawn twice, for a desk with the words beside the rungs and for a phone with the words above them. */
export interface LadderSize {
  readonly name: 'desk' | 'phone';
  readonly width: number;
  readonly left: number;
  readonly rowHeight: number;
  /** The rung below the top of its row. */
  readonly rungAt: number;
  readonly fontSize: number;
  readonly marks: 'many' | 'few';
}

export interface Step {
  readonly rung: Rung;
  readonly top: number;
  readonly y: number;
  readonly own: number;
}

interface RungProps extends Step {
  readonly rungs: readonly Rung[];
  readonly size: LadderSize;
  readonly unit: LengthUnit;
  readonly today: DayNumber;
  readonly x: ReturnType<typeof rulerScale>;
  /** Id of the drawing. */
  readonly id: string;
}

export const RungDrawn = ({ rung, rungs, top, y, own, x, id, size, unit, today }: RungProps) => {
  const { window } = rung;
  const [from, to] = [place(x(window.minMm)), place(x(window.maxMm))];
  return (
    <g class={`rung is-${rung.place}`}>
      <RungWords
        when={rungDay({ rungs, today }, rung, size.name === 'phone')}
        prey={rungPrey(rung, unit)}
        top={top}
        size={size}
      />
      {rung.place === 'ahead' ? (
        <rect
          x={from}
          y={place(y - softness(rungs, rung) / 2)}
          width={place(to - from)}
          height={place(softness(rungs, rung))}
          fill={`url(#${id}-soft)`}
        />
      ) : null}
      <path d={`M${from} ${y - 6}v12M${from} ${y}H${to}M${to} ${y - 6}v12`} class="rung-bar" />
      <circle cx={place(x(window.idealMm))} cy={y} r="4" class="ideal" />
      <g transform={`translate(0 ${y - MARK_MIDDLE})`}>
        <OwnLength at={own} beyond={rung.referenceMm > RULER_TO_MM} />
      </g>
    </g>
  );
};

/** Middle of the mark of its own body, as it is drawn. */
const MARK_MIDDLE = 14;
const LEAST_SOFT = 12;
const MOST_SOFT = 34;

/** Height of a soft rung: as the doubt of its day to the greatest doubt of the ladder. */
function softness(rungs: readonly Rung[], { expected }: Rung): number {
  const width = (band: Rung['expected']): number => (band === null ? 0 : band.high - band.low);
  const widest = Math.max(1, ...rungs.map((rung) => width(rung.expected)));
  return LEAST_SOFT + (MOST_SOFT - LEAST_SOFT) * (width(expected) / widest);
}

interface RungWordsProps {
  readonly when: string;
  readonly prey: string;
  readonly top: number;
  readonly size: LadderSize;
}

/** Beside the rung on a desk, over it on a phone. */
const RungWords = ({ when, prey, top, size }: RungWordsProps) =>
  size.name === 'desk' ? (
    <>
      <text x="0" y={top + 20} font-size={size.fontSize} class="rung-when">
        {when}
      </text>
      <text x="0" y={top + 37} font-size={size.fontSize} class="rung-prey">
        {prey}
      </text>
    </>
  ) : (
    <>
      <text x="0" y={top + 14} font-size={size.fontSize} class="rung-when">
        {when}
      </text>
      <text x={size.width} y={top + 14} font-size={size.fontSize} text-anchor="end" class="rung-prey">
        {prey}
      </text>
    </>
  );
