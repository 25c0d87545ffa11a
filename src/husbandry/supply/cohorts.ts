/** The cohorts of a bin over the horizon: what is here, what hatches and what is delivered, at each growth speed. */

import { keyOfCode } from '../../maths/random.ts';
import {
  type BinState,
  type CohortPath,
  type ExpectedDelivery,
  emptyState,
  type Life,
  pathsOf,
  type Sender,
  spreadLot,
} from '../larder/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { keptOr, type Laid } from './laid.ts';
import { type StockBin, stateAhead } from './stock-bin.ts';

/** Heads that came together, at each of a few growth speeds. */
export interface Cohort {
  readonly bin: number;
  readonly species: number;
  /** Day of the horizon on which they are there first, if nothing is late. */
  readonly arrives: number;
  /** Day of the horizon from which their bin feeds all; before, who finds nothing else; Infinity: nobody. */
  readonly fedFrom: number;
  readonly kind: 'here' | 'hatched' | 'delivered';
  /** Dead already, in the frozen stock: not counted as alive, and only for those that take dead prey. */
  readonly frozen: boolean;
  /** First slice in the run's arrays, and number of slices. */
  readonly firstSlice: number;
  readonly slices: number;
  readonly nodes: readonly CohortPath[];
  /** Key of a delivery's own draws. */
  readonly key: number;
  /** Who sends a delivery, where more is known of them than the method says. */
  readonly sender?: Sender;
}

/** A cohort that has no place in the arrays yet. */
export type Unplaced = Omit<Cohort, 'firstSlice'>;

interface CohortLayout {
  readonly b: number;
  readonly days: number;
  readonly laid: Laid;
}

export function cohortsOf(snapshot: Snapshot, bin: StockBin, { b, days, laid }: CohortLayout): Unplaced[] {
  const own = keptOr(laid.paths, bin.bin, () =>
    atSpeeds(snapshot, bin, { stateAt: (log) => stateAhead(bin, log), heads: bin.heads, days }),
  );
  const cohorts = own.map(
    (nodes, c): Unplaced => ({
      bin: b,
      species: bin.species,
      frozen: bin.bin.role === 'frozen',
      arrives: nodes[0]?.arrives as number,
      fedFrom: fedFrom(snapshot, bin),
      kind: c === 0 ? 'here' : 'hatched',
      slices: nodes[0]?.slices as number,
      nodes,
      key: bin.key,
    }),
  );
  const coming = snapshot.deliveries
    .filter((delivery) => delivery.bin === bin.bin.code)
    .sort((x, y) => (x.code < y.code ? -1 : 1));
  return [
    ...cohorts,
    ...coming.flatMap((delivery) => deliveredCohort(snapshot, bin, { delivery, b, days, laid })),
  ];
}

const fedFrom = ({ today, leftAlone }: Snapshot, { bin }: StockBin): number =>
  Math.max(0, (leftAlone?.get(bin.code) ?? bin.restsUntil ?? today) - today);

interface SpeedLayout {
  /** Today, by the log of growth speed ahead. */
  readonly stateAt: (log: number) => BinState;
  readonly heads: number;
  readonly days: number;
}

/** Paths of the bin's cohorts, each at every speed; the cohorts of all speeds are the same in number and day. */
function atSpeeds(snapshot: Snapshot, bin: StockBin, { stateAt, heads, days }: SpeedLayout): CohortPath[][] {
  const climate = binClimate(snapshot, bin.bin);
  const slices = snapshot.facts.policy.slices.value;
  const bySpeed = Array.from(bin.speedLogs, (log) => {
    const brief = days < bin.chain.size;
    const life: Life = { chain: bin.chain, bin: bin.bin, climate, speed: Math.exp(log), brief };
    return pathsOf(stateAt(log), { life, today: snapshot.today, days, slices, headsHere: heads });
  });
  const first = bySpeed[0] as CohortPath[];
  const aligned = first.map((_, c) => bySpeed.map((paths) => paths[c] as CohortPath));
  return aligned.filter((nodes, c) => c === 0 || nodes.some(({ heads }) => heads > 0));
}

function deliveredCohort(
  snapshot: Snapshot,
  bin: StockBin,
  { delivery, b, days, laid }: CohortLayout & { delivery: ExpectedDelivery },
): Unplaced[] {
  const arrives = Math.max(0, delivery.day - snapshot.today);
  if (arrives >= days) return [];
  const { lot } = delivery;
  const most = Math.max(1, Math.min(snapshot.facts.policy.slices.value, Math.round(lot.heads)));
  const day = binClimate(snapshot, bin.bin).changes ? delivery.day : '';
  const paths = keptOr(laid.lots, `${bin.bin.code} ${lot.fromMm}-${lot.toMm} ${most} ${day}`, () => {
    const state = { ...emptyState(bin.chain), heads: spreadLot(bin.chain, lot) };
    const role = bin.bin.role === 'frozen' ? 'frozen' : 'holding';
    const apart: StockBin = { ...bin, bin: { ...bin.bin, role } };
    return atSpeeds(snapshot, apart, { stateAt: () => state, heads: lot.heads, days });
  });
  const nodes = (paths[0] as readonly CohortPath[]).map((path) => ({ ...path, arrives, heads: lot.heads }));
  const slices = nodes[0]?.slices as number;
  return [
    {
      bin: b,
      species: bin.species,
      frozen: bin.bin.role === 'frozen',
      arrives,
      fedFrom: fedFrom(snapshot, bin),
      kind: 'delivered',
      slices,
      nodes,
      key: keyOfCode(delivery.code),
      ...(delivery.sender ? { sender: delivery.sender } : {}),
    },
  ];
}
