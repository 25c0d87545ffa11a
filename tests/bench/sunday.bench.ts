/**
 * Protects the Sunday page: the whole answer of a room of 2,000 that lasts within a second from a cold start, the acts
 * of one that runs short within a few, and an unchanged room from its kept answer without the engine. Seeds are fixed.
 */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { keptRow } from './kept-answer.ts';
import type { Once } from './sunday-once.ts';
import { CASES } from './sunday-rooms.ts';
import type { Row } from './table.ts';

const CHILD = fileURLToPath(new URL('sunday-once.ts', import.meta.url));

export const sundayRows = async (): Promise<Row[]> => [...CASES.map(sundayRow), await keptRow()];

/** One case in a process of its own, so that the first answer is a cold one. */
function sundayRow(name: string): Row {
  const printed = execFileSync(process.execPath, [...process.execArgv, CHILD, name], { encoding: 'utf8' });
  const { cold, warm, verdict, chance, standardError, missed, act, mark } = JSON.parse(printed) as Once;
  const seconds = (ms: number) => (ms / 1000).toFixed(2);
  return {
    name: `Sunday check, 7 days: ${name}`,
    value: `cold ${seconds(cold.wallMs)} s (processor ${seconds(cold.processorMs)}), warm ${seconds(warm.wallMs)} s (processor ${seconds(warm.processorMs)})`,
    beside: `${verdict}; nothing missed ${chance} ± ${standardError.toFixed(4)}; missed ${missed}; ${act ?? 'no act'}; mark ${mark}`,
  };
}
