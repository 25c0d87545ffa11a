/** Linear programmes, solved by HiGHS: plain numbers in, plain numbers out. */
import type { Highs, InitOptions } from 'highs';

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
  /** Each column lies between 0 and this; Infinity where nothing bounds it. */
  readonly most: Float64Array;
  readonly rows: readonly Row[];
}

export type Solved =
  | { readonly status: 'optimal'; readonly value: number; readonly columns: Float64Array }
  | { readonly status: 'infeasible' | 'unbounded' | 'failed' };

export type Solve = (programme: LinearProgramme) => Solved;

/** Kept rows and reduced costs are exact to this. */
const TOLERANCE = 1e-9;

/** As it is when imported as a module; the package's types speak of its CommonJS form. */
interface Entry {
  readonly default: (options?: InitOptions) => Promise<Highs>;
}

let loading: Promise<Highs> | null = null;

/** The solver, loaded when it is first asked for. */
export async function solver(): Promise<Solve> {
  loading ??= import('highs').then((entry) => (entry as unknown as Entry).default());
  const highs = await loading;
  return (programme) => solvedBy(highs, programme);
}

function solvedBy(highs: Highs, programme: LinearProgramme): Solved {
  return highs.withModel((model): Solved => {
    model.options.set({
      output_flag: false,
      primal_feasibility_tolerance: TOLERANCE,
      dual_feasibility_tolerance: TOLERANCE,
    });
    model.passModel(modelOf(highs, programme));
    model.run();
    const { modelStatus } = highs.constants;
    switch (model.getModelStatus()) {
      case modelStatus.optimal:
        return {
          status: 'optimal',
          value: model.getObjectiveValue(),
          columns: Float64Array.from(model.getSolution().colValue),
        };
      case modelStatus.infeasible:
        return { status: 'infeasible' };
      case modelStatus.unbounded:
        return { status: 'unbounded' };
      default:
        return { status: 'failed' };
    }
  });
}

function modelOf({ infinity, constants }: Highs, { sense, worth, most, rows }: LinearProgramme) {
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
    colLower: new Float64Array(worth.length),
    colUpper: most.map(bound),
    rowLower: Float64Array.from(rows, ({ least }) => bound(least)),
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
