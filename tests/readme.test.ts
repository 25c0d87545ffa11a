/** What the README promises is there. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './support/source-files.ts';

const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
const scripts = (
  JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { scripts: Record<string, string> }
).scripts;
const blocks = [...readme.matchAll(/```sh\n([\s\S]*?)```/g)].map((match) => match[1] as string);

describe('the README', () => {
  it('names commands that exist', () => {
    const named = blocks.join('\n').match(/npm (?:run -s )?(?!ci\b|run\b)(\w+)/g) ?? [];
    expect(named).toEqual(expect.arrayContaining(['npm start', 'npm test', 'npm run -s preylarder']));
    const missing = named
      .map((words) => words.split(' ').at(-1) as string)
      .filter((name) => !(name in scripts));
    expect(missing).toEqual([]);
  });

  it('gives the two commands a newcomer needs, alone in their blocks', () => {
    expect(blocks.slice(0, 2)).toEqual(['npm ci && npm start\n', 'npm ci && npm test\n']);
  });

  it('names settings that the program reads', () => {
    const config = readFileSync(join(ROOT, 'src/config.ts'), 'utf8');
    const named = [...readme.matchAll(/^\| `(\w+)` \|/gm)].map((match) => match[1] as string);
    expect(named).toEqual(['PREYLARDER_DB', 'PORT', 'PREYLARDER_PASSWORD', 'PREYLARDER_TIMEZONE']);
    expect(named.filter((name) => !config.includes(name))).toEqual([]);
  });

  it('links to files that are there', () => {
    const links = [...readme.matchAll(/\]\(([^)#]+)\)/g)]
      .map((match) => match[1] as string)
      .filter((link) => !link.includes(':'));
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !existsSync(join(ROOT, link)))).toEqual([]);
  });
});
