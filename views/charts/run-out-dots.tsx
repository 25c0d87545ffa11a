/** Twenty dots for the day on which prey runs out: each is one of twenty weeks like this one. */

import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { GroupAnswer, Spread } from '../../src/husbandry/supply/index.ts';
import { counted, shortDay } from '../format.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

const DOTS = 20;
/** Levels of a Spread's three quantiles. */
const [LOW, MID, HIGH] = [0.05, 0.5, 0.95];

/** The day, counted from the first, at a level between 0 and 1, by straight lines through the three quantiles. */
function dayAt({ low, mid, high }: Spread, level: number): number {
  const [from, to, start, end] = level < MID ? [LOW, MID, low, mid] : [MID, HIGH, mid, high];
  const along = Math.min(1, Math.max(0, (level - from) / (to - from)));
  return Math.round(start + along * (end - start));
}

/** Dots by day of the check, never none when there is a chance and never all when there is doubt. */
export function runOutDots({ chance, day }: GroupAnswer['runOut'], days: number): number[] {
  const columns = new Array<number>(days).fill(0);
  if (day === null || chance === 0) return columns;
  const dots = Math.min(chance < 1 ? DOTS - 1 : DOTS, Math.max(1, Math.round(chance * DOTS)));
  for (let dot = 0; dot < dots; dot += 1) {
    const held = Math.min(days - 1, Math.max(0, dayAt(day, (dot + 0.5) / dots)));
    columns[held] = columns[held]! + 1;
  }
  return columns;
}

interface RunOutDotsProps {
  readonly id: string;
  readonly name: string;
  readonly runOut: GroupAnswer['runOut'];
  readonly firstDay: DayNumber;
  readonly days: number;
}

const STEP = 13;
const RADIUS = 4.6;
const WIDTH = 340;

const ROWS = 7;

/** Dots side by side in one column, so that it stays low. */
const across = (count: number, width: number): number =>
  Math.max(1, Math.min(Math.floor(width / STEP), Math.ceil(count / ROWS)));

export const RunOutDots = ({ id, name, runOut, firstDay, days }: RunOutDotsProps) => {
  const columns = runOutDots(runOut, days);
  const short = columns.reduce((sum, n) => sum + n, 0);
  const counts = [...columns, DOTS - short];
  const width = WIDTH / counts.length;
  const rows = counts.map((count) => Math.ceil(count / across(count, width)));
  const base = Math.max(4, ...rows) * STEP + 6;
  const title = `${name}: prey runs out in ${counted(short, 'week')} of ${DOTS} like this one`;
  const dayName = (i: number) => (i === days ? 'Lasts' : shortDay(firstDay + i));
  return (
    <figure class="dots">
      <Drawing id={id} title={title} description={DESCRIPTION} width={WIDTH} height={base + 20}>
        {counts.map((count, i) => (
          <Column
            count={count}
            centre={width * (i + 0.5)}
            width={width}
            base={base}
            label={dayName(i).split(' ')[0] ?? ''}
            lasts={i === days}
          />
        ))}
        <line x1="0" x2={WIDTH} y1={base} y2={base} class="axis" />
      </Drawing>
      <figcaption>Twenty weeks like this one: the day prey runs out.</figcaption>
      <Numbers
        caption={title}
        head={['Day', 'Weeks of 20']}
        rows={counts.map((n, i) => [dayName(i), `${n}`])}
      />
    </figure>
  );
};

const DESCRIPTION = 'Each dot is one week, above the day its prey runs out; the open dots at the right last.';

interface ColumnProps {
  readonly count: number;
  readonly centre: number;
  readonly width: number;
  readonly base: number;
  readonly label: string;
  readonly lasts: boolean;
}

const Column = ({ count, centre, width, base, label, lasts }: ColumnProps) => {
  const abreast = across(count, width);
  return (
    <g>
      {Array.from({ length: count }, (_, dot) => (
        <circle
          cx={place(centre + STEP * ((dot % abreast) - (abreast - 1) / 2))}
          cy={place(base - STEP * (Math.floor(dot / abreast) + 0.5))}
          r={RADIUS}
          class={lasts ? 'dot-lasts' : 'dot-short'}
        />
      ))}
      <text x={place(centre)} y={base + 14} text-anchor="middle" font-size="12" class="axis-number">
        {label}
      </text>
    </g>
  );
};
