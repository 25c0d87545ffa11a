/** Who may import whom, and what the core may not touch. */
import { describe, expect, it } from 'vitest';
import { codeOnly, importsOf, sourceFiles } from '../support/source-files.ts';

const files = [...sourceFiles('src'), ...sourceFiles('views')];

/** Folder -> folders it may import from; a folder may always import from itself. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  'src/maths': [],
  'src/husbandry': ['src/maths'],
  'src/facts': ['src/husbandry'],
  'src/intake': ['src/husbandry'],
  'src/store': ['src/husbandry'],
  'src/actions': ['src/husbandry', 'src/facts', 'src/store', 'src/intake'],
  'src/workers': ['src/husbandry', 'src/facts', 'src/actions'],
  'src/web': [
    'src/actions',
    'src/husbandry',
    'src/facts',
    'src/intake',
    'src/store',
    'views',
    'src/config.ts',
  ],
  'src/cli': [
    'src',
    'views/format.ts',
    'views/names.ts',
    'views/pages/plan-reasons.ts',
    'views/pages/plan-steps.ts',
  ],
  'src/config.ts': ['src/husbandry'],
  'src/main.ts': ['src', 'views', 'seed'],
  views: ['src/husbandry'],
};

const homeOf = (path: string): string =>
  Object.keys(MAY_IMPORT).find((home) => path === home || path.startsWith(`${home}/`)) ?? path;

const own = (name: string) => name.startsWith('src') || name.startsWith('views') || name.startsWith('seed');

describe('the tree', () => {
  it('is seen whole by these tests', () => {
    expect(files.length).toBeGreaterThan(200);
    expect(files.flatMap(importsOf).filter(own).length).toBeGreaterThan(500);
  });

  it('imports only along the map', () => {
    const strays = files.flatMap((file) => {
      const home = homeOf(file.path);
      const allowed = [home, ...(MAY_IMPORT[home] ?? [])];
      return importsOf(file)
        .filter(own)
        .filter((name) => !allowed.some((place) => name === place || name.startsWith(`${place}/`)))
        .map((name) => `${file.path} imports ${name}`);
    });
    expect(strays).toEqual([]);
  });

  it('enters a part of the core by its front door alone', () => {
    const part = (path: string) => /^src\/husbandry\/[^/]+\/(?=[^/]+$)/.exec(path)?.[0];
    const inner = [...files, ...sourceFiles('seed')].flatMap((file) =>
      importsOf(file)
        .filter((name) => part(name) !== undefined && part(name) !== part(file.path))
        .map((name) => ({ name, said: `${file.path} imports ${name}` })),
    );
    expect(inner.length).toBeGreaterThan(100);
    expect(inner.filter(({ name }) => !name.endsWith('/index.ts')).map(({ said }) => said)).toEqual([]);
  });

  it('keeps nothing at a front door but re-exports', () => {
    const doors = files.filter(({ path }) => /^src\/husbandry\/[^/]+\/index\.ts$/.test(path));
    const reExport = /export (type )?\{[^}]*\} from ;/g;
    expect(doors.map(({ path }) => path.split('/')[2])).toEqual([
      'animals',
      'appetite',
      'colony',
      'larder',
      'orders',
      'plan',
      'prey',
      'supply',
    ]);
    expect(doors.map(({ text }) => codeOnly(text).replace(/\s+/g, ' ').replace(reExport, '').trim())).toEqual(
      doors.map(() => ''),
    );
  });

  it('leaves packages out of the core and, but for the solver, out of the maths', () => {
    const core = files.filter(
      ({ path }) => path.startsWith('src/husbandry/') || path.startsWith('src/maths/'),
    );
    expect(core.length).toBeGreaterThan(40);
    const solver = (path: string, name: string) =>
      path === 'src/maths/linear-programme.ts' && name === 'highs';
    const strays = core.flatMap((file) =>
      importsOf(file)
        .filter((name) => !own(name) && !solver(file.path, name))
        .map((name) => `${file.path} imports ${name}`),
    );
    expect(strays).toEqual([]);
  });

  it('opens every file with a sentence on what it is for', () => {
    const silent = files.filter(({ text }) => !/^(#![^\n]*\n)?\/\*\*?/.test(text)).map(({ path }) => path);
    expect(silent).toEqual([]);
  });
});

describe('the core', () => {
  const core = files.filter(({ path }) => path.startsWith('src/husbandry/'));

  it('knows neither clock nor dice nor machine', () => {
    const forbidden =
      /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bperformance\b|\bprocess\b|\bconsole\b|\bfetch\(/;
    const strays = core.filter(({ text }) => forbidden.test(codeOnly(text))).map(({ path }) => path);
    expect(strays).toEqual([]);
  });

  it('holds no number but 0, 1 and 2 outside the unit factors', () => {
    const factors = ['src/husbandry/units.ts', 'src/husbandry/calendar.ts'];
    const strays = core
      .filter(({ path }) => !factors.includes(path))
      .flatMap(({ path, text }) =>
        [...codeOnly(text).matchAll(/(?<![\w.$])(\d[\d_]*(?:\.\d+)?(?:e[+-]?\d+)?)\b/gi)]
          .map((match) => match[1] as string)
          .filter((number) => !['0', '1', '2'].includes(number))
          .map((number) => `${path}: ${number}`),
      );
    expect(strays).toEqual([]);
  });
});
