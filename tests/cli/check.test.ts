/** `check`: its verdict for people, for programs and for scripts. */
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { restBin } from '../../src/actions/index.ts';
import type { CoverAnswer } from '../../src/husbandry/supply/answer.ts';
import { pencilRoom, type Terminal, terminal } from '../support/command.ts';
import { onDatabase } from '../support/on-database.ts';
import { good } from '../support/store-at.ts';

type Printed = CoverAnswer & { readonly date: string; readonly exit: number };

/** The pencil room with other lots instead. */
async function roomWith(...lots: string[]): Promise<Terminal> {
  const at = terminal();
  const animals = [
    'who,kind,size,unit,fed',
    'Pip,Brachypelma hamorii,12,mm,2026-11-25',
    'Dot,Brachypelma hamorii,14,mm,2026-11-24',
  ];
  await at.type('import', at.file('animals.csv', animals.join('\n')));
  if (lots.length > 0)
    await at.type('import', at.file('lots.csv', ['bin,prey,size,count,came', ...lots].join('\n')), '--stock');
  return at;
}
const plenty = () =>
  roomWith('Box,house cricket,3-4 mm,400,2026-11-28', 'Box 2,house cricket,2-3 mm,400,2026-11-28');

describe('the exit code', () => {
  it('is 0 when the feeders last', async () => {
    const { exit, out, err } = await (await plenty()).type('check');
    expect(out.split('\n')[0]).toBe('The feeders last the week.');
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
  });

  it('is 1 when they run short, and what helps is said', async () => {
    const { exit, out } = await (await roomWith('Box,house cricket,18-20 mm,30,2026-11-28')).type('check');
    expect(exit).toBe(1);
    expect(out).toContain('What helps most: ');
    expect(out).toMatch(/Nothing is missed in fewer than 1 week in 20/);
  });

  it('is 3 when it is tight, and agrees with the verdict for every lot between', async () => {
    const exits = new Map<string, number>();
    const nest = Array.from({ length: 9 }, (_, i) => `S${i},Brachypelma hamorii,13,mm,2026-11-${21 + i}`);
    for (const heads of [10, 11, 12, 13, 14, 15, 16]) {
      const at = terminal();
      await at.type('import', at.file('animals.csv', ['who,kind,size,unit,fed', ...nest].join('\n')));
      const lot = `bin,prey,size,count,came\nBox,house cricket,3-4 mm,${heads},2026-11-28`;
      await at.type('import', at.file('lots.csv', lot), '--stock');
      const { exit, out } = await at.type('check', '--json');
      exits.set((JSON.parse(out) as Printed).verdict, exit);
    }
    expect(Object.fromEntries(exits)).toEqual({ 'runs short': 1, tight: 3, lasts: 0 });
  });

  it('is 0 for an empty room, which says that nobody is here', async () => {
    const at = await pencilRoom();
    const empty = terminal();
    await empty.type(
      'import',
      empty.file('l.csv', 'bin,prey,size,count\nBox,house cricket,3 mm,50\n'),
      '--stock',
    );
    const { exit, out } = await empty.type('check');
    expect({ exit, out }).toEqual({ exit: 0, out: 'Nobody to feed yet: add or import your animals.' });
    expect((await at.type('check')).out).not.toContain('Nobody to feed');
  });
});

describe('the question', () => {
  it('can be asked of another day, horizon and seed', async () => {
    const at = await pencilRoom();
    const { out } = await at.type('check', '--json', '--date', '2026-12-02', '--days', '10', '--seed', '7');
    const answer = JSON.parse(out) as Printed;
    expect(answer).toMatchObject({ date: '2026-12-02', horizonDays: 10, seed: 7 });
    expect(answer.groups[0]!.wantedByDay).toHaveLength(10);
  });

  it('tells until when each bin is left alone, and of those that are not, nothing', async () => {
    const at = await plenty();
    await onDatabase(at, async (context) => {
      good(await restBin(context, { bin: 'B1', days: 3 }));
    });
    const restsOn = async (...date: string[]) => {
      const { out } = await at.type('check', '--json', ...date);
      const { bins, day } = JSON.parse(out) as Printed;
      return bins.map(({ restsUntil }) => restsUntil && restsUntil - day);
    };
    expect(await restsOn()).toEqual([3, null]);
    expect(await restsOn('--date', '2026-12-01')).toEqual([1, null]);
    expect(await restsOn('--date', '2026-12-02')).toEqual([null, null]);
  });

  it('is answered alike twice', async () => {
    const at = await pencilRoom();
    expect(await at.type('check', '--json')).toEqual(await at.type('check', '--json'));
  });

  it('names the verdict first, then how sure, and that all last', async () => {
    const { out } = await (await plenty()).type('check');
    const [headline, asked, sure, , groups] = out.split('\n');
    expect(headline).toBe('The feeders last the week.');
    expect(asked).toBe('Asked on Sunday 29 November for 7 days, in 400 replicates.');
    expect(sure).toMatch(/^Nothing is missed in .* weeks in 20 \(.* %, give or take \d+\)\.$/);
    expect(groups).toMatch(/^\d groups?,? (and all last|lasts)\.$/);
  });

  it('names who runs short, and on which lengths', async () => {
    const { out } = await (await roomWith('Box,house cricket,18-20 mm,30,2026-11-28')).type('check');
    const [, , , , heading, group] = out.split('\n');
    expect(heading).toMatch(/^group +heads +takes +meals due +missed +nothing missed +verdict$/);
    expect(group).toMatch(/^tarantula spiderlings +\d+ +[\d.]+–\d+ mm +.*runs short$/);
  });
});

describe('what cannot be asked', () => {
  it('without a database it says where it looked, and makes none', async () => {
    const at = terminal();
    const { exit, err } = await at.type('check');
    expect(err).toBe(`There is no database at ${at.db}. Import a list first, or name another with --db.`);
    expect(exit).toBe(2);
    expect(existsSync(at.db)).toBe(false);
  });

  it.each([
    [['--days', '0'], '--days is "0"; give a whole number of days from 1 to 90.'],
    [['--days', '-3'], '--days is "-3"'],
    [['--days', '2.5'], '--days is "2.5"'],
    [['--days'], '"--days" needs a value after it.'],
    [['--days', '3', '--days', '4'], '"--days" is said twice.'],
    [['--date', '2062-01-01'], '--date is "2062-01-01"; give a day within 5 years of today.'],
    [['--date', '2026-02-30'], 'There is no day 2026-02-30 in the calendar.'],
    [['--date', 'Sunday'], '"Sunday" is not a date'],
    [['--seed', 'lucky'], '--seed is "lucky"'],
    [['--json=yes'], '"--json" takes no value, but is given "yes".'],
    [['--colour'], '"--colour" is not an option here'],
    [['now'], '"now" is not understood here'],
  ])('%j is a sentence and exit code 2', async (words, sentence) => {
    const { exit, err, out } = await (await pencilRoom()).type('check', ...words);
    expect(err).toContain(sentence);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
  });

  it('a file that is no database of ours is left as it is', async () => {
    const at = terminal();
    const { exit, err } = await at.type('check', '--db', at.file('notes.db', 'not a database'));
    expect(exit).toBe(2);
    expect(err).not.toBe('');
  });
});
