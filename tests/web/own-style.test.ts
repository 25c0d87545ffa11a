/** The style sheet in one piece: every file of it, in order, without comments. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ownStyle } from '../../src/web/own-style.ts';
import { ROOT } from '../support/source-files.ts';

const folder = join(ROOT, 'views/assets');
const whole = ownStyle(folder, 'style.css');
const imported = [...readFileSync(join(folder, 'style.css'), 'utf8').matchAll(/"([^"]+)"/g)].map(
  ([, name]) => name!,
);
/** Set apart: only sheets of paper use it. */
const APART = ['sheet.css', 'style.css'];

test('every style sheet is in it but that of paper', () => {
  const own = readdirSync(folder).filter((name) => name.endsWith('.css') && !APART.includes(name));
  expect(imported.toSorted()).toEqual(own.toSorted());
});

test('what comes last speaks last: phones, then print', () => {
  expect(imported.slice(-2)).toEqual(['phone.css', 'print.css']);
  expect(whole.indexOf('--paper: #fbf8f1')).toBeLessThan(whole.indexOf('@media print'));
});

test('nothing is left to import, and no comment is sent', () => {
  expect(whole).not.toContain('@import');
  expect(whole).not.toContain('/*');
});
