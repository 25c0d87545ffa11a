/** The instar ladder: each size a rung on the ruler, what is behind solid, now strong, ahead with a soft edge. */
import type { NextMoult, Rung } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { Alive } from '../../src/husbandry/supply/index.ts';
import type { LengthUnit } from '../format.ts';
import { ladderDescription, ladderFinding, ladderTable } from '../moult-words.ts';
import type { PreyName } from '../names.ts';
import { Drawing, Numbers } from './figure.tsx';
import { type LadderSize, RungDrawn, type Step } from './ladder-rung.tsx';
import { LarderShadow } from './larder-shadow.tsx';
import { place, Ruler, rulerScale } from './ruler.tsx';

export interface InstarLadderProps {
  readonly rungs: readonly Rung[];
  readonly next: NextMoult;
  readonly today: DayNumber;
  readonly unit: LengthUnit;
  readonly gaugeWord: string;
  readonly larder: Alive;
  readonly species: ReadonlyMap<string, PreyName>;
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

/** From body to body: up at each moult, then along by the growth. */
const stairs = (steps: readonly Step[]): string =>
  steps.map(({ own, y }, i) => (i === 0 ? `M${own} ${y}` : `V${y}H${own}`)).join('');
