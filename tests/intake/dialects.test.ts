/** One list in twelve dialects of CSV must read as the same animals. */
import { describe, expect, test } from 'vitest';
import { animalsIn, utf8 } from '../support/intake-files.ts';

const ROWS = [
  ['who', 'kind', 'size', 'fed', 'notes'],
  ['Zoë', 'Brachypelma hamorii', '5,5 cm', '2026-03-14', 'on "top" shelf'],
  ['Bob, the 2nd', 'GBB', '2.5 in', '2026-03-21', 'a; b'],
];

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
const sheet = (separator: string, lineEnd = '\n'): string =>
  ROWS.map((row) => row.map(quoted).join(separator)).join(lineEnd) + lineEnd;
const utf16 = (text: string, littleEndian: boolean): Uint8Array => {
  const bytes = new DataView(new ArrayBuffer(2 * text.length + 2));
  [...`\ufeff${text}`].forEach((sign, index) => {
    bytes.setUint16(2 * index, sign.charCodeAt(0), littleEndian);
  });
  return new Uint8Array(bytes.buffer);
};
const latin = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

const DIALECTS: readonly (readonly [string, Uint8Array])[] = [
  ['commas, UTF-8', utf8(sheet(','))],
  ['semicolons', utf8(sheet(';'))],
  ['tabs', utf8(sheet('\t'))],
  ['pipes', utf8(sheet('|'))],
  ['a byte order mark', utf8(`\ufeff${sheet(',')}`)],
  ['CRLF line ends', utf8(sheet(';', '\r\n'))],
  ['old CR line ends', utf8(sheet(',', '\r'))],
  ['UTF-16 little-endian', utf16(sheet('\t', '\r\n'), true)],
  ['UTF-16 big-endian', utf16(sheet('\t', '\r\n'), false)],
  ['Windows-1252', latin(sheet(';', '\r\n'))],
  ['a sep= line', utf8(`sep=;\r\n${sheet(';', '\r\n')}`)],
  ['no line end at the end', utf8(sheet(',').trimEnd())],
];

describe('twelve dialects', () => {
  test.each(DIALECTS)('%s read as the same two animals', (_, bytes) => {
    const reading = animalsIn(bytes);
    expect(reading.problems).toEqual([]);
    expect(reading.rows.map(({ row, verdict }) => [row, verdict])).toEqual([
      [2, 'new'],
      [3, 'new'],
    ]);
    expect(reading.rows.map(({ becomes }) => becomes)).toMatchObject([
      { name: 'Zoë', kind: 'b-hamorii', gaugeMm: 55, lastFed: 20_526, notes: 'on "top" shelf' },
      { name: 'Bob, the 2nd', kind: 'gbb', gaugeMm: 63.5, lastFed: 20_533, notes: 'a; b' },
    ]);
  });

  test('say their separator and encoding', () => {
    const { separator, encoding } = animalsIn(latin(sheet(';')));
    expect([separator, encoding]).toEqual([';', 'Windows-1252']);
  });
});

describe('untidy sheets', () => {
  test('a title above the headings and blank rows are passed over, and rows keep their spreadsheet number', () => {
    const reading = animalsIn('My animals;;\n;;\nwho;kind;size\n\nA;gbb;1,5 cm\n;;\nB;gbb;20 mm\n');
    expect(reading.rows.map(({ row }) => row)).toEqual([5, 7]);
    expect(reading.remarks).toEqual(['The headings stand in row 3; what is above was left out.']);
  });

  test('ragged rows are read as far as they go', () => {
    const reading = animalsIn('who,kind,size,shelf\nA,gbb\nB,gbb,20 mm,A1,extra\n');
    expect(reading.rows.map(({ becomes }) => becomes?.shelf)).toEqual(['', 'A1']);
    expect(reading.remarks).toEqual([
      'Some rows have 5 cells under 4 headings; the cells beyond were left out.',
    ]);
  });

  test('inch marks in cells without quotes are not taken for quotes', () => {
    const reading = animalsIn('who,kind,size\nA,gbb,2.5"\nB,gbb,1 1/2"\nC,gbb,"2.5"""\n');
    expect(reading.rows.map(({ becomes }) => becomes?.gaugeMm)).toEqual([63.5, 38.1, 63.5]);
  });

  test('a quotation mark that never closes loses no row', () => {
    const reading = animalsIn('who,kind,size\nA,gbb,20 mm\n"B,gbb,30 mm\nC,gbb,40 mm\n');
    expect(reading.rows.map(({ becomes }) => becomes?.gaugeMm)).toEqual([20, 30, 40]);
    expect(reading.remarks).toEqual([
      'A quotation mark in row 3 never closes; such marks were read as plain characters.',
    ]);
  });

  test('a cell neutralised on export is restored', () => {
    expect(animalsIn("who,kind,size\n'=A1,gbb,20 mm\n").rows[0]?.becomes?.name).toBe('=A1');
  });
});
