/** src/cli/JSON.md against what is printed: every field is described, and nothing else is. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { addBin, countBin, restBin } from '../../src/actions/index.ts';
import { pencilRoom, type Terminal, terminal } from '../support/command.ts';
import { onDatabase } from '../support/on-database.ts';
import { plannedTerminal } from '../support/planned-terminal.ts';
import { good } from '../support/store-at.ts';

const DOCUMENT = readFileSync(new URL('../../src/cli/JSON.md', import.meta.url), 'utf8');

/** Paths of the fields described under a heading, with units that say something. */
function described(command: string): string[] {
  const section = DOCUMENT.split(/^## /m).find((text) => text.startsWith(command)) ?? '';
  return [...section.matchAll(/^\| `([^`]+)` \| ([^|]+) \|/gm)].map(([, path]) => path as string);
}

/** Paths of the values printed; null and empty lists have one too. */
function paths(value: unknown, at = ''): string[] {
  if (Array.isArray(value)) return value.flatMap((each) => paths(each, `${at}[]`));
  if (value === null || typeof value !== 'object') return [value === null ? `${at}?` : at];
  return Object.entries(value).flatMap(([name, each]) => paths(each, at === '' ? name : `${at}.${name}`));
}

const printed = async (said: Promise<{ out: string }>): Promise<string[]> =>
  paths(JSON.parse((await said).out));

function compare(command: string, seen: readonly string[]): { undescribed: string[]; unseen: string[] } {
  const known = described(command);
  const values = new Set(seen.filter((path) => !path.endsWith('?')));
  const nulls = [...new Set(seen)].filter((path) => path.endsWith('?')).map((path) => path.slice(0, -1));
  const covers = (path: string) =>
    known.some((one) => one === path || one.startsWith(`${path}.`) || one === `${path}[]`);
  return {
    undescribed: [
      ...[...values].filter((path) => !known.includes(path)),
      ...nulls.filter((path) => !covers(path)),
    ],
    unseen: known.filter((path) => !values.has(path) && !nulls.includes(path)),
  };
}

const NOTHING_AMISS = { undescribed: [], unseen: [] };

/** A colony of which counts have told how much it lays, left alone. */
const colonyLeftAlone = (at: Terminal): Promise<void> =>
  onDatabase(at, async (context) => {
    const colony = { species: 'blaptica-dubia', room: 'R1', name: 'Dubia', role: 'colony' } as const;
    await addBin(context, { ...colony, keepAdults: true });
    good(await countBin(context, { bin: 'B3', heads: 600, day: '2026-10-30' }));
    good(await countBin(context, { bin: 'B3', heads: 700 }));
    good(await restBin(context, { bin: 'B3', days: 21 }));
  });

it('check is described field by field', async () => {
  const full = await pencilRoom();
  const short = terminal();
  const spiders = Array.from({ length: 9 }, (_, i) => `S${i},Brachypelma hamorii,13,mm,2026-11-24`);
  await short.type('import', short.file('a.csv', ['who,kind,size,unit,fed', ...spiders].join('\n')));
  const lots =
    'bin,prey,size,count,came\nBox,house cricket,3-4 mm,22,2026-11-15\nBig,house cricket,18 mm,40,2026-11-28\n';
  await short.type('import', short.file('l.csv', lots), '--stock');
  const breeding = await pencilRoom();
  await colonyLeftAlone(breeding);
  const planned = await plannedTerminal({ crickets: 400, transitDays: 14 });
  const seen = [
    ...(await printed(full.type('check', '--json'))),
    ...(await printed(short.type('check', '--json'))),
    ...(await printed(breeding.type('check', '--json'))),
    ...(await printed(planned.type('check', '--json'))),
  ];
  expect(compare('check', seen)).toEqual(NOTHING_AMISS);
});

it('demand is described field by field', async () => {
  const at = await pencilRoom();
  await at.type('import', at.file('g.csv', 'who,kind,size,unit,count\nTwelve,mantid,12,mm,12\n'));
  const seen = await printed(at.type('demand', '--json'));
  const { undescribed, unseen } = compare('demand', seen);
  expect(undescribed).toEqual([]);
  expect(unseen.filter((path) => !path.startsWith('groups[].exact.whole.'))).toEqual([]);
});

it('species is described field by field', async () => {
  const at = terminal();
  const seen = [
    ...(await printed(at.type('species', 'dubia', '--json'))),
    ...(await printed(at.type('species', 'dubia', '--temp', '5', '--json'))),
  ];
  expect(compare('species', seen)).toEqual(NOTHING_AMISS);
});
