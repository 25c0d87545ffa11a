/** A class is drawn in one file: two that draw the same name in different ways would meet in the one style sheet. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from '../../support/source-files.ts';

const folder = join(ROOT, 'views/assets');
/** They speak of what others draw: for small screens and for paper; `sheet.css` never meets the others. */
const OVER_OTHERS = ['phone.css', 'print.css', 'style.css', 'sheet.css'];
/** Drawn as a box in one file, coloured or placed in another. */
const SHARED = ['.animals', '.banner', '.drawing', '.serving', '.theme-red', '.round'];

const opened = (text: string): string[] =>
  [...text.matchAll(/^(\.[a-z][a-z0-9-]*)(?=[ ,.:>{])/gm)].map(([, name]) => name!);

test('no class is begun in two files', () => {
  const files = readdirSync(folder).filter((name) => name.endsWith('.css') && !OVER_OTHERS.includes(name));
  const filesOf = new Map<string, Set<string>>();
  for (const file of files)
    for (const name of opened(readFileSync(join(folder, file), 'utf8')))
      filesOf.set(name, (filesOf.get(name) ?? new Set()).add(file));
  const twice = [...filesOf].filter(([name, places]) => places.size > 1 && !SHARED.includes(name));
  expect(filesOf.size).toBeGreaterThan(100);
  expect(twice.map(([name, places]) => `${name}: ${[...places].join(', ')}`)).toEqual([]);
});
