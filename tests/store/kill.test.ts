/** A write that was acknowledged is never lost, however the program ends. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openStore, rowsOf } from '../../src/store/index.ts';
import { freshFolder, good, MOMENT, urlOf } from '../support/store-at.ts';

const CHILD = new URL('../support/writing-child.ts', import.meta.url).pathname;
const KILLS = 10;
const WRITES_BEFORE_KILL = 5;

/** Lets a child write, kills it hard after some writes, and returns what it had acknowledged. */
async function writeAndKill(url: string): Promise<readonly string[]> {
  const child = spawn(process.execPath, ['--import', 'tsx', CHILD, url], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.on('data', (piece) => {
    said += piece;
    if (said.split('\n').length > WRITES_BEFORE_KILL) child.kill('SIGKILL');
  });
  await once(child, 'close');
  return said.split('\n').slice(0, -1);
}

test('no acknowledged write is lost in ten kills', { timeout: 60_000 }, async () => {
  const url = urlOf(join(freshFolder(), 'larder.db'));
  const acknowledged: string[] = [];
  for (let kill = 0; kill < KILLS; kill += 1) acknowledged.push(...(await writeAndKill(url)));
  const store = good(await openStore({ place: { url }, moment: MOMENT }));
  const kept = new Set((await store.ask(rowsOf('room'))).map(({ code }) => code));
  await store.close();
  expect(acknowledged.length).toBeGreaterThanOrEqual(KILLS * WRITES_BEFORE_KILL);
  expect(new Set(acknowledged).size).toBe(acknowledged.length);
  expect(acknowledged.filter((code) => !kept.has(code))).toEqual([]);
});
