/** After a box that was short, dead or of another size: who cannot wait, and what they can take tonight. */
import type { DayNumber } from '../calendar.ts';
import type { Bin, BinEvent, Lot } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { type ShortGroup, shortSince } from './short-since.ts';

/** One line of a box: as it was ordered, and as it was written down when it came. */
export interface BoxLine {
  readonly ordered: { readonly bin: string; readonly lot: Lot };
  readonly came: { readonly bin: string; readonly day: DayNumber; readonly lot: Lot; readonly dead: number };
}

export interface BoxAnswer {
  readonly revision: number;
  /** Days looked ahead. */
  readonly days: number;
  readonly replicates: number;
  /** Groups that the box leaves shorter than it was to, the soonest first. */
  readonly short: readonly ShortGroup[];
}

export function afterBox(snapshot: Snapshot, lines: readonly BoxLine[]): BoxAnswer {
  const { days, replicates, groups } = shortSince(asOrdered(snapshot, lines), snapshot);
  return { revision: snapshot.revision, days, replicates, short: groups.map(({ short }) => short) };
}

/** The room had the box come as it was ordered. */
const asOrdered = (snapshot: Snapshot, lines: readonly BoxLine[]): Snapshot => ({
  ...snapshot,
  bins: snapshot.bins.map((bin) => lines.reduce(withLine, bin)),
});

/** The line as ordered in place of the line as it came; each in its own bin. */
function withLine(bin: Bin, { ordered, came }: BoxLine): Bin {
  const at = bin.code === came.bin ? bin.events.findLastIndex((event) => isOf(event, came)) : -1;
  const without = at < 0 ? bin.events : bin.events.filter((_, i) => i !== at);
  if (bin.code !== ordered.bin) return at < 0 ? bin : { ...bin, events: without };
  const event: BinEvent = { kind: 'delivered', day: came.day, lot: ordered.lot, dead: 0 };
  const place = at < 0 ? after(without, came.day) : at;
  return { ...bin, events: [...without.slice(0, place), event, ...without.slice(place)] };
}

const isOf = (event: BinEvent, { day, lot, dead }: BoxLine['came']): boolean =>
  event.kind === 'delivered' &&
  event.day === day &&
  event.dead === dead &&
  event.lot.heads === lot.heads &&
  event.lot.fromMm === lot.fromMm &&
  event.lot.toMm === lot.toMm;

/** Place of the first event of a later day. */
function after(events: readonly BinEvent[], day: DayNumber): number {
  const at = events.findIndex((event) => event.day > day);
  return at < 0 ? events.length : at;
}
