/** Dates: the order of day and month is told by the whole column or asked for, never guessed. */
import { describe, expect, test } from 'vitest';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { animalsIn, sentences } from '../support/intake-files.ts';

const fileOf = (cells: readonly string[]) =>
  ['who;kind;size;fed', ...cells.map((cell, index) => `A${index};gbb;20 mm;${cell}`)].join('\n');

const daysIn = (cells: readonly string[], options = {}) =>
  animalsIn(fileOf(cells), options).rows.map(({ becomes }) =>
    becomes?.lastFed == null ? null : civilDate(becomes.lastFed),
  );
const problemsIn = (cells: readonly string[]) =>
  animalsIn(fileOf(cells)).problems.map(({ code, sentence }) => `${code}: ${sentence}`);

describe('a date', () => {
  test.each([
    '2026-03-21',
    '2026/3/21',
    '2026.03.21',
    '20260321',
    '21.3.26',
    '21.03.2026',
    '3/21/2026',
    '21-3-2026',
    '21 Mar 2026',
    '21. März 2026',
    '21 mars 2026',
    '21 de marzo de 2026',
    'March 21, 2026',
    'Mar 21st 2026',
    'Sat 21 March 2026',
    '21-Mar-26',
    '2026-03-21 18:30',
    '2026-03-21T18:30:00Z',
    '3/21/2026 6:30 PM',
    '46102',
    '46102.75',
  ])('%s is the 21st of March', (text) => {
    expect(daysIn([text])).toEqual(['2026-03-21']);
  });

  test('without a year is the nearest in the past, which is said', () => {
    expect(daysIn(['Mar 21', '24 Mar', 'Dec 1', '3/13'])).toEqual([
      '2026-03-21',
      '2025-03-24',
      '2025-12-01',
      '2026-03-13',
    ]);
    expect(sentences(animalsIn(fileOf(['Mar 21'])))).toEqual([
      '"Mar 21" has no year: the nearest such day in the past is taken.',
    ]);
  });

  test.each(['never', '-', '?', '', 'n/a', 'unknown'])('"%s" is none, without a word', (text) => {
    expect(daysIn([text])).toEqual([null]);
    expect(sentences(animalsIn(fileOf([text])))).toEqual([]);
  });

  test.each([
    [
      '2062-03-21',
      '"2062-03-21" (2062-03-21) is in the future; write the day it happened, at the latest 2026-03-23.',
    ],
    [
      '21.3.62',
      '"21.3.62" (2062-03-21) is in the future; write the day it happened, at the latest 2026-03-23.',
    ],
    [
      '1989-12-31',
      '"1989-12-31" (1989-12-31) is before 1990; write the day it happened, such as 2026-03-23.',
    ],
    ['2026-02-30', '"2026-02-30" is not a date and is left empty; write it like 2026-03-21.'],
    ['2062', '"2062" is not a date and is left empty; write it like 2026-03-21.'],
    ['soon', '"soon" is not a date and is left empty; write it like 2026-03-21.'],
  ])('%s is left out of its row, and the row stands', (text, sentence) => {
    const reading = animalsIn(fileOf([text]));
    expect(sentences(reading)).toEqual([sentence]);
    expect(reading.rows[0]).toMatchObject({ verdict: 'new', becomes: { lastFed: null } });
    expect(reading.ready).toBe(true);
  });
});

describe('the order of day and month', () => {
  test('is told by any one row of the column', () => {
    expect(daysIn(['3/4/2025', '13/4/2025'])).toEqual(['2025-04-03', '2025-04-13']);
    expect(daysIn(['3/4/2025', '4/13/2025'])).toEqual(['2025-03-04', '2025-04-13']);
    expect(animalsIn(fileOf(['3/4/2025', '4/13/2025'])).dateOrder).toBe('mdy');
  });

  test('is not guessed when both fit: the keeper must choose', () => {
    expect(problemsIn(['3/4/2025', '5/6/2025'])).toEqual([
      'dates-ambiguous: The dates in "fed" could be day first or month first: "3/4/2025" is 2025-04-03 or 2025-03-04. Choose the order.',
    ]);
    expect(animalsIn(fileOf(['3/4/2025', '2025-06-01'])).rows.map(({ verdict }) => verdict)).toEqual([
      'asked',
      'new',
    ]);
    expect(daysIn(['3/4/2025'], { dates: 'dmy' })).toEqual(['2025-04-03']);
    expect(daysIn(['3/4/2025'], { dates: 'mdy' })).toEqual(['2025-03-04']);
  });

  test('does not matter when it makes no difference', () => {
    expect(daysIn(['3/3/2025', '5.5.25'])).toEqual(['2025-03-03', '2025-05-05']);
  });

  test('may put the year first when two digits stand between dashes', () => {
    expect(problemsIn(['25-03-21'])[0]).toMatch(/could be day first or year first/);
    expect(daysIn(['25-03-21'], { dates: 'ymd' })).toEqual(['2025-03-21']);
  });

  test('that rows contradict is a Problem that quotes both', () => {
    expect(problemsIn(['13/4/2025', '4/13/2025'])).toEqual([
      'dates-mixed: The dates in "fed" do not share one order: "13/4/2025" and "4/13/2025". Write them all like 2026-03-21, or choose the order; a date that does not fit it is left empty.',
    ]);
  });

  test('is not upset by one cell that is no day in any order', () => {
    expect(daysIn(['31/2/2025', '13/4/2025'])).toEqual([null, '2025-04-13']);
  });

  test('proven by one column serves the others of the file, and is said', () => {
    const reading = animalsIn('who,kind,size,fed,moulted\nA,gbb,20 mm,13/4/2025,3/4/2025\n');
    expect(reading.rows[0]?.becomes?.lastMoult).toBe(20_181);
    expect(reading.remarks).toEqual([
      'Dates in "moulted" are read day first, as the file\'s other dates are.',
    ]);
  });

  test('serial numbers count only where the whole column is such', () => {
    expect(daysIn(['46102', '', '46000'])).toEqual(['2026-03-21', null, '2025-12-09']);
    expect(daysIn(['46102', '2026-03-14'])).toEqual([null, '2026-03-14']);
  });
});
