/** Sunday says the verdict, how sure it is, what to do, whom it touches. */
import { describe, expect, it } from 'vitest';
import { SundayPage } from '../../views/pages/sunday.tsx';
import { insides, words } from '../support/markup-words.ts';
import { answer } from '../support/view-fixtures.ts';
import { markup, pages } from '../support/view-pages.tsx';
import { sundayProps } from '../support/view-props.ts';

const html = markup(<SundayPage {...sundayProps} />);
const said = words(html);

describe('the Sunday page', () => {
  it('opens with the verdict in words, and its chance as a frequency with its error', () => {
    expect(words(insides(html, 'h1')[0] ?? '')).toBe(
      'Small juveniles run short on Thursday; flies are plenty',
    );
    expect(said).toContain('Nobody misses a meal in about 2 weeks in 5 (41 %, give or take 3)');
    expect(said).toContain('142 meals due: about 6 missed, about 2 late');
  });

  it('proposes one act with what it changes, and where it is done', () => {
    expect(said).toContain('Buy about 50 banded crickets of 5 mm by Wednesday.');
    expect(said).toContain('Meals missed now about 6 →, then under 1');
    expect(html).toContain('href="/larder#deliveries"');
  });

  it('asks for the look that narrows the doubt most', () => {
    expect(said).toContain('Look first. Nobody looked at Cricket box 1 for 9 days.');
    expect(html).toContain('href="/larder/B1"');
  });

  it('lists groups with the worst first: prey length, chance, run-out day with interval, animals by name', () => {
    const rows = insides(html, 'tbody').map(words);
    const first = rows.find((row) => row.includes('Small juveniles')) ?? '';
    expect(first).toContain('18 animals, prey 4–7 mm');
    expect(first).toContain('Thu 26 Nov (Tue 24 Nov to Sat 28 Nov)');
    expect(first).toContain('Hazel 48 %, Biscuit 31 %');
    expect(said.indexOf('Small juveniles 18')).toBeLessThan(said.indexOf('Spiderlings 40'));
  });

  it('says what outgrows or dies unused and where its numbers come from', () => {
    expect(said).toContain('Cricket box 1 about 6 about 14 about 60');
    expect(said).toContain('1,000 weeks like this one were played through');
    expect(said).toContain('common practice, no source');
  });

  it('never shows a code', () => {
    expect(said).not.toMatch(/\b(A1|B1|gryllodes|hydei)\b/);
  });

  it('names a danger before missed meals', () => {
    const danger = markup(<SundayPage {...sundayProps} answer={{ ...answer, dangers: 1.2 }} />);
    expect(words(danger)).toContain('about 1 animal in danger, about 6 missed');
  });

  it('folds the groups that last when there are many', () => {
    const many = Array.from({ length: 4 }, (_, i) => ({ ...answer.groups[4]!, key: `more-${i}` }));
    const html = markup(
      <SundayPage {...sundayProps} answer={{ ...answer, groups: [...answer.groups, ...many] }} />,
    );
    expect(words(html)).toMatch(/For the other \d+ animals it lasts/);
    const name = `${answer.groups[4]!.name.charAt(0).toUpperCase()}${answer.groups[4]!.name.slice(1)}`;
    const rows = insides(html, 'tbody')
      .flatMap((body) => insides(body, 'tr'))
      .map(words);
    const merged = rows.filter((row) => row.startsWith(name));
    expect(merged).toHaveLength(1);
    expect(merged[0]).toContain(`${5 * answer.groups[4]!.heads} `);
  });

  it('draws groups of one name as one bracket with the worst verdict, apart from those that last', () => {
    const twin = { ...answer.groups[0]!, key: 'twin', verdict: 'runs short' as const };
    const html = markup(
      <SundayPage
        {...sundayProps}
        answer={{ ...answer, groups: [{ ...twin, key: 'tight', verdict: 'tight' }, twin] }}
      />,
    );
    expect(html.match(/group-bracket is-runs-short/g)).toHaveLength(2);
    expect(html.match(/group-bracket/g)).toHaveLength(2);
    const lasting = { ...twin, key: 'lasting', verdict: 'lasts' as const };
    const both = markup(<SundayPage {...sundayProps} answer={{ ...answer, groups: [twin, lasting] }} />);
    expect(both.match(/group-bracket is-runs-short/g)).toHaveLength(2);
    expect(both.match(/group-bracket is-lasts/g)).toHaveLength(2);
  });

  it('leads to the deliveries when one is to come sooner, though the act names a bin', () => {
    const act = { ...answer.act!, kind: 'bring delivery forward' as const, bin: 'B1' };
    const html = markup(<SundayPage {...sundayProps} answer={{ ...answer, act, look: null }} />);
    expect(words(html)).toContain('To the deliveries');
  });

  it('says perhaps where less than one is expected', () => {
    const danger = markup(<SundayPage {...sundayProps} answer={{ ...answer, dangers: 0.3 }} />);
    expect(words(danger)).toContain('perhaps 1 animal in danger, about 6 missed');
  });

  it('says that no feeding day comes rather than that nothing is due', () => {
    const html = markup(
      <SundayPage {...sundayProps} answer={{ ...answer, mealsDue: 0, missedMeals: 0, lateMeals: 60 }} />,
    );
    expect(words(html)).toContain('No meal falls on a feeding day of yours: about 60 late.');
  });

  it('leaves out what an act does not change, and leads to where a cup is started', () => {
    const act = {
      ...answer.act!,
      kind: 'start a cup' as const,
      after: { ...answer.act!.after, nothingMissed: 0.41 },
    };
    const html = markup(<SundayPage {...sundayProps} answer={{ ...answer, act }} />);
    expect(words(html)).not.toContain('Nobody misses now');
    expect(html).toContain('href="/larder/new"');
  });

  it('proposes nothing when all lasts', () => {
    expect(words(pages('light')['sunday-lasts'] ?? '')).not.toContain('Do this');
  });

  it('teaches the first steps when nobody lives here', () => {
    const empty = words(pages('light')['sunday-empty'] ?? '');
    expect(empty).toContain('Three steps to the first answer');
    expect(empty).toContain('Look around a demo room first');
  });

  it('asks for prey when there are animals and none', () => {
    const noPrey = words(markup(<SundayPage {...sundayProps} answer={{ ...answer, bins: [], act: null }} />));
    expect(noPrey).toContain('Who eats. Done.');
    expect(noPrey).toContain('Add a bin, colony or fly cup');
  });

  it('says what danger means, and leads to those who wait though prey is there', () => {
    const both = { ...answer, dangers: 1.2, unfed: { missedMeals: 4, dangers: 2 } };
    const html = markup(<SundayPage {...sundayProps} answer={both} />);
    expect(words(html)).toContain('In danger: longer without food than its kind can safely go');
    expect(html).toContain('href="/animals?show=late&amp;order=meal"');
    expect(words(markup(<SundayPage {...sundayProps} />))).not.toContain('nobody feeds in time');
  });
});
