/** Kinds of animals and prey species are found by many names, and asked about once when they are not. */
import { describe, expect, test } from 'vitest';
import { preySpecies } from '../../src/facts/prey/index.ts';
import { matchKind, matchPrey } from '../../src/intake/index.ts';
import { animalsIn, sentences, stockIn } from '../support/intake-files.ts';
import { INVENTED_KINDS } from '../support/invented-kinds.ts';
import { INVENTED_PREY } from '../support/invented-prey.ts';

const kindOf = (text: string) => {
  const match = matchKind(text, INVENTED_KINDS);
  return match ? `${match.item.code} ${match.how}` : null;
};
const preyOf = (text: string) => {
  const match = matchPrey(text, INVENTED_PREY);
  return match ? `${match.item.code} ${match.how}` : null;
};

describe('a kind', () => {
  test.each([
    ['Brachypelma hamorii', 'b-hamorii exact'],
    ['BRACHYPELMA  HAMORII', 'b-hamorii exact'],
    ['B. hamorii', 'b-hamorii exact'],
    ['B hamorii', 'b-hamorii exact'],
    ['mexican red-knee', 'b-hamorii exact'],
    ['Mexican Red Knee', 'b-hamorii exact'],
    ['Brachypelma smithi', 'b-hamorii exact'],
    ['GBB', 'gbb exact'],
    ['Brachypelma hamorii (Mexican red knee)', 'b-hamorii exact'],
    ['"Brachypelma hamorii"', 'b-hamorii exact'],
    ['cf. Brachypelma hamorii', 'b-hamorii exact'],
    ['Brachypelma hamorii Colima', 'b-hamorii within'],
    ['C. versicolor - Martinique', 'c-versicolor exact'],
    ['Brachypelma hamori', 'b-hamorii typo'],
    ['Bracypelma hamorri', 'b-hamorii typo'],
    ['C. versicolour', 'c-versicolor typo'],
    ['Brachypelma sp.', 'tarantula-ground genus'],
    ['Brachypelma albiceps', 'tarantula-ground genus'],
    ['Caribena laeta', 'tarantula-tree genus'],
    ['Mantis', 'mantid exact'],
    ['praying mantis', 'mantid group'],
    ['Gottesanbeterin', 'mantid group'],
    ['scorpions', 'scorpion exact'],
    ['desert scorpion', 'scorpion group'],
    ['arboreal tarantula', 'tarantula-tree exact'],
    ['Vogelspinne, arboreal', 'tarantula-tree group'],
  ])('%s is %s', (text, found) => {
    expect(kindOf(text)).toBe(found);
  });

  test.each(['', 'tarantula', 'whip spider', 'xyz', 'cat', 'A', '♥'])('"%s" is not decided', (text) => {
    expect(kindOf(text)).toBeNull();
  });

  test('says how it was read when not word for word', () => {
    const said = (text: string) => matchKind(text, INVENTED_KINDS)?.said;
    expect(said('GBB')).toBeNull();
    expect(said('Brachypelma hamori')).toBe(
      '"Brachypelma hamori" is read as "Brachypelma hamorii", taking it for a slip of the pen.',
    );
    expect(said('Caribena laeta')).toBe(
      '"Caribena laeta" is read as "Tarantula, arboreal": the genus is known, the species is not.',
    );
    expect(said('praying mantis')).toBe('"praying mantis" is read as "Mantid": only the group is named.');
  });

  test('with two names equally near is not decided', () => {
    const twins = ['Testa arida', 'Testa arina'].map((name) => ({
      ...INVENTED_KINDS[0]!,
      code: name,
      name,
      commonName: name,
      aliases: [],
    }));
    expect(matchKind('Testa ariba', twins)).toBeNull();
    expect(matchKind('Testa arida', twins)?.item.code).toBe('Testa arida');
  });
});

describe('a prey', () => {
  test.each([
    ['Acheta domesticus', 'house-cricket exact'],
    ['A. domesticus', 'house-cricket exact'],
    ['house crickets', 'house-cricket exact'],
    ['Heimchen', 'house-cricket exact'],
    ['Banded crickets', 'banded-cricket exact'],
    ['live banded crickets', 'banded-cricket within'],
    ['dubia', 'dubia exact'],
    ['Dubia roaches', 'dubia exact'],
    ['dubias', 'dubia exact'],
    ['red runers', 'red-runner typo'],
    ['crickets', 'house-cricket group'],
    ['Grillen', 'house-cricket group'],
  ])('%s is %s', (text, found) => {
    expect(preyOf(text)).toBe(found);
  });

  test('of which only the form is named is assumed for crickets, and asked for roaches', () => {
    expect(matchPrey('crickets', INVENTED_PREY)?.said).toBe(
      '"crickets" is read as "House cricket": the species is assumed.',
    );
    expect(preyOf('roaches')).toBeNull();
    expect(stockIn('bin,prey,size,count\nA,roaches,small,10\n').asks).toEqual([
      {
        about: 'prey',
        text: 'roaches',
        rows: [2],
        near: [
          { code: 'dubia', name: 'Dubia roach' },
          { code: 'red-runner', name: 'Red runner' },
        ],
        sentence:
          '"roaches" is not a known prey species (row 2). Which is it? Perhaps Dubia roach or Red runner?',
      },
    ]);
  });
});

describe('the prey of the Book', () => {
  test.each([
    ['superworms', 'zophobas-morio'],
    ['Riesenmehlwürmer', 'zophobas-morio'],
    ['mealworms', 'tenebrio-molitor'],
    ['springtails', 'folsomia-candida'],
    ['Springschwänze', 'folsomia-candida'],
    ['bean beetles', 'callosobruchus-maculatus'],
    ['flour beetles', 'tribolium-confusum'],
    ['red flour beetle', 'tribolium-castaneum'],
    ['silkworms', 'bombyx-mori'],
    ['Seidenraupen', 'bombyx-mori'],
    ['lobster roaches', 'nauphoeta-cinerea'],
    ['discoids', 'blaberus-discoidalis'],
  ])('%s are %s', (text, code) => {
    expect(matchPrey(text, preySpecies)?.item.code).toBe(code);
  });
});

describe('an unknown kind', () => {
  const FILE = 'who,kind,size\nA,zonk,20 mm\nB,gbb,20 mm\nC,zonk,30 mm\nD,tarantula,30 mm\n';

  test('is asked about once for all its rows, with what is near', () => {
    expect(
      animalsIn(FILE).asks.map(({ text, rows, near }) => [text, rows, near.map(({ code }) => code)]),
    ).toEqual([
      ['zonk', [2, 4], []],
      ['tarantula', [5], ['tarantula-ground', 'tarantula-tree']],
    ]);
  });

  test('is settled by an answer, or left out by an empty one', () => {
    const reading = animalsIn(FILE, { answers: { zonk: 'c-versicolor', tarantula: '' } });
    expect(reading.asks).toEqual([]);
    expect(reading.ready).toBe(true);
    expect(reading.rows.map(({ verdict, becomes }) => [verdict, becomes?.kind])).toEqual([
      ['new', 'c-versicolor'],
      ['new', 'gbb'],
      ['new', 'c-versicolor'],
      ['refused', undefined],
    ]);
    expect(sentences(reading)).toEqual(['Left out, as you answered.']);
  });

  test('answered with an unknown code is a Problem', () => {
    expect(animalsIn(FILE, { answers: { zonk: 'nope' } }).problems.map(({ sentence }) => sentence)).toEqual([
      'The answer "nope" for "zonk" is not a known code.',
    ]);
  });

  test('may be named in the column of names instead', () => {
    expect(animalsIn('who,kind,size\nGBB,,20 mm\n').rows[0]?.becomes?.kind).toBe('gbb');
  });

  test('of a sum below the list is not asked about', () => {
    const reading = animalsIn('who,kind,size,count\nA,gbb,20 mm,3\nTotal,,,3\n');
    expect(reading.ready).toBe(true);
    expect(sentences(reading)).toEqual(['The row looks like the sum below a list; it is left out.']);
  });

  test('of a row that names nothing at all refuses only that row', () => {
    const reading = animalsIn('who,kind,size\nA,gbb,20 mm\n,,30 mm\n');
    expect(reading.rows.map(({ verdict }) => verdict)).toEqual(['new', 'refused']);
    expect(sentences(reading)).toEqual([
      'The row names neither an animal nor a kind, so nothing can be told from it.',
    ]);
  });
});
