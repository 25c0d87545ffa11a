/** Linear and mixed programmes, solved by HiGHS: plain numbers in, plain numbers out. */
import type { Highs, HighsCallbackMap, InitOptions, Model } from 'highs';

/** least <= the sum of factor times column <= most. */
export interface Row {
  readonly least: number;
  readonly most: number;
  readonly columns: readonly number[];
  readonly factors: readonly number[];
}

export interface LinearProgramme {
  readonly sense: 'least' | 'most';
  /** What one unit of each column adds to the sum that is to be least or most. */
  readonly worth: Float64Array;
  /** Each column lies between `least` (absent: 0) and this; Infinity where nothing bounds it. */
  readonly most: Float64Array;
  readonly least?: Float64Array;
  /** 1 for columns that must be whole numbers; absent: none must. */
  readonly whole?: Uint8Array;
  readonly rows: readonly Row[];
}

export type Solved =
  | {
      readonly status: 'optimal';
      readonly value: number;
      readonly columns: Float64Array;
      /** No solution is better than this; the value itself where nothing must be whole. */
      readonly bound: number;
    }
  /** Stopped by its time or its gap: the best found, which keeps every row. */
  | {
      readonly status: 'stopped';
      readonly value: number;
      readonly columns: Float64Array;
      readonly bound: number;
    }
  | { readonly status: 'infeasible' | 'unbounded' | 'failed' };

export interface Solving {
  /** By so much of the value the best found may differ from the bound; default: as good as none. */
  readonly gap?: number;
  readonly seconds?: number;
  /** Values of some columns to begin with; the solver finds the others. */
  readonly start?: { readonly columns: readonly number[]; readonly values: readonly number[] };
  /** Told now and then while whole numbers are sought: the best found and the bound. */
  readonly onProgress?: (found: { readonly best: number; readonly bound: number }) => void;
}

export type Solve = (programme: LinearProgramme, solving?: Solving) => Solved;

/** Kept rows, reduced costs and whole numbers are exact to this: at its own 1e-6 the solver has called ten times the optimum optimal. */
const TOLERANCE = 1e-9;
/** Factors smaller than this against others of about 1 only make a programme harder to solve. */
export const LEAST_FACTOR = 1e-3;
/** The solver's word for a solution that keeps every row. */
const FEASIBLE = 2;
/** A value as large as this is the solver's word for none. */
const NO_VALUE = 1e29;

/** As it is when imported as a module; the package's types speak of its CommonJS form. */
interface Entry {
  readonly default: (options?: InitOptions) => Promise<Highs>;
}

let loading: Promise<Highs> | null = null;

/** The solver, loaded when it is first asked for. */
export async function solver(): Promise<Solve> {
  loading ??= import('highs').then((entry) => (entry as unknown as Entry).default());
  const highs = await loading;
  return withoutBadStart((programme, solving) => solvedBy(highs, programme, solving));
}

/** Null where the solver gives up. */
type Attempt = (programme: LinearProgramme, solving: Solving) => Solved | null;

/** From some starts the solver gives up on a programme that it solves without one: then it is asked once more. */
export const withoutBadStart =
  (attempt: Attempt): Solve =>
  (programme, { start, ...rest } = {}) =>
    attempt(programme, start ? { ...rest, start } : rest) ??
    (start ? attempt(programme, rest) : null) ?? { status: 'failed' };

function solvedBy(highs: Highs, programme: LinearProgramme, solving: Solving): Solved | null {
  return highs.withModel((model): Solved | null => {
    const isMixed = programme.whole?.includes(1) ?? false;
    model.options.set({
      output_flag: false,
      ...(isMixed
        ? { mip_rel_gap: 0, mip_abs_gap: solving.gap ?? TOLERANCE, mip_feasibility_tolerance: TOLERANCE }
        : { primal_feasibility_tolerance: TOLERANCE, dual_feasibility_tolerance: TOLERANCE }),
      ...(solving.seconds === undefined ? {} : { time_limit: solving.seconds }),
    });
    model.passModel(modelOf(highs, programme));
    if (solving.start)
      model.setSolution({
        indices: Int32Array.from(solving.start.columns),
        values: Float64Array.from(solving.start.values),
      });
    return ran(model, isMixed ? listening(highs, solving) : {}) ? told(highs, model, isMixed) : null;
  });
}

/** Whether the solver came to an end of its own; where it gives up on a programme it throws. */
function ran(model: Model, callbacks: HighsCallbackMap): boolean {
  try {
    model.run(callbacks);
    return true;
  } catch (error) {
    if ((error as { operation?: unknown }).operation === 'run') return false;
    throw error;
  }
}

function listening({ constants }: Highs, { onProgress }: Solving): HighsCallbackMap {
  if (!onProgress) return {};
  return {
    [constants.callbackType.mipLogging]({ data }) {
      const { mip_primal_bound: best, mip_dual_bound: bound } = data;
      if (best !== undefined && bound !== undefined && Math.abs(best) < NO_VALUE) onProgress({ best, bound });
      return undefined;
    },
  };
}

function told({ constants: { modelStatus } }: Highs, model: Model, isMixed: boolean): Solved {
  const found = () => {
    const value = model.getObjectiveValue();
    const bound = isMixed ? Number(model.info.get('mip_dual_bound')) : value;
    return { value, bound, columns: Float64Array.from(model.getSolution().colValue) };
  };
  switch (model.getModelStatus()) {
    case modelStatus.optimal:
      return { status: 'optimal', ...found() };
    case modelStatus.infeasible:
      return { status: 'infeasible' };
    case modelStatus.unbounded:
      return { status: 'unbounded' };
    case modelStatus.timeLimit:
    case modelStatus.interrupted:
      return Number(model.info.get('primal_solution_status')) === FEASIBLE
        ? { status: 'stopped', ...found() }
        : { status: 'failed' };
    default:
      return { status: 'failed' };
  }
}

function modelOf(
  { infinity, constants }: Highs,
  { sense, worth, most, least, whole, rows: given }: LinearProgramme,
) {
  const rows = given.map(levelled);
  const bound = (value: number) => Math.min(infinity, Math.max(-infinity, value));
  const starts = Int32Array.from({ length: rows.length + 1 });
  rows.forEach(({ columns }, i) => {
    starts[i + 1] = (starts[i] as number) + columns.length;
  });
  return {
    numCols: worth.length,
    numRows: rows.length,
    sense: sense === 'least' ? constants.objectiveSense.minimize : constants.objectiveSense.maximize,
    colCost: worth,
    colLower: least ?? new Float64Array(worth.length),
    colUpper: most.map(bound),
    ...(whole?.includes(1) ? { integrality: Int32Array.from(whole) } : {}),
    rowLower: Float64Array.from(rows, (row) => bound(row.least)),
    rowUpper: Float64Array.from(rows, (row) => bound(row.most)),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: worth.length,
      starts,
      indices: Int32Array.from(rows.flatMap(({ columns }) => columns)),
      values: Float64Array.from(rows.flatMap(({ factors }) => factors)),
    },
  };
}

/**
 * A row whose factors are at most about 1: rows are kept to so much whatever they count, and money in hundredths beside
 * shares of a head has led the solver to a wrong optimum. By powers of two, so that nothing is rounded.
 */
function levelled({ least, most, columns, factors }: Row): Row {
  const largest = factors.reduce((size, factor) => Math.max(size, Math.abs(factor)), 1);
  const by = 2 ** -Math.round(Math.log2(largest));
  return { least: least * by, most: most * by, columns, factors: factors.map((factor) => factor * by) };
}
