/**
 * The plan as a mixed programme. In each period, of each node: R + sum use <= comes + sum packs brings + P R(before),
 * R what is left [heads]; of each eater: items use + missed + late - late(before) = wanted, so that nothing is eaten
 * before it is due. What is not needed may go, so the first is an inequality.
 */
import type { LinearProgramme, Row } from '../../maths/linear-programme.ts';
import { Columns } from './columns.ts';
import type { PlanProblem } from './problem.ts';
import { boundRows, budgetRows, endRows } from './programme-bounds.ts';
import { parcelColumns } from './programme-parcels.ts';
import { eatingRows, readyRows, standingRows } from './programme-rows.ts';

/** Where everything stands among the columns. */
export interface Laid {
  readonly programme: LinearProgramme;
  /** Heads left, by place, period and node. */
  readonly left: readonly (readonly number[])[];
  /** Heads used, by eater, period and fare; first column of the row. */
  readonly use: readonly (readonly number[])[];
  readonly late: readonly number[];
  readonly missed: readonly number[];
  /** Parcels sent, packs by parcel and pack (one column a break), cups by start. */
  readonly sent: readonly number[];
  readonly packs: readonly (readonly (readonly number[])[])[];
  readonly cups: readonly number[];
  /** Periods for which each rest has to last: nothing more is left alone in the programme. */
  readonly rests: readonly number[];
  readonly free: readonly (number | null)[];
  /** Postage by weight of a parcel, where it is not paid with each pack. */
  readonly weighed: readonly (number | null)[];
  /** Items short of a pool, by pool; first column. */
  readonly short: readonly number[];
}

export function programmeOf(problem: PlanProblem): Laid {
  const columns = new Columns();
  const rows: Row[] = [];
  const { periods } = problem;
  const left = problem.places.map((place) =>
    Array.from({ length: periods }, () => columns.many(place.nodes, { worth: place.keepCents })),
  );
  const use = problem.eaters.map(({ fare }) =>
    Array.from({ length: periods }, () => columns.each(fare.map(({ cents }) => cents))),
  );
  const late = problem.eaters.map((eater) =>
    columns.each(new Array(periods).fill(eater.lateCents), { most: eater.lateMost }),
  );
  const missed = problem.eaters.map((eater) => columns.many(periods, { worth: eater.missedCents }));
  const bought = problem.parcels.map((parcel) => parcelColumns(columns, rows, parcel, problem.wholeUntil));
  const cups = problem.starts.map(({ cents, least, most, period }) =>
    columns.one({ worth: cents, least, most, whole: period < problem.wholeUntil }),
  );
  const short = problem.pools.map(({ cents }) => columns.many(periods, { worth: cents }));
  const laid = {
    left,
    use,
    late,
    missed,
    sent: bought.map(({ sent }) => sent),
    packs: bought.map(({ packs }) => packs),
    free: bought.map(({ free }) => free),
    weighed: bought.map(({ weighed }) => weighed),
    cups,
    rests: problem.rests.map(({ least }) => least),
    short,
  };
  standingRows(problem, laid, rows);
  problem.eaters.forEach((eater, e) => {
    eatingRows(eater, { laid, e, periods, rows, columns });
  });
  problem.pools.forEach((pool, k) => {
    readyRows(pool, { left, short: short[k] as number, rows });
  });
  problem.places.forEach((place, p) => {
    boundRows(place, left[p] as readonly number[], { columns, rows });
  });
  endRows(problem, laid, { columns, rows });
  budgetRows(problem, laid, rows);
  return { ...laid, programme: columns.programme(rows) };
}
