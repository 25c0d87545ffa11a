/** Sexes, counts and stages of animals, and sizes taken from them. */
import { describe, expect, test } from 'vitest';
import { animalsIn, sentences } from '../support/intake-files.ts';

const becomesOf = (headings: string, cells: string) =>
  animalsIn(`who;kind;${headings}\nA;gbb;${cells}\n`).rows.map(({ becomes }) => becomes);
const notesOf = (headings: string, cells: string) =>
  sentences(animalsIn(`who;kind;${headings}\nA;gbb;${cells}\n`));

describe('a sex', () => {
  test.each([
    ['1.0', 'male', 1],
    ['0.1', 'female', 1],
    ['0,1', 'female', 1],
    ['0.1.0', 'female', 1],
    ['0.0.1', 'unsexed', 1],
    ['0.0.12', 'unsexed', 12],
    ['M', 'male', 1],
    ['f', 'female', 1],
    ['U', 'unsexed', 1],
    ['Male', 'male', 1],
    ['female', 'female', 1],
    ['♂', 'male', 1],
    ['♀', 'female', 1],
    ['weiblich', 'female', 1],
    ['?', 'unsexed', 1],
  ])('%s is %s x %d', (text, sex, count) => {
    expect(becomesOf('size;sex', `20 mm;${text}`)).toMatchObject([{ sex, count }]);
    expect(notesOf('size;sex', `20 mm;${text}`)).toEqual([]);
  });

  test('in doubt is read as unsexed, which is said', () => {
    expect(becomesOf('size;sex', '20 mm;F?')).toMatchObject([{ sex: 'unsexed' }]);
    expect(notesOf('size;sex', '20 mm;F?')).toEqual(['Sex "F?" is in doubt: read as unsexed.']);
  });

  test('that cannot be read is quoted', () => {
    expect(notesOf('size;sex', '20 mm;blue')).toEqual([
      '"blue" is not a sex; write male, female, unsexed, or 1.0, 0.1, 0.0.1.',
    ]);
  });

  test('of a mixed group splits the row, which is said', () => {
    expect(becomesOf('size;sex;label', '20 mm;1.2;T7')).toMatchObject([
      { name: 'A (male)', label: 'T7 m', sex: 'male', count: 1 },
      { name: 'A (female)', label: 'T7 f', sex: 'female', count: 2 },
    ]);
    expect(notesOf('size;sex', '20 mm;1.2')[0]).toBe('The row is split by sex: 1 male, 2 female.');
  });

  test('may be written in the count or beside the kind', () => {
    expect(becomesOf('size;count', '20 mm;0.0.5')).toMatchObject([{ sex: 'unsexed', count: 5 }]);
    const [row] = animalsIn('who,kind,size\nA,0.1 B. hamorii,20 mm\n').rows;
    expect(row?.becomes).toMatchObject({ kind: 'b-hamorii', sex: 'female', count: 1 });
  });

  test('and a count that disagree are told', () => {
    expect(becomesOf('size;sex;count', '20 mm;0.0.5;4')).toMatchObject([{ count: 5 }]);
    expect(notesOf('size;sex;count', '20 mm;0.0.5;4')).toEqual([
      'Count "4" is not the 5 of "0.0.5"; the latter was taken.',
    ]);
  });
});

describe('a count of animals', () => {
  test('of 0 brings nothing in and removes nothing', () => {
    const [row] = animalsIn('who,kind,size,count\nA,gbb,20 mm,0\n').rows;
    expect(row).toMatchObject({ verdict: 'refused', becomes: null });
    expect(row?.notes.map(({ sentence }) => sentence)).toEqual([
      'The row says that there are none; nothing is brought in and nothing removed.',
    ]);
  });

  test.each([
    ['-2', '"-2" is not a count; write a whole number such as 12.'],
    ['lots', '"lots" is not a count; write a whole number such as 12.'],
    ['900000', '"900000" is too many for one row; at most 100000 can be read.'],
  ])('of %s is quoted and taken as 1', (count, sentence) => {
    expect(becomesOf('size;count', `20 mm;${count}`)).toMatchObject([{ count: 1 }]);
    expect(notesOf('size;count', `20 mm;${count}`)).toEqual([sentence]);
  });
});

describe('a stage gives the size nobody measured, marked as assumed', () => {
  // Green bottle blue: adult 130 mm in the middle; young first feed at 10 mm; juvenile 0.25 to 0.65, subadult to 0.85.
  test.each([
    ['sling', 10],
    ["s'ling", 10],
    ['Spiderling', 10],
    ['juvenile', 58.5],
    ['juv', 58.5],
    ['sub-adult', 97.5],
    ['subadult', 97.5],
    ['SA', 97.5],
    ['adult', 130],
    ['i2', 10],
    ['L4', 22.5],
    ['instar 5', 33.75],
    ['5th instar', 33.75],
    ['i12', 130],
  ])('%s is %d mm', (stage, gaugeMm) => {
    expect(becomesOf('stage', stage)).toMatchObject([{ gaugeMm, gaugeAssumed: true }]);
    expect(notesOf('stage', stage)[0]).toContain(`Size assumed from "${stage}":`);
  });

  test('also where it stands in the size column', () => {
    expect(becomesOf('size', 'sling')).toMatchObject([{ gaugeMm: 10, gaugeAssumed: true }]);
  });

  test('in the words of the kind', () => {
    const [row] = animalsIn('who,kind,stage\nA,mantis,nymph\n').rows;
    expect(row?.becomes).toMatchObject({ gaugeMm: 9, gaugeAssumed: true });
  });

  test('and without stage or size the middle of a juvenile', () => {
    expect(becomesOf('size;stage', ';')).toMatchObject([{ gaugeMm: 58.5, gaugeAssumed: true }]);
    expect(notesOf('size;stage', ';')).toEqual([
      'Size assumed from the middle of a juvenile, as the row tells no more: 58.5 mm.',
    ]);
  });

  test('also after a size that cannot be', () => {
    expect(notesOf('size;stage', '4 m;sling')).toEqual([
      '"4 m" is not a likely size; it should be more than 0 and at most 400 mm.',
      'Size assumed from "sling": 10 mm.',
    ]);
  });
});

describe('a stage', () => {
  test.each([
    ['AF', 'female', false],
    ['MF', 'female', false],
    ['AM', 'male', true],
    ['MM', 'male', true],
    ['mature male', 'male', true],
    ['adult female', 'female', false],
    ['SAF', 'female', false],
    ['juv male', 'male', false],
  ])('%s says %s, matured %s', (stage, sex, matured) => {
    expect(becomesOf('stage', stage)).toMatchObject([{ sex, matured }]);
  });

  test('that cannot be read is quoted', () => {
    expect(notesOf('size;stage', '20 mm;purple')).toEqual([
      '"purple" is not a stage; write sling, juvenile, subadult, adult or MM.',
    ]);
  });

  test('beside a measured size yields to it, unless it says adult', () => {
    expect(becomesOf('size;stage', '120 mm;sling')).toMatchObject([{ stageOverride: null, gaugeMm: 120 }]);
    expect(notesOf('size;stage', '120 mm;sling')).toEqual([
      '"sling" beside 120 mm: by its size it is adult, and the size is taken.',
    ]);
    expect(becomesOf('size;stage', '60 mm;adult')).toMatchObject([{ stageOverride: 'adult' }]);
    expect(notesOf('size;stage', '60 mm;adult')).toEqual([
      '"adult" beside 60 mm: small for an adult, kept as adult.',
    ]);
  });

  test('of a mature male yields to a sex that says female', () => {
    expect(becomesOf('stage;sex', 'MM;F')).toMatchObject([{ sex: 'female', matured: false }]);
    expect(notesOf('size;stage;sex', '120 mm;MM;F')).toEqual([
      'The sex says female, the stage says mature male; the sex was taken.',
    ]);
  });
});
