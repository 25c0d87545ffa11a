/**
 * Protects the forecast of demand: 12 weeks of meals for a whole collection, replicate by replicate, stay a matter of
 * a second on one thread, and within reach of the same loop in C. The seed is fixed; the sums beside it must not move.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { mixedAnimals, snapshotWith } from '../support/room.ts';
import { leastOf } from './clock.ts';
import { compiledCore } from './compiled.ts';
import { type DemandLoop, demandLoop, sumsOf } from './demand-loop.ts';
import { compileTwin, noTwin, playTwin } from './demand-twin.ts';
import type { Row } from './table.ts';

const RUNS = 9;
const DAYS = 84;
const CASES = [
  { animals: 200, replicates: 400 },
  { animals: 2000, replicates: 100 },
] as const;

/** Million meals a second of processor time of the product, of its twin, and their ratio. */
export async function demandRows(): Promise<Row[]> {
  const core = await compiledCore();
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-bench-'));
  const missing = noTwin();
  const program = missing === null ? compileTwin(folder) : null;
  const rows: Row[] = [];
  for (const { animals, replicates } of CASES) {
    const snapshot = snapshotWith({ animals: mixedAnimals(animals) });
    const loop = demandLoop(core, snapshot, { days: DAYS, replicates });
    const name = `demand: ${animals} animals x ${DAYS} days x ${replicates} replicates`;
    rows.push({ name, value: await speeds(loop, program, missing ?? ''), beside: standing(loop) });
  }
  rmSync(folder, { recursive: true });
  return rows;
}

async function speeds(loop: DemandLoop, program: string | null, missing: string): Promise<string> {
  const { due } = sumsOf(loop.play());
  const { processorMs } = await leastOf(RUNS, loop.play);
  const product = due / processorMs / 1000;
  const said = `${product.toFixed(1)} M meals/s`;
  if (program === null) return `${said}; no twin: ${missing}`;
  const seconds = Math.min(...Array.from({ length: RUNS }, () => playTwin(program, loop).seconds));
  const twin = due / seconds / 1e6;
  return `${said}; twin in C ${twin.toFixed(1)}; ratio ${(twin / product).toFixed(2)}`;
}

/** The sums, and the standard error of the mean items wanted in a replicate. */
function standing(loop: DemandLoop): string {
  const tally = loop.play();
  const { due, wanted, late, missed } = sumsOf(tally);
  const groups = tally.groups;
  const items = Array.from({ length: loop.replicates }, (_, r) =>
    tally.itemsOf.subarray(r * groups, (r + 1) * groups).reduce((a, b) => a + b, 0),
  );
  const mean = wanted / loop.replicates;
  const variance = items.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (loop.replicates - 1);
  const error = Math.sqrt(variance / loop.replicates);
  return `due ${due}, wanted ${wanted}, late ${late}, missed ${missed}; items ${mean.toFixed(0)} ± ${error.toFixed(0)}`;
}
