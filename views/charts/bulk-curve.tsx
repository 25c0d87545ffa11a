/** What a head that is eaten costs against the packs ordered: price breaks and the best marked, cooler and warmer bins beside it. */
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { BulkCurve, BulkPoint } from '../../src/husbandry/plan/index.ts';
import { headPrice } from '../format.ts';
import {
  type BulkTold,
  bestOf,
  bulkHeadline,
  curveNow,
  eatenPrice,
  manyOf,
  packsWords,
} from '../pages/bulk-words.ts';
import { marksOf } from './bulk-marks.ts';
import { bulkTable } from './bulk-table.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

type Scale = ScaleLinear<number, number>;
interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

const WIDTH = 340;
const LEFT = 50;
const RIGHT = WIDTH - 16;
const TOP = 34;
const BASE = 176;
const HEIGHT = BASE + 38;
const HEADROOM = 1.1;
/** From the axis to the first count, which is written below it. */
const FIRST = 14;

export const BulkCurveChart = ({ told }: { told: BulkTold }) => {
  const now = curveNow(told);
  const scales = scalesOf(now);
  const title = bulkHeadline(told);
  return (
    <figure class="bulk-figure">
      <Drawing
        id="bulk-curve"
        title={title}
        description="Across: packs ordered, and heads that come. Up: what each head that is eaten costs. Upright lines: prices of a pack. The same as a table below."
        width={WIDTH}
        height={HEIGHT}
      >
        <Prices y={scales.y} told={told} />
        <Packs x={scales.x} told={told} />
        <Breaks x={scales.x} told={told} />
        {told.answer.curves.slice(1).map((curve) => (
          <path d={pathOf(curve, scales)} class={curve.warmerC < 0 ? 'bulk-cooler' : 'bulk-warmer'} />
        ))}
        <path d={pathOf(now, scales)} class="stock-line" />
        <Best told={told} scales={scales} />
      </Drawing>
      <figcaption>{keyWords(told)}</figcaption>
      <Numbers {...bulkTable(told)} />
    </figure>
  );
};

/** By the curve as the bins stand; the others end where they leave its frame. */
function scalesOf({ points }: BulkCurve): Scales {
  const [first, last] = [points[0]!.packs, points.at(-1)!.packs];
  const dearest = Math.max(...points.map(({ centsPerEaten }) => centsPerEaten ?? 0));
  const x = scaleLinear()
    .domain([Math.min(first, last - 1), last])
    .range([LEFT + FIRST, RIGHT]);
  const y = scaleLinear()
    .domain([0, dearest * HEADROOM])
    .range([BASE, TOP]);
  return { x, y };
}

function pathOf({ points }: BulkCurve, { x, y }: Scales): string {
  const [, most = 0] = y.domain();
  const [first = 0, last = 0] = x.domain();
  const outline = line<BulkPoint>()
    .defined(
      ({ packs, centsPerEaten }) =>
        centsPerEaten !== null && centsPerEaten <= most && packs >= first && packs <= last,
    )
    .x(({ packs }) => place(x(packs)))
    .y(({ centsPerEaten }) => place(y(centsPerEaten ?? 0)));
  return outline([...points]) ?? '';
}

const Prices = ({ y, told }: { y: Scale; told: BulkTold }) => (
  <g>
    {y.ticks(3).map((cents) => (
      <>
        <line x1={LEFT} x2={RIGHT} y1={place(y(cents))} y2={place(y(cents))} class="strip-line" />
        <text x={LEFT - 6} y={place(y(cents)) + 4} text-anchor="end" font-size="12" class="axis-number">
          {cents === 0 ? '0' : headPrice(cents, told.currency)}
        </text>
      </>
    ))}
  </g>
);

const PACK_TICKS = 6;

const Packs = ({ x, told }: { x: Scale; told: BulkTold }) => {
  const { points } = curveNow(told);
  const headsOf = (packs: number) => (packs * points[0]!.heads) / points[0]!.packs;
  const ticks = x.ticks(PACK_TICKS).filter((packs) => Number.isInteger(packs) && packs > 0);
  return (
    <g>
      {ticks.map((packs) => (
        <g>
          <text x={place(x(packs))} y={BASE + 16} text-anchor="middle" font-size="12">
            {packs}
          </text>
          <text x={place(x(packs))} y={BASE + 32} text-anchor="middle" font-size="12" class="axis-number">
            {manyOf(headsOf(packs))}
          </text>
        </g>
      ))}
      <text x={LEFT - 6} y={BASE + 16} text-anchor="end" font-size="12">
        packs
      </text>
      <text x={LEFT - 6} y={BASE + 32} text-anchor="end" font-size="12" class="axis-number">
        heads
      </text>
    </g>
  );
};

/** Where a pack gets cheaper, and where the postage is spared. */
const Breaks = ({ x, told }: { x: Scale; told: BulkTold }) => {
  const [first = 0, last = 0] = x.domain();
  const shown = marksOf(told).filter(({ packs }) => packs > first && packs <= last);
  return (
    <g>
      {shown.map(({ packs, words }, i) => {
        const at = place(x(packs));
        const isRight = at > (LEFT + RIGHT) / 2;
        return (
          <>
            <line x1={at} x2={at} y1={TOP - 10} y2={BASE} class="bulk-break" />
            <text
              x={isRight ? at + 4 : at - 4}
              y={12 + (i % 2) * 14}
              text-anchor={isRight ? 'end' : 'start'}
              font-size="12"
              class="axis-number"
            >
              {words}
            </text>
          </>
        );
      })}
    </g>
  );
};

const Best = ({ told, scales: { x, y } }: { told: BulkTold; scales: Scales }) => {
  const best = bestOf(curveNow(told));
  const [at, up] = [place(x(best.packs)), place(y(best.centsPerEaten ?? 0))];
  const isRight = at > (LEFT + RIGHT) / 2;
  return (
    <g class="bulk-best">
      <circle cx={at} cy={up} r="5" />
      <text x={at} y={up + 20} text-anchor={isRight ? 'end' : 'start'} font-size="13">
        best: {packsWords(best.packs)}, {eatenPrice(best, told)}
      </text>
    </g>
  );
};

function keyWords(told: BulkTold): string {
  const { minC, maxC } = curveNow(told).tempC;
  const here = minC === maxC ? `${minC} °C` : `${minC} to ${maxC} °C`;
  const others = told.answer.curves
    .slice(1)
    .map(({ warmerC }) =>
      warmerC < 0 ? `dashed: ${-warmerC} degrees cooler` : `dotted: ${warmerC} degrees warmer`,
    );
  return `What each head that is eaten costs. ${[`Line: as the bin stands, ${here}`, ...others].join('; ')}.`;
}
