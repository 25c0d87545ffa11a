/** How many slips of the pen part two words: letters missing, added, changed or swapped. */

/** Edit distance with swaps of neighbours [optimal string alignment], or null when it exceeds `most`. */
export function slipsBetween(a: string, b: string, most: number): number | null {
  if (Math.abs(a.length - b.length) > most) return null;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      const least = Math.min(above[column]! + 1, now[column - 1]! + 1, above[column - 1]! + (same ? 0 : 1));
      now.push(swapped ? Math.min(least, before[column - 2]! + 1) : least);
    }
    before = above;
    above = now;
  }
  const slips = above[b.length]!;
  return slips <= most ? slips : null;
}
