/** A bin's sizes on the ruler, week under week: prey creeps to the right as it grows. */
import { area, curveMonotoneX } from 'd3-shape';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { BinAhead, BinWeek } from '../../src/husbandry/supply/index.ts';
import { type LengthUnit, lengthText, shortDay } from '../format.ts';
import { creepFinding, creepTable } from './bin-weeks-words.ts';
import { densities } from './densities.ts';
import { Drawing, Numbers } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { place, Ruler, rulerScale } from './ruler.tsx';

interface BinCreepProps {
  readonly ahead: BinAhead;
  readonly form: PreyForm;
  readonly unit: LengthUnit;
}

const WIDTH = 358;
const LEFT = 58;
const RIGHT = WIDTH - 12;
const RULER_HEIGHT = 24;
const TOP = 34;
const NAME_TOP = 12;
const ROW = 16;
/** Height of the tallest week; it reaches over the rows above. */
const TALLEST = 30;

export const BinCreep = (props: BinCreepProps) => {
  const { ahead, unit } = props;
  const title = creepFinding(ahead, unit);
  const bottom = TOP + ahead.weeks.length * ROW + 4;
  return (
    <figure class="bin-figure">
      <figcaption>
        <strong>{title}</strong>
        <span class="how"> Each row is a week; its hill is how many are of each length.</span>
      </figcaption>
      <Drawing
        id="bin-creep"
        title={title}
        description="Lengths on the ruler, one row a week, today at the top."
        width={WIDTH}
        height={bottom + RULER_HEIGHT + 4}
      >
        <Rows {...props} />
        <Outgrown {...props} bottom={bottom} />
        <Ruler x={rulerScale(LEFT, RIGHT)} top={bottom} height={RULER_HEIGHT} marks="few" unit={unit} />
      </Drawing>
      <Numbers {...creepTable(ahead, unit)} />
    </figure>
  );
};

/** Lower than this share of the tallest is not drawn. */
const LEAST = 0.02;

const Rows = ({ ahead: { weeks, edgesMm }, form }: BinCreepProps) => {
  const hills = weeks.map(({ byBand }) => densities(edgesMm, byBand).map(Math.sqrt));
  const highest = Math.max(1e-9, ...hills.flat());
  const x = rulerScale(LEFT, RIGHT);
  const mids = weeks[0]!.byBand.map((_, band) => x(Math.sqrt(edgesMm[band]! * edgesMm[band + 1]!)));
  return (
    <g>
      {weeks.map((week, row) => {
        const base = TOP + (row + 1) * ROW;
        const outline = area<number>()
          .x((_, band) => place(mids[band]!))
          .y0(base)
          .y1((height) => place(base - (height / highest) * TALLEST))
          .defined((_, band) =>
            hills[row]!.slice(Math.max(0, band - 1), band + 2).some((height) => height > LEAST * highest),
          )
          .curve(curveMonotoneX)
          .digits(1);
        return (
          <>
            <line x1={LEFT} x2={RIGHT} y1={base} y2={base} class="strip-line" />
            <path d={outline(hills[row]!) ?? ''} class={`layer ${hueClass(form)}`} />
            <RowName week={week} row={row} base={base} />
          </>
        );
      })}
    </g>
  );
};

/** Letters of 'Thu '. */
const DAY_NAME = 4;

const RowName = ({ week: { day }, row, base }: { week: BinWeek; row: number; base: number }) => (
  <text x={LEFT - 6} y={base} text-anchor="end" class="ruler-number axis-number">
    {row === 0 ? 'today' : shortDay(day).slice(DAY_NAME)}
  </text>
);

/** Share of the ruler from which a name stands left of its line. */
const NAME_TURNS = 0.5;

/** The longest prey of the first group it outgrows. */
const Outgrown = ({ ahead: { feeds }, unit, bottom }: BinCreepProps & { bottom: number }) => {
  const first = feeds.find(({ outgrownOn }) => outgrownOn !== null && outgrownOn.mid >= 1);
  if (first === undefined) return null;
  const at = place(rulerScale(LEFT, RIGHT)(first.toMm));
  const turned = at > LEFT + (RIGHT - LEFT) * NAME_TURNS;
  return (
    <g>
      <line x1={at} x2={at} y1={NAME_TOP - 10} y2={bottom} class="limit-line" />
      <text x={turned ? at - 5 : at + 5} y={NAME_TOP} text-anchor={turned ? 'end' : 'start'} font-size="12">
        {first.name}: to {lengthText(first.toMm, unit)}
      </text>
    </g>
  );
};
