/** Time by the processor's clock: on a machine shared with others it says more than the clock on the wall. */

export interface Spent {
  readonly wallMs: number;
  /** All threads of this process, the compiler's and the collector's too. */
  readonly processorMs: number;
}

export async function spentOn(work: () => unknown): Promise<Spent> {
  const [from, used] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(used);
  return { wallMs: performance.now() - from, processorMs: (user + system) / 1000 };
}

/** The least of several runs, each clock by itself: what the work takes when nothing disturbs it. */
export async function leastOf(runs: number, work: () => unknown): Promise<Spent> {
  let [wallMs, processorMs] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let n = 0; n < runs; n++) {
    const spent = await spentOn(work);
    wallMs = Math.min(wallMs, spent.wallMs);
    processorMs = Math.min(processorMs, spent.processorMs);
  }
  return { wallMs, processorMs };
}
