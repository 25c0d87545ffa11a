/** Everything a keeper can do is found under its own group of the history. */
import { expect, test } from 'vitest';
import { GROUP_OPTIONS, OF_MANY, verbsOf } from '../../../src/web/pages/verb-groups.ts';
import { sourceFiles } from '../../support/source-files.ts';

const written = sourceFiles('src/actions').flatMap(({ text }) =>
  [...text.matchAll(/\bverb: '([a-z-]+)'/g)].map(([, verb]) => verb!),
);
const grouped = GROUP_OPTIONS.flatMap(({ value }) => verbsOf(value).verbs ?? []);

test('each act stands in one group, and no group names an act that is none', () => {
  expect(written.length).toBeGreaterThan(50);
  const acts = written.filter((verb) => !verb.startsWith('undo'));
  expect([...grouped].sort()).toEqual([...new Set(acts)].sort());
});

test('acts of many are acts', () => {
  expect(OF_MANY.filter((verb) => !grouped.includes(verb))).toEqual([]);
});
