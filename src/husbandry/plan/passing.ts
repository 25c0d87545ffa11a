/** How prey passes from band to band: the daily engine's own days, at several growth speeds. */
import type { Step } from '../../maths/chain-step.ts';
import { normalQuantile } from '../../maths/normal.ts';
import type { DayNumber } from '../calendar.ts';
import { type Bin, type Climate, emptyState, type Life, nextDay } from '../larder/index.ts';
import { byNode, type Nodes } from './nodes.ts';

/** Where prey lives and how fast it may grow there. */
export interface Passing {
  readonly nodes: Nodes;
  readonly bin: Bin;
  readonly climate: Climate;
  /** Mean and standard deviation of the log of its growth speed. */
  readonly speedLog: { readonly mean: number; readonly sd: number };
  /** Speeds it is followed at, each as likely. */
  readonly speeds: number;
}

/** Equally likely speeds: the middles of equal shares of the log-normal. */
const speedsOf = ({ speedLog: { mean, sd }, speeds }: Passing): number[] =>
  Array.from({ length: speeds }, (_, i) => Math.exp(mean + sd * normalQuantile((i + 1 / 2) / speeds)));

export interface Span {
  readonly from: DayNumber;
  readonly days: number;
}

/** Heads by node of heads by substage after some days without feeding and without young, mean over the speeds. */
export function headsAfter(passing: Passing, heads: Float64Array, { from, days }: Span): Float64Array {
  const { nodes, bin, climate } = passing;
  const speeds = speedsOf(passing);
  const sum = new Float64Array(nodes.all.length);
  for (const speed of speeds) {
    const life: Life = { chain: nodes.chain, bin, climate, speed, barren: true };
    let state = { ...emptyState(nodes.chain), heads };
    for (let day = 0; day < days; day++) state = nextDay(life, state, from + day).state;
    byNode(nodes, state.heads).forEach((n, i) => {
      sum[i] = (sum[i] as number) + n / speeds.length;
    });
  }
  return sum;
}

/** P[to][from] over some days: each node starts as a level band. */
export function passOf(passing: Passing, span: Span): Step {
  const columns = passing.nodes.all.map(({ profile }) => headsAfter(passing, profile, span));
  return columns.map((_, to) => Float64Array.from(columns, (column) => column[to] as number));
}
