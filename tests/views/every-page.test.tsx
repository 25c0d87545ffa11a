/** What holds for every page: nothing inline, names that resolve, forms that can be sent once, charts that can be read. */
import { describe, expect, it } from 'vitest';
import { attributes, insides, tags } from '../support/markup-words.ts';
import { pages } from '../support/view-pages.tsx';

const drawn = Object.entries(pages('system'));

describe.each(drawn)('the page %s', (_name, html) => {
  it('has no inline style and no inline script', () => {
    expect(attributes(html, 'style')).toEqual([]);
    expect(tags(html, 'style')).toEqual([]);
    expect(insides(html, 'script').join('')).toBe('');
    expect(html).not.toMatch(/ on[a-z]+="/);
    expect(html).not.toMatch(/="javascript:/);
  });

  it('is a document in British English with one heading of the first rank', () => {
    expect(html.startsWith('<!doctype html>')).toBe(true);
    expect(html).toContain('lang="en-GB"');
    expect(tags(html, 'h1')).toHaveLength(1);
    expect(tags(html, 'main')).toHaveLength(1);
  });

  it('uses each id once, and every reference to one resolves', () => {
    const ids = attributes(html, 'id');
    expect(ids).toEqual([...new Set(ids)]);
    const referred = ['for', 'aria-describedby', 'aria-labelledby'].flatMap((name) =>
      attributes(html, name).flatMap((value) => value.split(' ')),
    );
    expect(referred.filter((id) => !ids.includes(id))).toEqual([]);
    const patterns = [...html.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]);
    expect(patterns.filter((id) => !ids.includes(id ?? ''))).toEqual([]);
  });

  it('sends every writing form by POST with an id of its own', () => {
    const forms = tags(html, 'form').filter((tag) => !tag.includes('method="get"'));
    expect(forms.every((tag) => tag.includes('method="post"'))).toBe(true);
    const ids = tags(html, 'input')
      .filter((tag) => tag.includes('name="formId"'))
      .flatMap((tag) => attributes(tag, 'value'));
    expect(ids).toHaveLength(forms.length);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('gives every picture a title and a description, and every chart its numbers', () => {
    const pictures = html.match(/<svg\b[^>]*role="img".*?<\/svg>/gs) ?? [];
    for (const picture of pictures) {
      expect(picture).toMatch(/<title id="[^"]+">[^<]+<\/title><desc id="[^"]+">[^<]+<\/desc>/);
    }
    for (const figure of insides(html, 'figure')) expect(figure).toMatch(/<details.*<table/s);
  });

  it('gives every field a name that can be read', () => {
    const named = new Set(attributes(html, 'for'));
    const alone = [...tags(html, 'input'), ...tags(html, 'select'), ...tags(html, 'textarea')].filter(
      (tag) => !/type="(hidden|checkbox|radio)"/.test(tag),
    );
    expect(alone.filter((tag) => !named.has(attributes(tag, 'id')[0] ?? ''))).toEqual([]);
  });
});
