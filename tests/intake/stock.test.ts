/** Lists of live prey: trade sizes, counts and arrivals. */
import { describe, expect, test } from 'vitest';
import { sentences, stockIn } from '../support/intake-files.ts';

const lotOf = (prey: string, size: string, count = '100') =>
  stockIn(`bin;prey;size;count\nA;${prey};${size};${count}\n`).rows[0]?.becomes?.lot;
const notesOf = (prey: string, size: string, count = '100') =>
  sentences(stockIn(`bin;prey;size;count\nA;${prey};${size};${count}\n`));

describe('a trade size', () => {
  test.each([
    ['pinhead', 1.5, 3],
    ['Pinheads', 1.5, 3],
    ['medium', 9, 14],
    ['med', 9, 14],
    ['Lg', 16, 20],
    ['adult', 20, 25],
    ['adults', 20, 25],
    ['medium size', 9, 14],
    ['1/4 in', 4, 7],
    ['6 mm', 4, 7],
    ['5-6 mm', 5, 6],
    ['2.5 cm', 20, 25],
  ])('%s of house crickets is %d to %d mm', (size, fromMm, toMm) => {
    expect(lotOf('house cricket', size)).toEqual({ heads: 100, fromMm, toMm });
  });

  test('of mixed prey is all sizes, marked as assumed', () => {
    const [row] = stockIn('bin,prey,size,count\nA,dubia,mixed,10\n').rows;
    expect(row?.becomes).toMatchObject({ lot: { fromMm: 6, toMm: 45 }, sizeAssumed: true });
    expect(row?.notes.map(({ sentence }) => sentence)).toEqual([
      '"mixed" is read as all sizes: 6 mm to 45 mm.',
    ]);
  });

  test('that falls between classes is a narrow band, which is said', () => {
    expect(lotOf('house cricket', '8 mm')).toMatchObject({ fromMm: 7.2, toMm: 8.8 });
    expect(notesOf('house cricket', '8 mm')).toEqual(['"8 mm" is read as 7.2 mm to 8.8 mm.']);
  });

  test('says the class a length was read as', () => {
    expect(notesOf('house cricket', '1/4 in')).toEqual(['"1/4 in" is read as small: 4 mm to 7 mm.']);
  });

  test('longer than the species is quoted, and the middle class assumed', () => {
    expect(notesOf('house cricket', '2 in')).toEqual([
      '"2 in" is longer than any House cricket (at most 25 mm).',
      'Size assumed: medium, 9 mm to 14 mm.',
    ]);
  });

  test('that cannot be read is quoted with what would be right', () => {
    expect(notesOf('red runner', 'jumbo')).toEqual([
      '"jumbo" is not a size of Red runner; write small or large, or a length such as 6 mm.',
      'Size assumed: large, 20 mm to 28 mm.',
    ]);
  });

  test('that is missing is assumed, which is said and marked', () => {
    const [row] = stockIn('bin,prey,count\nA,dubia,10\n').rows;
    expect(row?.becomes).toMatchObject({ lot: { heads: 10, fromMm: 15, toMm: 25 }, sizeAssumed: true });
    expect(row?.notes.map(({ sentence }) => sentence)).toEqual(['Size assumed: medium, 15 mm to 25 mm.']);
  });

  test('without a unit is asked about', () => {
    const file = 'bin,prey,size,count\nA,dubia,20,10\n';
    expect(stockIn(file).asks.map(({ about }) => about)).toEqual(['unit']);
    expect(stockIn(file, { unit: 'mm' }).rows[0]?.becomes?.lot).toMatchObject({ fromMm: 15, toMm: 25 });
  });
});

describe('what a box is kept for', () => {
  const roleOf = (row: string) => stockIn(`bin,prey,role,count\n${row}\n`).rows[0]!;

  test.each([
    ['Tub,dubia,colony,50', 'colony'],
    ['Tub,dubia,Breeding,50', 'colony'],
    ['Tub,dubia,yes,50', 'colony'],
    ['Tub,dubia,bin,50', 'holding'],
    ['Tub,dubia,,50', 'holding'],
    ['Dubia colony,dubia,,50', 'colony'],
  ])('%s is a %s', (row, role) => {
    expect(roleOf(row).becomes?.role).toBe(role);
  });

  test('a colony without a size holds all sizes, and its name alone is said to have told', () => {
    const { becomes, notes } = roleOf('Dubia colony,dubia,,50');
    expect(becomes).toMatchObject({ lot: { heads: 50, fromMm: 6, toMm: 45 }, sizeAssumed: true });
    expect(notes.map(({ sentence }) => sentence)).toEqual([
      'Taken as a breeding colony, by its name.',
      'A colony holds all sizes: 6 mm to 45 mm.',
    ]);
  });

  test('a word that is none is quoted with those that are', () => {
    expect(roleOf('Tub,dubia,zoo,50').notes[0]?.sentence).toBe(
      '"zoo" is not one of: bin, colony, cup, frozen.',
    );
  });
});

describe('a row of stock', () => {
  test('carries what is needed to fill a bin', () => {
    const [row] = stockIn('bin,prey,size,count,came,room\nBox,crickets,small,~250,14.3.26,den\n').rows;
    expect(row?.becomes).toEqual({
      label: null,
      bin: 'Box',
      species: 'house-cricket',
      role: 'holding',
      lot: { heads: 250, fromMm: 4, toMm: 7 },
      sizeAssumed: false,
      came: 20_526,
      room: 'den',
      notes: '',
    });
  });

  test('without a name takes that of its prey, numbered', () => {
    expect(
      stockIn('prey,size,count\ndubia,small,1\ndubia,large,2\n').rows.map(({ becomes }) => becomes?.bin),
    ).toEqual(['Dubia roaches', 'Dubia roaches 2']);
  });

  test('without a name takes its label, if that is a word', () => {
    const names = stockIn('label,prey,size,count\nPinheads,dubia,small,1\n17,dubia,large,2\n').rows;
    expect(names.map(({ becomes }) => becomes?.bin)).toEqual(['Pinheads', 'Dubia roaches']);
  });

  test('takes its size from the prey when it is written there', () => {
    const lots = ['dubia 20 mm', 'dubia 2 cm'].map((prey) => lotOf(prey, '', '5'));
    expect(lots[0]).toEqual(lotOf('dubia', '20 mm', '5'));
    expect(lots[1]).toEqual(lots[0]);
  });

  test('without a count comes uncounted; an empty bin is an answer', () => {
    expect(lotOf('dubia', 'small', '')).toBeNull();
    expect(notesOf('dubia', 'small', '')).toEqual(['No count: the bin is brought in uncounted.']);
    expect(lotOf('dubia', 'small', '0')).toMatchObject({ heads: 0 });
    expect(notesOf('dubia', 'small', '-5')[0]).toBe('"-5" is not a count; write a whole number such as 12.');
  });

  test('that came in the future says so', () => {
    expect(sentences(stockIn('bin,prey,size,count,came\nA,dubia,small,1,2062-01-01\n'))).toEqual([
      '"2062-01-01" (2062-01-01) is in the future; write the day it happened, at the latest 2026-03-23.',
    ]);
  });

  test('that names neither bin nor prey is refused', () => {
    const reading = stockIn('bin,prey,size,count\n,,small,1\nA,dubia,small,1\n');
    expect(reading.rows.map(({ verdict }) => verdict)).toEqual(['refused', 'new']);
  });

  test('with an unclear order of days waits, as the whole column does', () => {
    const reading = stockIn('bin,prey,size,count,came\nA,dubia,small,1,3/4/2025\n');
    expect(reading.problems.map(({ code }) => code)).toEqual(['dates-ambiguous']);
    expect(reading.rows.map(({ verdict }) => verdict)).toEqual(['asked']);
  });
});
