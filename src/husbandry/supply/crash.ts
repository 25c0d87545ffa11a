/** After a crash or die-off: who goes short from when, what they can take tonight, which bins to look at, what to start. */
import type { DemandGroup } from '../appetite/index.ts';
import type { Bin } from '../larder/index.ts';
import { isLost } from '../larder/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { DAYS_PER_WEEK } from '../units.ts';
import { type AtRisk, atRisk } from './crash-neighbours.ts';
import { type StartNow, startNow } from './crash-starts.ts';
import { type ShortGroup, type ShortSince, shortSince } from './short-since.ts';

export interface ShortAfter extends ShortGroup {
  readonly start: readonly StartNow[];
}

export interface CrashAnswer {
  readonly bin: string;
  readonly revision: number;
  /** Days looked ahead. */
  readonly days: number;
  readonly replicates: number;
  /** Groups that the loss leaves shorter than they were, the soonest first. */
  readonly short: readonly ShortAfter[];
  readonly atRisk: readonly AtRisk[];
}

/** What the last loss written down of a bin means; null where there is none. */
export function afterCrash(snapshot: Snapshot, code: string): CrashAnswer | null {
  const bin = snapshot.bins.find((each) => each.code === code);
  const at = bin?.events.findLastIndex(isLost) ?? -1;
  if (!bin || at < 0) return null;
  const unhurt: Bin = { ...bin, events: bin.events.filter((_, i) => i !== at) };
  const before = { ...snapshot, bins: snapshot.bins.map((each) => (each === bin ? unhurt : each)) };
  const since = shortSince(before, snapshot);
  const { days, replicates, groups } = since;
  return {
    ...{ bin: code, revision: snapshot.revision, days, replicates },
    short: groups.map((each) => withStarts(snapshot, since, { ...each, bin })),
    atRisk: atRisk(snapshot, bin),
  };
}

type Lost = ShortSince['groups'][number] & { readonly bin: Bin };

function withStarts(snapshot: Snapshot, { judged }: ShortSince, { answer, short, bin }: Lost): ShortAfter {
  const group = judged.menu.groups.find(({ key }) => key === short.key) as DemandGroup;
  const weekly = (answer.itemsWantedMean * DAYS_PER_WEEK) / judged.days;
  return {
    ...short,
    instead: short.instead.filter((other) => other.bin !== bin.code),
    start: startNow(snapshot, { group, bin, weekly }),
  };
}
