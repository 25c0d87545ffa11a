/** One row of the plan's calendar: whose it is, and its marks with how many. */
import type { PlanSaid } from '../pages/plan-words.ts';
import { hueClass } from './hatches.tsx';
import type { CalendarMark, CalendarRow } from './plan-rows.ts';
import { place } from './ruler.tsx';

export const TOP = 22;
export const ROW = 42;
const NAME_DOWN = 14;
const MARK_DOWN = 30;

export type Scale = (day: number) => number;

interface RowProps {
  readonly row: CalendarRow;
  readonly top: number;
  readonly x: Scale;
  readonly said: PlanSaid;
  readonly width: number;
}

export const Row = ({ row, top, x, said, width }: RowProps) => {
  const marks = placed(row.marks, x);
  return (
    <g class="plan-row">
      <text x="2" y={top + NAME_DOWN} font-size="12" class="panel-name">
        {row.name}
      </text>
      <line x1="2" x2={width - 2} y1={top + ROW} y2={top + ROW} class="strip-line" />
      {marks.map(({ mark, at }, i) => (
        <Mark
          mark={mark}
          at={at}
          y={top + MARK_DOWN}
          x={x}
          hue={hueOf(mark, said)}
          room={(marks[i + 1]?.at ?? width + 2 * SIZE) - at - 2 * SIZE}
        />
      ))}
    </g>
  );
};

interface Placed {
  readonly mark: CalendarMark;
  readonly at: number;
}

/** From left to right, none on another: of one day those without words first. */
export function placed(marks: readonly CalendarMark[], x: Scale): readonly Placed[] {
  const inOrder = marks.toSorted((a, b) => stands(a) - stands(b) || a.label.length - b.label.length);
  let free = Number.NEGATIVE_INFINITY;
  return inOrder.map((mark) => {
    const at = Math.max(free, x(stands(mark)));
    free = at + BESIDE;
    return { mark, at };
  });
}

/** A parcel stands where it comes, what lasts where it begins. */
const stands = ({ what, from, to }: CalendarMark): number =>
  what === 'start' || what === 'rest' ? from : to;

function hueOf({ species }: CalendarMark, { names }: PlanSaid): string {
  const form = names.species.get(species)?.form;
  return form === undefined ? '' : hueClass(form);
}

/** Half of a mark. */
const SIZE = 5;
/** The least from a mark to the next. */
const BESIDE = 13;
const LETTER = 6.6;

const SHAPES: Readonly<Record<CalendarMark['what'], string>> = {
  order: 'M-5 -5h10v10h-10z',
  harvest: 'M-5.500 -4.500h11L0 5.500z',
  cull: 'M-5 -3.200L-3.200 -5L0 -1.800L3.200 -5L5 -3.200L1.800 0L5 3.200L3.200 5L0 1.800L-3.200 5L-5 3.200L-1.800 0z',
  start: 'M-5 -5h10l-2 10h-6z',
  rest: 'M-4 -5h3v10h-3zM1 -5h3v10h-3z',
};

interface MarkProps {
  readonly mark: CalendarMark;
  readonly at: number;
  readonly x: Scale;
  readonly y: number;
  readonly hue: string;
  readonly room: number;
}

const Mark = ({ mark, at, x, y, hue, room }: MarkProps) => {
  const [from, to] = [place(x(mark.from)), place(x(mark.to))];
  return (
    <g>
      {from === to ? null : <line x1={from} x2={to} y1={y} y2={y} class={`course is-${mark.what}`} />}
      <path d={SHAPES[mark.what]} transform={`translate(${place(at)} ${y})`} class={`plan-mark ${hue}`} />
      {mark.label.length * LETTER + 6 > room ? null : (
        <text x={place(at + SIZE + 2)} y={y + 4} font-size="11" class="plan-label">
          {mark.label}
        </text>
      )}
    </g>
  );
};
