/** Settings, lists brought in, the frame, the doorstep. */
import { describe, expect, it } from 'vitest';
import { Layout } from '../../views/layout.tsx';
import { ErrorPage } from '../../views/pages/error.tsx';
import { ImportPage } from '../../views/pages/import.tsx';
import { LoginPage } from '../../views/pages/login.tsx';
import { SettingsPage } from '../../views/pages/settings.tsx';
import { attributes, insides, tags, words } from '../support/markup-words.ts';
import { forms, shell } from '../support/view-fixtures.ts';
import { markup } from '../support/view-pages.tsx';
import { importProps, settingsProps } from '../support/view-props.ts';

describe('the settings', () => {
  const html = markup(<SettingsPage {...settingsProps} />);

  it('open with the feeding days, and tick them', () => {
    expect(words(html)).toContain('You feed on Tuesdays, Thursdays and Sundays');
    const ticked = tags(html, 'input').filter(
      (tag) => tag.includes('name="weekday"') && / checked/.test(tag),
    );
    expect(ticked.flatMap((tag) => attributes(tag, 'value'))).toEqual(['1', '3', '6', '1', '2', '3', '4']);
  });
  it('list days away, rooms and planned changes in words', () => {
    const said = words(html);
    expect(said).toContain('Fri 4 Dec to Mon 7 Dec');
    expect(said).toContain('Spare room: 26 °C by day, 22 °C by night');
    expect(said).toContain(
      'Sac: 120 young of red knee, 3 mm, first feed Tue 22 Dec to Fri 1 Jan, 70 % likely',
    );
  });
  it('keep the days ticked when they are refused', () => {
    const refused = {
      form: 'feeding',
      values: { weekday: '' },
      problems: { weekday: 'Tick at least one day.' },
    };
    const again = markup(<SettingsPage {...settingsProps} forms={{ ...forms, refused }} />);
    expect(again).toContain('aria-describedby="feeding-weekday-problem"');
    expect(words(again)).toContain('Tick at least one day.');
  });
  it('clear the demo room while it is shown, and bring it back when it is not', () => {
    expect(html).toContain('action="/demo/remove"');
    const own = markup(<SettingsPage {...settingsProps} shell={{ ...shell, demo: false }} />);
    expect(own).toContain('action="/demo/start"');
  });
});

describe('bringing in a list', () => {
  it('takes a file or pasted cells', () => {
    const html = markup(<ImportPage {...importProps} draft={null} />);
    expect(tags(html, 'form').find((tag) => tag.includes('action="/import"'))).toContain(
      'multipart/form-data',
    );
    expect(attributes(html, 'name')).toEqual(expect.arrayContaining(['what', 'file', 'text']));
  });

  const check = markup(<ImportPage {...importProps} />);
  it('asks first, with likely answers on top, and writes nothing', () => {
    expect(words(check)).toContain('1 question before it can be written');
    expect(words(check)).toContain('“wobbler” is not a known kind of animal (row 4). Which is it?');
    expect(attributes(check, 'label')[0]).toBe('Perhaps');
    expect(words(check)).toContain(
      '3 lines: 1 new, 1 waiting for an answer and 1 left out. Nothing is written yet.',
    );
    expect(check).not.toContain('action="/import/confirm"');
  });
  it('shows each line with what becomes of it and why', () => {
    expect(words(check)).toContain('3 left out Bob; red leg; big "big" is not a length; write it as 34 mm.');
  });
  it('lets columns and the order of dates be said', () => {
    expect(attributes(check, 'name')).toEqual(
      expect.arrayContaining(['column:name', 'column:kind', 'dates']),
    );
    expect(check).toMatch(/<option value="Call name" selected/);
  });
  it('has one button once nothing is open', () => {
    const draft = importProps.draft!;
    const reading = {
      ...draft.reading,
      ready: true,
      asks: [],
      tally: { new: 3, changed: 1, same: 0, asked: 0, refused: 0 },
    };
    const ready = markup(<ImportPage {...importProps} draft={{ ...draft, reading }} />);
    expect(words(ready)).toContain('Ready: 3 new animals, 1 changed');
    expect(ready).toContain('action="/import/confirm"');
    expect(words(ready)).toContain('Write it down');
  });
});

describe('the frame', () => {
  const frame = markup(
    <Layout
      shell={{ ...shell, theme: 'red', canLogOut: true, flash: [{ kind: 'done', text: 'Hazel moved in.' }] }}
      title="Animals"
      here="animals"
    >
      <p>Body</p>
    </Layout>,
  );

  it('marks where the keeper is and lets the keyboard skip to the page', () => {
    expect(insides(frame, 'nav').map(words)).toEqual(['Sunday Tonight Animals Larder More']);
    expect(tags(frame, 'a').filter((tag) => tag.includes('aria-current="page"'))[0]).toContain('/animals');
    expect(tags(frame, 'a')[0]).toContain('href="#main"');
  });
  it('carries the theme as a class and offers the others', () => {
    expect(tags(frame, 'html')[0]).toContain('theme-red');
    expect(tags(frame, 'button').filter((tag) => tag.includes('aria-pressed="true"'))[0]).toContain(
      'value="red"',
    );
  });
  it('offers to undo the last act, says what was done, and that this is the demo room', () => {
    const said = words(frame);
    expect(frame).toContain('action="/undo/41"');
    expect(said).toContain('Undo: 55 animals fed on Thursday');
    expect(said).toContain('Hazel moved in.');
    expect(said).toContain('Demo room: try anything.');
    expect(said).toContain('Log out');
  });
  it('escapes what keepers write', () => {
    const odd = markup(
      <Layout shell={{ ...shell, flash: [{ kind: 'done', text: '<b>&' }] }} title="x" here={null} />,
    );
    expect(odd).toContain('&lt;b&gt;&amp;');
  });
});

it('the door asks for the password and says what was wrong with it', () => {
  const refused = { form: 'login', values: {}, problems: { password: 'That is not the password.' } };
  const html = markup(<LoginPage theme="dark" forms={{ formId: 'f', refused }} next="/larder" />);
  expect(words(html)).toContain('That is not the password.');
  expect(html).toContain('name="next" value="/larder"');
  expect(html).toContain('autocomplete="current-password"');
});

it('an error says what happened, a way on and its number', () => {
  const html = markup(
    <ErrorPage theme="light" sentence="There is no page here." advice={null} requestId="7f3a" />,
  );
  expect(words(html)).toBe('Preylarder There is no page here. To the Sunday check Request 7f3a');
});
