/** Runs the benchmarks and prints their table; with --keep also into tests/proof/results/bench.md. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { demandRows } from './demand.bench.ts';
import { larderRows } from './larder.bench.ts';
import { loopRows } from './loop.bench.ts';
import { planSolveRows } from './plan-solve.bench.ts';
import { sundayRows } from './sunday.bench.ts';
import { tableOf } from './table.ts';

const RESULTS = fileURLToPath(new URL('../proof/results/', import.meta.url));

const table = tableOf([
  ...(await demandRows()),
  ...(await larderRows()),
  ...(await sundayRows()),
  ...(await planSolveRows()),
  ...(await loopRows()),
]);
const [day] = new Date().toISOString().split('T');
const machine = `${day} · ${cpus().length} cores (${cpus()[0]?.model.trim()}) · Node ${process.version}`;
console.log(`${machine}\n\n${table}`);
if (process.argv.includes('--keep')) {
  mkdirSync(RESULTS, { recursive: true });
  writeFileSync(`${RESULTS}bench.md`, `# Benchmarks\n\n${machine}\n\n${table}\n`);
}
