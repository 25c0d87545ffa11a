/** The built program, where it has been built: the same words, streams and exit codes as in this process. */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { PENCIL_ANIMALS, terminal } from '../support/command.ts';

const BUILT = fileURLToPath(new URL('../../dist/src/cli/index.js', import.meta.url));

const start = (words: readonly string[], db: string) =>
  new Promise<{ exit: number; out: string; err: string }>((resolve) => {
    const env = { PATH: process.env.PATH, PREYLARDER_DB: db, PREYLARDER_TIMEZONE: 'UTC' };
    execFile(process.execPath, [BUILT, ...words], { env }, (error, out, err) => {
      resolve({ exit: typeof error?.code === 'number' ? error.code : 0, out, err });
    });
  });

it.runIf(existsSync(BUILT))('imports, checks and complains from the shell', async () => {
  const { db } = terminal();
  const missing = await start(['check'], db);
  expect(missing).toMatchObject({ exit: 2, out: '' });
  expect(missing.err).toContain(`There is no database at ${db}.`);
  expect((await start(['import', PENCIL_ANIMALS], db)).exit).toBe(0);
  const short = await start(['check', '--json'], db);
  expect(short.exit).toBe(1);
  expect(JSON.parse(short.out)).toMatchObject({ verdict: 'runs short', exit: 1 });
});
