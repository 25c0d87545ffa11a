/** The program's own script in one piece: its modules, each after those it imports, without their comments. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const IMPORT = /^import \{[^}]*\} from '\.\/([^']+)';\n/gm;
const COMMENT = /^[ \t]*(\/\*\*[\s\S]*?\*\/|\/\/.*)\n/gm;

/** A browser would fetch a dozen small files one after another; top-level names must differ in all of them. */
export function ownScript(folder: string, first: string): string {
  const pieces = new Map<string, string>();
  const add = (name: string): void => {
    if (pieces.has(name)) return;
    const text = readFileSync(join(folder, name), 'utf8');
    pieces.set(name, '');
    for (const [, imported] of text.matchAll(IMPORT)) add(imported!);
    pieces.delete(name);
    pieces.set(
      name,
      text
        .replace(IMPORT, '')
        .replace(COMMENT, '')
        .replace(/^export /gm, ''),
    );
  };
  add(first);
  return [...pieces.values()].join('');
}
