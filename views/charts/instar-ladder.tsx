/** The instar ladder: each size a rung on the ruler, what is behind solid, now strong, ahead with a soft edge. */
import type { NextMoult, Rung } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Alive } from '../../src/husbandry/supply/index.ts';
import type { LengthUnit } from '../format.ts';
import { ladderDescription, ladderFinding, ladderTable, rungDay, rungPrey } from '../moult-words.ts';
import type { PreyName } from '../names.ts';
import { Drawing, Numbers } from './figure.tsx';
import { LarderShadow } from './larder-shadow.tsx';
import { place, RULER_TO_MM, Ruler, rulerScale } from './ruler.tsx';
import { OwnLength } from './window-bracket.tsx';

export interface InstarLadderProps {
  readonly rungs: readonly Rung[];
  readonly next: NextMoult;
  readonly today: DayNumber;
  readonly unit: LengthUnit;
  readonly gaugeWord: string;
  readonly larder: Alive;
  readonly species: ReadonlyMap<string, PreyName>;
}

/** Drawn twice, for a desk with the words beside the rungs and for a phone with the words above them. */
interface LadderSize {
  readonly name: 'desk' | 'phone';
  readonly width: number;
  readonly left: number;
  readonly rowHeight: number;
  /** The rung below the top of its row. */
  readonly rungAt: number;
  readonly fontSize: number;
  readonly marks: 'many' | 'few';
}

const SIZES: readonly LadderSize[] = [
  { name: 'desk', width: 840, left: 276, rowHeight: 46, rungAt: 23, fontSize: 13, marks: 'many' },
  { name: 'phone', width: 358, left: 12, rowHeight: 54, rungAt: 36, fontSize: 13, marks: 'few' },
];
const MARGIN = 12;
const RULER_HEIGHT = 26;
/** Room over the ruler for the names of the prey. */
const NAMES = 58;
/** Most prey species named; all are drawn. */
const MOST_NAMED = 3;
/** Older sizes are in the table alone. */
const MOST_BEHIND = 4;

export const InstarLadder = (props: InstarLadderProps) => {
  const shown = { ...props, rungs: latest(props.rungs) };
  return (
    <figure class="ladder">
      <figcaption>
        <strong>{ladderFinding(props)}</strong>
        <span class="how">
          {' '}
          Smallest size below. Bar: prey it takes; dot: best; star: its own body. Soft bar: the day is in
          doubt. Shadow: alive in the larder.
        </span>
      </figcaption>
      {SIZES.map((size) => (
        <LadderDrawing {...shown} size={size} />
      ))}
      <Numbers {...ladderTable(props, props.gaugeWord)} />
    </figure>
  );
};

function latest(rungs: readonly Rung[]): readonly Rung[] {
  const behind = rungs.filter(({ place: where }) => where === 'behind').length;
  return rungs.slice(Math.max(0, behind - MOST_BEHIND));
}

type DrawnProps = InstarLadderProps & { readonly size: LadderSize };

const LadderDrawing = (props: DrawnProps) => {
  const { rungs, size, unit, larder, species } = props;
  const id = `ladder-${size.name}`;
  const x = rulerScale(size.left + MARGIN, size.width - MARGIN);
  const foot = rungs.length * size.rowHeight + NAMES;
  const steps = rungs.map((rung, i) => ({
    rung,
    top: (rungs.length - 1 - i) * size.rowHeight,
    y: (rungs.length - 1 - i) * size.rowHeight + size.rungAt,
    own: place(x(rung.referenceMm)),
  }));
  return (
    <Drawing
      id={id}
      class={size.name}
      title={ladderFinding(props)}
      description={ladderDescription(props)}
      width={size.width}
      height={foot + RULER_HEIGHT + 2}
    >
      <SoftEdge id={id} />
      <LarderShadow
        larder={larder}
        species={species}
        x={x}
        top={0}
        foot={foot}
        fontSize={size.fontSize}
        named={MOST_NAMED}
      />
      <path d={stairs(steps)} class="growth-stairs" />
      {steps.map((step) => (
        <RungDrawn {...step} {...props} x={x} id={id} />
      ))}
      <Ruler x={x} top={foot} height={RULER_HEIGHT} marks={size.marks} unit={unit} />
    </Drawing>
  );
};

/** Doubt is always the same soft edge: full in the middle, nothing at the rim. */
const SoftEdge = ({ id }: { id: string }) => (
  <defs>
    <linearGradient id={`${id}-soft`} x1="0" x2="0" y1="0" y2="1">
      <stop offset="0" class="soft-rim" />
      <stop offset="0.5" class="soft-core" />
      <stop offset="1" class="soft-rim" />
    </linearGradient>
  </defs>
);

interface Step {
  readonly rung: Rung;
  readonly top: number;
  readonly y: number;
  readonly own: number;
}

/** From body to body: up at each moult, then along by the growth. */
const stairs = (steps: readonly Step[]): string =>
  steps.map(({ own, y }, i) => (i === 0 ? `M${own} ${y}` : `V${y}H${own}`)).join('');

type RungProps = DrawnProps & Step & { readonly x: ReturnType<typeof rulerScale>; readonly id: string };

const RungDrawn = ({ rung, rungs, top, y, own, x, id, size, unit, today }: RungProps) => {
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
