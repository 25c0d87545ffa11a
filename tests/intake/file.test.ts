/** Files that cannot be read say why; columns are found, guessed or asked for. */
import { describe, expect, test } from 'vitest';
import { animalsIn, stockIn, utf8 } from '../support/intake-files.ts';

const problemOf = (file: string | Uint8Array, options = {}) => animalsIn(file, options).problems[0]?.sentence;

describe('a file that cannot be read', () => {
  test('says its size when it is too large', () => {
    expect(problemOf(new Uint8Array(60 * 1024 * 1024))).toBe(
      'The file is 60 MB; at most 20 MB can be read. Split it or leave out columns.',
    );
  });

  test.each([
    ['NULs', utf8('who,kind\n\0,gbb\n')],
    ['control bytes', utf8('who,kind\n\u0001\u0002,gbb\n')],
    ['bytes without a character', Uint8Array.from([0x77, 0x81, 0x8d, 0x0a])],
    ['half a UTF-16 character', Uint8Array.from([0xff, 0xfe, 0x41])],
  ])('is not text with %s', (_, bytes) => {
    expect(problemOf(bytes)).toBe('The file is not text. Save the sheet as "CSV UTF-8" and try that file.');
  });

  test('is told to be a workbook', () => {
    expect(problemOf(Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]))).toBe(
      'This is a spreadsheet workbook, not CSV. Save it as "CSV UTF-8" first.',
    );
  });

  test.each(['', ' \r\n\n'])('is empty', (text) => {
    expect(problemOf(text)).toBe('The file is empty: it has 0 rows. Choose the file with your list.');
  });

  test('with headings alone has 0 rows, which is an error', () => {
    const reading = animalsIn('who,kind\n\n,\n');
    expect(reading.ready).toBe(false);
    expect(reading.problems.map(({ sentence }) => sentence)).toEqual([
      'The file has 0 rows below its headings ("who", "kind"). Add a row for each entry.',
    ]);
  });
});

describe('columns', () => {
  test('of our own template are read without a guess', () => {
    const { columns } = animalsIn('who,kind,size,unit,fed,moulted,count,shelf\nA,gbb,1,in,,,,\n');
    expect(columns.map(({ how }) => how)).toEqual(Array(8).fill('ours'));
  });

  test('are guessed from common words, and each guess is shown', () => {
    const { columns, unused } = animalsIn(
      'Pet name,Scientific name,DLS (cm),Last fed,Last molt date,Qty,Rack,Next feeding\nA,gbb,3,,,,,\n',
    );
    expect(columns.map(({ column, heading, how }) => `${heading}: ${column}, ${how}`).sort()).toEqual([
      'DLS (cm): size, guessed',
      'Last fed: fed, guessed',
      'Last molt date: moulted, guessed',
      'Pet name: who, guessed',
      'Qty: count, guessed',
      'Rack: shelf, guessed',
      'Scientific name: kind, guessed',
    ]);
    expect(unused).toEqual(['Next feeding']);
  });

  test.each([
    ['Name;Art;Größe (mm);Zuletzt gefüttert;Häutung;Anzahl;Regal'],
    ['Nom;Espèce;Taille (mm);Dernier repas;Mue;Quantité;Étagère'],
    ['Nombre;Especie;Tamaño (mm);Última comida;Muda;Cantidad;Estante'],
  ])('are found in %s', (headings) => {
    const [row] = animalsIn(`${headings}\nA;gbb;20;2026-03-14;2026-01-02;2;B3\n`).rows;
    expect(row?.becomes).toMatchObject({
      name: 'A',
      gaugeMm: 20,
      lastFed: 20_526,
      lastMoult: 20_455,
      count: 2,
      shelf: 'B3',
    });
  });

  test('chosen by the keeper win over guesses', () => {
    const reading = animalsIn('Foo,Name,Bar\ngbb,A,20 mm\n', { mapping: { kind: 'Foo', size: 'bar' } });
    expect(reading.rows[0]?.becomes).toMatchObject({ name: 'A', kind: 'gbb', gaugeMm: 20 });
    expect(reading.columns.map(({ column, how }) => `${column} ${how}`)).toEqual([
      'kind chosen',
      'size chosen',
      'who ours',
    ]);
  });

  test('that the file lacks are named, with the headings there are', () => {
    expect(problemOf('Foo,Bar\na,b\n')).toBe(
      'No column was found for "kind". Say which it is: "Foo" or "Bar".',
    );
    expect(problemOf('who,kind\na,gbb\n', { mapping: { size: 'Width' } })).toBe(
      'The file has no heading "Width". Its headings are "who" or "kind".',
    );
    expect(problemOf('who,kind\na,gbb\n', { mapping: { colour: 'who' } })).toMatch(
      /^"colour" is not a column that can be read\. It can be who, kind, genus, /,
    );
  });

  test('genus and species in two columns make one name', () => {
    const [row] = animalsIn('Genus,Species,size\nBrachypelma,hamorii,20 mm\n').rows;
    expect(row?.becomes).toMatchObject({ kind: 'b-hamorii', name: 'Brachypelma hamorii' });
  });

  test('of stock are found by their own words', () => {
    const { columns } = stockIn('Tub,Feeder,Size,Qty,Delivered\nA,dubia,large,10,\n');
    expect(columns.map(({ column }) => column).sort()).toEqual(['bin', 'came', 'count', 'prey', 'size']);
  });
});
