/** The environment: what holds when nothing is said, and the sentence for what cannot be. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectRoot, readConfig } from '../src/config.ts';
import { freshFolder, good } from './support/store-at.ts';

const sentence = (environment: Record<string, string>) => {
  const read = readConfig(environment);
  return read.ok ? null : read.problem.sentence;
};

test('with nothing said it serves this machine alone, from data/ in the project', () => {
  const config = good(readConfig({ PREYLARDER_DB: '', PORT: ' ' }));
  expect(config).toMatchObject({
    port: 8181,
    listenOn: '127.0.0.1',
    password: null,
    hostNames: [],
    unknown: [],
  });
  expect(config.place.url).toBe(`file://${projectRoot()}/data/preylarder.db`);
});

test('a password opens the network, and may lie in a file', () => {
  const file = join(freshFolder(), 'secret');
  writeFileSync(file, 'eight legs good\n');
  const config = good(
    readConfig({ PREYLARDER_PASSWORD_FILE: file, PREYLARDER_HOST: 'Larder.home, shed.lan' }),
  );
  expect(config).toMatchObject({
    listenOn: '0.0.0.0',
    password: 'eight legs good',
    hostNames: ['larder.home', 'shed.lan'],
  });
});

test('a database may be a path, a file URL or a server', () => {
  const url = (database: string) => good(readConfig({ PREYLARDER_DB: database })).place.url;
  expect(url('/var/lib/larder.db')).toBe('file:///var/lib/larder.db');
  expect(url('larder.db')).toBe(`file://${process.cwd()}/larder.db`);
  expect(url('libsql://larder.example')).toBe('libsql://larder.example');
});

test.each([
  [{ PORT: 'tea' }, 'PORT is "tea"; give a number from 0 to 65535, such as 8181.'],
  [{ PORT: '70000' }, 'PORT is "70000"; give a number from 0 to 65535, such as 8181.'],
  [{ PREYLARDER_PASSWORD: 'short' }, 'PREYLARDER_PASSWORD is shorter than 8 characters.'],
  [
    { PREYLARDER_TIMEZONE: 'Middle/Earth' },
    'PREYLARDER_TIMEZONE is "Middle/Earth"; give a name such as Europe/Berlin.',
  ],
  [
    { PREYLARDER_PASSWORD_FILE: '/nowhere' },
    'PREYLARDER_PASSWORD_FILE is "/nowhere", but there is no such file.',
  ],
  [
    { PREYLARDER_HOST: 'larder.home' },
    'PREYLARDER_HOST is "larder.home", but without PREYLARDER_PASSWORD only this machine is served. Set both or neither.',
  ],
])('%o is refused in a sentence', (environment, said) => {
  expect(sentence(environment as Record<string, string>)).toBe(said);
});

test('a variable of ours that means nothing is named', () => {
  expect(good(readConfig({ PREYLARDER_DATABASE: 'x', OTHER: 'y' })).unknown).toEqual(['PREYLARDER_DATABASE']);
});
