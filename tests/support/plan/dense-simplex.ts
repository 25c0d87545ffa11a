/** Least cost of a small linear programme by the simplex method on a dense table; knows nothing of the product. */

/** sum of factors <= most, or >= least: exactly one of them is given, or both alike for an equality. */
export interface DenseRow {
  readonly factors: ReadonlyMap<number, number>;
  readonly sense: '<=' | '>=' | '=';
  readonly right: number;
}

const TINY = 1e-9;
const FORBIDDING = 1e7;

/** Columns are at least 0; NaN where nothing satisfies the rows. */
export function leastOf(worth: readonly number[], rows: readonly DenseRow[]): number {
  const table = tableOf(worth, rows);
  for (let step = 0; ; step++) {
    const enters = entering(table, step > 500);
    if (enters < 0) break;
    const leaves = leaving(table, enters);
    if (leaves < 0) return Number.NEGATIVE_INFINITY;
    pivot(table, leaves, enters);
  }
  const { rows: solved, basis, firstArtificial, right } = table;
  const broken = solved.some((row, i) => basis[i]! >= firstArtificial && row[right]! > 1e-6);
  return broken ? Number.NaN : -table.reduced[right]!;
}

interface Table {
  readonly rows: Float64Array[];
  /** Reduced costs; at the right end less the value. */
  readonly reduced: Float64Array;
  readonly basis: number[];
  readonly right: number;
  readonly firstArtificial: number;
}

/** Every row becomes an equality with a right side of at least 0; what has no slack to begin with gets an artificial column. */
function tableOf(worth: readonly number[], given: readonly DenseRow[]): Table {
  const signed = given.map((row) => (row.right < 0 ? flipped(row) : row));
  const slacks = signed.filter(({ sense }) => sense !== '=').length;
  const artificial = signed.filter(({ sense }) => sense !== '<=').length;
  const firstArtificial = worth.length + slacks;
  const right = firstArtificial + artificial;
  const reduced = new Float64Array(right + 1);
  worth.forEach((each, j) => {
    reduced[j] = each;
  });
  reduced.fill(FORBIDDING, firstArtificial, right);
  let slack = worth.length;
  let next = firstArtificial;
  const basis: number[] = [];
  const rows = signed.map(({ factors, sense, right: most }, i) => {
    const row = new Float64Array(right + 1);
    for (const [column, factor] of factors) row[column] = factor;
    row[right] = most;
    if (sense !== '=') row[slack] = sense === '<=' ? 1 : -1;
    basis[i] = sense === '<=' ? slack : next;
    if (sense !== '=') slack++;
    if (sense !== '<=') row[next++] = 1;
    return row;
  });
  rows.forEach((row, i) => {
    const cost = reduced[basis[i]!]!;
    if (cost !== 0) addTimes(reduced, row, -cost);
  });
  return { rows, reduced, basis, right, firstArtificial };
}

const FLIPPED = { '<=': '>=', '>=': '<=', '=': '=' } as const;

const flipped = ({ factors, sense, right }: DenseRow): DenseRow => ({
  factors: new Map([...factors].map(([column, factor]) => [column, -factor])),
  sense: FLIPPED[sense],
  right: -right,
});

function addTimes(to: Float64Array, from: Float64Array, times: number): void {
  for (let j = 0; j < to.length; j++) to[j] = to[j]! + times * from[j]!;
}

/** The column that saves most for each unit, or, to leave a circle, the first that saves anything. */
function entering({ reduced, right }: Table, first: boolean): number {
  let found = -1;
  let least = -TINY;
  for (let j = 0; j < right; j++) {
    if (reduced[j]! >= least) continue;
    found = j;
    if (first) return found;
    least = reduced[j]!;
  }
  return found;
}

/** The row that bounds the column first; of several the one whose column comes first. */
function leaving({ rows, basis, right }: Table, enters: number): number {
  let found = -1;
  let least = Number.POSITIVE_INFINITY;
  rows.forEach((row, i) => {
    if (row[enters]! <= TINY) return;
    const ratio = row[right]! / row[enters]!;
    if (ratio > least + TINY || (ratio > least - TINY && found >= 0 && basis[i]! > basis[found]!)) return;
    least = Math.min(least, ratio);
    found = i;
  });
  return found;
}

function pivot({ rows, reduced, basis }: Table, leaves: number, enters: number): void {
  const row = rows[leaves]!;
  const by = row[enters]!;
  for (let j = 0; j < row.length; j++) row[j] = row[j]! / by;
  rows.forEach((other, i) => {
    if (i !== leaves && other[enters] !== 0) addTimes(other, row, -other[enters]!);
  });
  addTimes(reduced, row, -reduced[enters]!);
  basis[leaves] = enters;
}
