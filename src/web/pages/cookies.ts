/** What the browser remembers for the pages: the light chosen, and a word to be said once on the next page. */
import type { Context } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
import type { Shell } from '../../../views/layout.tsx';
import type { ThemeChoice } from '../../../views/partials/theme.tsx';

const THEME = 'preylarder_theme';
const WORD = 'preylarder_word';
const LAST = 'preylarder_last';
const YEAR_S = 31_536_000;
const MINUTE_S = 60;
const HOUR_S = 3600;
const THEMES: readonly ThemeChoice[] = ['system', 'light', 'dark', 'red'];
const OPTIONS = { path: '/', httpOnly: true, sameSite: 'Lax' as const };

export const themeOf = (c: Context): ThemeChoice =>
  THEMES.find((theme) => theme === getCookie(c, THEME)) ?? 'system';

export const keepTheme = (c: Context, theme: ThemeChoice): void =>
  setCookie(c, THEME, theme, { ...OPTIONS, maxAge: YEAR_S });

type Word = Shell['flash'][number];

/** Says something on the next page; what no cookie holds is cut off. */
export const sayNext = (c: Context, kind: Word['kind'], text: string): void =>
  setCookie(c, WORD, `${kind} ${shortened(text)}`, { ...OPTIONS, maxAge: MINUTE_S });

/** Letters as they are written in a cookie: a browser drops one of more than 4 kB without a word. */
const MOST_LETTERS = 3800;

function shortened(text: string): string {
  let size = 0;
  let kept = '';
  for (const letter of text) {
    size += encodeURIComponent(letter).length;
    if (size > MOST_LETTERS) return `${kept} …`;
    kept += letter;
  }
  return kept;
}

/** What was left to be said, once. */
export function wordsLeft(c: Context): readonly Word[] {
  const [, kind, text] = /^(done|problem) (.+)$/s.exec(getCookie(c, WORD) ?? '') ?? [];
  if (text === undefined) return [];
  deleteCookie(c, WORD, OPTIONS);
  return [{ kind: kind === 'done' ? 'done' : 'problem', text }];
}

/** How many pages of this browser have shown this act as the last one, with this page counted. */
export function timesShown(c: Context, act: number): number {
  const [, last, times] = /^(\d+)\.(\d+)$/.exec(getCookie(c, LAST) ?? '') ?? [];
  const before = Number(last) === act ? Number(times) : 0;
  const isPage = c.req.method === 'GET' && c.req.header('hx-request') === undefined;
  if (!isPage) return before;
  setCookie(c, LAST, `${act}.${before + 1}`, { ...OPTIONS, maxAge: HOUR_S });
  return before + 1;
}
