/** Twenty dots for the day on which prey runs out: each is one of twenty weeks like this one. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { GroupAnswer, Spread } from '../../src/husbandry/supply/answer.ts';
import { counted, shortDay } from '../format.ts';
import { Drawing, Numbers } from './figure.tsx';

const DOTS = 20;
/** Levels of a Spread's three quantiles. */
const [LOW, MID, HIGH] = [0.05, 0.5, 0.95];

/** The day at a level between 0 and 1, by straight lines through the three quantiles. */
function dayAt({ low, mid, high }: Spread, level: number): DayNumber {
  const [from, to, start, end] = level < MID ? [LOW, MID, low, mid] : [MID, HIGH, mid, high];
  const along = Math.min(1, Math.max(0, (level - from) / (to - from)));
  return Math.round(start + along * (end - start));
}

/** Dots by day of the check, never none when there is a chance and never all when there is doubt. */
export function runOutDots({ chance, day }: GroupAnswer['runOut'], first: DayNumber, days: number): number[] {
  const columns = new Array<number>(days).fill(0);
  if (day === null || chance === 0) return columns;
  const dots = Math.min(chance < 1 ? DOTS - 1 : DOTS, Math.max(1, Math.round(chance * DOTS)));
  for (let dot = 0; dot < dots; dot += 1) {
    const column = dayAt(day, (dot + 0.5) / dots) - first;
    const held = Math.min(days - 1, Math.max(0, column));
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

export const RunOutDots = ({ id, name, runOut, firstDay, days }: RunOutDotsProps) => {
  const columns = [...runOutDots(runOut, firstDay, days)];
  const short = columns.reduce((sum, n) => sum + n, 0);
  const lasting = DOTS - short;
  const heights = [...columns, lasting];
  const base = Math.max(4, ...heights) * STEP + 6;
  const width = WIDTH / heights.length;
  const title = `${name}: prey runs out in ${counted(short, 'week')} of ${DOTS} like this one`;
  const label = (i: number) => (i === days ? 'lasts' : shortDay(firstDay + i).slice(0, 3));
  return (
    <figure class="dots">
      <Drawing
        id={id}
        title={title}
        description="Each dot is one week, above the day its prey runs out; the dots at the right last."
        width={WIDTH}
        height={base + 20}
      >
        {heights.map((count, i) => (
          <>
            {Array.from({ length: count }, (_, dot) => (
              <circle
                cx={Math.round(width * (i + 0.5))}
                cy={base - STEP * (dot + 0.5)}
                r={RADIUS}
                class={i === days ? 'dot-lasts' : 'dot-short'}
              />
            ))}
            <text x={Math.round(width * (i + 0.5))} y={base + 14} text-anchor="middle" font-size="12">
              {label(i)}
            </text>
          </>
        ))}
        <line x1="0" x2={WIDTH} y1={base} y2={base} class="axis" />
      </Drawing>
      <figcaption>Twenty weeks like this one: the day prey runs out.</figcaption>
      <Numbers
        caption={title}
        head={['Day', 'Weeks of 20']}
        rows={heights.map((n, i) => [i === days ? 'Lasts' : shortDay(firstDay + i), `${n}`])}
      />
    </figure>
  );
};
