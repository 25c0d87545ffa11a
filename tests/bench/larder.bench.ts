/**
 * Protects the forecast of bins: 20 colonies of every species, 104 weeks of daily steps, stay a matter of a tenth of a
 * second on one thread, in proportion to bins and days. Beside it the same days in C.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { leastOf } from './clock.ts';
import { compiledLarder } from './compiled.ts';
import { noTwin } from './demand-twin.ts';
import { larderDays } from './larder-days.ts';
import { compileLarderTwin, playLarderTwin } from './larder-twin.ts';
import type { Row } from './table.ts';

const RUNS = 9;
const CASES = [
  { bins: 20, weeks: 104 },
  { bins: 40, weeks: 104 },
  { bins: 80, weeks: 104 },
  { bins: 20, weeks: 208 },
  { bins: 20, weeks: 416 },
] as const;

export async function larderRows(): Promise<Row[]> {
  const core = await compiledLarder();
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-bench-'));
  const missing = noTwin();
  const program = missing === null ? compileLarderTwin(folder) : null;
  const rows: Row[] = [];
  for (const size of CASES) {
    const days = larderDays(core, size);
    const heads = days.play();
    const { processorMs } = await leastOf(RUNS, days.play);
    const each = (1000 * processorMs) / (size.bins * days.days);
    const twin = program === null ? null : Array.from({ length: RUNS }, () => playLarderTwin(program, days));
    const twinMs =
      twin === null ? missing : `${(1000 * Math.min(...twin.map(({ seconds }) => seconds))).toFixed(0)} ms`;
    rows.push({
      name: `larder: ${size.bins} bins x ${size.weeks} weeks of days`,
      value: `${processorMs.toFixed(0)} ms, ${each.toFixed(1)} µs a bin and day; twin in C ${twinMs}`,
      beside: `heads at the end ${heads.reduce((sum, n) => sum + n, 0).toFixed(3)}`,
    });
  }
  rmSync(folder, { recursive: true });
  return rows;
}
