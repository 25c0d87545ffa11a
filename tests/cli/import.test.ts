/** `import`: a line a row, all of it or nothing, and a sentence for whatever is in the way. */
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PENCIL_ANIMALS, PENCIL_LOTS, terminal } from '../support/command.ts';

const lines = (...rows: string[]): string => `${rows.join('\n')}\n`;
const AMBIGUOUS = lines('who,kind,size,fed', 'Ada,Brachypelma hamorii,30 mm,03/04/2026');
const UNKNOWN = lines('who,kind,size', 'Ada,Brachypelma hamorii,30 mm', 'Bo,plastic brick,30 mm');

describe('a good list', () => {
  it('is shown row by row, written as one act and makes the database', async () => {
    const at = terminal();
    const { exit, out, err } = await at.type('import', PENCIL_ANIMALS);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out.split('\n').slice(0, 2)).toEqual([
      'row 2  new  Pip · Brachypelma hamorii',
      'row 3  new  Dot · Brachypelma hamorii',
    ]);
    expect(out).toContain('6 readings: 6 new.');
    expect(out).toContain('Brought in 6 new animals');
    expect(existsSync(at.db)).toBe(true);
  });

  it('changes nothing the second time', async () => {
    const at = terminal();
    await at.type('import', PENCIL_LOTS, '--stock');
    const { exit, out } = await at.type('import', PENCIL_LOTS, '--stock');
    expect(exit).toBe(0);
    expect(out).toContain('2 readings: 2 same.');
    expect(out).toContain('Nothing was written: nothing is new.');
  });

  it('is only shown in a dry run, which makes no database', async () => {
    const at = terminal();
    const { exit, out } = await at.type('import', PENCIL_ANIMALS, '--dry-run');
    expect(exit).toBe(0);
    expect(out).toContain('Nothing was written: this was a dry run.');
    expect(existsSync(at.db)).toBe(false);
  });

  it('goes into the database named with --db', async () => {
    const at = terminal();
    const other = `${at.db}-other.db`;
    expect((await at.type('import', PENCIL_ANIMALS, '--db', other)).exit).toBe(0);
    expect([existsSync(other), existsSync(at.db)]).toEqual([true, false]);
  });
});

describe('what must be answered first', () => {
  it('the order of ambiguous dates is asked for, and nothing is written', async () => {
    const at = terminal();
    const file = at.file('dates.csv', AMBIGUOUS);
    const { exit, err } = await at.type('import', file);
    expect(exit).toBe(2);
    expect(err).toContain('03/04/2026');
    expect(err).toContain('Nothing was written.');
    expect(existsSync(at.db)).toBe(false);
    expect((await at.type('import', file, '--dates', 'dmy')).exit).toBe(0);
  });

  it('an unknown kind is asked for with its row, and no other row comes in without it', async () => {
    const at = terminal();
    const file = at.file('kinds.csv', UNKNOWN);
    const { exit, out, err } = await at.type('import', file);
    expect(exit).toBe(2);
    expect(out).toContain('1 new and 1 waiting');
    expect(err).toContain('"plastic brick" is not a known kind of animal (row 3)');
    expect(existsSync(at.db)).toBe(false);
    const left = await at.type('import', file, '--answer', 'plastic brick=');
    expect(left.exit).toBe(0);
    expect(left.out).toContain('Left out: row 3.');
  });

  it('the unit of bare sizes is asked for', async () => {
    const at = terminal();
    const file = at.file('units.csv', lines('who,kind,size', 'Ada,Brachypelma hamorii,3'));
    expect((await at.type('import', file)).err).toContain('--unit in');
    expect((await at.type('import', file, '--unit', 'in')).exit).toBe(0);
  });

  it('a heading of the keeper can be named ours', async () => {
    const at = terminal();
    const file = at.file('map.csv', lines('who,beast,size', 'Ada,Brachypelma hamorii,30 mm'));
    expect((await at.type('import', file)).exit).toBe(2);
    expect((await at.type('import', file, '--map', 'kind=beast')).exit).toBe(0);
  });
});

describe('what cannot be read', () => {
  const MB = 1024 * 1024;

  it.each<[string, string | Uint8Array, string]>([
    ['a file of 60 MB', new Uint8Array(60 * MB), 'The file is 60 MB; at most 20 MB'],
    ['a file of bytes that are not text', Uint8Array.of(1, 0, 2, 255), 'The file is not text.'],
    ['an empty file', '', 'it has 0 rows'],
  ])('%s is a sentence and exit code 2', async (_, content, sentence) => {
    const at = terminal();
    const { exit, err } = await at.type('import', at.file('list.csv', content));
    expect(err).toContain(sentence);
    expect(exit).toBe(2);
    expect(existsSync(at.db)).toBe(false);
  });

  it.each([
    [[], 'Say which file to import.'],
    [['/nowhere/list.csv'], 'There is no file "/nowhere/list.csv".'],
    [['.'], '"." is not a file.'],
    [['x.csv', '--dates', 'ydm'], '--dates is "ydm"; give one of dmy, mdy, ymd.'],
    [['x.csv', '--unit', 'ell'], '--unit is "ell"; give one of mm, cm, in.'],
    [['x.csv', '--map', 'kind'], '--map is "kind"; write it as this=that.'],
    [['x.csv', '--map', 'colour=Hue'], '--map names the column "colour"'],
    [['x.csv', 'y.csv'], '"y.csv" is not understood here'],
    [['x.csv', '--force'], '"--force" is not an option here'],
  ])('%j is a sentence and exit code 2', async (words, sentence) => {
    const at = terminal();
    const { exit, err } = await at.type('import', ...words);
    expect(err).toContain(sentence);
    expect(exit).toBe(2);
    expect(existsSync(at.db)).toBe(false);
  });
});
