/** The instar ladder of one animal: the sizes behind it, the size now, and those ahead with their days in doubt. */
import { type Animal, type Eater, eaterOf, type Kind, ruleOf, type StageRule } from '../animals/index.ts';
import type { DayNumber } from '../calendar.ts';
import { type LengthWindow, widestWindow } from '../prey/index.ts';
import type { Snapshot } from '../snapshot.ts';
import type { Mm } from '../units.ts';
import { type DayBand, moultsAhead } from './next-moult.ts';
import { rowOf } from './rows.ts';

export interface Rung extends Eater {
  readonly place: 'behind' | 'now' | 'ahead';
  readonly rule: StageRule;
  readonly gaugeMm: Mm;
  /** The gauge was measured, not reckoned by the factor of growth or taken from the stage. */
  readonly measured: boolean;
  /** Prey it takes at this size. */
  readonly window: LengthWindow;
  /** Day the moult that led to this size was found; null before the first on record, and ahead. */
  readonly since: DayNumber | null;
  /** Day of the moult that will lead to this size; null but ahead. */
  readonly expected: DayBand | null;
}

export interface SizeSeen {
  readonly day: DayNumber;
  readonly gaugeMm: Mm;
}

/** What the journal says of an animal's growth, oldest first. */
export interface GrowthRecord {
  /** Days on which moults were found. */
  readonly moults: readonly DayNumber[];
  /** Gauges that were measured. */
  readonly sizes: readonly SizeSeen[];
}

/** The ladder from the oldest size on record up to the first adult size, or as many moults ahead as the policy says. */
export function instarLadder(snapshot: Snapshot, animal: Animal, record: GrowthRecord): readonly Rung[] {
  return [...rungsBehind(snapshot, animal, record), ...rungsFromNow(snapshot, animal, record)];
}

interface Step {
  readonly gaugeMm: Mm;
  readonly measured: boolean;
  readonly since: DayNumber | null;
}

function rungsBehind(snapshot: Snapshot, animal: Animal, record: GrowthRecord): Rung[] {
  const kind = snapshot.facts.kinds.get(animal.kind) as Kind;
  const young = { ...animal, matured: false, stageOverride: null };
  return stepsBehind(kind, animal, record).map((step) =>
    rungOf(snapshot, { ...young, gaugeMm: step.gaugeMm }, { ...step, place: 'behind', expected: null }),
  );
}

/** Sizes between the moults on record, oldest first: the last measured there, or the next divided by its factor. */
function stepsBehind(kind: Kind, { gaugeMm }: Animal, { moults, sizes }: GrowthRecord): Step[] {
  const steps: Step[] = [];
  let later = gaugeMm;
  for (let i = moults.length - 1; i >= 0; i--) {
    const [since, until] = [moults[i - 1] ?? null, moults[i] as DayNumber];
    const seen = sizes.findLast(({ day }) => day < until && (since === null || day >= since));
    later = seen?.gaugeMm ?? gaugeBefore(kind, later);
    steps.unshift({ gaugeMm: later, measured: seen !== undefined, since });
  }
  return steps;
}

/** The gauge before a moult, by the factor of the stage it then was in: the one whose size grows to the one given. */
function gaugeBefore(kind: Kind, after: Mm): Mm {
  const growing = kind.stages.filter(({ moult }) => moult !== null);
  const before = growing.map((rule) => ({ rule, gaugeMm: after / (rule.moult?.lengthFactor.value ?? 1) }));
  const fitting = before.find(({ rule, gaugeMm }) => {
    const then = ruleOf(kind, { gaugeMm, matured: false, stageOverride: null });
    return then.stage === rule.stage;
  });
  return (fitting ?? before.at(-1))?.gaugeMm ?? after;
}

function rungsFromNow(snapshot: Snapshot, animal: Animal, { moults }: GrowthRecord): Rung[] {
  const most = snapshot.facts.policy.moultsAhead.value;
  const row = rowOf(snapshot, { animal, steps: most + 1, change: null, leaving: null });
  const now = rungOf(snapshot, animal, {
    place: 'now',
    measured: !animal.gaugeAssumed,
    since: moults.at(-1) ?? null,
    expected: null,
  });
  const ahead = moultsAhead(row, snapshot).map((expected, i) => {
    const then = { ...animal, gaugeMm: row.steps[i + 1]?.gaugeMm as Mm, stageOverride: null };
    return rungOf(snapshot, then, { place: 'ahead', measured: false, since: null, expected });
  });
  const grown = ahead.findIndex(({ rule }) => rule.stage === 'adult');
  return [now, ...(grown < 0 ? ahead : ahead.slice(0, grown + 1))];
}

type Placed = Pick<Rung, 'place' | 'measured' | 'since' | 'expected'>;

function rungOf(
  { facts }: Snapshot,
  animal: Pick<Animal, 'kind' | 'gaugeMm' | 'matured' | 'stageOverride'>,
  { place, measured, since, expected }: Placed,
): Rung {
  const kind = facts.kinds.get(animal.kind) as Kind;
  const rule = ruleOf(kind, animal);
  const eater = eaterOf(kind, animal);
  return {
    place,
    rule,
    gaugeMm: animal.gaugeMm,
    measured,
    ...eater,
    window: widestWindow(rule, eater, facts.species.values()),
    since,
    expected,
  };
}
