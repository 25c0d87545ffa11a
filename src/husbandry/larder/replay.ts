/** What is in a bin on a day: a replay of what was seen and done since its last anchor. */

import type { DayNumber } from '../calendar.ts';
import type { Policy } from '../policy.ts';
import { afterEvent } from './after-event.ts';
import type { Bin, BinEvent } from './bin.ts';
import type { Chain } from './chain.ts';
import type { Climate } from './climate.ts';
import { type BinState, emptyState, type Life, nextDay } from './state.ts';
import { seenInAll } from './to-total.ts';

export interface Replay {
  readonly chain: Chain;
  readonly policy: Policy;
  readonly climate: Climate;
  /** Growth speed of this bin over the published one; 1 unless said. */
  readonly speed?: number;
}

/** A bin on one day, and what happened to it from then on. */
export interface Start {
  readonly state: BinState;
  readonly day: DayNumber;
  readonly events: readonly BinEvent[];
}

/** What an event comes to beside all others: the heads there were after it, where it says; whether sizes seen replace the reckoned. */
export interface Reading {
  readonly heads: number | null;
  readonly sizesSeen: boolean;
}

/**
 * The bin on the evening of `day`, before tonight's feeding: events in the order given, the engine between their days.
 * Prey offered beyond what the replay holds leave the bin empty: the count is doubted, never the meal.
 */
export function binOn(bin: Bin, day: DayNumber, { chain, policy, climate, speed = 1 }: Replay): BinState {
  const life: Life = { chain, bin, climate, speed };
  return walk(life, startOf(chain, bin, day), {
    until: day,
    after: (state, event) => afterEvent(state, event, { life, policy }),
  });
}

interface Walk {
  readonly until: DayNumber;
  readonly after: (state: BinState, event: BinEvent) => BinState;
}

function walk(life: Life, start: Start, { until, after }: Walk): BinState {
  let { state, day } = start;
  for (const event of start.events) {
    for (; day < event.day; day++) state = nextDay(life, state, day).state;
    state = after(state, event);
  }
  for (; day < until; day++) state = nextDay(life, state, day).state;
  return state;
}

export interface Reread extends Replay {
  readonly start: Start;
  readonly readings: ReadonlyMap<BinEvent, Reading>;
  /** Heads there are on the day asked. */
  readonly heads: number;
}

/** The bin on a day with its events read beside all others. */
export function reread(bin: Bin, until: DayNumber, { start, readings, heads, ...replay }: Reread): BinState {
  const { chain, policy, climate, speed = 1 } = replay;
  const life: Life = { chain, bin, climate, speed, brief: true };
  const after = (state: BinState, event: BinEvent): BinState =>
    afterReading(state, event, { life, policy, reading: readings.get(event) as Reading });
  const state = walk(life, start, { until, after });
  return { ...state, heads: seenInAll(life, state, { total: heads, cv: 0, policy }) };
}

/** Empty, before the last event up to `day` that says all on its own; without one, before the first of all. */
export function startOf(chain: Chain, bin: Bin, day: DayNumber): Start {
  const until = eventsUntil(bin, day);
  const anchor = bin.role === 'cup' ? -1 : until.findLastIndex(saysAll);
  const events = until.slice(Math.max(0, anchor));
  return { state: emptyState(chain), day: events[0]?.day ?? day, events };
}

/** What was seen and done up to a day; where the bin stood is in its climate. */
export const eventsUntil = ({ events }: Bin, day: DayNumber): readonly BinEvent[] =>
  events.filter((event) => event.day <= day && event.kind !== 'placed');

/** A count of heads with their lengths, or of none. */
const saysAll = (event: BinEvent): boolean =>
  event.kind === 'counted' && (event.fromMm !== null || event.heads === 0);

/** An event that, read beside all others, left so many; sizes that a growth speed explains do not replace the reckoned. */
export function afterReading(
  state: BinState,
  event: BinEvent,
  { life, policy, reading }: { life: Life; policy: Policy; reading: Reading },
): BinState {
  const after = isOfSize(event) && !reading.sizesSeen ? state : afterEvent(state, event, { life, policy });
  return reading.heads === null
    ? after
    : { ...after, heads: seenInAll(life, after, { total: reading.heads, cv: 0, policy }) };
}

const isOfSize = ({ kind }: BinEvent): boolean => kind === 'size seen' || kind === 'first adults';
