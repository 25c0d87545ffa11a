/** Greatest flow through a small network, by augmenting along shortest paths; knows nothing of the product. */

/** capacity[from][to]; node 0 is the source and the last node the sink. */
export function maxFlow(capacity: readonly (readonly number[])[]): number {
  const left = capacity.map((row) => [...row]);
  let flow = 0;
  for (let path = shortestPath(left); path; path = shortestPath(left)) {
    for (const [from, to] of path) {
      left[from]![to]! -= 1;
      left[to]![from]! += 1;
    }
    flow++;
  }
  return flow;
}

function shortestPath(left: readonly (readonly number[])[]): [number, number][] | null {
  const cameFrom = new Map<number, number>([[0, 0]]);
  for (const node of cameFrom.keys())
    left[node]!.forEach((room, next) => {
      if (room > 0 && !cameFrom.has(next)) cameFrom.set(next, node);
    });
  const sink = left.length - 1;
  if (!cameFrom.has(sink)) return null;
  const path: [number, number][] = [];
  for (let node = sink; node !== 0; node = cameFrom.get(node)!) path.push([cameFrom.get(node)!, node]);
  return path;
}

/** Most eaters that can each have one of the lengths in its window. */
export function mostServed(
  windows: readonly { readonly minMm: number; readonly maxMm: number }[],
  lengths: readonly number[],
): number {
  const size = windows.length + lengths.length + 2;
  const capacity = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  windows.forEach(({ minMm, maxMm }, i) => {
    capacity[0]![1 + i] = 1;
    lengths.forEach((mm, j) => {
      if (minMm <= mm && mm <= maxMm) capacity[1 + i]![1 + windows.length + j] = 1;
    });
  });
  lengths.forEach((_, j) => {
    capacity[1 + windows.length + j]![size - 1] = 1;
  });
  return maxFlow(capacity);
}
