/** `demand` and `species`, and what is said to a command that is none. */
import { describe, expect, it } from 'vitest';
import { pencilRoom, terminal } from '../support/command.ts';

describe('demand', () => {
  it('prints the middle forecast and its band for each week', async () => {
    const { exit, out } = await (await pencilRoom()).type('demand', '--weeks', '3');
    expect(exit).toBe(0);
    expect(out).toMatch(/^group +heads +ideal +week 1 +week 2 +week 3 +in all$/m);
    expect(out).toMatch(/^tarantula spiderlings +1 +[\d.]+ mm( +\d+ \(\d+-\d+\)){4}$/m);
  });

  it('prints the closed form beside the simulation', async () => {
    const at = terminal();
    const group = 'who,kind,size,unit,fed,count\nTwelve,Brachypelma hamorii,12,mm,2026-11-27,12\n';
    await at.type('import', at.file('group.csv', group));
    const { out } = await at.type('demand', '--json', '--weeks', '2');
    const [found] = JSON.parse(out).groups;
    expect(found.exact.share).toBe(1);
    found.weeks.forEach(({ mean, variance }: { mean: number; variance: number }, week: number) => {
      expect(Math.abs(found.exact.weekMeans[week] - mean)).toBeLessThan(4 * Math.sqrt(variance / 400));
    });
  });

  it.each([['0'], ['27'], ['two']])('--weeks %s is a sentence and exit code 2', async (weeks) => {
    const { exit, err } = await (await pencilRoom()).type('demand', '--weeks', weeks);
    expect(err).toBe(`--weeks is "${weeks}"; give a whole number of weeks from 1 to 26.`);
    expect(exit).toBe(2);
  });
});

describe('species', () => {
  it('prints stages, ages and growth', async () => {
    const { exit, out } = await terminal().type('species', 'banded cricket', '--temp', '30');
    expect(exit).toBe(0);
    expect(out.split('\n')[0]).toBe('Banded cricket (Gryllodes sigillatus) at 30 °C');
    expect(out).toMatch(/^hatch to adult +43\.7 +14 % +83 %$/m);
    expect(out).toMatch(
      /^A colony with room changes by a factor of [\d.]+ a week and doubles in [\d.]+ days\.$/m,
    );
  });

  it('reads names and temperatures as keepers write them', async () => {
    const { out } = await terminal().type('species', 'Dubia', '--temp', '86F', '--json');
    expect(JSON.parse(out)).toMatchObject({ species: 'blaptica-dubia', tempC: 30 });
  });

  it('says how a name with a slip was read, apart from the answer', async () => {
    const { exit, out, err } = await terminal().type('species', 'dubai', '--json');
    expect(err).toBe('"dubai" is read as "dubia roach", taking it for a slip of the pen.');
    expect({ exit, species: JSON.parse(out).species }).toEqual({ exit: 0, species: 'blaptica-dubia' });
  });

  it('says plainly that nothing develops', async () => {
    const { exit, out } = await terminal().type('species', 'banded cricket', '--temp', '15');
    expect(exit).toBe(0);
    expect(out).toContain('Nothing develops at 15 °C');
    expect(out).not.toContain('A colony');
  });

  it.each([
    [['dubbia roch', '--temp', '400'], '"400" is not a likely temperature'],
    [['dubia', '--temp', 'warm'], '"warm" is not a temperature'],
    [['dubidubi'], '"dubidubi" is not a prey species known here. Perhaps: '],
    [['wasp grubs'], '"wasp grubs" is not a prey species known here. Perhaps: '],
    [[], 'Say which prey species. Perhaps: house cricket'],
    [['house', 'cricket'], '"cricket" is not understood here: put several words in quotation marks.'],
  ])('%j is a sentence and exit code 2', async (words, sentence) => {
    const { exit, err, out } = await terminal().type('species', ...words);
    expect(err).toContain(sentence);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
  });
});

describe('the command', () => {
  it('is explained when it is not named or help is asked for', async () => {
    const asked = await terminal().type('help');
    expect(asked.exit).toBe(0);
    expect(asked.out).toContain('import <file>');
    expect(await terminal().type()).toEqual({ ...asked, exit: 2 });
  });

  it.each([['chekc'], ['constructor']])('"%s" is not one', async (name) => {
    const { exit, err } = await terminal().type(name);
    expect(err).toBe(`"${name}" is not a command; there are import, check, demand, species and help.`);
    expect(exit).toBe(2);
  });
});
