/** The signs in the picture of a bin's weeks: its limit, what was counted and taken before, the names of days. */
import type { ScaleLinear } from 'd3-scale';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { BinEvent } from '../../src/husbandry/larder/index.ts';
import type { BinWeek } from '../../src/husbandry/supply/index.ts';
import { shortDay } from '../format.ts';
import { place } from './ruler.tsx';

export const FRAME = { left: 40, right: 290, top: 20, bottom: 196 };

/** Days before today that are shown where something was counted or taken in them. */
export const PAST_DAYS = 28;

type Scale = ScaleLinear<number, number>;
export interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

interface Mark {
  readonly day: DayNumber;
  readonly heads: number;
  /** Counted, or else taken out. */
  readonly seen: boolean;
}

export const marksOf = (events: readonly BinEvent[], today: DayNumber): readonly Mark[] =>
  events
    .filter(({ day }) => day >= today - PAST_DAYS && day <= today)
    .flatMap((event) => {
      if (event.kind !== 'counted' && event.kind !== 'culled' && event.kind !== 'moved out') return [];
      return [{ day: event.day, heads: event.heads, seen: event.kind === 'counted' }];
    });

export const Limit = ({ at }: { at: number }) => (
  <g class="limit">
    <line x1={FRAME.left} x2={FRAME.right} y1={at} y2={at} class="limit-line" />
    <text x={FRAME.right} y={at - 4} text-anchor="end" font-size="12">
      room for so many
    </text>
  </g>
);

export const OverFrom = ({ at }: { at: number }) => (
  <line x1={at} x2={at} y1={FRAME.top} y2={FRAME.bottom} class="limit-line" />
);

export const MarkOf = ({ mark: { day, heads, seen }, x, y }: Scales & { mark: Mark }) => {
  const at = place(x(day));
  return seen ? (
    <circle cx={at} cy={place(y(heads))} r="3.5" class="ideal" />
  ) : (
    <path d={`M${at - 4} ${FRAME.bottom - 9}h8l-4 7z`} class="ideal" />
  );
};

const NAMED_EVERY = 4;

export const DayNames = ({ weeks, x }: { weeks: readonly BinWeek[]; x: Scale }) => (
  <g>
    {weeks.map(({ day }, week) =>
      week % NAMED_EVERY === 0 ? (
        <text x={place(x(day))} y={FRAME.bottom + 16} text-anchor="middle" font-size="12" class="axis-number">
          {week === 0 ? 'today' : shortDay(day).slice(DAY_NAME)}
        </text>
      ) : null,
    )}
  </g>
);
/** Letters of 'Thu '. */
const DAY_NAME = 4;
