/** The plan against the tuned rules and against foresight, at the plan's own service, paired by world. */
import { keyOf, uniform } from '../plan-worlds/dice.ts';
import { costAt, meanOf } from './frontier.ts';
import type { Point } from './prices.ts';

/** One world: the plan, every rule of the frontier, foresight at every weight. */
export interface Paired {
  readonly plan: Point;
  readonly rules: readonly Point[];
  readonly foresight: readonly Point[];
}

export interface Interval {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export interface Compared {
  /** (best rule - plan) / (best rule - foresight); null where the rules leave nothing to be had. */
  readonly removed: Interval | null;
  /** Plan over best rule, less 1. */
  readonly dearer: Interval;
  /** What could be had: (best rule - foresight) / best rule. */
  readonly avoidable: Interval;
  /** Whether the plan's service lies within what the rules reach. */
  readonly within: boolean;
}

const RESAMPLES = 2000;
const TAIL = 0.025;
/** Less than this share of the cost is not there to be had: the ratio would be a ratio of noise. */
const NOTHING = 0.01;

interface Means {
  readonly rule: number;
  readonly plan: number;
  readonly foresight: number;
  readonly within: boolean;
}

export function compare(worlds: readonly Paired[]): Compared {
  const whole = meansOf(worlds);
  const samples = Array.from({ length: RESAMPLES }, (_, b) => meansOf(resampled(worlds, keyOf(1, b))));
  const interval = (value: (means: Means) => number): Interval => {
    const sorted = samples.map(value).sort((x, y) => x - y);
    const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
    return { mean: value(whole), low: at(TAIL), high: at(1 - TAIL) };
  };
  const avoidable = interval(({ rule, foresight }) => (rule - foresight) / rule);
  const removed = ({ rule, plan, foresight }: Means) => (rule - plan) / (rule - foresight);
  return {
    removed: avoidable.low < NOTHING ? null : interval(removed),
    dearer: interval(({ rule, plan }) => plan / rule - 1),
    avoidable,
    within: whole.within,
  };
}

const resampled = (worlds: readonly Paired[], key: number): Paired[] =>
  worlds.map((_, n) => worlds[Math.floor(uniform(key, n) * worlds.length)] as Paired);

/** Mean points over the worlds, and the cost of rules and foresight where they do as much harm as the plan. */
function meansOf(worlds: readonly Paired[]): Means {
  const plan = meanOf(worlds.map((world) => world.plan));
  const columns = (of: (world: Paired) => readonly Point[]) =>
    of(worlds[0] as Paired).map((_, k) => meanOf(worlds.map((world) => of(world)[k] as Point)));
  const rule = costAt(
    columns((world) => world.rules),
    plan.harm,
  );
  const foresight = costAt(
    columns((world) => world.foresight),
    plan.harm,
  );
  return { rule: rule.cents, plan: plan.cents, foresight: foresight.cents, within: rule.within };
}
