/** What a benchmark reports: a name, what was measured, and what stands beside it. */
export interface Row {
  readonly name: string;
  readonly value: string;
  /** Sums that must not move and Monte Carlo standard errors. */
  readonly beside: string;
}

export const tableOf = (rows: readonly Row[]): string =>
  [
    '| case | measured | beside it |',
    '|---|---|---|',
    ...rows.map(({ name, value, beside }) => `| ${name} | ${value} | ${beside} |`),
  ].join('\n');
