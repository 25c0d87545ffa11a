/** What becomes of the box at each count of packs: eaten, left, outgrown and dead, as bars on one scale of heads. */
import { scaleLinear } from 'd3-scale';
import type { BulkPoint } from '../../src/husbandry/plan/index.ts';
import { counted, money, percent } from '../format.ts';
import { type BulkTold, bestOf, curveNow, manyOf, packsWords } from '../pages/bulk-words.ts';
import { Drawing, Numbers } from './figure.tsx';
import { hueClass } from './hatches.tsx';
import { place } from './ruler.tsx';

const WIDTH = 340;
const LEFT = 62;
const RIGHT = WIDTH - 4;
const TOP = 4;
const ROW = 22;
const BAR = 14;
const ROWS_MOST = 12;

const FATES = [
  ['eaten', 'eaten'],
  ['left', 'left for later'],
  ['outgrown', 'too large for everybody'],
  ['died', 'died uneaten'],
] as const;

export const BulkFate = ({ told }: { told: BulkTold }) => {
  const { points } = curveNow(told);
  const shown = shownOf(told);
  const x = scaleLinear()
    .domain([0, Math.max(...shown.map(({ heads }) => heads))])
    .range([LEFT, RIGHT]);
  const bottom = TOP + shown.length * ROW;
  const title = findingOf(told);
  const hue = hueClass(told.names.species.get(told.offer.species)?.form ?? 'cricket');
  const seen = FATES.filter(([fate]) => shown.some((point) => point[fate] >= 1));
  return (
    <section aria-labelledby="bulk-fate-head">
      <h2 id="bulk-fate-head">What becomes of the box</h2>
      <figure class="bulk-figure">
        <Drawing
          id="bulk-fate"
          title={title}
          description="A bar for each count of packs, as long as the heads that come. The same as a table below."
          width={WIDTH}
          height={bottom + 20}
        >
          <Ground />
          {shown.map((point, i) => (
            <Bar {...{ point, x, hue }} top={TOP + i * ROW} isBest={point.packs === curveNow(told).best} />
          ))}
          {x.ticks(4).map((heads) => (
            <text x={place(x(heads))} y={bottom + 14} text-anchor="middle" font-size="12" class="axis-number">
              {heads === 0 ? 'heads' : heads.toLocaleString('en-GB')}
            </text>
          ))}
        </Drawing>
        <figcaption>
          {title}.{' '}
          <span class="bulk-key">
            {seen.map(([fate, words]) => (
              <span>
                <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
                  <path d="M.5 .5h13v13h-13z" {...look(fate, hue)} />
                </svg>{' '}
                {words}
              </span>
            ))}
          </span>
        </figcaption>
        <Numbers
          caption={`What becomes of the box within ${counted(told.weeks, 'week')}`}
          head={['Packs', 'Come alive', 'Eaten', 'Left', 'Too large', 'Died', 'Cost']}
          rows={points.map(({ packs, heads, eaten, left, outgrown, died, cents }) => [
            `${packs}`,
            ...[heads, eaten, left, outgrown, died].map(manyOf),
            money(cents, told.currency),
          ])}
        />
      </figure>
    </section>
  );
};

type Fate = (typeof FATES)[number][0];

/** Those eaten in the prey's own hue; those who died are hatched: told from the rest without colour. */
const look = (fate: Fate, hue: string) => ({
  class: fate === 'eaten' ? hue : `fate-${fate}`,
  ...(fate === 'died' ? { fill: 'url(#bulk-died)' } : {}),
});

/** Every count, or so many evenly that the best, the first and the last are among them. */
function shownOf(told: BulkTold): readonly BulkPoint[] {
  const { points, best } = curveNow(told);
  const step = Math.ceil(points.length / ROWS_MOST);
  return points.filter(
    ({ packs }, i) =>
      packs === best || i === points.length - 1 || (i % step === 0 && i + step < points.length),
  );
}

/** 'Of 4 packs 85 % are eaten' */
function findingOf(told: BulkTold): string {
  const { packs, eaten, heads } = bestOf(curveNow(told));
  return `Of ${packsWords(packs)} ${percent(heads > 0 ? eaten / heads : 0)} of the heads are eaten`;
}

const Ground = () => (
  <defs>
    <pattern id="bulk-died" width="6" height="6" patternUnits="userSpaceOnUse">
      <path d="M0 6L6 0" class="fate-hatch" />
    </pattern>
  </defs>
);

interface BarProps {
  readonly point: BulkPoint;
  readonly top: number;
  readonly x: (heads: number) => number;
  readonly isBest: boolean;
  readonly hue: string;
}

const Bar = ({ point, top, x, isBest, hue }: BarProps) => {
  let sum = 0;
  return (
    <g>
      <text
        x={LEFT - 6}
        y={top + BAR - 2}
        text-anchor="end"
        font-size="12"
        {...(isBest ? { 'font-weight': '700' } : {})}
      >
        {isBest ? 'best: ' : ''}
        {point.packs}
      </text>
      {FATES.map(([fate]) => {
        const from = place(x(sum));
        sum += point[fate];
        const to = place(x(sum));
        return to - from < 0.2 ? null : (
          <path d={`M${from} ${top}H${to}v${BAR}H${from}z`} {...look(fate, hue)} />
        );
      })}
    </g>
  );
};
