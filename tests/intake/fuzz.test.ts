/** Whatever bytes come, reading answers: it never throws, and says the same of the same file. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ANIMALS_TEMPLATE, STOCK_TEMPLATE } from '../../src/intake/index.ts';
import { animalsIn, animalsWritten, stockIn, stockWritten, utf8 } from '../support/intake-files.ts';

const RUNS = { numRuns: 500 };

const cell = fc.oneof(
  fc.constantFrom(
    '',
    '2.5"',
    '3/4 in',
    '18 mm',
    '4 m',
    '-3',
    '0',
    '1.2',
    '0.0.12',
    'gbb',
    'B. hamorii',
    'crickets',
    'dubia',
    'tarantula',
    'sling',
    'MM',
    '3/4/2025',
    '13.4.25',
    '2062-01-01',
    'Mar 21',
    '46102',
    'never',
    '~50',
    '1k',
    '"',
    '""',
    '__proto__',
    'constructor',
  ),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const HEADINGS =
  'who,kind,genus,size,unit,fed,moulted,count,shelf,label,sex,stage,room,notes,bin,prey,came,Größe (mm),next,__proto__'.split(
    ',',
  );
const file = fc
  .tuple(
    fc.constantFrom(',', ';', '\t', '|'),
    fc.constantFrom('\n', '\r\n', '\r'),
    fc.array(fc.constantFrom(...HEADINGS), { minLength: 1, maxLength: 10 }),
    fc.array(fc.array(cell, { maxLength: 10 }), { maxLength: 12 }),
  )
  .map(([separator, lineEnd, headings, rows]) =>
    [headings, ...rows].map((cells) => cells.join(separator)).join(lineEnd),
  );

/** Sheets whose kinds are known, so that they are ready to write; the rest of their cells is anything. */
const sheetOf = (headings: string, known: readonly string[]) =>
  fc
    .array(fc.tuple(fc.constantFrom(...known), fc.array(cell, { minLength: 8, maxLength: 8 })), {
      minLength: 1,
      maxLength: 6,
    })
    .map((rows) =>
      [headings, ...rows.map(([kind, cells]) => [kind, ...cells].map(quoted).join(','))].join('\n'),
    );
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const readyAnimals = sheetOf('kind,who,label,size,fed,moulted,count,sex,stage', [
  'gbb',
  'GBB',
  'B. hamorii',
  'Brachypelma sp.',
  'mantis',
]);
const readyStock = sheetOf('prey,bin,label,size,came,count,room,notes', ['dubia', 'crickets', 'red runner']);

const mangled = fc
  .tuple(
    fc.constantFrom(utf8(ANIMALS_TEMPLATE), utf8(STOCK_TEMPLATE)),
    fc.array(fc.tuple(fc.nat(400), fc.integer({ min: 0, max: 255 })), { maxLength: 8 }),
    fc.nat(400),
  )
  .map(([bytes, strokes, end]) => {
    const copy = bytes.slice(0, end || bytes.length);
    for (const [place, byte] of strokes) if (place < copy.length) copy[place] = byte;
    return copy;
  });

function isSound(bytes: Uint8Array): void {
  for (const reading of [animalsIn(bytes), stockIn(bytes)]) {
    expect(reading.rows.length + reading.problems.length).toBeGreaterThan(0);
    for (const { verdict, becomes } of reading.rows)
      expect(becomes === null).toBe(verdict === 'asked' || verdict === 'refused');
    for (const { sentence } of reading.problems) expect(sentence.length).toBeGreaterThan(10);
  }
  for (const { becomes } of animalsIn(bytes).rows) {
    if (!becomes) continue;
    expect(becomes.gaugeMm).toBeGreaterThan(0);
    expect(becomes.gaugeMm).toBeLessThanOrEqual(400);
    expect(Number.isSafeInteger(becomes.count) && becomes.count > 0).toBe(true);
    expect(becomes.name).not.toBe('');
  }
}

describe('reading', () => {
  test('answers random bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), isSound), RUNS);
  });

  test('answers mangled files', () => {
    fc.assert(fc.property(mangled, isSound), RUNS);
  });

  test('answers random sheets', () => {
    fc.assert(
      fc.property(file, (text) => isSound(utf8(text))),
      RUNS,
    );
  });

  test('of the same file again finds nothing new and nothing changed', () => {
    fc.assert(
      fc.property(readyAnimals, readyStock, (animalText, stockText) => {
        const wishes = { unit: 'mm', dates: 'dmy' } as const;
        const animals = animalsIn(animalText, wishes);
        expect(animals.ready).toBe(true);
        const again = animalsIn(animalText, { ...wishes, existing: animalsWritten(animals) });
        expect([again.tally.new, again.tally.changed]).toEqual([0, 0]);
        const stock = stockIn(stockText, wishes);
        expect(stock.ready).toBe(true);
        const stockAgain = stockIn(stockText, { ...wishes, existing: stockWritten(stock) });
        expect([stockAgain.tally.new, stockAgain.tally.changed]).toEqual([0, 0]);
      }),
      RUNS,
    );
  });
});
