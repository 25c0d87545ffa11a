/** The optimum of a programme as GLPK finds it: a solver that shares no code with ours. */
import GLPK from 'glpk.js/node';
import type { LinearProgramme } from '../../../src/maths/linear-programme.ts';

const glpk = await GLPK();

const nameOf = (column: number): string => `c${column}`;

interface Between {
  readonly least: number;
  readonly most: number;
}

function boundsOf({ least, most }: Between): { type: number; lb: number; ub: number } {
  const [low, high] = [Number.isFinite(least), Number.isFinite(most)];
  const both = least === most ? glpk.GLP_FX : glpk.GLP_DB;
  const one = low ? glpk.GLP_LO : high ? glpk.GLP_UP : glpk.GLP_FR;
  return { type: low && high ? both : one, lb: low ? least : 0, ub: high ? most : 0 };
}

/** Null where nothing keeps every row. */
export function secondOptimum({ sense, worth, most, least, whole, rows }: LinearProgramme): number | null {
  const { result } = glpk.solve(
    {
      name: 'plan',
      objective: {
        direction: sense === 'least' ? glpk.GLP_MIN : glpk.GLP_MAX,
        name: 'cost',
        vars: Array.from(worth, (coef, column) => ({ name: nameOf(column), coef })),
      },
      subjectTo: rows.map((row, i) => ({
        name: `r${i}`,
        vars: row.columns.map((column, k) => ({ name: nameOf(column), coef: row.factors[k]! })),
        bnds: boundsOf(row),
      })),
      bounds: Array.from(most, (high, column) => ({
        name: nameOf(column),
        ...boundsOf({ least: least?.[column] ?? 0, most: high }),
      })),
      generals: [...worth.keys()].filter((column) => whole?.[column] === 1).map(nameOf),
    },
    { msglev: glpk.GLP_MSG_OFF, mipgap: 0, presol: true },
  );
  if (result.status === glpk.GLP_OPT) return result.z;
  if (result.status === glpk.GLP_NOFEAS) return null;
  throw new Error(`the second solver ends with ${result.status}`);
}
