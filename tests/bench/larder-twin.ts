/** The C twin of the larder's days: its compilation and its run. */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { LarderDays } from './larder-days.ts';

const SOURCE = fileURLToPath(new URL('larder-twin.c', import.meta.url));

/** Compiles the twin into a folder; returns its path. Sums in another order are allowed to it: a tolerance is asked for. */
export function compileLarderTwin(folder: string): string {
  const program = join(folder, 'larder-twin');
  execFileSync('gcc', ['-O3', '-march=native', '-ffast-math', '-o', program, SOURCE, '-lm'], {
    stdio: 'pipe',
  });
  return program;
}

/** Heads of each bin at the end, and the processor seconds of the twin. */
export function playLarderTwin(
  program: string,
  { input }: LarderDays,
): { readonly heads: readonly number[]; readonly seconds: number } {
  const file = `${program}.in`;
  writeFileSync(file, new Uint8Array(input().buffer));
  const numbers = execFileSync(program, [file], { encoding: 'utf8' }).trim().split(' ').map(Number);
  return { heads: numbers.slice(0, -1), seconds: numbers.at(-1)! };
}
