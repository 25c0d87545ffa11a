/** The wave of a hatching sac: what its group wants week by week, with the sac and without it. */
import { scaleLinear } from 'd3-scale';
import { area, curveMonotoneX, line } from 'd3-shape';
import type { HatchWave } from '../../src/husbandry/supply/index.ts';
import { DAYS_PER_WEEK } from '../../src/husbandry/units.ts';
import { roundly, shortDay } from '../format.ts';
import { Drawing, Numbers, type NumbersTable } from './figure.tsx';
import { place } from './ruler.tsx';

type Amount = HatchWave['with'][number];

interface HatchWaveProps {
  readonly id: string;
  readonly wave: HatchWave;
}

const WIDTH = 340;
const TOP = 14;
const BASE = 146;
const LEFT = 36;
const NAMED_MOST = 4;

/** The week from which half of the wave is there. */
function risesIn({ with: withIt, peak, peakWithout }: HatchWave): number {
  const half = (peak + peakWithout) / 2;
  return Math.max(
    0,
    withIt.findIndex(({ mean }) => mean >= half),
  );
}

const weekOf = ({ firstDay }: HatchWave, week: number): string => shortDay(firstDay + week * DAYS_PER_WEEK);

const findingOf = (wave: HatchWave): string =>
  `From about ${weekOf(wave, risesIn(wave))} this size eats ${roundly(wave.peak)} a week instead of ${roundly(wave.peakWithout)}`;

function tableOf(wave: HatchWave): NumbersTable {
  return {
    caption: `Items a week of the best length, ${wave.group.name}`,
    head: ['Week from', 'Without the sac', 'With it', 'From', 'To'],
    rows: wave.with.map(({ mean, low, high }, week) => [
      weekOf(wave, week),
      `${Math.round(wave.without[week]?.mean ?? 0)}`,
      `${Math.round(mean)}`,
      `${Math.round(low)}`,
      `${Math.round(high)}`,
    ]),
  };
}

export const HatchWaveChart = ({ id, wave }: HatchWaveProps) => {
  const weeks = wave.with.length;
  const most = Math.max(1, ...wave.with.map(({ high }) => high));
  const x = scaleLinear().domain([0, weeks]).range([LEFT, WIDTH]);
  const y = scaleLinear().domain([0, most]).nice(3).range([BASE, TOP]);
  const centre = (week: number) => place(x(week + 0.5));
  const band = area<Amount>()
    .x((_, week) => centre(week))
    .y0(({ low }) => place(y(low)))
    .y1(({ high }) => place(y(high)))
    .curve(curveMonotoneX);
  const means = line<Amount>()
    .x((_, week) => centre(week))
    .y(({ mean }) => place(y(mean)))
    .curve(curveMonotoneX);
  const step = Math.ceil(weeks / NAMED_MOST);
  return (
    <figure class="wave">
      <Drawing
        id={id}
        title={findingOf(wave)}
        description="Line and band: items wanted a week if the sac comes off, and where that lies in 9 rooms of 10; dashed: without it."
        width={WIDTH}
        height={BASE + 22}
      >
        {y.ticks(3).map((tick) => (
          <text x={LEFT - 6} y={place(y(tick)) + 4} text-anchor="end" font-size="12" class="axis-number">
            {tick}
          </text>
        ))}
        <path d={band([...wave.with]) ?? ''} class="stock-band" />
        <path d={means([...wave.without]) ?? ''} class="without-line" />
        <path d={means([...wave.with]) ?? ''} class="stock-line" />
        <line x1={LEFT} x2={WIDTH} y1={BASE} y2={BASE} class="axis" />
        {wave.with.map((_, week) =>
          week % step === 0 ? (
            <text x={place(x(week))} y={BASE + 16} font-size="12" class="axis-number">
              {weekOf(wave, week).slice(4)}
            </text>
          ) : null,
        )}
      </Drawing>
      <figcaption>
        {findingOf(wave)}. In prey of the best length. Line: with the sac, if it comes off; band: 9 rooms of
        10; dashed: without it. {wave.replicates} runs, give or take{' '}
        {Math.max(1, Math.ceil(wave.peakError * 2))}.
      </figcaption>
      <Numbers {...tableOf(wave)} />
    </figure>
  );
};
