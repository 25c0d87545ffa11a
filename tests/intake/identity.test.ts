/** Reading a file again: what is new, what has changed, what is the same. */
import { describe, expect, test } from 'vitest';
import { ANIMALS_TEMPLATE, type AnimalEntry, type Reading, STOCK_TEMPLATE } from '../../src/intake/index.ts';
import { animalsIn, animalsWritten, stockIn, stockWritten } from '../support/intake-files.ts';

const verdicts = (reading: Reading<unknown>) => reading.rows.map(({ verdict }) => verdict);
const again = (before: string, after: string) =>
  animalsIn(after, { existing: animalsWritten(animalsIn(before)) });
const changesOf = (reading: Reading<AnimalEntry>, row = 0) => reading.rows[row]?.changes;

const LIST = [
  'label,who,kind,size,fed,moulted,count,sex,stage,shelf,room,notes',
  'T1,Rosie,B. hamorii,120 mm,2026-03-01,2026-01-01,1,F,,A1,den,first',
  'T2,,GBB,,never,,12,0.0.12,sling,A2,,',
  ',Ivy,mantis,5 cm,Mar 2,,,,,,,',
  ',,Caribena sp.,20 mm,,,,1.2,,,,',
  ',,Caribena sp.,20 mm,,,,1.2,,,,',
  ',Moss,GBB,20 mm,,,,,,,,',
  ',Moss,GBB,30 mm,,,,,,,,',
].join('\n');

describe('the same file twice', () => {
  test('changes nothing', () => {
    const first = animalsIn(LIST);
    expect(new Set(verdicts(first))).toEqual(new Set(['new']));
    expect(first.ready).toBe(true);
    const second = again(LIST, LIST);
    expect(second.tally).toEqual({ new: 0, changed: 0, same: 9, asked: 0, refused: 0 });
    expect(second.rows.map(({ becomes }) => becomes)).toEqual(first.rows.map(({ becomes }) => becomes));
  });

  test('changes nothing in stock', () => {
    const file = `${STOCK_TEMPLATE}A,crickets,,1/4 in,~50,,\r\nA,crickets,,1/4 in,~60,,\r\n,dubia,,,,,\r\n`;
    const first = stockIn(file);
    const second = stockIn(file, { existing: stockWritten(first) });
    expect(first.tally.new).toBe(6);
    expect(second.tally).toEqual({ new: 0, changed: 0, same: 6, asked: 0, refused: 0 });
  });

  test('is also the same by the codes of the records', () => {
    const [record] = animalsWritten(animalsIn('who,kind,size\nA,gbb,20 mm\n'));
    const reading = animalsIn(`id,who,kind,size\n${record!.code},B,gbb,20 mm\n`, { existing: [record!] });
    expect(reading.rows[0]).toMatchObject({
      verdict: 'changed',
      code: record!.code,
      changes: expect.arrayContaining([{ field: 'name', before: 'A', after: 'B' }]),
    });
  });
});

describe('a changed row', () => {
  test('lists its changed fields, before and after', () => {
    const reading = again(
      LIST,
      LIST.replace('120 mm,2026-03-01', '13 cm,2026-03-20').replace('A1,den', 'B9,den'),
    );
    expect(reading.tally).toMatchObject({ changed: 1, same: 8 });
    expect(changesOf(reading)).toEqual(
      expect.arrayContaining([
        { field: 'gaugeMm', before: 120, after: 130 },
        { field: 'lastFed', before: 20_513, after: 20_532 },
        { field: 'shelf', before: 'A1', after: 'B9' },
      ]),
    );
    expect(changesOf(reading)).toHaveLength(3);
  });

  test('is known by its label even under another name', () => {
    expect(changesOf(again(LIST, LIST.replace('Rosie', 'Rosalind')))).toEqual([
      { field: 'name', before: 'Rosie', after: 'Rosalind' },
    ]);
  });

  test('is known by name, kind and which of its likes it is', () => {
    const reading = again(LIST, LIST.replace('Moss,GBB,30 mm', 'Moss,GBB,35 mm'));
    expect(reading.rows[8]).toMatchObject({
      code: 'X9',
      changes: [{ field: 'gaugeMm', before: 30, after: 35 }],
    });
  });
});

describe('a row adds and corrects, but never empties', () => {
  const FULL = 'who,kind,size,fed,moulted,sex,shelf\nA,gbb,50 mm,2026-03-10,2026-02-01,F,A1\n';

  test('where its cells are blank', () => {
    expect(again(FULL, 'who,kind\nA,gbb\n').tally).toMatchObject({ same: 1 });
  });

  test('and an older feeding or moult does not turn back the clock', () => {
    const older = 'who,kind,size,fed,moulted\nA,gbb,40 mm,2026-03-01,2025-11-01\n';
    const reading = again(FULL, older);
    expect(verdicts(reading)).toEqual(['same']);
    expect(reading.rows[0]?.notes.map(({ sentence }) => sentence)).toEqual([
      'The record already holds a later feeding and moult, which is kept.',
    ]);
  });

  test('and a kind known only by genus does not blur the record', () => {
    const reading = animalsIn('id,kind,size\nK1,Brachypelma sp.,50 mm\n', {
      existing: animalsWritten(animalsIn('id,who,kind,size\nK1,A,B. hamorii,50 mm\n')),
    });
    expect(verdicts(reading)).toEqual(['same']);
  });

  test('and rows that are missing remove nothing', () => {
    expect(again(LIST, LIST.split('\n').slice(0, 2).join('\n')).tally).toEqual({
      new: 0,
      changed: 0,
      same: 1,
      asked: 0,
      refused: 0,
    });
  });

  test('and an animal no longer kept is not brought back', () => {
    const gone = animalsWritten(animalsIn(FULL)).map((record) => ({ ...record, gone: true }));
    const [row] = animalsIn(FULL.replace('50 mm', '60 mm'), { existing: gone }).rows;
    expect(row).toMatchObject({ verdict: 'same', changes: [] });
    expect(row?.notes.at(-1)?.sentence).toBe('This is no longer kept; the row does not bring it back.');
  });
});

describe('likes', () => {
  test('without names are numbered', () => {
    const reading = animalsIn('kind,size\ngbb,20 mm\ngbb,20 mm\nGBB,20 mm\n');
    expect(reading.rows.map(({ becomes }) => becomes?.name)).toEqual(['gbb', 'gbb 2', 'GBB 3']);
  });

  test('with one label twice keep the first, and the second says so', () => {
    const file = 'label,who,kind,size\nT1,A,gbb,20 mm\nt1,B,gbb,20 mm\n';
    const reading = animalsIn(file);
    expect(reading.rows.map(({ becomes }) => becomes?.label)).toEqual(['T1', null]);
    expect(reading.rows[1]?.notes.map(({ sentence }) => sentence)).toEqual([
      'The label "t1" already stands in row 2; give each its own. This row is read without it.',
    ]);
    expect(again(file, file).tally).toMatchObject({ same: 2 });
  });

  test('with labels of their own are not taken for one another', () => {
    const reading = again('label,who,kind,size\nT1,A,gbb,20 mm\n', 'label,who,kind,size\nT2,A,gbb,20 mm\n');
    expect(verdicts(reading)).toEqual(['new']);
  });

  test('gain a label later', () => {
    expect(changesOf(again('who,kind,size\nA,gbb,20 mm\n', 'label,who,kind,size\nT2,A,gbb,20 mm\n'))).toEqual(
      [{ field: 'label', before: null, after: 'T2' }],
    );
  });
});

describe('the example files', () => {
  test('read without a question, and twice without a change', () => {
    const animals = animalsIn(ANIMALS_TEMPLATE);
    expect([animals.ready, animals.tally.new]).toEqual([true, 3]);
    expect(again(ANIMALS_TEMPLATE, ANIMALS_TEMPLATE).tally.same).toBe(3);
    const stock = stockIn(STOCK_TEMPLATE);
    expect([stock.ready, stock.tally.new]).toEqual([true, 3]);
  });
});
