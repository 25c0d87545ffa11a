/**
 * Protects pages while a plan is made: the built program with its demo, whole plans asked for one after the other, and pages
 * looked at meanwhile. What is told is how long its event loop was held up at worst. Beside it stands the same without a
 * plan, what the pages themselves cost; and a program that does nothing meanwhile, what waiting for a processor costs.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Row } from './table.ts';

const MAIN = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url));
const WATCH = new URL('./loop-watch.mjs', import.meta.url).href;
const IDLE = fileURLToPath(new URL('./loop-idle.mjs', import.meta.url));
const PAGES = ['/', '/plan', '/animals', '/larder', '/orders'];
/** Another number of weeks is another plan. */
const WEEKS = [12, 11];
const BETWEEN_MS = 60;
const LOOKS_ALONE = 150;
const MOST_TRIES = 500;

interface Held {
  readonly maxMs: number;
  readonly meanMs: number;
}

export async function loopRows(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-bench-'));
  const port = await freePort();
  const program = watched(MAIN, {
    PREYLARDER_DB: pathToFileURL(join(folder, 'larder.db')).href,
    PORT: `${port}`,
  });
  const idle = watched(IDLE, {});
  try {
    const site = `http://127.0.0.1:${port}`;
    await started(site);
    await lookAround(site, (looks) => looks < LOOKS_ALONE);
    await heldUp(program);
    await lookAround(site, (looks) => looks < LOOKS_ALONE);
    const alone = await heldUp(program);
    await heldUp(idle);
    for (const weeks of WEEKS) await whilePlanning(site, weeks);
    const planning = await heldUp(program);
    const waiting = await heldUp(idle);
    return [
      {
        name: 'event loop while whole plans of the demo are made',
        value: `held up ${planning.maxMs.toFixed(0)} ms at worst, ${planning.meanMs.toFixed(1)} ms in the mean`,
        beside: `the same pages without a plan: ${inMs(alone)}; a program that does nothing while plans are made: ${inMs(waiting)}`,
      },
    ];
  } finally {
    program.kill();
    idle.kill();
    rmSync(folder, { recursive: true });
  }
}

const inMs = ({ maxMs, meanMs }: Held): string => `${maxMs.toFixed(0)} and ${meanMs.toFixed(1)} ms`;

const watched = (script: string, env: NodeJS.ProcessEnv): ChildProcess =>
  fork(script, [], {
    execArgv: ['--import', WATCH],
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
  });

async function started(site: string): Promise<void> {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const answers = await fetch(`${site}/help`).then(
      () => true,
      () => false,
    );
    if (answers) return;
    await pause(BETWEEN_MS);
  }
  throw new Error('the built program did not start');
}

async function whilePlanning(site: string, weeks: number): Promise<void> {
  let made = false;
  const plan = seen(`${site}/plan?weeks=${weeks}&wait`).finally(() => {
    made = true;
  });
  await lookAround(site, () => !made);
  await plan;
}

/** One page after the other, as long as somebody does. */
async function lookAround(site: string, goesOn: (looks: number) => boolean): Promise<void> {
  for (let looks = 0; goesOn(looks); looks++) {
    await seen(`${site}${PAGES[looks % PAGES.length]}`);
    await pause(BETWEEN_MS);
  }
}

async function seen(address: string): Promise<void> {
  const response = await fetch(address);
  await response.text();
  if (!response.ok) throw new Error(`${address} answered ${response.status}`);
}

/** How long the loop was held up since it was last asked. */
const heldUp = (program: ChildProcess): Promise<Held> =>
  new Promise((resolve) => {
    program.once('message', (held) => resolve(held as Held));
    program.send('held up?');
  });

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
