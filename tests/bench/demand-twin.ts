/** The C twin of the demand loop: its input file, its compilation and its run. */
import { execFileSync, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Roster } from '../../src/husbandry/appetite/roster.ts';
import { NEVER } from '../../src/husbandry/calendar.ts';
import { logSdOf } from '../../src/maths/log-normal.ts';
import { mix32 } from '../../src/maths/random.ts';
import type { DemandLoop, Sums } from './demand-loop.ts';

const SOURCE = fileURLToPath(new URL('demand-twin.c', import.meta.url));

/** Contraction off: a fused multiply and add rounds once where the product rounds twice. */
const FLAGS = ['-O3', '-march=native', '-ffp-contract=off'];

/** Why there can be no twin here, or null. */
export const noTwin = (): string | null =>
  spawnSync('gcc', ['--version']).status === 0 ? null : 'there is no gcc on this machine';

/** Compiles the twin into a folder; returns its path. */
export function compileTwin(folder: string): string {
  const program = join(folder, 'demand-twin');
  execFileSync('gcc', [...FLAGS, '-o', program, SOURCE, '-lm'], { stdio: 'pipe' });
  return program;
}

/** Runs the twin on a room: its sums, and the processor seconds of its loop. */
export function playTwin(program: string, loop: DemandLoop): Sums & { readonly seconds: number } {
  const file = `${program}.in`;
  writeFileSync(file, new Uint8Array(inputOf(loop).buffer));
  const [due, wanted, late, missed, dangers, seconds] = execFileSync(program, [file], { encoding: 'utf8' })
    .trim()
    .split(' ')
    .map(Number) as [number, number, number, number, number, number];
  return { due, wanted, late, missed, dangers, seconds };
}

/** Everything the loop reads, as doubles in the order in which the twin reads them. */
function inputOf({ snapshot, roster, feeding, days, replicates }: DemandLoop): Float64Array {
  const { policy } = snapshot.facts;
  const { animals, steps, rules, groups } = roster;
  return Float64Array.from([
    ...[animals, steps, rules.rules.length, groups.length, days, feeding.days, rules.phases, replicates],
    ...[NEVER, mix32(snapshot.seed), logSdOf(policy.generosityCv.value), policy.eveningSkippedChance.value],
    ...animalColumns(roster),
    ...[rules.itemsMin, rules.itemsMax, rules.wait, rules.retry, rules.grace, rules.safeGap].flatMap(listed),
    ...[rules.cycleLogSd, rules.acceptance, rules.acceptanceBest, rules.premoultFrom].flatMap(listed),
    ...[feeding.next, feeding.previous].flatMap(listed),
  ]);
}

const listed = (column: Int32Array | Float64Array): number[] => Array.from(column);

function animalColumns(roster: Roster): number[] {
  const { key, heads, rule, group, intervalMin, intervalMax, cycleLogMean, cyclePassed } = roster;
  const { lastTaken, lastTended, notBefore, lastMoult, premoult, appetite } = roster;
  const { arrivesFrom, arrivesTo, arrivesChance, leavesFrom, leavesTo, leavesChance } = roster;
  return [
    ...[key, heads, rule, group, intervalMin, intervalMax, cycleLogMean, cyclePassed],
    ...[lastTaken, lastTended, notBefore, lastMoult, premoult],
    ...[arrivesFrom, arrivesTo, arrivesChance, leavesFrom, leavesTo, leavesChance, appetite],
  ].flatMap(listed);
}
