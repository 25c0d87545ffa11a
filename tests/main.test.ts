/** The program as a whole: it starts, says where it is, answers, and ends in good order. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, onTestFinished, test } from 'vitest';
import { freshFolder } from './support/store-at.ts';

const MAIN = new URL('../dist/src/main.js', import.meta.url).pathname;

if (!existsSync(MAIN)) throw new Error('Build the program first: npm run build.');

interface Running {
  readonly child: ChildProcess;
  /** What it wrote so far, both streams. */
  readonly said: () => string;
}

function run(environment: Record<string, string>): Running {
  const env = {
    PATH: process.env.PATH,
    PREYLARDER_DB: join(freshFolder(), 'larder.db'),
    PORT: '0',
    ...environment,
  };
  const child = spawn(process.execPath, [MAIN], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  let text = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => (text += piece));
  return { child, said: () => text };
}

async function addressSaidBy({ said }: Running): Promise<string> {
  for (;;) {
    const found = /Preylarder is at (\S+)/.exec(said())?.[1];
    if (found !== undefined) return found;
    await pause(50);
  }
}

test('it says where it is, answers there, and ends within five seconds when told to', async () => {
  const running = run({ PREYLARDER_DATABSE: 'x' });
  const address = await addressSaidBy(running);
  expect(running.said()).toContain('PREYLARDER_DATABSE is not a setting known here; it does nothing.');
  expect(await (await fetch(`${address}/readyz`)).json()).toEqual({ ready: true, reasons: [] });
  const began = performance.now();
  running.child.kill('SIGTERM');
  const [code] = await once(running.child, 'exit');
  expect(code).toBe(0);
  expect(performance.now() - began).toBeLessThan(5000);
});

test('a new database shows the demo room, and the week is told at the start', async () => {
  const running = run({});
  const address = await addressSaidBy(running);
  expect(await (await fetch(address)).text()).toContain('class="banner demo"');
  while (!/Nobody misses a meal in .+ weeks? in \d+ \(.+\)\./.test(running.said())) await pause(50);
  const { headline } = (await (await fetch(`${address}/api/check.json`)).json()) as { headline: string };
  expect(running.said()).toContain(`${headline} Nobody misses`);
});

test('behind a password it shows the login', async () => {
  const address = await addressSaidBy(run({ PREYLARDER_PASSWORD: 'eight legs good' }));
  const answer = await fetch(address, { headers: { accept: 'text/html' } });
  expect(answer.url).toBe(`${address}/login?next=%2F`);
  expect(await answer.text()).toContain('type="password"');
});

test('a value that cannot be ends it with a sentence', async () => {
  const { child, said } = run({ PORT: 'tea' });
  const [code] = await once(child, 'close');
  expect([code, said()]).toEqual([2, 'PORT is "tea"; give a number from 0 to 65535, such as 8181.\n']);
});

test('a port in use ends it with a sentence', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  onTestFinished(() => void other.close());
  const { port } = other.address() as { port: number };
  const { child, said } = run({ PORT: String(port) });
  const [code] = await once(child, 'close');
  expect(code).toBe(1);
  expect(said()).toContain(`Port ${port} is in use by another program.`);
});
