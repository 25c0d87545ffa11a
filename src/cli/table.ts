/** Sets rows of words out in columns for a terminal; the last columns may be numbers, set to the right. */

/** Lines of a table with its heading; columns named in `right` are set to the right. */
export function table(
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  right: ReadonlySet<string> = new Set(),
): readonly string[] {
  const all = [heading, ...rows];
  const widths = heading.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  return all.map((row) =>
    row
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return right.has(heading[column] ?? '') ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  );
}
