/** Lengths and temperatures as keepers write them. */
import { describe, expect, test } from 'vitest';
import { readCount, readLength, readTemperature, readUnit } from '../../src/intake/index.ts';
import { animalsIn, sentences } from '../support/intake-files.ts';

const mmOf = (text: string, unit: 'mm' | 'cm' | 'in' | null = null) => {
  const read = readLength(text, unit);
  return read.ok ? read.value.mm : read.problem.sentence;
};

describe('a length', () => {
  test.each([
    ['3/4 in', 19.05],
    ['2.5"', 63.5],
    ['1 1/2"', 38.1],
    ['1-1/2"', 38.1],
    ['¾"', 19.05],
    ['1¾ inches', 44.45],
    ['2”', 50.8],
    ["1''", 25.4],
    ['18 mm', 18],
    ['18MM', 18],
    ['1.8cm', 18],
    ['1,5 cm', 15],
    ['.5 in', 12.7],
    ['~20 mm', 20],
    ['ca. 20 mm', 20],
    ['2 in DLS', 50.8],
    ['5-6 mm', 5.5],
    ['5 – 6 mm', 5.5],
    ['5 to 6 mm', 5.5],
    ['1/4-1/2"', 9.525],
    ['1 1/2" - 2"', 44.45],
    ['3 Zoll', 76.2],
  ])('%s is %d mm', (text, mm) => {
    expect(mmOf(text)).toBe(mm);
  });

  test('without a unit takes the one given, and says so when none is', () => {
    expect(mmOf('2', 'in')).toBe(50.8);
    expect(mmOf('2', 'cm')).toBe(20);
    expect(mmOf('2')).toBe(
      '"2" has no unit; write it as 2 mm, 2 cm or 2 in, or give one unit for the whole file.',
    );
  });

  test.each(['0', '0 mm', '-3', '-3 cm', '4 m', '401 mm', '16 in'])('%s is not a likely size', (text) => {
    expect(mmOf(text)).toBe(`"${text}" is not a likely size; it should be more than 0 and at most 400 mm.`);
  });

  test.each(['big', '1/0 in', '3 apples', '1,500 mm', '3 x 4 mm'])('%s cannot be read', (text) => {
    expect(mmOf(text)).toBe(`"${text}" is not a size that can be read; write it as 18 mm, 1.8 cm or 3/4 in.`);
  });

  test('unit is found in cells and headings', () => {
    expect(['in', 'Inches', 'Size (mm)', 'size in cm', 'DLS (")', 'Size'].map(readUnit)).toEqual([
      'in',
      'in',
      'mm',
      'cm',
      'in',
      null,
    ]);
  });
});

describe('sizes of a file', () => {
  test('take the unit column, then the heading', () => {
    const reading = animalsIn('who,kind,Size (cm),unit\nA,gbb,2,in\nB,gbb,2,\nC,gbb,2 mm,in\n');
    expect(reading.rows.map(({ becomes }) => becomes?.gaugeMm)).toEqual([50.8, 20, 2]);
  });

  test('without any unit are asked about once, and rows with a unit go on', () => {
    const file = 'who,kind,size\nA,gbb,2\nB,gbb,3 cm\nC,gbb,4\n';
    const reading = animalsIn(file);
    expect(reading.ready).toBe(false);
    expect(reading.asks).toEqual([
      {
        about: 'unit',
        text: '2',
        near: [],
        rows: [2, 4],
        sentence:
          'Sizes such as "2" have no unit (2 rows, first in row 2). Are they in inches, centimetres or millimetres?',
      },
    ]);
    expect(reading.rows.map(({ verdict }) => verdict)).toEqual(['asked', 'new', 'asked']);
    const answered = animalsIn(file, { unit: 'in' });
    expect(answered.rows.map(({ becomes }) => becomes?.gaugeMm)).toEqual([50.8, 30, 101.6]);
    expect(answered.ready).toBe(true);
  });

  test('written as a range are the middle, which is said', () => {
    expect(sentences(animalsIn('who,kind,size\nA,gbb,5-6 mm\n'))).toEqual([
      'Size 5.5 mm: the middle of "5-6 mm".',
    ]);
  });

  test('beyond what the kind grows to are kept and said', () => {
    expect(sentences(animalsIn('who,kind,size\nA,mantis,150 mm\n'))).toEqual([
      '"150 mm" is more than Mantis grows to (80 mm).',
    ]);
  });

  test('that no animal of the kind can have are refused, and not read as its size', () => {
    const reading = animalsIn('who,kind,size\nA,mantis,200 mm\n');
    expect(sentences(reading)[0]).toContain('"200 mm" is far more than any Mantis grows to');
    expect(reading.rows[0]?.notes[0]?.weight).toBe('trouble');
    expect(reading.rows[0]?.becomes?.gaugeAssumed).toBe(true);
  });
});

describe('a temperature', () => {
  const tempOf = (text: string, unit: 'C' | 'F' | null = null) => {
    const read = readTemperature(text, unit);
    return read.ok ? Math.round(read.value * 100) / 100 : read.problem.sentence;
  };
  test.each([
    ['85 F', 29.44],
    ['26 C', 26],
    ['26°C', 26],
    ['26,5 °C', 26.5],
    ['78-82 F', 26.67],
  ])('%s is %d °C', (text, tempC) => {
    expect(tempOf(text)).toBe(tempC);
  });
  test('quotes what cannot be', () => {
    expect(tempOf('85 C')).toBe('"85 C" is not a likely temperature; it should be from 0 to 50 °C.');
    expect(tempOf('warm')).toBe('"warm" is not a temperature; write it as 26 C or 79 F.');
    expect(tempOf('26')).toBe('"26" is not a temperature; write it as 26 C or 79 F.');
    expect(tempOf('79', 'F')).toBe(26.11);
  });
});

describe('a count', () => {
  const headsOf = (text: string) => {
    const read = readCount(text);
    return read.ok ? read.value.heads : read.problem.sentence;
  };
  test.each([
    ['12', 12],
    ['ca. 200', 200],
    ['~50', 50],
    ['1k', 1000],
    ['1.5k', 1500],
    ['1,200', 1200],
    ['1.200', 1200],
    ['200+', 200],
    ['x12', 12],
    ['50-60', 55],
    ['0', 0],
  ])('%s is %d', (text, heads) => {
    expect(headsOf(text)).toBe(heads);
  });
  test.each(['many', '-4', '2.5', '1e5'])('%s is not one', (text) => {
    expect(headsOf(text)).toBe(`"${text}" is not a count; write a whole number such as 12.`);
  });
  test('has a limit', () => {
    expect(headsOf('5000000')).toBe('"5000000" is too many; at most 1000000 can be read.');
  });
});
