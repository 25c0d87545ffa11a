/** The built program on an empty folder of its own, for tests that use it as a keeper does. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { ROOT } from './source-files.ts';
import { freshFolder } from './store-at.ts';

const MAIN = join(ROOT, 'dist/src/main.js');

export const isBuilt = (): boolean => existsSync(MAIN);

export interface Program {
  readonly address: string;
  /** What it has printed so far. */
  readonly said: () => string;
  readonly port: number;
  readonly stop: () => Promise<void>;
}

/** A busy machine needs its time to furnish the demo room. */
const PATIENCE_MS = 60_000;

interface Place {
  /** By default a new one that is gone after the test. */
  readonly database?: string;
  /** By default any that is free. */
  readonly port?: number;
  readonly password?: string;
}

/** Starts it on this machine and waits for its address. */
export async function startProgram({ database, port = 0, password }: Place = {}): Promise<Program> {
  const child: ChildProcess = spawn(process.execPath, [MAIN], {
    env: {
      PATH: process.env.PATH,
      PREYLARDER_DB: database ?? join(freshFolder(), 'larder.db'),
      PORT: String(port),
      ...(password === undefined ? {} : { PREYLARDER_PASSWORD: password }),
    },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  let text = '';
  child.stdout?.on('data', (piece) => {
    text += piece;
  });
  const stop = async () => {
    if (child.exitCode !== null) return;
    child.kill('SIGTERM');
    await once(child, 'exit');
  };
  const until = Date.now() + PATIENCE_MS;
  while (Date.now() < until && child.exitCode === null) {
    const address = /Preylarder is at (\S+)/.exec(text)?.[1];
    if (address !== undefined)
      return { address, port: Number(new URL(address).port), said: () => text, stop };
    await pause(50);
  }
  await stop();
  throw new Error('the program did not say where it is');
}
